"""Faults and cautions as plain data for others, each claim with its whole provenance."""

from __future__ import annotations

from typing import Any

from temperbook.derive.handbook import Handbook
from temperbook.records.causes import Cause, Which
from temperbook.records.load import Library
from temperbook.records.models import Caution, Fault
from temperbook.views.exported import figures_of, provenance_of, remarks_of


def fault(record: Fault, handbook: Handbook) -> dict[str, Any]:
    """A fault: what one sees, causes by likelihood with their checks, remedies."""
    library = handbook.library
    return {
        "id": record.id,
        "name": record.name,
        "seen": record.seen,
        "when": list(record.when),
        "looks": list(record.looks),
        "causes": [_cause(cause, library) for cause in record.causes],
        "save": record.save,
        "now": remarks_of(record.now, library),
        "prevent": remarks_of(record.prevent, library),
        "prone": _which(record.prone),
        "numbers": list(record.numbers),
        "see": list(record.see),
        "cautions": list(record.cautions),
    }


def caution(record: Caution, handbook: Handbook) -> dict[str, Any]:
    """A caution, its rule, and the alloys and solders that carry it by that rule or by name."""
    return {
        "id": record.id,
        "name": record.name,
        "signal": record.signal,
        "quick": record.quick,
        "hazard": record.hazard,
        "consequence": record.consequence,
        "avoid": list(record.avoid),
        "first_aid": record.first_aid,
        "decides": record.decides,
        "immediate": record.immediate,
        "applies": record.applies.model_dump(exclude_defaults=True),
        "tasks": list(record.tasks),
        "signs": list(record.signs),
        "from": list(record.from_),
        "figures": figures_of(record.id, handbook),
        "alloys": [alloy.id for alloy in handbook.alloys_with(record.id)],
        "solders": [solder.id for solder in handbook.solders_with(record.id)],
    }


def _cause(cause: Cause, library: Library) -> dict[str, Any]:
    moved = {key: _which(getattr(cause, key)) for key in ("more", "less", "only")}
    said = {"text": cause.text, "likely": cause.likely, "tell": cause.tell}
    return {**said, **moved, **provenance_of(cause, library)}


def _which(which: Which | None) -> dict[str, Any] | None:
    return which.model_dump(exclude_defaults=True) if which else None
