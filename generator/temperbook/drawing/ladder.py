"""Rows on one scale: a bar each, with its name above it, so that it reads on a phone."""

from __future__ import annotations

import math
from collections.abc import Callable

from temperbook.drawing import lettering, marks
from temperbook.drawing.draughting import CAP, WIDE, label
from temperbook.drawing.shapes import (
    HAIRLINE,
    LINE,
    Circle,
    Glow,
    Line,
    Picture,
    Polygon,
    Rect,
    Shape,
    hatching,
)
from temperbook.views.comparing.plots import Bar, Ladder, Tick

PITCH, BAR, HEAD = 9.6, 3.2, 6.0
GAP = 1.2  # between a name and its bar [mm]
SIDE = 4.8  # left free at both ends of the scale, where a number of the scale needs room [mm]
STOPS = 8
LEAST = 0.9  # narrowest bar that is still seen [mm]
Colour = Callable[[float], str]


def draw(ladder: Ladder, colour: Colour) -> Picture:
    """The rows as a picture WIDE mm across."""
    height = HEAD + PITCH * len(ladder.bars) + HEAD

    def x(value: float) -> float:
        inside = min(ladder.high, max(ladder.low, value))
        return SIDE + (WIDE - 2 * SIDE) * (inside - ladder.low) / (ladder.high - ladder.low)

    shapes: list[Shape] = [*_scale(ladder, x, height)]
    for n, bar in enumerate(ladder.bars):
        shapes += _row(bar, HEAD + PITCH * n, x, colour if ladder.glow else None)
    return Picture(WIDE, height, tuple(shapes), ladder.alt)


def _scale(ladder: Ladder, x: Callable[[float], float], height: float) -> list[Shape]:
    found: list[Shape] = []
    count = math.floor((ladder.high - ladder.low) / ladder.step + 1e-9)
    for n in range(count + 1):
        value = ladder.low + n * ladder.step
        at = x(value)
        found.append(Line(at, HEAD - 1.6, at, height - HEAD + 1.2, "hairline", HAIRLINE))
        for y in (CAP + 0.6, height - 1.0):
            if n:
                found.append(label(at, y, f"{value:g}", anchor="middle", role="ash"))
            else:
                found.append(label(0, y, f"{value:g} {ladder.unit}", role="ash"))
    return found


def _row(bar: Bar, top: float, x: Callable[[float], float], colour: Colour | None) -> list[Shape]:
    said = top + GAP + CAP
    upper = said + GAP
    found: list[Shape] = [label(SIDE, said, bar.label, bold=True), *_said(bar, said)]
    if bar.stop is not None and x(bar.stop) < WIDE - SIDE:
        left = x(bar.stop)
        found += hatching(left, upper, WIDE - SIDE - left, BAR, 1.6)
    if bar.melts is not None:
        at = x(bar.melts)
        found.append(Line(at, upper - 0.6, at, upper + BAR + 0.6, "ink", LINE * 2))
    if bar.low is not None and bar.high is not None:
        left = x(bar.low)
        width = max(LEAST, x(bar.high) - left)
        found.append(_bar(bar, left, upper, width, colour))
    return [*found, *(s for tick in bar.ticks for s in _tick(tick, x(tick.at), upper))]


def _bar(bar: Bar, left: float, upper: float, width: float, colour: Colour | None) -> Shape:
    assert bar.low is not None
    assert bar.high is not None
    if colour:
        span = bar.high - bar.low
        stops = tuple((n / STOPS, colour(bar.low + span * n / STOPS)) for n in range(STOPS + 1))
        return Glow(left, upper, width, BAR, stops, "ash", LINE)
    if bar.hollow:
        return Rect(left, upper, width, BAR, "paper", "ink", LINE)
    return Rect(left, upper, width, BAR, "ink", "ink", LINE)


def _said(bar: Bar, base: float) -> list[Shape]:
    """The number at the right end of the name's line, and the mark of how it is known."""
    right = WIDE - SIDE
    if not bar.mark:
        return [label(right, base, bar.text, anchor="end", role="ash")]
    wide = lettering.width(bar.text, CAP, 700)
    mark = marks.provenance(bar.mark, right - wide - CAP, base - CAP / 2, CAP)
    return [*mark, label(right, base, bar.text, bold=True, anchor="end")]


def _tick(tick: Tick, at: float, upper: float) -> list[Shape]:
    lower = upper + BAR
    if tick.kind == "floor":
        points = ((at, lower - 0.8), (at - 1.3, lower + 1.4), (at + 1.3, lower + 1.4))
        return [Polygon(points, "ink", "paper", LINE)]
    if tick.kind == "first":
        return [
            Line(at, upper - 0.9, at, lower + 0.9, "paper", LINE * 4),
            Line(at, upper - 0.9, at, lower + 0.9, "ember", LINE * 2),
        ]
    r = BAR / 2 - 0.2
    middle = upper + BAR / 2
    return [Circle(at, middle, r, "ink" if tick.kind == "disc" else "", "ink", LINE)]
