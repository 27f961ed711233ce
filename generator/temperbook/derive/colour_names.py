"""What each observer calls the colour at a temperature."""

from __future__ import annotations

from dataclasses import dataclass

from temperbook.derive.limits import highest, lowest
from temperbook.records.load import Library
from temperbook.records.models import ColourTable


@dataclass(frozen=True)
class Name:
    """A colour name of one observer with the temperatures [degC] that it covers."""

    text: str
    low: float
    high: float


def names(table: ColourTable) -> list[Name]:
    """An observer's names, the coolest first; a name given at one temperature covers that alone."""
    found = [
        Name(figure.name or "", lowest(figure), highest(figure))
        for figure in table.figures.get("heat-colour", [])
    ]
    return sorted(found, key=lambda name: (name.low, name.high))


def between(table: ColourTable, low: float, high: float) -> list[Name]:
    """The names that a range [degC] meets, or the nearest one below and above it where it meets
    none."""
    ordered = names(table)
    meeting = [name for name in ordered if name.low <= high and name.high >= low]
    if meeting:
        return meeting
    below = [name for name in ordered if name.high < low][-1:]
    above = [name for name in ordered if name.low > high][:1]
    return below + above


def observers(library: Library) -> list[tuple[str, list[Name]]]:
    """Every observer's name and names."""
    return [(table.name, names(table)) for table in library.colours.values()]
