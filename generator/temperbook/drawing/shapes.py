"""The shapes that every picture is made of, in millimetres from its upper left corner.

Colours are roles of the palette (`ink`, `ash`, `hairline`, `paper`, `ember`, `verdigris`), which
each output turns into its own; a colour that starts with `#` is a heat colour and nothing else.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

Role = str
Anchor = Literal["start", "middle", "end"]
Point = tuple[float, float]

HAIRLINE, LINE, BOLD = 0.2, 0.4, 0.8


@dataclass(frozen=True)
class Line:
    """A straight line of `width` [mm]; `dash` makes it dashed."""

    x1: float
    y1: float
    x2: float
    y2: float
    role: Role = "ink"
    width: float = LINE
    dash: bool = False


@dataclass(frozen=True)
class Rect:
    """A rectangle; no fill where `fill` is empty, no outline where `stroke` is."""

    x: float
    y: float
    w: float
    h: float
    fill: Role = ""
    stroke: Role = ""
    width: float = LINE


@dataclass(frozen=True)
class Polygon:
    """A closed or open run of straight pieces."""

    points: tuple[Point, ...]
    fill: Role = ""
    stroke: Role = "ink"
    width: float = LINE
    closed: bool = True
    dash: bool = False


@dataclass(frozen=True)
class Circle:
    """A circle about its centre."""

    x: float
    y: float
    r: float
    fill: Role = ""
    stroke: Role = "ink"
    width: float = LINE


@dataclass(frozen=True)
class Glow:
    """A bar whose colour runs through heat colours from left to right: `stops` are (share,
    `#rrggbb`)."""

    x: float
    y: float
    w: float
    h: float
    stops: tuple[tuple[float, str], ...]
    stroke: Role = ""
    width: float = HAIRLINE


@dataclass(frozen=True)
class Text:
    """One line of text on a baseline; `cap` is the height of a capital letter [mm].

    `most` [mm] is the width that it must fit: an output that measures a wider text fails.
    """

    x: float
    y: float
    text: str
    cap: float
    weight: Literal[400, 700, 800] = 400
    anchor: Anchor = "start"
    role: Role = "ink"
    most: float = 0.0


Shape = Line | Rect | Polygon | Circle | Glow | Text


@dataclass(frozen=True)
class Picture:
    """A finished picture: its size [mm], its shapes from back to front, and what a sighted person
    learns."""

    width: float
    height: float
    shapes: tuple[Shape, ...]
    alt: str = ""


def moved(shape: Shape, dx: float, dy: float) -> Shape:
    """The same shape elsewhere."""
    if isinstance(shape, Line):
        return Line(
            shape.x1 + dx,
            shape.y1 + dy,
            shape.x2 + dx,
            shape.y2 + dy,
            shape.role,
            shape.width,
            shape.dash,
        )
    if isinstance(shape, Polygon):
        points = tuple((x + dx, y + dy) for x, y in shape.points)
        return Polygon(points, shape.fill, shape.stroke, shape.width, shape.closed, shape.dash)
    return type(shape)(**{**vars(shape), "x": shape.x + dx, "y": shape.y + dy})


def hatching(x: float, y: float, w: float, h: float, step: float = 2.0) -> list[Shape]:
    """Lines at 45 degrees that fill a rectangle: do not enter."""
    found: list[Shape] = []
    offset = step
    while offset < w + h:
        x1, y1 = (x + offset, y) if offset <= w else (x + w, y + offset - w)
        x2, y2 = (x, y + offset) if offset <= h else (x + offset - h, y + h)
        found.append(Line(x1, y1, x2, y2, "ink", HAIRLINE))
        offset += step
    return found
