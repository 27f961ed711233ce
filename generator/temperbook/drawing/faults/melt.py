"""Faults that the melt brings: pores, grit, segregation."""

from __future__ import annotations

import math
import random
from collections.abc import Callable, Mapping
from types import MappingProxyType

from temperbook.drawing.draughting import WIDE, arc, label
from temperbook.drawing.faults.parts import (
    GOLDEN,
    cells,
    notes,
    rolled_way,
    run,
    speck,
    strip,
)
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
)
from temperbook.drawing.tessellation import Cell, centre


def _shrunk(cell: Cell, share: float) -> Cell:
    """A cell [mm] drawn in towards its middle, its corners rounded off as far."""
    x, y = centre(cell)
    near = [(x + share * (px - x), y + share * (py - y)) for px, py in cell]
    cut = 0.24
    found: list[Point] = []
    for n, (px, py) in enumerate(near):
        for qx, qy in (near[n - 1], near[(n + 1) % len(near)]):
            found.append((px + cut * (qx - px), py + cut * (qy - py)))
    return tuple(found)


def shrinkage_sponge() -> Picture:
    """A sawn face with a spongy middle, and the spongy place enlarged."""
    shapes: list[Shape] = [Rect(6, 6, 26, 44, "hairline", "ink")]
    chance = random.Random(5)
    for n in range(46):
        px, py = 19 + chance.gauss(0, 3.0), 28 + chance.gauss(0, 6.0)
        shapes.append(speck(px, py, 0.5 + 0.4 * (n % 3) / 2, n))
    box = (44.0, 6.0, 84.0, 50.0)
    shapes.append(Rect(44, 6, 40, 44, "hairline", "ink"))
    for n, cell in enumerate(cells(box, 6.4, 8)):
        x, y = centre(cell)
        away = math.hypot((x - 64) / 16, (y - 28) / 18)
        gap = 0.8 if away < 0.55 else 0.89 if away < 0.95 else 1.0
        if gap < 1:
            shapes.append(Polygon(cell, "ember", "ember", HAIRLINE))
            shapes.append(Polygon(_shrunk(cell, gap), "paper", "ink", HAIRLINE))
        else:
            shapes.append(Polygon(cell, "hairline" if n % 3 else "paper", "ink", HAIRLINE))
    shapes += [
        Rect(14, 22, 10, 11, "", "ink"),
        Line(24, 22, 44, 6, "ink", HAIRLINE),
        Line(24, 33, 44, 50, "ink", HAIRLINE),
        label(6, 57, "sawn face:"),
        label(6, 61.4, "dull, spongy middle"),
        label(44, 57, "enlarged: jagged holes that branch"),
        label(44, 61.4, "between the crystals", role="ink"),
        *notes(90, ((82, 12), 12, ("sound metal",))),
    ]
    return Picture(
        WIDE,
        66,
        tuple(shapes),
        "Left, the sawn face of an ingot: its middle is a dull patch of many tiny holes, its rim "
        "is sound. Right, the patch enlarged: between the rounded crystals run jagged holes that "
        "branch and join; towards the rim the crystals touch and no hole is left.",
    )


def gas_porosity() -> Picture:
    """Round holes under the skin of an ingot."""
    chance = random.Random(11)
    shapes: list[Shape] = [Rect(6, 8, 56, 24, "hairline", "ink")]
    for n in range(60):
        depth, along = chance.uniform(1.3, 3.6), n / 60 * 160
        px, py = _round_the_rim(along, depth)
        shapes.append(Circle(px, py, 0.35 + 0.35 * (n * GOLDEN % 1), "ember", ""))
    shapes += [
        Rect(6, 40, 56, 26, "hairline", ""),
        Line(6, 44, 62, 44, "ink", LINE),
        Rect(6, 40, 56, 3.8, "paper", ""),
    ]
    for px, py, r in ((13.0, 51.0, 3.2), (23.0, 48.5, 2.2), (32.0, 53.0, 4.0), (43.0, 49.0, 2.6),
                      (53.0, 52.5, 3.4), (18.5, 57.5, 1.7), (39.0, 58.0, 1.3),
                      (58.0, 47.8, 1.4)):  # fmt: skip
        shapes += [Circle(px, py, r, "paper", "ember", BOLD)]
        shapes.append(Polygon(arc(px, py, r * 0.55, 190, 260), "", "ember", HAIRLINE, closed=False))
    shapes += notes(
        72,
        ((60.5, 12), 10, ("cut through: holes all", "round, close to the", "mould")),
        ((60, 44), 41, ("the skin of the ingot",)),
        ((56.4, 52.5), 52, ("enlarged: round holes,", "smooth inside: gas")),
        ((50, 63), 66, ("no holes deeper down",)),
    )
    return Picture(
        WIDE,
        71,
        tuple(shapes),
        "Above, the cut face of an ingot: a row of tiny round holes follows the skin all the way "
        "round, and the middle is sound. Below, a piece of that skin enlarged: the holes are "
        "round and smooth like bubbles, of several sizes, a little below the surface.",
    )


def _round_the_rim(along: float, depth: float) -> Point:
    """A place [mm] so far along the rim of the cut face and so deep under it."""
    at = along % 160
    if at < 56:
        return 6 + max(at, depth), 8 + depth
    if at < 80:
        return 62 - depth, 8 + min(max(at - 56, depth), 24 - depth)
    if at < 136:
        return 62 - max(at - 80, depth), 32 - depth
    return 6 + depth, 32 - min(max(at - 136, depth), 24 - depth)


def crucible_grit() -> Picture:
    """Grains of crucible drawn out as streaks in sheet, and a graver that meets one."""
    shapes: list[Shape] = [*strip(8, 6, 72, 34)]
    for n, (px, py) in enumerate(run((18, 13), (34, 27), (46, 11), (52, 22), (26, 20))):
        shapes.append(speck(px, py, 1.5, n, 1.3))
        for way, stretch in ((0.0, 13.0), (-0.8, 9.0), (0.8, 10.0)):
            shapes.append(Line(px + 1, py + way, px + stretch, py + way * 0.6, "ember", LINE))
    graver = run((53, 39), (60, 39), (41.5, 54.8), (39.4, 54.6), (40.2, 52.6), (39, 51))
    shapes += [
        *rolled_way(14, 34, 38),
        *strip(8, 56, 72, 70, "hairline"),
        speck(36, 57.2, 3.0, 4, 1.5),
        Polygon(graver, "ash", "ink", LINE),
        *notes(
            80,
            ((59, 11), 11, ("a streak behind", "each hard grain")),
            ((36, 58), 66, ("a bit of crucible, hard", "as a stone")),
            ((41, 53.4), 46, ("the graver chips on it",)),
        ),
    ]
    return Picture(
        WIDE,
        74,
        tuple(shapes),
        "Above, a sheet from above: five dark angular grains, each with a streak behind it that "
        "runs in the rolling direction. Below, the sheet cut through: a hard grain from the "
        "crucible sits in its surface, and the point of a graver has chipped on it.",
    )


def segregation() -> Picture:
    """A cut ingot whose middle is richer in one metal than its rim, and the course across it."""
    shapes: list[Shape] = [Rect(8, 6, 60, 28, "paper", "ink")]
    chance = random.Random(3)
    for _ in range(520):
        px, py = chance.uniform(9, 67), chance.uniform(7, 33)
        rich = max(0.0, 1 - math.hypot((px - 38) / 28, (py - 20) / 13))
        if chance.uniform(0, 1) < 0.04 + 1.3 * rich:
            shapes.append(Rect(px - 0.35, py - 0.35, 0.7, 0.7, "ember", ""))
    course = tuple((8 + n, 66 - 4 - 20 * math.exp(-(((n - 30) / 14) ** 2))) for n in range(61))
    shapes += [
        Line(8, 42, 8, 66, "ink", LINE),
        Line(8, 66, 68, 66, "ink", LINE),
        Polygon(course, "", "ember", BOLD, closed=False),
        label(8, 71.5, "edge", anchor="middle", role="ash"),
        label(38, 71.5, "middle", anchor="middle", role="ash"),
        label(68, 71.5, "edge", anchor="middle", role="ash"),
    ]
    for px in (8.0, 38.0, 68.0):
        shapes.append(Line(px, 34, px, 66, "ash", HAIRLINE, dash=True))
    shapes += notes(
        76,
        ((65, 10), 10, ("rim: froze first",)),
        ((42, 19), 23, ("middle: froze last, and", "is richer in one metal")),
        ((48.4, 49.9), 50, ("the same hill in every", "cut; bad mixing would", "have none")),
    )
    return Picture(
        WIDE,
        75,
        tuple(shapes),
        "Above, the cut face of an ingot; dots stand for one of its metals. They are few along "
        "the rim, which froze first, and crowd in the middle, which froze last. Below, a curve of "
        "that metal's share across the cut: low at both edges and a hill in the middle.",
    )


PICTURES: Mapping[str, Callable[[], Picture]] = MappingProxyType(
    {
        "fault-shrinkage-sponge": shrinkage_sponge,
        "fault-gas-porosity": gas_porosity,
        "fault-crucible-grit": crucible_grit,
        "fault-segregation": segregation,
    }
)
