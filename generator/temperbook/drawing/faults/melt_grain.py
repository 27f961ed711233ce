"""Faults of the grain that the melt brings: crumbling, iron inside, coarse crystals."""

from __future__ import annotations

import math
import random
from collections.abc import Callable, Mapping
from types import MappingProxyType

from temperbook.drawing import grains
from temperbook.drawing.draughting import WIDE, arc, arrow, label
from temperbook.drawing.faults.parts import GOLDEN, cells, crack, notes, run, speck, strip
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
from temperbook.drawing.tessellation import Cell, area, centre, chord


def _toned(cells: tuple[Cell, ...], width: float = HAIRLINE) -> list[Shape]:
    return [
        Polygon(cell, "hairline" if n * GOLDEN % 1 < 0.45 else "paper", "ink", width)
        for n, cell in enumerate(cells)
    ]


def hot_short() -> Picture:
    """A bar that falls apart along its grains at the first blow."""
    box = (8.0, 34.0, 62.0, 52.0)
    shapes: list[Shape] = [Rect(4, 56, 82, 5, "ash", "ink")]
    chance = random.Random(21)
    for n, cell in enumerate(cells(box, 6.2, 4)):
        x, _ = centre(cell)
        loose = max(0.0, (x - 36) / 26)
        dx, dy = loose * (6 + 12 * loose), 4 - loose * chance.uniform(-2.2, 6.0)
        low = max(py for _, py in cell)
        dy = min(dy, 56 - low - 0.3)
        moved_cell = tuple((px + dx, py + dy) for px, py in cell)
        tone = "hairline" if n * GOLDEN % 1 < 0.45 else "paper"
        if area(cell) > 3:
            shapes.append(Polygon(moved_cell, tone, "ember" if loose else "ink", LINE))
    shapes += [
        Rect(46, 6, 16, 12, "ash", "ink"),
        Line(54, 6, 54, 2, "ash", BOLD),
        *arrow(54, 20, 54, 30),
        crack(30, 38.4, 80, 11, 1.2),
        *notes(
            90,
            ((62, 12), 12, ("first blow",)),
            ((73, 47), 38, ("it falls apart", "along its grains")),
            ((86, 58.5), 58, ("anvil",)),
        ),
        label(6, 67, "The broken faces are grey and granular, not torn.", role="ash"),
    ]
    return Picture(
        WIDE,
        71,
        tuple(shapes),
        "A cast bar lies on an anvil under a hammer. At the first blow its end has crumbled into "
        "whole grains that lie loose, because the metal between them had no strength; a crack "
        "runs along grain edges into the rest. The broken faces are grey and granular.",
    )


def iron_specks() -> Picture:
    """Teeth of a saw blade in a sheet, and a magnet that lifts the filings."""
    blade: list[Point] = []
    for n in range(5):
        blade += [(22 + 4 * n, 51), (24.4 + 4 * n, 47.6)]
    magnet = (
        *arc(38, 18, 11, 180, 360),
        (49, 27), (43.6, 27), *arc(38, 18, 5.6, 360, 180), (32.4, 27), (27, 27),
    )  # fmt: skip
    shapes: list[Shape] = [
        *strip(8, 42, 72, 64, "hairline"),
        Polygon((*blade, (42, 51), (42, 54.6), (22, 54.6)), "ember", "ember", LINE),
        crack(42, 53, 4, 15, 1.4),
        crack(22, 53, 178, 8, 1.2),
        Polygon(magnet, "ash", "ink", LINE),
        Line(27, 24, 32.4, 24, "paper", LINE),
        Line(43.6, 24, 49, 24, "paper", LINE),
    ]
    for n in range(14):
        px = (27.6 if n % 2 else 44.2) + (n // 2) * 0.75
        tall = 2.2 + 3.0 * (n * GOLDEN % 1)
        shapes.append(Line(px, 27.4, px + (n % 3 - 1) * 0.6, 27.4 + tall, "ember", LINE))
    for n, (px, py) in enumerate(run((56, 41.4), (60, 41.5), (63, 41.3), (58, 41))):
        shapes.append(speck(px, py, 0.9, n))
    shapes += notes(
        80,
        ((49, 18), 14, ("magnet: it lifts the", "filings of the spot")),
        ((61, 41.4), 37, ("rust on the sheet",)),
        ((34, 53), 70, ("broken saw teeth",)),
        ((52, 53.6), 54, ("a crack beside the", "hard piece")),
    )
    return Picture(
        WIDE,
        76,
        tuple(shapes),
        "A sheet cut through, with a piece of toothed saw blade inside it and a crack running "
        "lengthwise from each end of that piece. Specks of rust stand on the surface. Above hangs "
        "a horseshoe magnet with a beard of iron filings from the spot on both poles.",
    )


def coarse_cast_grain() -> Picture:
    """The face of an ingot with large fern-like crystals and cracks along them."""
    box = (8.0, 6.0, 68.0, 58.0)
    found = cells(box, 15.5, 2)
    shapes: list[Shape] = _toned(found)
    for n, cell in enumerate(found):
        shapes += _fern(cell, n)
    middle = (38.0, 32.0)
    kept = {
        tuple(sorted((one, two)))
        for one, two in grains.seams(tuple(grains.Grain(cell, False, 0.0) for cell in found), box)
        if (one[0] + two[0]) / 2 > middle[0] + 6
    }
    for one, two in sorted(kept):
        shapes.append(Line(*one, *two, "ember", BOLD))
    shapes += [
        Polygon(((8, 6), (68, 6), (68, 58), (8, 58)), "", "ink", LINE),
        *notes(
            76,
            ((27, 20), 12, ("big crystals, like", "ferns or snowflakes")),
            (_longest(kept), 40, ("cracks follow their", "edges")),
        ),
        label(8, 64.5, "On the left as cast, on the right after first passes", role="ash"),
    ]
    return Picture(
        WIDE,
        69,
        tuple(shapes),
        "The face of an ingot with a few very large crystals, each with a fern pattern of its "
        "own direction, like frost on a window. On the right half cracks have opened in the "
        "first passes, and every one follows the border between two crystals.",
    )


def _longest(seams: set[tuple[Point, ...]]) -> Point:
    """The middle [mm] of the longest of the seams."""
    (x1, y1), (x2, y2) = max(sorted(seams), key=lambda seam: math.dist(seam[0], seam[1]))
    return (x1 + x2) / 2, (y1 + y2) / 2


def _fern(cell: Cell, n: int) -> list[Shape]:
    """A stem through the middle of a grain [mm] and its side branches, none beyond the grain."""
    middle, turn = centre(cell), n * GOLDEN * 360
    dx, dy = math.cos(math.radians(turn)), math.sin(math.radians(turn))
    back, ahead = 0.84 * _ahead(cell, middle, turn + 180), 0.84 * _ahead(cell, middle, turn)
    foot = (middle[0] - dx * back, middle[1] - dy * back)
    tall = back + ahead
    found: list[Shape] = [Line(*foot, foot[0] + dx * tall, foot[1] + dy * tall, "ash", LINE)]
    for k in range(1, 9):
        spot = (foot[0] + dx * tall * k / 9, foot[1] + dy * tall * k / 9)
        for way in (turn - 55, turn + 55):
            long = min(0.8 * _ahead(cell, spot, way), tall * (0.5 - 0.045 * k))
            tip_x = spot[0] + long * math.cos(math.radians(way))
            tip_y = spot[1] + long * math.sin(math.radians(way))
            found.append(Line(*spot, tip_x, tip_y, "ash", HAIRLINE))
    return found


def _ahead(cell: Cell, spot: Point, angle: float) -> float:
    """How far [mm] it is from a spot in a grain to its edge, at an angle [degrees]."""
    ends = chord(cell, spot, angle)
    dx, dy = math.cos(math.radians(angle)), math.sin(math.radians(angle))
    return max(((px - spot[0]) * dx + (py - spot[1]) * dy for px, py in ends or ()), default=0.0)


PICTURES: Mapping[str, Callable[[], Picture]] = MappingProxyType(
    {
        "fault-hot-short": hot_short,
        "fault-iron-specks": iron_specks,
        "fault-coarse-cast-grain": coarse_cast_grain,
    }
)
