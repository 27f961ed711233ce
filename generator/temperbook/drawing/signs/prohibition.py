"""Prohibition signs: a ring with a bar over a symbol, after ISO 7010."""

from __future__ import annotations

from temperbook.drawing.pen import placed
from temperbook.drawing.shapes import Picture, Rect
from temperbook.drawing.signs import heads, symbols
from temperbook.drawing.signs.frames import must_not


def open_flame() -> Picture:
    """No open flame; fire, open ignition source and smoking prohibited (P003)."""
    return must_not(
        [*placed(heads.match(), 15.6, 28.4), *placed(symbols.flame(), 12.4, 22.2, 0.66)],
        "No open flame; fire, open ignition source and smoking prohibited (P003): a burning match.",
    )


def touch() -> Picture:
    """Do not touch (P010)."""
    return must_not(
        [*placed(heads.touching(), 13.6, 28.6), Rect(8.6, 28.8, 15, 2.2, "ink")],
        "Do not touch (P010): a hand that sets the tip of a finger on a surface.",
    )


def wear_gloves() -> Picture:
    """Do not wear gloves (P028)."""
    return must_not(
        placed(heads.gloves(), 20.4, 18.8, 0.92),
        "Do not wear gloves (P028): a pair of gloves, one filled, of the other the outline.",
    )
