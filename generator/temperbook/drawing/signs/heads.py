"""Heads and gloves of the mandatory and prohibition signs, about (0, 0), in millimetres."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from temperbook.drawing.pen import capsule, disc, drawn, filled, placed
from temperbook.drawing.shapes import Line, Polygon, Role, Shape
from temperbook.drawing.signs.symbols import palm


def face(role: Role = "paper", ground: Role = "ink", *, eyes: bool = True) -> list[Shape]:
    """A head from the front, 26 mm high, with ears and a mouth."""
    seen: list[Shape] = [disc(x, -1.6, 1.2, ground) for x in (-4.2, 4.2)] if eyes else []
    return [
        disc(-10.0, 0, 2.2, role),
        disc(10.0, 0, 2.2, role),
        filled(
            "M 0 -13 C 7 -13 10 -7.6 10 -1.6 C 10 6 6.6 13 0 13 C -6.6 13 -10 6 -10 -1.6 "
            "C -10 -7.6 -7 -13 0 -13",
            role,
        ),
        *seen,
        drawn("M -3.4 7.4 Q 0 8.8 3.4 7.4", 0.9, ground),
    ]


def profile(role: Role = "paper", ground: Role = "ink") -> list[Shape]:
    """A head and neck from the side, 27 mm high, that looks to the left."""
    return [
        filled(
            "M -7.2 -5 C -6.4 -10.6 -2 -13.4 3 -13.4 C 9 -13.4 12.4 -9 12.4 -3.6 C 12.4 1.2 10.4 3 "
            "10.4 8 L 10.4 13.4 L -1.2 13.4 L -1.2 10 L -4.6 10 Q -6.8 10 -6.8 7.8 L -6.8 5.2 "
            "L -9.6 4.0 L -6.9 -0.6 L -7.2 -5",
            role,
        ),
        disc(-3.2, -1.8, 1.2, ground),
    ]


def gloves(role: Role = "ink", ground: Role = "paper") -> list[Shape]:
    """A pair of gloves: one filled in front, of the other the outline behind it."""
    one = [*palm(role), filled("M -4.6 8.6 L 4.6 8.6 L 6.0 15 L -6.0 15", role)]
    behind = placed(one, 4.2, -1.4, 0.8, turn=14)
    front = placed(one, -3.9, 1.8, 0.84, mirror=True, turn=-12)
    cuff = placed([Line(-5.4, 10.4, 5.4, 10.4, ground, 1.0)], -3.9, 1.8, 0.84, turn=-12)
    return [*_edged(behind, role, ground, 1.3), *_edged(front, ground, role, 1.8), *cuff]


def _edged(shapes: Sequence[Shape], edge: Role, inside: Role, width: float) -> list[Shape]:
    """Shapes of one colour, and about all of them together an edge of another [mm]."""
    outlines = [s for s in shapes if isinstance(s, Polygon)]
    return [
        *(replace(s, fill=edge, stroke=edge, width=width) for s in outlines),
        *(replace(s, fill=inside, stroke="") for s in outlines),
    ]


def match(role: Role = "ink") -> list[Shape]:
    """A match aslant, its head down to the left and burning."""
    return [capsule(0, 0, 14.4, -14.0, 1.25, role), disc(0, 0, 2.3, role)]


def touching(role: Role = "ink") -> list[Shape]:
    """A hand that comes down from the upper right, the tip of its forefinger at (0, 0)."""
    return [
        capsule(0.2, -1.5, 1.2, -9.6, 1.6, role),
        capsule(4.8, -5.0, 6.0, -10.0, 1.6, role),
        capsule(8.0, -6.4, 9.4, -10.6, 1.6, role),
        filled(
            "M -0.4 -9 Q 0 -13.4 3.4 -16.6 Q 7.4 -20 13 -21.4 L 17.2 -15.4 Q 13.4 -12.6 11 -9.4 "
            "L 6 -7.4 Q 4.6 -10.2 2.8 -9",
            role,
        ),
    ]
