"""Warning signs: a triangle about a symbol, after ISO 7010."""

from __future__ import annotations

import math
from collections.abc import Iterator

from temperbook.drawing.draughting import arc
from temperbook.drawing.pen import capsule, disc, drawn, filled, placed
from temperbook.drawing.shapes import Circle, Picture, Polygon, Rect, Shape
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
        placed(symbols.skull(), 20, 23.6, 0.92),
        "Toxic material (W016): a skull, and two crossed bones behind it.",
    )


def hot_surface() -> Picture:
    """Hot surface (W017)."""
    waves: list[Shape] = [
        drawn(f"M {x} 27.2 C {x - 4} 24 {x + 4} 21 {x} 17.8", 1.7) for x in (15.2, 20.0, 24.8)
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
    fingers: list[Shape] = [
        capsule(20, y, end, y, 0.8)
        for y, end in ((18.4, 24.4), (20.4, 26.0), (22.4, 26.2), (24.4, 24.6))
    ]
    return warning(
        [
            filled(
                "M 13.6 20 Q 13.4 18 15.2 17 L 19.4 14.2 Q 21 13.6 20.8 15.4 L 18.8 17.6 L 21 17.6 "
                "L 21 25.2 L 15.4 25.2 Q 13.6 25.2 13.6 23.4"
            ),
            *fingers,
            drawn("M 17.0 17.0 L 18.2 25.8 L 19.4 17.0 L 20.6 25.8 L 21.8 17.0", 0.7, "paper"),
            filled("M 18.2 33.9 L 18.2 30.0 L 22.6 25.8 L 22.6 33.9"),
        ],
        "Sharp element (W022): a bandaged hand above an upright blade.",
    )


def corrosive() -> Picture:
    """Corrosive substance (W023)."""
    return warning(
        placed(symbols.corrosion(), 20, 25.6, 0.74),
        "Corrosive substance (W023): one tube drips on a bar, another on a hand, and both are "
        "eaten.",
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
            Circle(20, 16.2, 4.1, "", "ink", 1.3),
            Circle(20, 27.3, 5.6, "", "ink", 1.3),
            *_turning(20, 16.2, 1.9, -20, -190, 1.2),
            *_turning(20, 27.3, 2.9, 100, 290, 1.5),
        ],
        "Counterrotating rollers (W025): a small roller on a large one, and arrows that turn "
        "opposite ways, so that both draw in what comes between.",
    )


def optical() -> Picture:
    """Optical radiation (W027)."""
    return warning(
        [
            *placed([filled(symbols.burst(16, 9.4, 5.2))], 20, 24.0),
            disc(20, 24, 4.7, "paper"),
            disc(20, 24, 3.6),
        ],
        "Optical radiation (W027): a bright source with pointed rays all round.",
    )


def oxidising() -> Picture:
    """Oxidizing substance (W028)."""
    return warning(
        placed(symbols.flame_over_circle(), 20, 21.4, 0.84),
        "Oxidizing substance (W028): a flame over a circle.",
    )


def pressurised() -> Picture:
    """Pressurized cylinder (W029)."""
    lying = placed(symbols.cylinder(), 15.4, 26.0, 0.8, turn=58)
    halo = capsule(10.4, 29.0, 19.4, 23.4, 3.9, "paper")
    return warning(
        [
            *placed([filled(symbols.burst(13, 8.2, 3.6))], 19.8, 18.4),
            *placed([filled(symbols.burst(13, 4.6, 2.2), "paper")], 19.8, 18.4),
            halo,
            *lying,
            *placed(symbols.flame(), 28.2, 28.6, 0.4),
            Rect(24.2, 32.6, 8.0, 1.0, "ink"),
        ],
        "Pressurized cylinder (W029): a gas cylinder lies aslant and bursts, a flame beside it.",
    )


def asphyxiating() -> Picture:
    """Asphyxiating atmosphere (W041)."""
    sunk: list[Shape] = [
        disc(22.6, 21.0, 2.6),
        capsule(13.8, 30.0, 18.6, 24.4, 2.2),
        capsule(13.8, 31.4, 28.6, 31.8, 1.6),
        capsule(19.4, 25.2, 21.6, 29.2, 1.0),
        capsule(21.6, 29.2, 25.4, 29.8, 0.9),
    ]
    return warning(
        [*_gas(), *sunk],
        "Asphyxiating atmosphere (W041): a person who sits sunk on the ground in a cloud of gas.",
    )


def _gas() -> Iterator[Shape]:
    """Drops of gas in rows, but not where the person of W041 sits."""
    for row in range(9):
        y = 11.4 + 2.2 * row
        for place in range(-row, row + 1, 2):
            x = 20 + 1.4 * place
            body = 12.6 < x < 23.6 and y > 22
            if not body and y < 29.4 and math.hypot(x - 22.6, y - 21) > 3.6:
                yield disc(x, y, 0.62)


def _turning(
    x: float, y: float, r: float, start: float, end: float, head: float
) -> Iterator[Shape]:
    """An arrow on an arc [mm] between angles [degrees, clockwise from the right], with a head that
    stays a head when the sign is small."""
    yield Polygon(arc(x, y, r, start, end), "", "ink", 0.9, closed=False)
    way = math.copysign(1.0, end - start)
    at = math.radians(end)
    out, on = (math.cos(at), math.sin(at)), (-way * math.sin(at), way * math.cos(at))
    foot = [(x + (r + s * head) * out[0], y + (r + s * head) * out[1]) for s in (-1, 1)]
    tip = (x + r * out[0] + 1.6 * head * on[0], y + r * out[1] + 1.6 * head * on[1])
    yield Polygon((*foot, tip), "ink", "")
