"""Outlines written as strokes of a pen, and shapes moved and scaled as a whole, in millimetres."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise

from temperbook.drawing.shapes import (
    HAIRLINE,
    Circle,
    Line,
    Point,
    Polygon,
    Rect,
    Role,
    Shape,
)

STEPS = 10  # straight pieces of one curve
_TAKES = {"M": 1, "L": 1, "Q": 2, "C": 3}  # points that follow a letter


def outline(written: str) -> tuple[Point, ...]:
    """The points [mm] of one outline written as `M x y`, then `L x y`, `Q x y x y` or
    `C x y x y x y`, as in SVG: straight to, or along a curve with one or two handles.

    Errors: ValueError for another letter or a number too few. Example: outline("M 0 0 L 1 2").
    """
    words = written.split()
    found: list[Point] = []
    while words:
        letter = words.pop(0)
        if letter not in _TAKES or len(words) < 2 * _TAKES[letter]:
            raise ValueError(f"no stroke of the pen: {letter} {' '.join(words)}")
        taken = [float(words.pop(0)) for _ in range(2 * _TAKES[letter])]
        points = list(zip(taken[::2], taken[1::2], strict=True))
        if len(points) == 1:
            found += points
        else:
            handles = [found[-1], *points]
            found += [_on_curve(handles, n / STEPS) for n in range(1, STEPS + 1)]
    return tuple(found)


def _on_curve(handles: Sequence[Point], share: float) -> Point:
    """A point of a Bezier curve at a share [1] of its way (de Casteljau)."""
    points = list(handles)
    while len(points) > 1:
        points = [
            (x1 + (x2 - x1) * share, y1 + (y2 - y1) * share)
            for (x1, y1), (x2, y2) in pairwise(points)
        ]
    return points[0]


def filled(written: str, role: Role = "ink") -> Polygon:
    """A filled outline without a line."""
    return Polygon(outline(written), role, "", HAIRLINE)


def drawn(
    written: str, width: float, role: Role = "ink", *, dash: bool = False, fill: Role = ""
) -> Polygon:
    """An open stroke of `width` [mm]; with `fill` closed and filled."""
    return Polygon(outline(written), fill, role, width, closed=bool(fill), dash=dash)


def disc(x: float, y: float, r: float, role: Role = "ink") -> Circle:
    """A filled circle [mm] without a line."""
    return Circle(x, y, r, role, "")


def capsule(x1: float, y1: float, x2: float, y2: float, r: float, role: Role = "ink") -> Polygon:
    """A filled bar [mm] with round ends about two points."""
    turn = math.atan2(y2 - y1, x2 - x1)
    half = [turn + math.pi / 2 + math.pi * n / 8 for n in range(9)]
    ends = [(x1 + r * math.cos(a), y1 + r * math.sin(a)) for a in half]
    ends += [(x2 - r * math.cos(a), y2 - r * math.sin(a)) for a in half]
    return Polygon(tuple(ends), role, "", HAIRLINE)


def placed(
    shapes: Sequence[Shape],
    x: float,
    y: float,
    scale: float = 1.0,
    *,
    mirror: bool = False,
    turn: float = 0.0,
) -> list[Shape]:
    """Shapes about (0, 0), scaled, turned [degrees, clockwise] and moved to (x, y) [mm]."""
    across = -scale if mirror else scale
    cos, sin = math.cos(math.radians(turn)), math.sin(math.radians(turn))

    def to(px: float, py: float) -> Point:
        px, py = px * across, py * scale
        return x + px * cos - py * sin, y + px * sin + py * cos

    found: list[Shape] = []
    for shape in shapes:
        if isinstance(shape, Polygon):
            points = tuple(to(*point) for point in shape.points)
            width = shape.width * scale if shape.stroke else shape.width
            found.append(replace(shape, points=points, width=width))
        elif isinstance(shape, Circle):
            cx, cy = to(shape.x, shape.y)
            found.append(replace(shape, x=cx, y=cy, r=shape.r * scale, width=shape.width * scale))
        elif isinstance(shape, Line):
            (ax, ay), (bx, by) = to(shape.x1, shape.y1), to(shape.x2, shape.y2)
            found.append(replace(shape, x1=ax, y1=ay, x2=bx, y2=by, width=shape.width * scale))
        elif isinstance(shape, Rect):
            corners = (
                to(shape.x, shape.y),
                to(shape.x + shape.w, shape.y),
                to(shape.x + shape.w, shape.y + shape.h),
                to(shape.x, shape.y + shape.h),
            )
            found.append(Polygon(corners, shape.fill, shape.stroke, shape.width * scale))
        else:
            raise ValueError(f"cannot be turned: {shape}")
    return found
