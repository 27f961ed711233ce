"""How the rows behind a figure reached the handbook."""

from __future__ import annotations

from collections.abc import Iterable

from temperbook.records.load import Library


def best_row(rows: Iterable[str], library: Library) -> str:
    """The first of the evidence rows that has the best grade; empty for none."""
    return min(rows, key=lambda row: library.evidence[row].grade, default="")


def best(rows: Iterable[str], library: Library) -> str:
    """The best grade among evidence rows: A before B before C before D; empty for none."""
    return min((library.evidence[row].grade for row in rows), default="")
