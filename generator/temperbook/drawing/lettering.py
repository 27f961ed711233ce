"""How wide a text is in the project's own type, so that columns are laid out before drawing."""

from __future__ import annotations

from functools import cache
from pathlib import Path

from temperbook.paths import installed_root

FAMILY = "Atkinson Hyperlegible Next"
FONTS = Path("site_overrides/assets/fonts")
FILES = {
    400: "AtkinsonHyperlegibleNext_400Regular.ttf",
    700: "AtkinsonHyperlegibleNext_700Bold.ttf",
    800: "AtkinsonHyperlegibleNext_800ExtraBold.ttf",
}


@cache
def _metrics(weight: int) -> tuple[dict[int, int], int, int]:
    from fontTools.ttLib import TTFont

    with TTFont(installed_root() / FONTS / FILES[weight], lazy=True) as font:
        widths = font["hmtx"].metrics
        names = font.getBestCmap()
        advances = {code: widths[_tabular(glyph, widths)][0] for code, glyph in names.items()}
        return advances, font["OS/2"].sCapHeight, font["head"].unitsPerEm


def _tabular(glyph: str, widths: dict[str, tuple[int, int]]) -> str:
    """The tabular form of a figure's glyph where the type has one; every output sets tabular
    figures."""
    return f"{glyph}.tf" if f"{glyph}.tf" in widths else glyph


def cap_share() -> float:
    """Height of a capital letter as a share of the type size [1]."""
    _, cap, em = _metrics(400)
    return cap / em


def width(text: str, cap: float, weight: int = 400) -> float:
    """Width [mm] of a text whose capitals are `cap` [mm] high, kerning left out.

    Errors: KeyError for a character that the type lacks.
    """
    advances, cap_units, _ = _metrics(weight)
    return sum(advances[ord(character)] for character in text) * cap / cap_units


def lacks(text: str, weight: int = 400) -> set[str]:
    """The characters of a text that the type has no glyph for."""
    advances, _, _ = _metrics(weight)
    return {character for character in text if ord(character) not in advances and character != "\n"}
