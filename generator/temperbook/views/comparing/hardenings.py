"""How each alloy hardens with work: hardness and strength over percent of the area gone."""

from __future__ import annotations

import math
from collections.abc import Iterator

from temperbook.derive import comparing
from temperbook.derive.handbook import Handbook
from temperbook.metal.hardening import Curve
from temperbook.records.models import Alloy
from temperbook.views import formatting, routes
from temperbook.views.comparing import tables
from temperbook.views.comparing.plots import Curves, Line
from temperbook.views.comparing.tables import Cell, Part, Row
from temperbook.views.formatting import MARKS

SCALES = ("hardness", "hardness-brinell", "tensile")
STOCKS = {"flat": "sheet and strip", "wire": "wire"}
HEADS = ["Alloy", "Annealed", "Worked: share of the area gone, and what it is then"]
KEY = [
    "Lines join the middles of ranges, a thin outline their ends where it can be told apart; a "
    "broken line has two points alone.",
    "Where a table names tempers instead of reductions, the temper's own reduction is used.",
]
# More curves than this are no longer told apart.
MOST_LINES = 9
ROUND = {"HV": 50.0, "HB": 50.0, "MPa": 100.0}


def parts(handbook: Handbook) -> list[Part]:
    """A part for each family, scale and form that a table was found for."""
    found = []
    for family, name, alloys in tables.families(handbook):
        for scale in SCALES:
            for stock, form in STOCKS.items():
                known = list(_known(alloys, scale, stock, handbook))
                label = handbook.library.vocabulary.quantities[scale].label
                for group, some in _divided(known, handbook).items():
                    of = f"{name} ({group})" if group else name
                    title = f"{of}, {form}: {label[0].lower()}{label[1:]}"
                    anchor = routes.slug(f"{family}-{group}-{scale}-{stock}")
                    found.append(_part(title, anchor, scale, some, handbook))
    return found


def _divided(
    known: list[tuple[Alloy, Curve]], handbook: Handbook
) -> dict[str, list[tuple[Alloy, Curve]]]:
    """The curves in groups that an eye can tell apart: all, or by what is added most."""
    if len(known) <= MOST_LINES:
        return {"": known} if known else {}
    found: dict[str, list[tuple[Alloy, Curve]]] = {}
    for alloy, curve in known:
        shares = sorted(alloy.composition, key=lambda symbol: -alloy.composition[symbol])
        added = handbook.library.elements[shares[1]].name.lower() if len(shares) > 1 else ""
        found.setdefault(f"with {added}" if added else "unalloyed", []).append((alloy, curve))
    return found


def _known(
    alloys: list[Alloy], scale: str, stock: str, handbook: Handbook
) -> Iterator[tuple[Alloy, Curve]]:
    for alloy in alloys:
        curve = comparing.curve(alloy, scale, stock, handbook)
        if curve:
            yield alloy, curve


def _part(
    title: str, anchor: str, scale: str, known: list[tuple[Alloy, Curve]], handbook: Handbook
) -> Part:
    rows = [_row(alloy, curve, scale, handbook) for alloy, curve in known]
    if len(known) < 2:
        return Part(title, anchor, HEADS, rows)
    return Part(title, anchor, HEADS, rows, _plot(title, known), KEY)


def _plot(title: str, known: list[tuple[Alloy, Curve]]) -> Curves:
    lines = tuple(_line(alloy, curve) for alloy, curve in known)
    unit = known[0][1].unit
    step = ROUND[unit]
    ends = [end for line in lines for _, *pair in line.points for end in pair]
    low = math.floor(min(ends) / step) * step
    high = math.ceil(max(ends) / step) * step
    said = "; ".join(
        f"{line.label} from {formatting.ends(line.points[0][1:], 0)} to "
        f"{formatting.ends(line.points[-1][1:], 0)} at {line.points[-1][0]:.0f} %"
        for line in lines
    )
    return Curves(100.0, low, high, (20.0, step), unit, lines, f"{title} [{unit}]: {said}.")


def _line(alloy: Alloy, curve: Curve) -> Line:
    points = comparing.area_points(curve)
    return Line(alloy.short, points, thin=len(points) == 2)


def _row(alloy: Alloy, curve: Curve, scale: str, handbook: Handbook) -> Row:
    decimals = handbook.library.vocabulary.quantities[scale].decimals
    points = comparing.area_points(curve)
    worked = ", ".join(
        f"{at:.0f} %: {formatting.ends((low, high), decimals)}" for at, low, high in points[1:]
    )
    mark = MARKS[curve.points[-1].known.how]
    soft = formatting.with_unit(formatting.ends(points[0][1:], decimals), curve.unit)
    href = tables.link(alloy).href
    return Row(
        tables.link(alloy),
        [
            Cell(soft, mark=MARKS[curve.points[0].known.how], href=href),
            Cell(worked, "", mark, "", href),
        ],
    )
