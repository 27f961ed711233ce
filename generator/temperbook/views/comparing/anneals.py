"""Anneal windows of each family on one scale of heat, with where melting begins."""

from __future__ import annotations

import math

from temperbook.derive import limits
from temperbook.derive.handbook import Handbook
from temperbook.records.models import Alloy
from temperbook.views import formatting
from temperbook.views.comparing import tables
from temperbook.views.comparing.plots import Bar, Ladder
from temperbook.views.comparing.tables import Cell, Part, Row
from temperbook.views.formatting import MARKS

STEP = 100.0
HEADS = ["Alloy", "Anneal", "Hold", "Starts to melt"]
KEY = [
    "Bar: the anneal, in the colour that a dim shop shows.",
    "Hatched: do not enter by eye; two eyes differ by as much as the hatching reaches below the "
    "line, where the first metal melts.",
]


def parts(handbook: Handbook) -> list[Part]:
    """A part for each family, its alloys from the coolest anneal to the hottest."""
    return [
        Part(
            name,
            family,
            HEADS,
            [_row(alloy, handbook) for alloy in _ranked(alloys)],
            _ladder(name, _ranked(alloys), handbook),
            KEY,
        )
        for family, name, alloys in tables.families(handbook)
    ]


def _ranked(alloys: list[Alloy]) -> list[Alloy]:
    return sorted(alloys, key=_heat)


def _heat(alloy: Alloy) -> tuple[float, float]:
    figure = limits.anneal(alloy)
    return (limits.lowest(figure), limits.highest(figure)) if figure else (math.inf, math.inf)


def _ladder(name: str, alloys: list[Alloy], handbook: Handbook) -> Ladder | None:
    bars = tuple(_bar(alloy, handbook) for alloy in alloys)
    ends = [e for b in bars for e in (b.low, b.high, b.melts) if e is not None]
    low = math.floor((min(ends, default=STEP) - STEP / 2) / STEP) * STEP
    high = math.ceil((max(ends, default=STEP) + STEP / 4) / STEP) * STEP
    known = [b for b in bars if b.low is not None]
    if not known:
        return None
    alt = f"Anneals of {name.lower()} on one scale of heat: " + "; ".join(
        f"{b.label} {b.text}" for b in known
    )
    step = STEP if high - low <= 8 * STEP else 2 * STEP
    return Ladder(max(0.0, low), high, step, "°C", bars, f"{alt}.", glow=True)


def _bar(alloy: Alloy, handbook: Handbook) -> Bar:
    figure, found = limits.anneal(alloy), limits.stop(alloy)
    quantity = handbook.library.vocabulary.quantities["anneal"]
    return Bar(
        label=alloy.name,
        low=limits.lowest(figure) if figure else None,
        high=limits.highest(figure) if figure else None,
        text=formatting.value(figure, quantity) if figure else "no published anneal",
        mark=MARKS[figure.how] if figure else "",
        stop=limits.hard_stop(alloy, handbook),
        melts=limits.lowest(found[1]) if found else None,
    )


def _row(alloy: Alloy, handbook: Handbook) -> Row:
    figure, found = limits.anneal(alloy), limits.stop(alloy)
    hold = limits.hold(alloy, figure.heat or "any") if figure else None
    return Row(
        tables.link(alloy),
        [
            tables.figure(alloy.id, "anneal", figure, handbook),
            tables.figure(alloy.id, "anneal-time", hold, handbook)
            if hold
            else Cell("—", "none published"),
            tables.figure(alloy.id, *found, handbook) if found else tables.NOTHING,
        ],
    )
