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


# Words that do not tell two names apart: "full cherry red" and "cherry" are one name.
FILLERS = ("red", "full", "heat")


@dataclass(frozen=True)
class Apart:
    """A name that several observers use: the lowest and highest heat [degC] that they give it."""

    name: str
    low: float
    high: float
    tables: tuple[str, ...]

    @property
    def by(self) -> float:
        """How far the tables lie apart [K]."""
        return self.high - self.low


def apart(library: Library) -> list[Apart]:
    """Names that two tables or more have, the coolest first, and how far their heats lie apart."""
    found: dict[str, list[tuple[str, Name]]] = {}
    for table_id, table in library.colours.items():
        for name in names(table):
            found.setdefault(plain(name.text), []).append((table_id, name))
    shared = []
    for key, users in found.items():
        tables = tuple(dict.fromkeys(table for table, _ in users))
        if len(tables) > 1:
            low, high = min(n.low for _, n in users), max(n.high for _, n in users)
            label = min((n.text for _, n in users), key=len)
            shared.append(Apart(label if key in label else key, low, high, tables))
    return sorted(shared, key=lambda one: (one.low, one.high))


def plain(name: str) -> str:
    """A colour's name without the words that do not tell it from others."""
    kept = [word for word in name.lower().split() if word not in FILLERS]
    return " ".join(kept) or name.lower()


def observers(library: Library) -> list[tuple[str, list[Name]]]:
    """Every observer's name and names."""
    return [(table.name, names(table)) for table in library.colours.values()]
