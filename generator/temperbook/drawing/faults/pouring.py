"""Faults of pouring that one sees on the ingot or in the mould."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from types import MappingProxyType

from temperbook.drawing.draughting import WIDE, arrow, label
from temperbook.drawing.faults.parts import crack, notes, on_top, run, slab, speck
from temperbook.drawing.shapes import (
    BOLD,
    HAIRLINE,
    LINE,
    Circle,
    Line,
    Picture,
    Point,
    Polygon,
    Rect,
    Shape,
    hatching,
    moved,
)


def _mould(left: float, top: float, right: float, bottom: float, wall: float = 5.0) -> Polygon:
    """An upright mould cut open, by its cavity [mm]."""
    inner = run((left, top), (left, bottom), (right, bottom), (right, top))
    low = bottom + wall
    outer = run((right + wall, top), (right + wall, low), (left - wall, low), (left - wall, top))
    return Polygon((*inner, *outer), "ash", "ink", LINE)


def short_ingot() -> Picture:
    """The cavity of the mould, and the metal that froze before it was full."""
    edge = run(
        (60, 40), (59, 31), (56, 25.5), (51, 22), (44, 21), (37, 23.5), (30, 29),
        (23, 35.5), (17.5, 39.5), (14.8, 43.5), (14, 50),
    )  # fmt: skip
    shapes: list[Shape] = [
        Polygon((*edge, (14, 70), (60, 70)), "hairline", "ink", LINE),
        Polygon(run((14, 6), (60, 6), (60, 70), (14, 70)), "", "ash", LINE, dash=True),
        _mould(14, 6, 60, 70),
        Polygon(edge, "", "ember", BOLD, closed=False),
        Line(14, 53, 60, 53, "ink", LINE, dash=True),
        *notes(
            76,
            ((26, 14), 12, ("this corner of the", "mould stayed empty")),
            ((51, 22), 30, ("rounded, smooth edge:", "the metal froze here")),
            ((57, 53), 53, ("crop it square here", "before rolling")),
        ),
    ]
    return Picture(
        WIDE,
        79,
        tuple(shapes),
        "An upright mould cut open. The metal fills it only part of the way: the upper edge of "
        "the ingot is round and smooth and slopes down to one side, and the corner above it "
        "stayed empty. A dashed line below the slope shows where to crop the ingot square.",
    )


def cold_shut() -> Picture:
    """A seam across the ingot, and the two fronts of metal under it in section."""
    x, y, wide, deep = 6.0, 26.0, 44.0, 30.0
    ways = ((0.52, 0.0), (0.47, 0.2), (0.55, 0.42), (0.49, 0.6), (0.54, 0.8), (0.5, 1.0))
    seam = [on_top(x, y, wide, deep, u, v) for u, v in ways]
    down = ((seam[0][0] + 1.0, y + 5), (seam[0][0], y + 10))
    left = run((8, 49), (32, 49), (35.5, 50.5), (37.3, 53.5), (37.8, 58), (37.6, 71), (8, 71))
    right = tuple((76 - px, py) for px, py in left)
    shapes: list[Shape] = [
        *slab(x, y, wide, 10, deep),
        Polygon((*reversed(down), *seam), "", "ember", BOLD, closed=False),
        Polygon(left, "hairline", "ink", LINE),
        Polygon(right, "hairline", "ink", LINE),
        Polygon(left[1:6], "", "ember", BOLD, closed=False),
        Polygon(right[1:6], "", "ember", BOLD, closed=False),
        *arrow(14, 63, 31, 63),
        *arrow(62, 63, 45, 63),
        *notes(
            82,
            (seam[3], 16, ("a line right across", "the ingot, down its", "side")),
            ((38.4, 54), 54, ("cut through: two cold", "fronts met and did", "not join")),
        ),
    ]
    return Picture(
        WIDE,
        75,
        tuple(shapes),
        "Above, an ingot with a wavering line that runs right across its top and down its side. "
        "Below, the same place cut through and larger: two tongues of metal with rounded "
        "noses met from left and right, touch, and did not join; a gap is left between them.",
    )


def shot_in_ingot() -> Picture:
    """Beads of the first splash, frozen and caught near the foot of the ingot."""
    shapes: list[Shape] = [
        Rect(14, 6, 46, 60, "hairline", "ink"),
        _mould(14, 6, 60, 66),
        *arrow(22, 12, 22, 24),
        label(25, 19.5, "poured so", role="ash"),
    ]
    for n, (px, py) in enumerate(
        run((19, 61), (26, 55.5), (31, 62), (38, 57), (43, 62.4), (50, 55), (55.6, 60), (45, 48.5))
    ):
        r = 1.5 + 0.9 * (n * 0.618 % 1)
        shapes += [
            Circle(px, py, r + 0.9, "paper", "ember", HAIRLINE),
            Circle(px, py, r, "ember", ""),
        ]
        shapes.append(speck(px + r + 1.5, py - r - 0.6, 0.8, n))
    shapes += notes(
        76,
        ((50, 55), 42, ("beads that splashed", "and froze at once")),
        ((56, 57.4), 57, ("a gap round each, and", "small pits beside it")),
        ((65, 69), 70, ("foot of the mould",)),
    )
    return Picture(
        WIDE,
        76,
        tuple(shapes),
        "An ingot in its upright mould, cut open. Near the foot, where the pour began, eight "
        "round beads of metal sit in the ingot; a thin gap runs round each of them, because it "
        "froze before the rest, and small pits lie beside it. Above, the metal is sound.",
    )


def pipe() -> Picture:
    """An ingot with its funnel left on, and the slit that rolling makes of it."""
    upper = run((8, 10.5), (13, 12), (18, 14.5), (24, 17.2), (31, 19), (38, 20))
    funnel = (*upper, *((px, 40 - py) for px, py in reversed(upper[:-1])))
    shapes: list[Shape] = [
        Rect(8, 8, 62, 24, "hairline", ""),
        Polygon(run((8, 10.5), (8, 8), (70, 8), (70, 32), (8, 32), (8, 29.5)), closed=False),
        Polygon(funnel, "paper", "ember", BOLD, closed=False),
        Line(43, 5, 43, 35, "ink", LINE, dash=True),
        *arrow(40, 39, 40, 48),
        label(43.5, 45, "rolled with the pipe left on", role="ash"),
        Polygon(run((8, 54), (112, 54), (112, 63), (8, 63)), "hairline", "ink", LINE),
        Polygon(run((8, 57.4), (38, 57.9), (68, 58.6), (38, 59.2), (8, 59.6)), "ember", "", LINE),
        *notes(
            76,
            ((27, 18), 10, ("pipe: a funnel at the", "pouring end")),
            ((43, 29), 27, ("crop here first",)),
        ),
        *notes(48, ((30, 58.7), 72, ("a slit in mid thickness, from one end",))),
    ]
    return Picture(
        WIDE,
        77,
        tuple(shapes),
        "Above, an ingot lying down and cut lengthwise: from its pouring end a funnel runs into "
        "the middle; a dashed line past its tip shows where to crop. Below, the same ingot "
        "rolled without cropping: a thin slit runs in mid thickness from that one end.",
    )


def hot_tear() -> Picture:
    """An ingot held by the shoulders of its mould while it shrank."""
    upper = run((6, 14), (26, 14), (26, 24), (56, 24), (56, 14), (76, 14), (76, 8), (6, 8))
    lower = tuple((px, 76 - py) for px, py in upper)
    metal = run((8, 14), (26, 14), (26, 24), (56, 24), (56, 14), (74, 14), (74, 62), (56, 62))
    rest = run((56, 52), (26, 52), (26, 62), (8, 62))
    shapes: list[Shape] = [
        Polygon((*metal, *rest), "hairline", "ink", LINE),
        Polygon(upper, "ash", "ink", LINE),
        Polygon(lower, "ash", "ink", LINE),
        crack(26, 24, 82, 25, 3.4),
        crack(56, 52, -110, 8, 1.4),
        *arrow(14, 38, 21, 38),
        *arrow(68, 38, 61, 38),
        label(41.5, 39.2, "shrinks", anchor="middle", role="ash"),
        *notes(
            84,
            ((76, 11), 11, ("the mould holds", "the shoulders")),
            ((28.6, 36), 30, ("ragged tear, dark", "inside: it opened", "hot")),
            ((55, 47), 54, ("again at a corner",)),
        ),
    ]
    return Picture(
        WIDE,
        72,
        tuple(shapes),
        "A dumbbell-shaped ingot in its mould, seen from above. The mould holds its two thick "
        "ends apart while the thin middle shrinks, as two arrows show. A ragged, dark tear runs "
        "across it from an inner corner where the section changes; a second one begins opposite.",
    )


def spitting() -> Picture:
    """Metal thrown back out of a damp mould."""
    stream = run((24, 14), (29, 17), (30.6, 26), (30.8, 68), (29.4, 68), (29, 27), (26, 20))
    lip = run((4, 6), (20, 6), (25, 14.5), (21, 20), (8, 20), (4, 14))
    shapes: list[Shape] = [
        *[moved(line, 34.5, 5) for line in hatching(0, 0, 31.5, 25, 3.0)],
        Rect(34.5, 5, 31.5, 25, "", "ink", HAIRLINE),
        _mould(26, 36, 46, 70),
        Polygon(run((26, 60), (46, 58), (46, 70), (26, 70)), "hairline", "", HAIRLINE),
        Polygon(stream, "hairline", "ink", HAIRLINE),
        Polygon(lip, "ash", "ink", LINE),
    ]
    for n, (px, py) in enumerate(run((30, 66), (36, 67), (41, 65), (38, 61.5), (43.5, 61))):
        shapes.append(Circle(px, py, 1.0 + n % 2 * 0.6, "paper", "ink", HAIRLINE))
    for far, high, share in ((6, 46, 0.6), (14, 42, 0.68), (22, 36, 0.74), (30, 30, 0.8)):
        path = tuple(_thrown(36, 58, far, high, share * n / 12) for n in range(13))
        shapes.append(Polygon(path, "", "ember", BOLD, closed=False))
        shapes.append(Circle(*path[-1], 1.6, "ember", ""))
    shapes += notes(
        78,
        ((64, 12), 12, ("hatched: no face,", "no hands above", "the mouth")),
        ((60, 38.8), 40, ("metal shoots back out",)),
        ((42, 65), 60, ("damp or oil boils", "under the metal")),
    )
    return Picture(
        WIDE,
        79,
        tuple(shapes),
        "Metal runs from a crucible into an upright mould, cut open. Bubbles of steam rise under "
        "it from the damp foot of the mould, and drops of metal shoot back up and out of the "
        "mouth. The space above the mouth is hatched: keep face and hands out of it.",
    )


def _thrown(x: float, y: float, far: float, high: float, share: float) -> Point:
    """Where a drop thrown from (x, y), so far and high [mm], is after a share of its way [1]."""
    return x + far * share, y - 4 * high * share * (1 - share)


def stuck_in_mould() -> Picture:
    """The two halves of a mould opened like a book, with skin torn off the ingot."""
    shapes: list[Shape] = []
    for left in (6.0, 50.0):
        shapes.append(Rect(left, 6, 36, 58, "ash", "ink"))
    shapes.append(Rect(12, 6, 24, 52, "hairline", "ink"))
    shapes.append(Rect(56, 6, 24, 52, "paper", "ink", HAIRLINE))
    patches = (
        run((15, 20), (19, 16), (26, 18), (29, 23), (25, 29), (20, 27), (16, 30)),
        run((25, 40), (31, 37), (33, 44), (29, 51), (23, 48)),
    )
    for patch in patches:
        shapes.append(Polygon(patch, "paper", "ember", BOLD))
        mirror = tuple((92 - px, py) for px, py in patch)
        shapes.append(Polygon(mirror, "ember", "ember", HAIRLINE))
    for px, py in ((21.0, 21.0), (22.0, 24.0), (27.0, 42.0), (28.0, 45.0)):
        shapes.append(Line(px - 2.4, py + 1, px + 2.4, py - 1, "ember", LINE))
    shapes += notes(
        92,
        ((74, 22), 18, ("skin left on", "the mould")),
        ((60, 53), 40, ("empty half",)),
    )
    shapes.append(label(24, 70, "stuck ingot, its", anchor="middle"))
    shapes.append(label(24, 74.4, "skin torn off", anchor="middle"))
    return Picture(
        WIDE,
        78,
        tuple(shapes),
        "The two halves of a mould opened like a book. In the left half the ingot sticks, with "
        "two ragged hollows in its face. In the empty right half two patches of the same outline "
        "cling to the wall: the skin that tore off the ingot.",
    )


PICTURES: Mapping[str, Callable[[], Picture]] = MappingProxyType(
    {
        "fault-short-ingot": short_ingot,
        "fault-cold-shut": cold_shut,
        "fault-shot-in-ingot": shot_in_ingot,
        "fault-pipe": pipe,
        "fault-hot-tear": hot_tear,
        "fault-spitting": spitting,
        "fault-stuck-in-mould": stuck_in_mould,
    }
)
