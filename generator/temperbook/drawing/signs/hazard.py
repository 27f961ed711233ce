"""GHS pictograms: a square on its point about a symbol, after what agencies say they show."""

from __future__ import annotations

from temperbook.drawing.pen import capsule, disc, drawn, filled, placed
from temperbook.drawing.shapes import Line, Picture, Rect, Shape
from temperbook.drawing.signs import symbols
from temperbook.drawing.signs.frames import diamond


def flame() -> Picture:
    """Flame (GHS02)."""
    return diamond(
        [*placed(symbols.flame(), 20, 18.0, 1.0), Rect(12.4, 29, 15.2, 1.8, "ink")],
        "Flame (GHS02), flammable: a flame above a line.",
    )


def flame_over_circle() -> Picture:
    """Flame over circle (GHS03)."""
    return diamond(
        placed(symbols.flame_over_circle(), 20, 19.0, 0.96),
        "Flame over circle (GHS03), oxidising: a ring on a line with flames on top of it.",
    )


def gas_cylinder() -> Picture:
    """Gas cylinder (GHS04)."""
    return diamond(
        placed(symbols.cylinder(), 20, 20, 1.05, turn=60),
        "Gas cylinder (GHS04), gas under pressure: a gas cylinder, lying aslant.",
    )


def corrosion() -> Picture:
    """Corrosion (GHS05)."""
    return diamond(
        placed(symbols.corrosion(), 20, 18.4, 0.78),
        "Corrosion (GHS05): one tube drips on a piece of metal, another on a hand, and both are "
        "eaten.",
    )


def skull() -> Picture:
    """Skull and crossbones (GHS06)."""
    return diamond(
        placed(symbols.skull(), 20, 18.4, 0.86),
        "Skull and crossbones (GHS06), poisonous at once: a skull, two crossed bones behind it.",
    )


def exclamation() -> Picture:
    """Exclamation mark (GHS07)."""
    return diamond(
        placed(symbols.exclamation(), 20, 20, 1.1),
        "Exclamation mark (GHS07), harmful or irritant: an exclamation mark.",
    )


def health() -> Picture:
    """Health hazard (GHS08)."""
    star = filled(symbols.burst(6, 6.2, 2.0), "paper")
    return diamond(
        [*placed(symbols.bust(), 20, 20.4, 0.98), *placed([star], 20, 23.8, 0.94)],
        "Health hazard (GHS08), harm that may come late: head and trunk with a light star that "
        "spreads over the chest.",
    )


def environment() -> Picture:
    """Environment (GHS09)."""
    scene: list[Shape] = [
        drawn("M 17 26.6 C 16.4 21 17.6 16 15.6 9.4", 1.8),
        drawn("M 16.8 20 L 11.4 14.8", 1.2),
        drawn("M 16.8 16.6 L 20.6 11.4", 1.2),
        drawn("M 13.6 17 L 13.2 13.4", 0.9),
        drawn("M 18.8 13.8 L 21.4 14.2", 0.9),
        filled("M 10.4 24.4 L 20.6 24.4 Q 18 27 14.8 28.2 L 13.2 27.4"),
        filled(
            "M 16.8 27.6 Q 21.4 21.6 26.4 25.4 L 29.6 22.8 L 29.0 28.2 L 26.2 26.8 Q 21.4 31.6 "
            "16.8 27.6"
        ),
        disc(19.6, 26.6, 0.8, "paper"),
        Line(21.8, 24.6, 22.2, 28.6, "paper", 0.6),
        capsule(15.6, 31.0, 24.4, 31.0, 0.5),
    ]
    return diamond(
        scene,
        "Environment (GHS09), harmful to life in water: a tree without leaves, and a dead fish.",
    )
