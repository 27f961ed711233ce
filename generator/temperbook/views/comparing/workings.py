"""How far each alloy goes between anneals, on one basis, with the basis that its source states."""

from __future__ import annotations

from temperbook.derive import comparing, limits
from temperbook.derive.handbook import Handbook
from temperbook.records.figures import Figure
from temperbook.records.models import Alloy
from temperbook.views import formatting
from temperbook.views.comparing import tables
from temperbook.views.comparing.plots import Bar, Ladder, Tick
from temperbook.views.comparing.tables import Part, Row
from temperbook.views.formatting import MARKS

STEP = 10.0
HEADS = ["Alloy", "Between anneals, at most", "First run from the ingot", "Least before an anneal"]
KEY = [
    "Bar: at most so much between two anneals. Filled where the source states the basis; an "
    "outline where none is stated: then the percentage is read as the area's.",
    "Upright line: at most so much in the first run from the ingot.",
    "Triangle: at least so much before an anneal.",
]


def parts(handbook: Handbook) -> list[Part]:
    """A part for each family, its alloys from the one that goes farthest."""
    return [
        Part(
            name,
            family,
            HEADS,
            [_row(alloy, handbook) for alloy in _ranked(alloys)],
            _ladder(name, [a for a in _ranked(alloys) if _drawn(a)], handbook),
            KEY,
        )
        for family, name, alloys in tables.families(handbook)
    ]


def _ranked(alloys: list[Alloy]) -> list[Alloy]:
    return sorted(alloys, key=lambda alloy: -_area(limits.ceiling(alloy)))


def _area(figure: Figure | None) -> float:
    return comparing.of_area(figure) if figure else 0.0


def _drawn(alloy: Alloy) -> bool:
    return bool(limits.ceiling(alloy) or _first(alloy) or _floor(alloy))


def _first(alloy: Alloy) -> Figure | None:
    figure = limits.first(alloy, "reduction-ceiling", stage="cast")
    return figure if figure and figure.stage == "cast" else None


def _floor(alloy: Alloy) -> Figure | None:
    return limits.first(alloy, "reduction-floor")


def _ladder(name: str, alloys: list[Alloy], handbook: Handbook) -> Ladder | None:
    if not alloys:
        return None
    bars = tuple(_bar(alloy, handbook) for alloy in alloys)
    alt = f"How far {name.lower()} goes between anneals, percent of the area: " + "; ".join(
        f"{b.label} {b.text}" for b in bars
    )
    return Ladder(0.0, 100.0, 2 * STEP, "%", bars, f"{alt}.")


def _bar(alloy: Alloy, handbook: Handbook) -> Bar:
    ceiling, first, floor = limits.ceiling(alloy), _first(alloy), _floor(alloy)
    words = handbook.library.vocabulary
    ticks = []
    if first:
        ticks.append(Tick(comparing.of_area(first), "first"))
    if floor:
        ticks.append(Tick(comparing.of_area(floor), "floor"))
    if ceiling is None:
        return Bar(alloy.name, None, None, "no published ceiling", ticks=tuple(ticks))
    text = formatting.value(ceiling, words.quantities["reduction-ceiling"])
    return Bar(
        alloy.name,
        0.0,
        comparing.of_area(ceiling),
        f"{text} {words.label('of', ceiling.of or 'not-stated')}",
        MARKS[ceiling.how],
        hollow=ceiling.of == "not-stated",
        ticks=tuple(ticks),
    )


def _row(alloy: Alloy, handbook: Handbook) -> Row:
    found = (
        ("reduction-ceiling", limits.ceiling(alloy)),
        ("reduction-ceiling", _first(alloy)),
        ("reduction-floor", _floor(alloy)),
    )
    cells = [tables.figure(alloy.id, q, figure, handbook) for q, figure in found]
    return Row(tables.link(alloy), cells)
