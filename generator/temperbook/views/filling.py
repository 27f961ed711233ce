"""Fills the sentences that results say of themselves."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from temperbook.metal.register.formula import Said, filled


def said(found: Iterable[Said], templates: Mapping[str, str]) -> list[dict[str, str]]:
    """Notes or warnings as `{id, text}`."""
    return [{"id": one.id, "text": filled(templates[one.id], one.values)} for one in found]
