"""Mandatory signs: a filled disc under a symbol, after ISO 7010's published names."""

from __future__ import annotations

from collections.abc import Sequence

from temperbook.drawing.pen import capsule, disc, drawn, filled, placed
from temperbook.drawing.shapes import Line, Picture, Rect, Shape
from temperbook.drawing.signs import symbols
from temperbook.drawing.signs.frames import must


def _worn(shapes: Sequence[Shape]) -> list[Shape]:
    """Head and shoulders on the disc, and what is worn [mm]."""
    return [*placed(symbols.bust("paper"), 20, 20.6, 1.2), *shapes]


def ears() -> Picture:
    """Wear ear protection (M003)."""
    band = drawn("M 13.2 15.6 C 12.4 3.4 27.6 3.4 26.8 15.6", 1.5, "paper")
    cups: list[Shape] = []
    for x in (13.4, 26.6):
        cups += [
            capsule(x, 13.4, x, 18.4, 2.7, "ink"),
            capsule(x, 13.6, x, 18.2, 1.9, "paper"),
        ]
    return must(
        _worn([drawn("M 14.6 15 C 14 5.6 26 5.6 25.4 15", 1.3, "ink"), band, *cups]),
        "Wear ear protection (M003): a head with ear muffs on a band.",
    )


def eyes() -> Picture:
    """Wear eye protection (M004)."""
    glasses: list[Shape] = [
        disc(16.9, 15.2, 2.9, "ink"),
        disc(23.1, 15.2, 2.9, "ink"),
        disc(16.9, 15.2, 1.8, "paper"),
        disc(23.1, 15.2, 1.8, "paper"),
        Line(13.6, 14.6, 14.6, 15, "ink", 1.2),
        Line(25.4, 15, 26.4, 14.6, "ink", 1.2),
    ]
    return must(
        _worn(glasses),
        "Wear eye protection (M004): a head with clear goggles.",
    )


def opaque_eyes() -> Picture:
    """Wear opaque eye protection (M007)."""
    dark: list[Shape] = [
        filled(
            "M 14 13 L 26 13 L 26 15.6 Q 25.6 18.6 22.8 18.4 Q 20.8 18.2 20.4 16 L 19.6 16 "
            "Q 19.2 18.2 17.2 18.4 Q 14.4 18.6 14 15.6"
        ),
    ]
    return must(
        _worn(dark),
        "Wear opaque eye protection (M007): a head with dark goggles.",
    )


def gloves() -> Picture:
    """Wear protective gloves (M009)."""
    return must(
        [
            *placed(symbols.glove("paper", "ink"), 13.0, 18.0, 0.78, mirror=True),
            *placed(symbols.glove("paper", "ink"), 27.0, 20.6, 0.78),
        ],
        "Wear protective gloves (M009): a pair of gloves.",
    )


def wash_hands() -> Picture:
    """Wash your hands (M011)."""
    tap: list[Shape] = [
        filled("M 6 9 L 17 9 Q 21.6 9 21.6 14 L 18.4 14 Q 18.4 12 16.6 12 L 6 12", "paper"),
        Rect(11.0, 6.0, 1.8, 3.0, "paper"),
        Rect(8.6, 4.6, 6.6, 1.9, "paper"),
    ]
    water: list[Shape] = [Line(x, 15.4, x, 20.2, "paper", 0.8) for x in (18.8, 20.0, 21.2)]
    hands: list[Shape] = [
        *placed(symbols.reaching("paper"), 10.4, 23.6, 1.06),
        *placed(symbols.reaching("ink"), 8.6, 28.8, 1.2),
        *placed(symbols.reaching("paper"), 9.6, 29.0, 1.06),
    ]
    return must(
        [*tap, *water, *hands, symbols.drop(8.2, 21.6, "paper", 0.8)],
        "Wash your hands (M011): water runs from a tap on two hands.",
    )


def face_shield() -> Picture:
    """Wear a face shield (M013)."""
    edge = "M 10.8 11.4 L 29.2 11.4 L 28.2 23 Q 26 29 20 29 Q 14 29 11.8 23 L 10.8 11.4"
    shield: list[Shape] = [
        drawn(edge, 3.2),
        drawn(edge, 1.3, "paper"),
        Rect(10.2, 9.6, 19.6, 3.4, "ink"),
        Rect(10.8, 10.2, 18.4, 2.2, "paper"),
        disc(17.6, 16.4, 0.9),
        disc(22.4, 16.4, 0.9),
    ]
    return must(
        _worn(shield),
        "Wear a face shield (M013): a head with a clear shield from brow to below the chin.",
    )


def mask() -> Picture:
    """Wear a mask (M016)."""
    cloth: list[Shape] = [
        *_eyes(),
        filled("M 14.2 16.6 Q 20 14.8 25.8 16.6 L 24.6 21.6 Q 20 24.4 15.4 21.6"),
        filled("M 15.8 17.8 Q 20 16.4 24.2 17.8 L 23.4 20.9 Q 20 22.8 16.6 20.9", "paper"),
        Line(16.2, 19.4, 23.8, 19.4, "ink", 0.6),
    ]
    return must(_worn(cloth), "Wear a mask (M016): a head, mouth and nose under a cloth mask.")


def respirator() -> Picture:
    """Wear respiratory protection (M017)."""
    filters: list[Shape] = [
        *_eyes(),
        filled("M 17.4 15.2 L 22.6 15.2 L 25.2 19.2 L 23 24 L 17 24 L 14.8 19.2"),
        disc(14.4, 21.6, 3.7, "paper"),
        disc(25.6, 21.6, 3.7, "paper"),
        disc(14.4, 21.6, 2.9),
        disc(25.6, 21.6, 2.9),
        disc(14.4, 21.6, 1.5, "paper"),
        disc(25.6, 21.6, 1.5, "paper"),
        disc(20, 20.6, 1.3, "paper"),
    ]
    return must(
        _worn(filters),
        "Wear respiratory protection (M017): a head with a half mask that has two round filters.",
    )


def _eyes() -> list[Shape]:
    return [disc(17.6, 13.2, 0.9), disc(22.4, 13.2, 0.9)]
