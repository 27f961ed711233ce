"""Pictures grain-cast, grain-worked, grain-annealed, grain-overheated and grain-row."""

from __future__ import annotations

import math
from collections.abc import Sequence
from itertools import pairwise

from temperbook.drawing import grains
from temperbook.drawing.draughting import LEADING, WIDE, arrow, label, leader, titled
from temperbook.drawing.grains import Grain
from temperbook.drawing.shapes import (
    BOLD,
    HAIRLINE,
    LINE,
    Line,
    Picture,
    Point,
    Polygon,
    Rect,
    Shape,
)
from temperbook.drawing.tessellation import Box, inside, rectangle

MARGIN = 4.0
MOULD = 4.0  # thickness of the mould wall as drawn


def grain_cast() -> Picture:
    """A cast bar from the side, with what each zone of grain is."""
    x, y = 12.0, MARGIN + MOULD
    right, bottom = x + grains.CAST[2], y + grains.CAST[3]
    middle = (y + bottom) / 2
    shapes = grains.outlines(grains.cast(), x, y)
    for wall in (y - MOULD, bottom):
        shapes.append(Rect(x - 3, wall, right - x + 6, MOULD, "ash", "ink"))
    shapes += arrow(6, y + 1, 6, middle - 8) + arrow(6, bottom - 1, 6, middle + 8)
    texts = right + 13
    for spot, at, words in (
        ((right + 3, y - 2), y - 2, ("wall of the mould",)),
        ((right - 3, y + 1.2), y + 7, ("small grains, chilled",)),
        ((right - 2.6, y + 18), y + 16, ("columns: they grew", "away from the wall")),
        ((right - 4, middle), middle, ("coarse grains in the", "middle, frozen last")),
    ):
        shapes += leader((spot, (texts, at)), words[0])
        shapes += [label(texts + 1.2, at + 1.2 + LEADING, word) for word in words[1:]]
    return Picture(
        WIDE,
        bottom + MOULD + MARGIN,
        tuple(shapes),
        "A cast bar cut lengthwise, with a mould wall above and below. Along each wall lies a "
        "thin row of small grains. From them long columns grow straight inwards, several times "
        "longer than wide. In the middle, where the last metal froze, coarse grains of no "
        "direction lie between the tips of the columns.",
    )


def grain_worked() -> Picture:
    """The cast bar rolled thin: the same grains, long and flat, with slip lines."""
    shapes = _strip(grains.worked(), MARGIN)
    shapes[-1:-1] = grains.slip_lines(grains.worked(), MARGIN, MARGIN)
    under = MARGIN + grains.WORKED[3] + 6.5
    shapes.append(label(MARGIN, under, "The same grains, drawn out", bold=True))
    shapes += arrow(84, under - 1.2, 108, under - 1.2, both=True)
    shapes.append(label(MARGIN, under + LEADING, "and crossed by slip lines", role="ash"))
    shapes.append(label(96, under + LEADING, "rolled this way", anchor="middle", role="ash"))
    return Picture(
        WIDE,
        under + LEADING + MARGIN,
        tuple(shapes),
        "The same bar after rolling to a third of its thickness, at the same scale. It is three "
        "times as long, and so is each of its grains: flattened and drawn out in the rolling "
        "direction, with none gained and none lost. Fine parallel slip lines cross each grain "
        "at a slope of its own.",
    )


def grain_annealed() -> Picture:
    """The worked strip after a right anneal: fine new grains, with twins."""
    new = grains.annealed()
    shapes = _strip(new, MARGIN)
    shapes[-1:-1] = grains.twin_lines(new, MARGIN, MARGIN)
    under = MARGIN + grains.WORKED[3] + 6.5
    shapes.append(label(MARGIN, under, "New grains, small and even", bold=True))
    shapes.append(label(MARGIN, under + LEADING, "straight pairs of lines: twins", role="ash"))
    return Picture(
        WIDE,
        under + LEADING + MARGIN,
        tuple(shapes),
        "The rolled strip after a right anneal, at the same scale. Not one long grain is left. "
        "Many small new grains of even size fill it, about as wide as they are high. Some are "
        "crossed by a pair of straight parallel lines: annealing twins.",
    )


def grain_overheated() -> Picture:
    """The same strip held too hot: a few coarse grains with thick seams."""
    shapes = _strip(grains.overheated(), MARGIN)
    shapes[-1:-1] = dark_seams(grains.overheated(), grains.WORKED, MARGIN, MARGIN)
    under = MARGIN + grains.WORKED[3] + 6.5
    shapes.append(label(MARGIN, under, "Few grains, and large", bold=True))
    shapes.append(label(MARGIN, under + LEADING, "thick seams: they began to melt", role="ash"))
    return Picture(
        WIDE,
        under + LEADING + MARGIN,
        tuple(shapes),
        "The same strip after too much heat, at the same scale. Only a few very large grains "
        "are left; some reach nearly from face to face. Their boundaries are thick, with filled "
        "corners where three of them meet: there the metal began to melt.",
    )


ROW_SCALE = 0.6
ROW_MIDDLE = 22.0
ROW = (  # left edge and width [mm], title, word under it
    (4.0, 21.0, "cast", "columns"),
    (31.0, 38.0, "worked", "flat, hard"),
    (75.0, 18.0, "annealed", "small, new"),
    (98.0, 18.0, "overheated", "few, large"),
)


def grain_row() -> Picture:
    """The four states side by side at one scale."""
    shapes: list[Shape] = []
    states = (grains.cast(), grains.worked(), grains.annealed(), grains.overheated())
    for (x, width, title, word), found, whole in zip(
        ROW, states, (grains.CAST, *[grains.WORKED] * 3), strict=True
    ):
        start = (whole[2] - width / ROW_SCALE) / 2
        box = (start, whole[1], start + width / ROW_SCALE, whole[3])
        part = grains.window(found, box)
        high = whole[3] * ROW_SCALE
        y = ROW_MIDDLE - high / 2
        shapes += grains.outlines(part, x, y, ROW_SCALE, HAIRLINE * 1.5)
        if title == "worked":
            shapes += grains.slip_lines(part, x, y, ROW_SCALE)
        if title == "annealed":
            shapes += grains.twin_lines(part, x, y, ROW_SCALE)
        if title == "overheated":
            moved = (0.0, 0.0, box[2] - box[0], box[3] - box[1])
            shapes += dark_seams(part, moved, x, y, ROW_SCALE)
        shapes.append(Rect(x, y, width, high, "", "ink"))
        shapes += titled(x + width / 2, 46.5, title, word)
    for (x, width, *_), (following, *_) in pairwise(ROW[:3]):
        shapes += arrow(x + width + 1, ROW_MIDDLE, following - 1, ROW_MIDDLE)
    return Picture(
        WIDE,
        54,
        tuple(shapes),
        "Four pieces of one bar in a row, at one scale. Cast: thick, with long columns from "
        "both walls. Worked: a third as thick, the same grains drawn out flat. Annealed: many "
        "small, even new grains. Overheated: a few grains that fill the whole thickness, with "
        "dark seams.",
    )


def dark_seams(
    found: Sequence[Grain], box: Box, x: float, y: float, scale: float = 1.0
) -> list[Shape]:
    """Boundaries [mm] as thick lines, with a dark pocket where three of them meet."""
    shapes: list[Shape] = []
    met: dict[Point, list[Point]] = {}
    for one, two in grains.seams(found, box):
        (x1, y1), (x2, y2) = grains.placed((one, two), x, y, scale)
        shapes.append(Line(x1, y1, x2, y2, "ink", BOLD * max(scale, 0.75)))
        met.setdefault(one, []).append(two)
        met.setdefault(two, []).append(one)
    for corner, others in sorted(met.items()):
        if len(others) > 2:
            pocket = tuple(_towards(corner, other, 1.6) for other in others)
            drawn = inside(
                grains.placed(pocket, x, y, scale), (x, y, x + scale * box[2], y + scale * box[3])
            )
            shapes.append(Polygon(drawn, "ink", "", HAIRLINE))
    return shapes


def _towards(start: Point, end: Point, far: float) -> Point:
    share = min(0.5, far / math.dist(start, end))
    return (start[0] + share * (end[0] - start[0]), start[1] + share * (end[1] - start[1]))


def _strip(found: Sequence[Grain], at: float) -> list[Shape]:
    """The rolled piece with its corner at (at, at) [mm], its outline last."""
    shapes = grains.outlines(found, at, at)
    frame = grains.placed(rectangle(grains.WORKED), at, at, 1.0)
    shapes.append(Polygon(frame, "", "ink", LINE))
    return shapes
