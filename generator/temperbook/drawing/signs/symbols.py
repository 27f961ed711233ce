"""Symbols that several signs share, about (0, 0) and near 20 mm high; `placed` brings them in."""

from __future__ import annotations

import math
from dataclasses import replace

from temperbook.drawing.pen import capsule, disc, drawn, filled, placed
from temperbook.drawing.shapes import Line, Polygon, Rect, Role, Shape


def flame(role: Role = "ink", ground: Role = "paper") -> list[Shape]:
    """A flame with three tongues and a light heart."""
    return [
        filled(
            "M 0 10 C -6 10 -8.4 5.5 -7.4 1 C -6.6 -2 -4.6 -3.5 -4.8 -7 C -2.6 -5.6 -1.6 -3.8 "
            "-1.3 -2 C 1.4 -4 2 -7.5 0.4 -10.5 C 5 -8 6.6 -3.8 5.4 -0.2 C 6.3 -0.8 6.8 -2 6.8 "
            "-3.2 C 9.4 1.6 8.4 10 0 10",
            role,
        ),
        filled(
            "M 0 10 C -3.4 10 -4.4 7.5 -3.6 5 C -2.8 3.2 -1 2.6 -0.6 0 C 2.6 2.2 4.4 5 3.6 7.5 "
            "C 3 9.2 1.8 10 0 10",
            ground,
        ),
    ]


def flame_over_circle(role: Role = "ink", ground: Role = "paper") -> list[Shape]:
    """A flame that stands on a ring: it feeds fire."""
    return [
        *placed(flame(role, ground), 0, -3.6, 0.78),
        disc(0, 6.4, 4.8, role),
        disc(0, 6.4, 2.8, ground),
        Line(-7, 11.9, 7, 11.9, role, 1.4),
    ]


def skull(role: Role = "ink", ground: Role = "paper") -> list[Shape]:
    """A skull from the front, two long bones crossed behind it."""
    bones: list[Shape] = []
    for way in (-1.0, 1.0):
        bones.append(capsule(-9 * way, 1.0, 9 * way, 8.0, 1.05, role))
        for x, y in ((-9.2, 0.0), (-9.8, 1.8), (9.2, 9.0), (9.8, 7.2)):
            bones.append(disc(x * way, y, 1.35, role))
    return [
        *bones,
        disc(0, -4.0, 7.0, ground),
        Rect(-4.4, 0, 8.8, 6.2, ground),
        disc(0, -4.0, 6.0, role),
        Rect(-3.5, 0, 7.0, 5.0, role),
        disc(-2.5, -3.4, 1.8, ground),
        disc(2.5, -3.4, 1.8, ground),
        filled("M 0 -1.2 L 0.9 0.8 L -0.9 0.8", ground),
        *(Line(x, 2.6, x, 5.0, ground, 0.6) for x in (-1.6, 0.0, 1.6)),
    ]


def exclamation(role: Role = "ink") -> list[Shape]:
    """An exclamation mark."""
    return [
        filled("M -2.6 -9 Q -2.8 -10.6 0 -10.6 Q 2.8 -10.6 2.6 -9 L 1.4 4 L -1.4 4", role),
        disc(0, 8.0, 2.4, role),
    ]


def palm(role: Role = "ink") -> list[Shape]:
    """An open right hand, fingers up, seen flat."""
    return [
        capsule(-4.6, 2, -5.6, -5.4, 1.25, role),
        capsule(-1.8, 1, -2.2, -8.2, 1.3, role),
        capsule(1.1, 1, 1.3, -8.6, 1.3, role),
        capsule(3.9, 2, 4.7, -6.6, 1.25, role),
        capsule(4.0, 6, 9.0, 0.4, 1.4, role),
        filled("M -5.8 1 L 5.2 1 L 6.2 5 Q 5.4 8.6 3.4 11 L -3.4 11 Q -6 7.6 -5.8 1", role),
    ]


def glove(role: Role = "ink", ground: Role = "paper") -> list[Shape]:
    """A hand as `palm`, with a broad cuff set off from it."""
    return [
        *palm(role),
        Rect(-6.4, 9.4, 12.8, 1.0, ground),
        filled("M -4.6 10.4 L 4.6 10.4 L 6.0 15 L -6.0 15", role),
    ]


def reaching(role: Role = "ink") -> list[Shape]:
    """A hand from the side that reaches to the left, its finger tips at (0, 0), its arm right."""
    return [
        filled(
            "M 1 -1 Q -0.4 -0.4 0 0.4 Q 0.2 1 1 1.1 L 7 1.5 Q 9 4 12 4 L 20 4.4 L 20 -2.6 L 12 "
            "-2.4 Q 9 -2.6 7 -1.2",
            role,
        ),
        capsule(8.6, -1.2, 4.2, -3.4, 0.95, role),
    ]


def cylinder(role: Role = "ink", ground: Role = "paper") -> list[Shape]:
    """A gas cylinder, upright, with its valve."""
    return [
        filled(
            "M -4 10 L -4 -3 Q -4 -6.4 -1.4 -7 L -1.4 -8.4 L 1.4 -8.4 L 1.4 -7 Q 4 -6.4 4 -3 "
            "L 4 10",
            role,
        ),
        Rect(-2.6, -11, 5.2, 1.6, role),
        Rect(-0.7, -9.6, 1.4, 1.6, role),
        Line(-4, -2.0, 4, -2.0, ground, 0.7),
    ]


def corrosion(role: Role = "ink", ground: Role = "paper") -> list[Shape]:
    """Two glass tubes that drip: one on a slab that it eats, one on a hand that it eats."""
    found: list[Shape] = []
    for way in (-1.0, 1.0):
        tube = [
            drawn(
                "M 9.6 -6.0 L 2.4 -9.0 Q 0.4 -9.6 -0.2 -8.0 Q -0.6 -6.4 1.2 -5.6 L 8.4 -3.0", 1.0
            ),
            filled("M 9.0 -4.6 L 2.0 -7.4 Q 0.6 -7.8 0.2 -7.0 Q 0 -6.2 1.4 -5.6 L 8.4 -3.0"),
            drawn("M 10.2 -6.4 L 8.2 -2.4", 1.0),
        ]
        found += [
            replace(s, fill=role if s.fill else "", stroke=role if s.stroke else "")
            for s in placed(tube, 1.4 * way, 0, 1.0, mirror=way < 0)
            if isinstance(s, Polygon)
        ]
        found += [drop(10.4 * way, y, role, 0.8) for y in (-0.6, 3.0)]
    slab = (
        "M -14.4 5.6 L -12.4 5.6 L -11.6 8 L -10.6 6.8 L -9.4 8.2 L -8.2 5.6 L -3.2 5.6 L -3.2 10"
    )
    return [
        *found,
        filled(f"{slab} L -14.4 10", role),
        *placed(reaching(role), 0.8, 7.4, 0.7),
        filled("M 8.6 4.8 L 9.4 7 L 10.4 6.2 L 11.2 7.4 L 12.4 4.8", ground),
    ]


def burst(points: int, outer: float, inner: float) -> str:
    """The outline of a star about (0, 0) [mm]."""
    spots = []
    for n in range(2 * points):
        r = outer if n % 2 == 0 else inner
        angle = math.pi * n / points - math.pi / 2
        spots.append(f"{r * math.cos(angle):.3f} {r * math.sin(angle):.3f}")
    return "M " + " L ".join(spots)


def bust(role: Role = "ink") -> list[Shape]:
    """Head and trunk from the front; the trunk narrows to a point."""
    return [
        filled(
            "M 0 -14 Q 4.8 -14 4.8 -9 Q 4.8 -3.4 0 -2.8 Q -4.8 -3.4 -4.8 -9 Q -4.8 -14 0 -14", role
        ),
        filled(
            "M -2.2 -5 L 2.2 -5 L 2.2 -1.6 Q 9.4 -0.6 10.4 3.2 L 0 14 L -10.4 3.2 Q -9.4 -0.6 -2.2 "
            "-1.6",
            role,
        ),
    ]


def drop(x: float, y: float, role: Role = "ink", size: float = 1.0) -> Shape:
    """A drop [mm] about a centre."""
    s = size
    return filled(
        f"M {x} {y - 2 * s} C {x + 0.6 * s} {y - 0.6 * s} {x + 1.4 * s} {y} {x + 1.2 * s} "
        f"{y + 1 * s} C {x + 0.8 * s} {y + 2 * s} {x - 0.8 * s} {y + 2 * s} {x - 1.2 * s} "
        f"{y + 1 * s} C {x - 1.4 * s} {y} {x - 0.6 * s} {y - 0.6 * s} {x} {y - 2 * s}",
        role,
    )
