"""Warning signs: a triangle about a symbol, after ISO 7010's published names and descriptions."""

from __future__ import annotations

import math

from temperbook.drawing.draughting import curved_arrow
from temperbook.drawing.pen import capsule, disc, drawn, filled, placed
from temperbook.drawing.shapes import Circle, Line, Picture, Rect, Shape
from temperbook.drawing.signs import symbols
from temperbook.drawing.signs.frames import warning


def general() -> Picture:
    """General warning sign (W001)."""
    return warning(
        placed(symbols.exclamation(), 20, 22.4),
        "General warning sign (W001): an exclamation mark.",
    )


def electricity() -> Picture:
    """Electricity (W012)."""
    bolt = filled(
        "M 22.6 11.4 L 15.6 22.6 L 20.4 22.0 L 17.6 28.6 L 15.8 27.8 L 17.4 32.8 L 21.6 "
        "29.8 L 19.8 29.4 L 24.8 19.4 L 19.8 20.2"
    )
    return warning([bolt], "Electricity (W012): a flash of lightning with an arrow's head.")


def toxic() -> Picture:
    """Toxic material (W016)."""
    return warning(
        placed(symbols.skull(), 20, 23.4, 0.92),
        "Toxic material (W016): a skull above two crossed bones.",
    )


def hot_surface() -> Picture:
    """Hot surface (W017)."""
    waves: list[Shape] = [
        drawn(f"M {x} 27 C {x - 4} 23.6 {x + 4} 20.4 {x} 17", 1.7) for x in (14.6, 20.0, 25.4)
    ]
    return warning(
        [*waves, Rect(9.6, 29, 20.8, 2.6, "ink")],
        "Hot surface (W017): three waves rise from a flat surface.",
    )


def flammable() -> Picture:
    """Flammable material (W021)."""
    return warning(
        [*placed(symbols.flame(), 20, 20.9, 0.82), Rect(11.4, 30.2, 17.2, 1.8, "ink")],
        "Flammable material (W021): a flame above a line.",
    )


def sharp() -> Picture:
    """Sharp element (W022)."""
    return warning(
        [
            *placed(symbols.palm(), 19.4, 25.6, 0.7),
            filled("M 23.4 14.2 L 26.2 18.8 L 11.6 24.2 L 11.2 22.9", "paper"),
            filled("M 22.8 15.2 L 24.9 18.3 L 12.0 23.1"),
        ],
        "Sharp element (W022): a pointed blade cuts across the fingers of a hand.",
    )


def corrosive() -> Picture:
    """Corrosive substance (W023)."""
    return warning(
        placed(symbols.corrosion(), 19.6, 26.2, 0.7),
        "Corrosive substance (W023): two vessels drip, one on a slab and one on a hand, and both "
        "are eaten.",
    )


def crushing() -> Picture:
    """Crushing of hands (W024)."""
    return warning(
        [
            Rect(9.4, 29.4, 21.2, 2.6, "ink"),
            *placed(symbols.reaching(), 13.4, 27.0, 0.82),
            Rect(12.4, 20.6, 8.2, 3.0, "ink"),
            filled("M 19 11.4 L 21 11.4 L 21 15.6 L 23.2 15.6 L 20 19.4 L 16.8 15.6 L 19 15.6"),
        ],
        "Crushing of hands (W024): a hand between a fixed surface and a block that comes down on "
        "it.",
    )


def rollers() -> Picture:
    """Counterrotating rollers (W025)."""
    return warning(
        [
            Circle(17.6, 19.4, 3.4, "", "ink", 1.3),
            Circle(17.6, 28.2, 3.4, "", "ink", 1.3),
            disc(17.6, 19.4, 0.6),
            disc(17.6, 28.2, 0.6),
            *curved_arrow(17.6, 19.4, 2.1, -170, 40, "ink", 0.7),
            *curved_arrow(17.6, 28.2, 2.1, 170, -40, "ink", 0.7),
            *placed(symbols.reaching(), 17.6, 23.8, 0.6),
        ],
        "Counterrotating rollers (W025): two rollers turn towards each other and draw in a hand.",
    )


def optical() -> Picture:
    """Optical radiation (W027)."""
    rays: list[Shape] = []
    for n in range(7):
        angle = math.radians(-66 + 15 * n)
        far = 15.0 if n % 2 else 12.2
        cos, sin = math.cos(angle), math.sin(angle)
        start, end = (13 + 5.4 * cos, 26 + 5.4 * sin), (13 + far * cos, 26 + far * sin)
        rays.append(Line(*start, *end, "ink", 1.2))
    return warning(
        [*rays, disc(13, 26, 3.6)],
        "Optical radiation (W027): a bright source that throws long and short rays to one side.",
    )


def oxidising() -> Picture:
    """Oxidizing substance (W028)."""
    return warning(
        placed(symbols.flame_over_circle(), 20, 21.4, 0.84),
        "Oxidizing substance (W028): a flame over a circle.",
    )


def pressurised() -> Picture:
    """Pressurized cylinder (W029)."""
    return warning(
        placed(symbols.cylinder(), 20, 23.0, 0.94),
        "Pressurized cylinder (W029): a gas cylinder with its valve.",
    )


def asphyxiating() -> Picture:
    """Asphyxiating atmosphere (W041)."""
    clouds: list[Shape] = [
        Circle(x, y, r, "paper", "ink", 0.8)
        for x, y, r in ((16.6, 17.0, 1.6), (20.0, 14.4, 1.9), (22.4, 18.0, 1.4))
    ]
    sunk: list[Shape] = [
        disc(14.6, 24.4, 2.5),
        capsule(17.4, 25.8, 23.6, 24.4, 2.1),
        capsule(24.0, 24.8, 26.6, 30.6, 1.6),
        capsule(26.4, 31.0, 31.0, 31.4, 1.2),
        capsule(17.6, 26.2, 16.4, 31.4, 1.0),
        capsule(16.2, 31.6, 13.4, 31.8, 0.8),
    ]
    return warning(
        [*clouds, *sunk],
        "Asphyxiating atmosphere (W041): a person on hands and knees under clouds of gas.",
    )
