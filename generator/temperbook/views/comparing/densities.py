"""Density as published and as computed by mixing, side by side."""

from __future__ import annotations

import math

from temperbook.derive import comparing
from temperbook.derive.handbook import Handbook
from temperbook.derive.limits import highest, lowest, middle
from temperbook.records.figures import Figure
from temperbook.records.models import Alloy
from temperbook.views import formatting
from temperbook.views.comparing import tables
from temperbook.views.comparing.plots import Bar, Ladder, Tick
from temperbook.views.comparing.tables import Cell, Part, Row
from temperbook.views.formatting import MARKS

STEPS = (0.2, 0.5, 1.0, 2.0)
MOST_LINES = 8
HEADS = ["Alloy", "Published", "By mixing", "Published lies off by"]
KEY = ["Disc: published. Ring: computed by mixing. The bar between them is what mixing misses."]


def parts(handbook: Handbook) -> list[Part]:
    """A part for each family, its alloys from the lightest."""
    found = []
    for family, name, alloys in tables.families(handbook):
        ranked = sorted((a for a in alloys if _known(a)), key=_middle)
        rows = [_row(alloy, handbook) for alloy in ranked]
        if rows:
            plot = _ladder(name, ranked, handbook)
            found.append(Part(name, family, HEADS, rows, plot, [*KEY, _spread(ranked)]))
    return found


def _spread(alloys: list[Alloy]) -> str:
    """How far mixing misses what is published for some alloys, lowest to highest."""
    offs = [o for alloy in alloys if (o := comparing.densities(alloy).off) is not None]
    if not offs:
        return "No published density was found."
    low, high = (f"{end:+.1f}".replace("-", "−") for end in (min(offs), max(offs)))
    count = "one alloy" if len(offs) == 1 else f"{len(offs)} alloys"
    return f"Published over mixed: {low} to {high}{formatting.SPACE}%, {count}."


def _known(alloy: Alloy) -> list[Figure]:
    pair = comparing.densities(alloy)
    return [figure for figure in (pair.adopted, pair.mixed) if figure]


def _middle(alloy: Alloy) -> float:
    return middle(_known(alloy)[0])


def _ladder(name: str, alloys: list[Alloy], handbook: Handbook) -> Ladder:
    bars = tuple(_bar(alloy, handbook) for alloy in alloys)
    ends = [e for b in bars for e in (b.low, b.high) if e is not None]
    step = next((s for s in STEPS if (max(ends) - min(ends)) / s <= MOST_LINES - 2), STEPS[-1])
    low = math.floor(min(ends) / step) * step
    high = math.ceil(max(ends) / step + 1e-9) * step
    if high - low < 2 * step:
        low, high = low - step, high + step
    alt = f"Densities of {name.lower()}: " + "; ".join(f"{b.label} {b.text}" for b in bars)
    return Ladder(round(low, 3), round(high, 3), step, "g/cm³", bars, f"{alt}.")


def _bar(alloy: Alloy, handbook: Handbook) -> Bar:
    pair = comparing.densities(alloy)
    first = pair.adopted or pair.mixed
    assert first is not None
    ends = [end for f in _known(alloy) for end in (lowest(f), highest(f))]
    ticks = []
    if pair.mixed:
        ticks.append(Tick(lowest(pair.mixed), "ring"))
    if pair.adopted:
        ticks.append(Tick(_middle(alloy), "disc"))
    text = formatting.value(first, handbook.library.vocabulary.quantities["density"])
    return Bar(
        alloy.name, min(ends), max(ends), text, MARKS[first.how], hollow=True, ticks=(*ticks,)
    )


def _row(alloy: Alloy, handbook: Handbook) -> Row:
    pair = comparing.densities(alloy)
    off = Cell("—")
    if pair.off is not None:
        off = Cell(formatting.with_unit(f"{pair.off:+.1f}".replace("-", "−"), "percent"))
    cells = [
        tables.figure(alloy.id, "density", pair.adopted, handbook),
        tables.figure(alloy.id, "density", pair.mixed, handbook)
        if pair.mixed
        else Cell("—", "an element has no density here"),
        off,
    ]
    return Row(tables.link(alloy), cells)
