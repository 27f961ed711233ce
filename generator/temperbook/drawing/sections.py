"""Pictures reduction-sheet, reduction-wire and same-percent, to scale, and floor-and-ceiling.

Toned is metal, a dashed outline is what was there before. Percentages come from metal.reduction.
"""

from __future__ import annotations

import math

from temperbook.drawing.draughting import (
    LEADING,
    WIDE,
    arrow,
    label,
    ring,
    size_across,
    titled,
)
from temperbook.drawing.shapes import (
    BOLD,
    HAIRLINE,
    LINE,
    Circle,
    Line,
    Picture,
    Polygon,
    Rect,
    Shape,
    hatching,
)
from temperbook.metal import reduction, sections

EDGE = 4.0  # margin at each side of a picture [mm]


def percent(fraction: float) -> str:
    """A fraction [1] in words for a picture, without decimals."""
    return f"{100 * fraction:.0f} %"


def reduction_sheet() -> Picture:
    """A strip before and after half its thickness is gone, from its end and side, to scale."""
    width, thick, length = 22.0, 10.0, 36.0
    on_each = reduction.on_each_basis(0.5, "thickness", "wide")
    side, before, after = EDGE + width + 12, 11.0, 38.0
    gone = " = ".join(
        f"{percent(on_each[basis])} of the {basis} gone" for basis in ("thickness", "area")
    )
    shapes: list[Shape] = [
        label(EDGE, 7.5, "from its end", role="ash"),
        label(side, 7.5, "from its side", role="ash"),
        Rect(EDGE, before, width, thick, "hairline", "ink"),
        Rect(side, before, length, thick, "hairline", "ink"),
        *size_across(EDGE, EDGE + width, before + thick + 4, "width", above=False),
        *size_across(side, side + length, before + thick + 4, "length", above=False),
        label(side + length + 6, before + thick / 2 + 1.2, "before", bold=True),
        _dashed(EDGE, after, width, thick),
        Rect(EDGE, after + thick / 4, width, thick / 2, "hairline", "ink"),
        Rect(side, after + thick / 4, 2 * length, thick / 2, "hairline", "ink"),
        *size_across(EDGE, EDGE + width, after + thick + 3, "same width", above=False),
        *size_across(side, side + 2 * length, after + thick + 3, "twice the length", above=False),
        label(side + 2 * length, after + 0.4, "after", bold=True, anchor="end"),
        label(EDGE, after + thick + 17, gone, bold=True),
    ]
    return Picture(
        WIDE,
        after + thick + 21,
        tuple(shapes),
        "A strip of wide sheet before and after rolling, to scale. From its end: the width stays, "
        "the thickness is halved, so half the area is gone. From its side: it is half as thick and "
        f"twice as long. For sheet, {percent(on_each['thickness'])} of the thickness is "
        f"{percent(on_each['area'])} of the area.",
    )


def _dashed(x: float, y: float, w: float, h: float) -> Polygon:
    return Polygon(((x, y), (x + w, y), (x + w, y + h), (x, y + h)), "", "ash", LINE, dash=True)


WIRE_SCALE = 40.0  # picture mm for each mm of wire


def reduction_wire() -> Picture:
    """Wire of 1.0 mm drawn to 0.4 mm: both sections to scale, both percentages as bars."""
    thick, thin = sections.parse("round 1.0"), sections.parse("round 0.4")
    by_diameter = reduction.reduction(thick.thickness, thin.thickness)
    by_area = reduction.reduction(thick.area, thin.area)
    r1, r2 = thick.thickness * WIRE_SCALE / 2, thin.thickness * WIRE_SCALE / 2
    left, right, middle = 31.0, 89.0, EDGE + 8 + r1
    shapes: list[Shape] = [
        label(left, EDGE + 3.5, "1.0 mm", bold=True, anchor="middle"),
        label(right, EDGE + 3.5, "0.4 mm", bold=True, anchor="middle"),
        Circle(left, middle, r1, "hairline", "ink"),
        ring(right, middle, r1),
        Circle(right, middle, r2, "hairline", "ink"),
        *arrow(left + r1 + 4, middle, right - r1 - 4, middle),
    ]
    y = middle + r1 + 8
    for words, gone in (("of the diameter", by_diameter), ("of the area", by_area)):
        shapes += _share(y, words, gone)
        y += 13
    return Picture(
        WIDE,
        y - 2,
        tuple(shapes),
        "The section of a wire of 1.0 mm and, to the same scale, of 0.4 mm inside the outline "
        f"of the first. The small circle is {thin.thickness / thick.thickness:.1f} of the large "
        f"one across, but would fit into it {thick.area / thin.area:.2g} times by area. Two "
        f"bars: {percent(by_diameter)} of the diameter is gone, and {percent(by_area)} of the "
        "area.",
    )


def _share(y: float, words: str, gone: float) -> list[Shape]:
    """A bar of what is left, toned, and what is gone, dashed, with its words above [mm]."""
    x, whole, high = EDGE, WIDE - 2 * EDGE, 4.0
    left = whole * (1 - gone)
    return [
        label(x, y, f"{percent(gone)} {words} is gone", bold=True),
        _dashed(x, y + 2, whole, high),
        Rect(x, y + 2, left, high, "hairline", "ink"),
    ]


def same_percent() -> Picture:
    """Half of the thickness, of the diameter, of the area: what is left of each, to scale."""
    wide, tall = 30.0, 18.0
    d = math.sqrt(wide * tall * 4 / math.pi)  # of a round of the same area
    top, low = EDGE + d / 2, 14.0 + d * 3 / 2
    words = low + d / 2 + 7
    shapes: list[Shape] = []
    left: dict[str, str] = {}
    for x, basis in ((21.0, "thickness"), (60.0, "diameter"), (99.0, "area")):
        if basis == "thickness":
            each = reduction.on_each_basis(0.5, "thickness", "wide")
            shapes += _strips(x, top, low, wide, tall)
        else:
            each = reduction.on_each_basis(0.5, "area" if basis == "area" else "diameter", "round")
            shapes += _rounds(x, top, low, d, d * (1 - each["diameter"]))
        left[basis] = percent(1 - each["area"])
        shapes += arrow(x, top + d / 2 + 2, x, low - d / 2 - 2)
        shapes += titled(x, words, "50 % gone", f"of the {basis}")
        under = words + 2.4 * LEADING
        shapes.append(label(x, under, f"{left[basis]} is left", bold=True, anchor="middle"))
    told = "; ".join(
        f"of the {basis}, {share} of the metal is left" for basis, share in left.items()
    )
    return Picture(
        WIDE,
        words + 2.4 * LEADING + EDGE,
        tuple(shapes),
        "Three sections of equal area, each above what half of something leaves, all to one scale. "
        f"Half gone {told}. One percentage, and clearly different amounts of metal.",
    )


def _rounds(x: float, top: float, low: float, before: float, after: float) -> list[Shape]:
    """A round about a middle, and under it the drawn one in the old outline; diameters [mm]."""
    return [
        Circle(x, top, before / 2, "hairline", "ink"),
        ring(x, low, before / 2),
        Circle(x, low, after / 2, "hairline", "ink"),
    ]


def _strips(x: float, top: float, low: float, w: float, t: float) -> list[Shape]:
    """A strip about a middle, and under it the half of it in the old outline [mm]."""
    return [
        Rect(x - w / 2, top - t / 2, w, t, "hairline", "ink"),
        _dashed(x - w / 2, low - t / 2, w, t),
        Rect(x - w / 2, low - t / 4, w, t / 2, "hairline", "ink"),
    ]


def floor_and_ceiling() -> Picture:
    """A ruler of work since the last anneal, with a floor, a ceiling, and no entry beyond it."""
    x0, x1, top, high = EDGE, WIDE - EDGE, 15.0, 13.0
    low, ceiling = x0 + 34.0, x0 + 80.0
    bottom = top + high
    shapes: list[Shape] = [
        Rect(low, top, ceiling - low, high, "hairline", ""),
        *hatching(ceiling, top, x1 - ceiling, high),
    ]
    x = x0
    while x <= ceiling:
        shapes.append(Line(x, top, x, top + 3, "ink", HAIRLINE))
        x += 4.0
    shapes.append(Rect(x0, top, x1 - x0, high, "", "ink"))
    for at, word in ((low, "floor"), (ceiling, "ceiling")):
        shapes.append(Line(at, top - 4, at, bottom + 2, "ink", BOLD))
        shapes.append(label(at, top - 6, word, bold=True, anchor="middle"))
    for left, right, word, under in (
        (x0, low, "too little", "coarse grain"),
        (low, ceiling, "sound", "stop here and anneal"),
        (ceiling, x1, "cracks", "do not enter"),
    ):
        shapes += titled((left + right) / 2, bottom + 7, word, under)
    shapes += [
        label(x0, top - 2, "0"),
        *arrow(x0, bottom + 17, x0 + 26, bottom + 17),
        label(x0 + 28, bottom + 18.2, "work since the last anneal, as true strain", role="ash"),
    ]
    return Picture(
        WIDE,
        bottom + 22,
        tuple(shapes),
        "A ruler of the work since the last anneal, as true strain, that starts at nought. Up "
        "to a mark called floor the work is too little, and after an anneal the grain is "
        "coarse. Between floor and ceiling the metal is sound: there one stops and anneals. "
        "Beyond the ceiling the ruler is hatched: there the metal cracks.",
    )
