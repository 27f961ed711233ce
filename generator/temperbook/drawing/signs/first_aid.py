"""First-aid signs: a filled square under a symbol, after ISO 7010."""

from __future__ import annotations

from temperbook.drawing.pen import disc, filled
from temperbook.drawing.shapes import Picture, Rect, Shape
from temperbook.drawing.signs.frames import first_aid


def cross() -> Picture:
    """First aid (E003)."""
    return first_aid(
        [Rect(15, 6.5, 10, 27, "paper"), Rect(6.5, 15, 27, 10, "paper")],
        "First aid (E003): a cross with four equal arms.",
    )


def eyewash() -> Picture:
    """Eyewash station (E011)."""
    spray: list[Shape] = []
    for y, many, step in ((25.0, 4, 2.2), (22.2, 5, 2.9), (19.4, 6, 3.5), (16.8, 2, 17.6)):
        spray += [disc(17 + step * (n - (many - 1) / 2), y, 0.75, "paper") for n in range(many)]
    return first_aid(
        [
            filled("M 5.4 10.8 Q 14.6 0.4 23.8 10.8 Q 14.6 20.6 5.4 10.8", "paper"),
            disc(14.6, 10.6, 3.9),
            disc(14.6, 10.6, 1.8, "paper"),
            *spray,
            filled(
                "M 10.6 27.4 L 23.4 27.4 Q 23.4 31.4 19.2 32 L 19.2 36 L 14.8 36 L 14.8 32 "
                "Q 10.6 31.4 10.6 27.4",
                "paper",
            ),
            Rect(29.9, 5.6, 2.8, 9.4, "paper"),
            Rect(26.6, 8.9, 9.4, 2.8, "paper"),
        ],
        "Eyewash station (E011): drops rise from a bowl to an open eye, a small cross beside it.",
    )
