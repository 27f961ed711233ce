"""The table below a plot: a row an alloy, each cell with its mark and the way to its sources."""

from __future__ import annotations

from dataclasses import dataclass, field

from temperbook.derive.handbook import Handbook
from temperbook.records.figures import Figure, address
from temperbook.records.models import Alloy
from temperbook.views import formatting, routes
from temperbook.views.comparing.plots import Plot
from temperbook.views.pages import Link


@dataclass(frozen=True)
class Cell:
    """What stands in a cell: a number with its mark and its place on the alloy's page, or words."""

    text: str
    said: str = ""
    mark: str = ""
    how: str = ""
    href: str = ""


@dataclass(frozen=True)
class Row:
    """An alloy and its cells."""

    alloy: Link
    cells: list[Cell]


@dataclass(frozen=True)
class Part:
    """A part of a comparison: what is drawn, and the same as a table. sign: a rule of cooling."""

    title: str
    anchor: str
    heads: list[str]
    rows: list[Row]
    plot: Plot | None = None
    key: list[str] = field(default_factory=list)
    sign: str = ""


NOTHING = Cell("—", "none found")


def figure(record: str, quantity: str, stated: Figure | None, handbook: Handbook) -> Cell:
    """A figure as a cell that leads to where its sources stand."""
    if stated is None:
        return NOTHING
    shown = formatting.shown(stated, quantity, handbook.library)
    place = address(record, quantity, stated.basis())
    return Cell(
        shown.text, shown.basis, shown.mark, shown.how, routes.figure(place, handbook.library)
    )


def link(alloy: Alloy) -> Link:
    """An alloy by its name, leading to its page."""
    return Link(alloy.name, routes.page("alloys", alloy.id))


def families(handbook: Handbook) -> list[tuple[str, str, list[Alloy]]]:
    """Each family's id, name and alloys, in the order of the vocabulary."""
    found: dict[str, list[Alloy]] = {}
    for alloy in handbook.library.alloys.values():
        found.setdefault(alloy.family, []).append(alloy)
    words = handbook.library.vocabulary
    return [(i, words.label("family", i), found[i]) for i in words.words["family"] if i in found]
