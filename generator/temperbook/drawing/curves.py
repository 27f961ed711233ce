"""Curves over percent of the area: a band each, its points marked, its name at its end."""

from __future__ import annotations

from collections.abc import Callable

from temperbook.drawing.draughting import CAP, LEADING, WIDE, label
from temperbook.drawing.shapes import (
    HAIRLINE,
    LINE,
    Circle,
    Line,
    Picture,
    Polygon,
    Rect,
    Shape,
)
from temperbook.views.comparing import plots

LEFT, RIGHT = 9.0, 76.0  # of the plot [mm]; names stand beyond it
TOP, LEAST_HIGH, FOOT = 7.0, 60.0, 9.0
R = 1.1
NAMES = 80.0
SIGNS = 6
MOST_BANDS = 4  # with more curves their bands cover each other


def draw(curves: plots.Curves) -> Picture:
    """The curves as a picture WIDE mm across, high enough for the names of all of them."""
    high = max(LEAST_HIGH, LEADING * len(curves.lines))
    bottom = TOP + high

    def x(value: float) -> float:
        return LEFT + (RIGHT - LEFT) * value / curves.right

    def y(value: float) -> float:
        return bottom - high * (value - curves.low) / (curves.high - curves.low)

    shapes: list[Shape] = [*_axes(curves, x, y, bottom)]
    for n, line in enumerate(curves.lines):
        shapes += _line(line, n, x, y, banded=len(curves.lines) <= MOST_BANDS)
    shapes += _names(curves.lines, x, y, bottom)
    return Picture(WIDE, bottom + FOOT, tuple(shapes), curves.alt)


def _axes(
    curves: plots.Curves,
    x: Callable[[float], float],
    y: Callable[[float], float],
    bottom: float,
) -> list[Shape]:
    across, up = curves.steps
    found: list[Shape] = [label(0, CAP, curves.unit, role="ash")]
    value = curves.low
    while value <= curves.high + 1e-9:
        found.append(Line(LEFT, y(value), RIGHT, y(value), "hairline", HAIRLINE))
        found.append(label(LEFT - 1.2, y(value) + CAP / 2, f"{value:g}", anchor="end", role="ash"))
        value += up
    value = 0.0
    while value <= curves.right + 1e-9:
        found.append(Line(x(value), bottom, x(value), bottom + 1.2, "ash", HAIRLINE))
        found.append(label(x(value), bottom + 4.4, f"{value:g}", anchor="middle", role="ash"))
        value += across
    found.append(label(RIGHT + 5.0, bottom + 4.4, "% of the area gone", role="ash"))
    return [*found, Line(LEFT, bottom, RIGHT, bottom, "ink", LINE)]


def _line(
    line: plots.Line,
    n: int,
    x: Callable[[float], float],
    y: Callable[[float], float],
    *,
    banded: bool,
) -> list[Shape]:
    lows = tuple((x(at), y(low)) for at, low, _ in line.points)
    highs = tuple((x(at), y(high)) for at, _, high in line.points)
    found: list[Shape] = []
    if banded and lows != highs:
        found.append(Polygon((*highs, *reversed(lows)), "", "ash", HAIRLINE))
    middles = tuple((a[0], (a[1] + b[1]) / 2) for a, b in zip(lows, highs, strict=True))
    found.append(Polygon(middles, "", "ink", LINE, closed=False, dash=line.thin))
    return [*found, *(s for at, up in middles for s in sign(n, at, up))]


def sign(n: int, x: float, y: float) -> list[Shape]:
    """The sign of the n-th curve about a point [mm]: its shape tells, in grey too."""
    kind = n % SIGNS
    if kind == 0:
        return [Circle(x, y, R, "ink", "ink", LINE)]
    if kind == 1:
        return [Circle(x, y, R, "paper", "ink", LINE)]
    if kind == 2:
        return [Rect(x - R, y - R, 2 * R, 2 * R, "ink", "ink", LINE)]
    if kind == 3:
        return [Rect(x - R, y - R, 2 * R, 2 * R, "paper", "ink", LINE)]
    points = ((x, y - 1.3 * R), (x + 1.2 * R, y + R), (x - 1.2 * R, y + R))
    return [Polygon(points, "ink" if kind == 4 else "paper", "ink", LINE)]


def _names(
    lines: tuple[plots.Line, ...],
    x: Callable[[float], float],
    y: Callable[[float], float],
    bottom: float,
) -> list[Shape]:
    """The names beside the plot, in the order of the curves' ends, none upon another."""
    ends = []
    for n, line in enumerate(lines):
        at, low, high = line.points[-1]
        ends.append(((y(low) + y(high)) / 2, x(at), n, line.label))
    ends.sort()
    places = _spread([end[0] for end in ends], bottom)
    found: list[Shape] = []
    for (from_y, from_x, n, text), to_y in zip(ends, places, strict=True):
        points = ((from_x + R, from_y), (RIGHT + 1.0, to_y), (NAMES - 1.6, to_y))
        found.append(Polygon(points, "", "ash", HAIRLINE, closed=False))
        found += sign(n, NAMES, to_y)
        most = WIDE - NAMES - 2.4
        found.append(label(NAMES + 2.4, to_y + CAP / 2, text, most=most))
    return found


def _spread(wanted: list[float], bottom: float) -> list[float]:
    """Places as near to those wanted as a line's height lets, from the top and down to the foot."""
    found: list[float] = []
    for place in wanted:
        found.append(max(place, found[-1] + LEADING) if found else max(place, TOP))
    over = found[-1] - bottom if found else 0.0
    if over > 0:
        limit = bottom
        for n in range(len(found) - 1, -1, -1):
            found[n] = min(found[n], limit)
            limit = found[n] - LEADING
    return found
