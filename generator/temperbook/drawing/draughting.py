"""What a draughtsman adds to a picture: labels, arrows, sizes, arcs, in millimetres."""

from __future__ import annotations

import math
from collections.abc import Sequence

from temperbook.drawing.shapes import (
    HAIRLINE,
    LINE,
    Anchor,
    Circle,
    Line,
    Point,
    Polygon,
    Role,
    Shape,
    Text,
)

# Pictures are WIDE mm across. A capital of CAP is then 6.5 px high on a phone 360 px wide.
WIDE = 120.0
CAP = 2.4
LEADING = 4.4
HEAD = 2.0


def label(
    x: float,
    y: float,
    text: str,
    *,
    bold: bool = False,
    anchor: Anchor = "start",
    role: Role = "ink",
    cap: float = CAP,
    most: float = 0.0,
) -> Text:
    """A line of text on a baseline [mm]; `cap` and `most` [mm]."""
    return Text(x, y, text, cap, 700 if bold else 400, anchor, role, most)


def titled(x: float, y: float, title: str, *under: str, anchor: Anchor = "middle") -> list[Shape]:
    """A bold line on a baseline [mm] and quieter lines under it."""
    found: list[Shape] = [label(x, y, title, bold=True, anchor=anchor)]
    for n, text in enumerate(under, 1):
        found.append(label(x, y + n * LEADING, text, anchor=anchor, role="ash"))
    return found


def arrow(
    x1: float,
    y1: float,
    x2: float,
    y2: float,
    role: Role = "ink",
    width: float = LINE,
    *,
    both: bool = False,
) -> list[Shape]:
    """A line [mm] with a filled head at its second end, or at both."""
    length = math.hypot(x2 - x1, y2 - y1)
    dx, dy = (x2 - x1) / length, (y2 - y1) / length
    back = HEAD * 0.8
    start = back if both else 0.0
    found: list[Shape] = [
        Line(x1 + dx * start, y1 + dy * start, x2 - dx * back, y2 - dy * back, role, width),
        _head(x2, y2, dx, dy, role),
    ]
    return [*found, _head(x1, y1, -dx, -dy, role)] if both else found


def _head(x: float, y: float, dx: float, dy: float, role: Role) -> Polygon:
    back_x, back_y, half = x - dx * HEAD, y - dy * HEAD, HEAD * 0.35
    left = (back_x - dy * half, back_y + dx * half)
    right = (back_x + dy * half, back_y - dx * half)
    return Polygon(((x, y), left, right), role, "", HAIRLINE)


def curved_arrow(
    x: float, y: float, r: float, start: float, end: float, role: Role = "ink", width: float = LINE
) -> list[Shape]:
    """An arrow on an arc about (x, y) [mm], between angles [degrees, clockwise from the right]."""
    way = 1.0 if end > start else -1.0
    points = arc(x, y, r, start, end - way * math.degrees(HEAD * 0.8 / r))
    tip_x, tip_y = arc(x, y, r, end, end, 1)[0]
    turn = math.radians(end - way * math.degrees(HEAD * 0.5 / r))
    return [
        Polygon(points, "", role, width, closed=False),
        _head(tip_x, tip_y, -way * math.sin(turn), way * math.cos(turn), role),
    ]


def arc(
    x: float, y: float, r: float, start: float, end: float, steps: int = 24
) -> tuple[Point, ...]:
    """Points [mm] on a circle about (x, y), between angles [degrees, clockwise from the right]."""
    angles = (math.radians(start + (end - start) * n / steps) for n in range(steps + 1))
    return tuple((x + r * math.cos(a), y + r * math.sin(a)) for a in angles)


def ring(x: float, y: float, r: float) -> Polygon:
    """A dashed circle [mm]: what was there before."""
    return Polygon(arc(x, y, r, 0, 360, 60)[:-1], "", "ash", LINE, dash=True)


def size_across(x1: float, x2: float, y: float, text: str, *, above: bool = True) -> list[Shape]:
    """A horizontal size line [mm] with its ends marked, its text above or under it."""
    return [
        *arrow(x1, y, x2, y, "ash", HAIRLINE, both=True),
        label((x1 + x2) / 2, y - 1.6 if above else y + 1.6 + CAP, text, anchor="middle"),
    ]


def leader(points: Sequence[Point], text: str, *, anchor: Anchor = "start") -> list[Shape]:
    """A thin line along points [mm] from a dot on a spot to a text beside its last point."""
    x, y = points[-1]
    gap = {"start": 1.2, "middle": 0.0, "end": -1.2}[anchor]
    return [*pointer(points), label(x + gap, y + CAP / 2, text, anchor=anchor)]


def pointer(points: Sequence[Point]) -> list[Shape]:
    """A thin line along points [mm], with a dot at the first."""
    x, y = points[0]
    return [
        Polygon(tuple(points), "", "ink", HAIRLINE, closed=False),
        Circle(x, y, 0.6, "ink", ""),
    ]
