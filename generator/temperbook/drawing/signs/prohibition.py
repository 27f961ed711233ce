"""Prohibition signs: a ring with a bar over a symbol, after ISO 7010's published names."""

from __future__ import annotations

from temperbook.drawing.pen import capsule, placed
from temperbook.drawing.shapes import Picture, Rect
from temperbook.drawing.signs import symbols
from temperbook.drawing.signs.frames import must_not


def open_flame() -> Picture:
    """No open flame (P003)."""
    return must_not(
        [
            capsule(20, 21, 20, 31, 1.5),
            *placed(symbols.flame(), 20, 14.0, 0.74),
        ],
        "No open flame (P003): a burning match.",
    )


def touch() -> Picture:
    """Do not touch (P010)."""
    return must_not(
        [
            *placed(symbols.palm(), 20, 21.4, 0.94, turn=180),
            Rect(9, 30.4, 22, 1.8, "ink"),
        ],
        "Do not touch (P010): a hand, fingers down, on a surface.",
    )


def wear_gloves() -> Picture:
    """Do not wear gloves (P028)."""
    return must_not(
        placed(symbols.glove(), 19.6, 18.0, 0.98),
        "Do not wear gloves (P028): a glove with its cuff.",
    )
