"""Mandatory signs: a filled disc under a symbol, after ISO 7010."""

from __future__ import annotations

from temperbook.drawing.pen import capsule, disc, drawn, filled, placed
from temperbook.drawing.shapes import Line, Picture, Rect, Shape
from temperbook.drawing.signs import heads, symbols
from temperbook.drawing.signs.frames import must


def ears() -> Picture:
    """Wear ear protection (M003)."""
    arch = "M 8.4 19.4 C 7.4 0.6 32.6 0.6 31.6 19.4"
    cups: list[Shape] = []
    for x in (8.6, 31.4):
        cups += [
            capsule(x, 17.4, x, 25.0, 4.0, "ink"),
            capsule(x, 17.4, x, 25.0, 2.9, "paper"),
        ]
    return must(
        [
            *placed(heads.face(), 20, 21.6),
            drawn(arch, 3.6),
            drawn(arch, 1.8, "paper"),
            *cups,
        ],
        "Wear ear protection (M003): a head with ear muffs on a band.",
    )


def eyes() -> Picture:
    """Wear eye protection (M004)."""
    glasses: list[Shape] = [Rect(9.4, 15.6, 21.2, 1.4, "ink")]
    for x in (15.2, 24.8):
        glasses += [disc(x, 17.8, 4.3), disc(x, 17.8, 3.1, "paper"), disc(x, 17.8, 1.2)]
    return must(
        [*placed(heads.face(eyes=False), 20, 20), *glasses],
        "Wear eye protection (M004): a head with clear glasses, the eyes seen through them.",
    )


def opaque_eyes() -> Picture:
    """Opaque eye protection must be worn (M007)."""
    dark: list[Shape] = [
        Rect(8.6, 15.4, 22.8, 1.8, "ink"),
        filled(
            "M 11.2 17.4 Q 11.2 13.4 15.4 13.4 Q 18.2 13.4 20 14.8 Q 21.8 13.4 24.6 13.4 "
            "Q 28.8 13.4 28.8 17.4 Q 28.8 21.6 24.6 21.6 Q 21.8 21.6 20 19.8 Q 18.2 21.6 15.4 21.6 "
            "Q 11.2 21.6 11.2 17.4"
        ),
    ]
    return must(
        [*placed(heads.face(eyes=False), 20, 20), *dark],
        "Opaque eye protection must be worn (M007): a head with goggles that hide the eyes.",
    )


def gloves() -> Picture:
    """Wear protective gloves (M009)."""
    return must(
        placed(heads.gloves("paper", "ink"), 20.2, 18.8, 0.98),
        "Wear protective gloves (M009): a pair of gloves, one filled, of the other the outline.",
    )


def wash_hands() -> Picture:
    """Wash your hands (M011)."""
    tap: list[Shape] = [
        filled("M 6 9 L 17 9 Q 21.6 9 21.6 14 L 18.4 14 Q 18.4 12 16.6 12 L 6 12", "paper"),
        Rect(11.0, 6.0, 1.8, 3.0, "paper"),
        Rect(8.6, 4.6, 6.6, 1.9, "paper"),
    ]
    water: list[Shape] = [
        disc(20 + way * (y - 12) * 0.16, y, 0.62, "paper")
        for way in (-1.6, 0, 1.6)
        for y in (15.6, 17.6, 19.6)
    ]
    hands: list[Shape] = [
        *placed(symbols.reaching("paper"), 10.4, 23.6, 1.06),
        *placed(symbols.reaching("ink"), 8.6, 28.8, 1.2),
        *placed(symbols.reaching("paper"), 9.6, 29.0, 1.06),
    ]
    return must(
        placed([*tap, *water, *hands], 40, 0, mirror=True),
        "Wash your hands (M011): drops of water fall from a tap on two hands.",
    )


def face_shield() -> Picture:
    """Wear a face shield (M013)."""
    edge = "M 16.6 10.8 L 7.4 10.8 L 7.2 28.8 L 14.0 28.0"
    return must(
        [
            *placed(heads.profile(), 22.4, 20.6, 0.94),
            drawn("M 14.6 11.6 L 34.4 15.2", 1.6),
            drawn(edge, 3.0),
            drawn(edge, 1.7, "paper"),
        ],
        "Wear a face shield (M013): a head from the side, a clear shield before the whole face.",
    )


def mask() -> Picture:
    """Wear a mask (M016)."""
    cloth = "M 9.4 21.6 L 18.4 22.4 L 17.2 31.2 L 10.8 31.8 Q 8.6 26.8 9.4 21.6"
    return must(
        [
            *placed(heads.profile(), 20.6, 20.4),
            drawn("M 18 23 L 34 16.4", 1.2),
            drawn("M 17 30 L 31.4 27.4", 1.2),
            drawn(cloth, 2.6),
            filled(cloth, "paper"),
        ],
        "Wear a mask (M016): a head from the side, nose and mouth under a mask with straps.",
    )


def respirator() -> Picture:
    """Wear respiratory protection (M017)."""
    holes: list[Shape] = [disc(x, y, 0.8) for y in (29.6, 32.2) for x in (16.4, 20.0, 23.6)]
    return must(
        [
            *placed(heads.face(eyes=False), 20, 17.4),
            drawn("M 10.6 10.2 Q 20 7.2 29.4 10.2", 1.0),
            disc(15.4, 15.2, 3.5),
            disc(24.6, 15.2, 3.5),
            filled("M 13.0 22.6 L 27.0 22.6 L 27.0 36.6 L 13.0 36.6"),
            filled("M 14.0 23.8 L 26.0 23.8 L 26.0 35.4 L 14.0 35.4", "paper"),
            Line(14, 27.0, 26, 27.0, "ink", 1.0),
            *holes,
        ],
        "Wear respiratory protection (M017): a head with a full mask, two windows and a canister "
        "with holes under them.",
    )
