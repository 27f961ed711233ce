"""The frames of the signs: their shape tells the kind, so that no colour is needed.

Drawn after the shapes that laws and agencies name for the kinds. No claim of conformity: no
standard colours and no standard proportions.
"""

from __future__ import annotations

from collections.abc import Sequence

from temperbook.drawing.pen import disc, filled
from temperbook.drawing.shapes import HAIRLINE, Circle, Line, Picture, Polygon, Rect, Shape

SIDE = 40.0  # of a sign [mm]
RING = 3.2  # width of the prohibition's ring and bar [mm]


def warning(symbol: Sequence[Shape], alt: str) -> Picture:
    """A triangle, point up, with a broad edge."""
    outer = (
        "M 22.4 3.6 L 38.6 32.2 Q 40.4 36.4 36.2 36.8 L 3.8 36.8 Q -0.4 36.4 1.4 32.2 "
        "L 17.6 3.6 Q 20 -0.2 22.4 3.6"
    )
    inner = (
        "M 20.8 6.6 L 35.4 32.4 Q 36 33.9 34.6 34 L 5.4 34 Q 4 33.9 4.6 32.4 "
        "L 19.2 6.6 Q 20 5.4 20.8 6.6"
    )
    return Picture(
        SIDE,
        SIDE,
        (filled(outer), filled(inner, "paper"), *symbol),
        f"{alt} In a triangle: a warning.",
    )


def must(symbol: Sequence[Shape], alt: str) -> Picture:
    """A filled disc; the symbol on it is of the paper's colour."""
    shapes = (disc(20, 20, 19.2), *symbol)
    return Picture(SIDE, SIDE, shapes, f"{alt} On a filled disc: you must.")


def must_not(symbol: Sequence[Shape], alt: str) -> Picture:
    """A ring with a bar from the upper left to the lower right, over the symbol."""
    at, low = 7.4, 32.6
    shapes: tuple[Shape, ...] = (
        disc(20, 20, 17, "paper"),
        *symbol,
        Line(at, at, low, low, "paper", RING + 2.0),
        Circle(20, 20, 17.6, "", "ink", RING),
        Line(at, at, low, low, "ink", RING),
    )
    return Picture(SIDE, SIDE, shapes, f"{alt} In a ring with a bar across it: you must not.")


def first_aid(symbol: Sequence[Shape], alt: str) -> Picture:
    """A filled square; the symbol on it is of the paper's colour."""
    shapes = (Rect(1.5, 1.5, 37, 37, "ink"), *symbol)
    return Picture(SIDE, SIDE, shapes, f"{alt} On a filled square: help.")


def diamond(symbol: Sequence[Shape], alt: str) -> Picture:
    """A square on its point with a narrow edge."""
    outer = Polygon(((20, 0.4), (39.6, 20), (20, 39.6), (0.4, 20)), "ink", "", HAIRLINE)
    inner = Polygon(((20, 3.4), (36.6, 20), (20, 36.6), (3.4, 20)), "paper", "", HAIRLINE)
    return Picture(
        SIDE,
        SIDE,
        (outer, inner, *symbol),
        f"{alt} In a square on its point: a hazard of a substance, as on labels.",
    )
