"""First-aid signs: a filled square under a symbol, after ISO 7010's published names."""

from __future__ import annotations

from temperbook.drawing.pen import disc, drawn, filled
from temperbook.drawing.shapes import Picture, Rect
from temperbook.drawing.signs.frames import first_aid


def cross() -> Picture:
    """First aid (E003)."""
    return first_aid(
        [Rect(15, 6.5, 10, 27, "paper"), Rect(6.5, 15, 27, 10, "paper")],
        "First aid (E003): a cross with four equal arms.",
    )


def eyewash() -> Picture:
    """Eyewash station (E011)."""
    return first_aid(
        [
            filled("M 6 14 Q 20 2 34 14 Q 20 25 6 14", "paper"),
            disc(20, 13.6, 4.6),
            disc(20, 13.6, 2.0, "paper"),
            drawn("M 14 34 C 14 28 13 24 10.4 21.4", 1.7, "paper"),
            drawn("M 26 34 C 26 28 27 24 29.6 21.4", 1.7, "paper"),
            drawn("M 18 34 C 18 29.6 17.8 26 17.2 22.6", 1.7, "paper"),
            drawn("M 22 34 C 22 29.6 22.2 26 22.8 22.6", 1.7, "paper"),
            Rect(10, 33.4, 20, 2.4, "paper"),
        ],
        "Eyewash station (E011): jets of water rise from a basin to an eye.",
    )
