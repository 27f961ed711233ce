"""What people type at a key: a number, a number with its unit or gauge, a section, or a word."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from typing import Any

from temperbook import units
from temperbook.metal import gauges as gauge_tables
from temperbook.metal.register.formula import Input

Sizes = Mapping[str, Mapping[str, float]]
Gauges = Sizes | Callable[[], Sizes]

# Units that people write behind a number, as units.py calls them.
WRITTEN = (
    *("degC", "degF", "K", "mm", "cm", "m", "um", "in", "ft", "g", "kg", "oz", "ozt", "dwt"),
    *("MPa", "GPa", "N/mm2", "ksi", "psi", "kgf/mm2", "s", "min", "h", "d", "g/cm3", "kg/m3"),
    *("kJ/mol", "J/mol", "cal/mol"),
)
_SIZE = r"[-+]?(?:\d+(?:\.\d*)?|\.\d+)"
_NUMBER = re.compile(rf"({_SIZE})\s*([A-Za-z/0-9%]*)", re.ASCII)
_GAUGE = re.compile(r"(\d+(?:/0)?)\s*(awg|swg|bwg)", re.ASCII | re.IGNORECASE)
_SECTION = re.compile(r"(round|square|flat)\s+(.+)", re.ASCII)


def read(text: str, declared: Input, gauges: Gauges | None = None) -> Any:
    """A typed input by its kind, numbers in its unit; text where it is none of them.

    gauges: sizes [mm] of gauge numbers by system, or what gives them, asked only where one is
    typed.
    Errors: ValueError for a unit that is unknown, or of another kind than the input's.
    """
    if declared.kind == "number":
        return value(text, declared.unit, gauges)
    if declared.kind == "section":
        return section(text, gauges)
    if declared.kind == "list":
        parts = [value(part, declared.unit, gauges) for part in text.split(",") if part.strip()]
        return text if any(isinstance(part, str) for part in parts) else parts
    return text


def value(text: str, unit: str, gauges: Gauges | None = None) -> float | str:
    """A typed number in a unit; text where it is no number. Errors: as `read`."""
    gauge = _GAUGE.fullmatch(text.strip())
    if gauge:
        if unit not in units.LENGTHS:
            raise ValueError(f"`{text}` is no {unit or 'plain number'}")
        return units.convert(_of_gauge(gauge[1], gauge[2], gauges), "mm", unit)
    match = _NUMBER.fullmatch(text.strip())
    if not match:
        return text
    number, written = float(match[1]), match[2]
    if not written or (written == "%" and unit.startswith("percent")):
        return number
    if written in ("deg", "degrees") and unit == "degrees":
        return number
    if written not in WRITTEN:
        raise ValueError(f"`{text}` has an unknown unit; one of {', '.join(WRITTEN)}")
    if not unit or not units.same_kind(written, unit):
        raise ValueError(f"`{text}` is no {unit or 'plain number'}")
    return units.convert(number, written, unit)


def section(text: str, gauges: Gauges | None = None) -> str:
    """A typed section with its sizes in millimetres: `round 0.04in` becomes `round 1.016`.

    A unit behind the last size of a flat holds for both where the first has none; a gauge does
    not. Text that is no section is given back as it is. Errors: as `read`.
    """
    match = _SECTION.fullmatch(text.strip())
    if not match:
        return text
    shape, written = match[1], match[2].replace("\u00d7", "x")
    parts = [part.strip() for part in written.split("x")] if shape == "flat" else [written.strip()]
    if len(parts) == 2:
        first, last = _NUMBER.fullmatch(parts[0]), _NUMBER.fullmatch(parts[1])
        if first and last and not first[2] and not _GAUGE.fullmatch(parts[1]):
            parts[0] += last[2]
    sizes = [value(part, "mm", gauges) for part in parts]
    if any(isinstance(size, str) for size in sizes):
        return text
    return f"{shape} {'x'.join(f'{size:.9f}'.rstrip('0').rstrip('.') for size in sizes)}"


def _of_gauge(number: str, system: str, gauges: Gauges | None) -> float:
    tables = gauges() if callable(gauges) else gauges or {}
    table = tables.get(system.lower())
    if not table:
        raise ValueError(f"the records have no table of {system.lower()}")
    return gauge_tables.size(number, table)
