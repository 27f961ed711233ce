"""Grains of one piece of metal in its four states: as cast, worked, annealed, overheated.

The worked grains are the cast ones: each is made a third as high and three times as long, and keeps
its area. The piece is seen from the side: it is rolled to the left and right, and its mould had
walls above and below.
"""

from __future__ import annotations

import random
from collections.abc import Sequence
from dataclasses import dataclass
from functools import cache

from temperbook.drawing.shapes import HAIRLINE, LINE, Line, Point, Polygon, Shape
from temperbook.drawing.tessellation import (
    Box,
    Cell,
    area,
    centre,
    chord,
    evened,
    inside,
    tessellation,
)

STRETCH = 3.0  # how many times as long the worked piece is, and as thin
CAST: Box = (0.0, 0.0, 112.0 / STRETCH, 60.0)
WORKED: Box = (0.0, 0.0, CAST[2] * STRETCH, CAST[3] / STRETCH)
CHILL = 2.4  # depth of the chilled grains [mm]
SEED = 24
GOLDEN = 0.6180339887498949
LEAST = 0.01  # what is smaller is no grain but a slip of the arithmetic [mm2]
BEYOND = 12.0  # seeds lie outside a cut end as well, so that grains run on past it


@dataclass(frozen=True)
class Grain:
    """One grain: its outline [mm], whether it is toned, and the slope of its planes [degrees]."""

    cell: Cell
    toned: bool
    slope: float


@cache
def cast() -> tuple[Grain, ...]:
    """As cast: small chilled grains at both walls, columns from them, coarse ones in the middle."""
    chance = random.Random(SEED)
    _, top, _, bottom = CAST
    seeds: list[Point] = []
    weights: list[float] = []
    for wall, inward in ((top, 1.0), (bottom, -1.0)):
        for x, depth in _row(chance, CHILL / 3, 2.3, (0.5, 0.2)):
            seeds.append((x, wall + inward * depth))
            weights.append(0.0)
        for x, depth in _row(chance, 12.0, 4.4, (0.8, 0.8)):
            seeds.append((x, wall + inward * depth))
            # so heavy that its column starts where the chilled grains end
            weights.append((depth - CHILL) ** 2 - (CHILL * 2 / 3) ** 2)
    for x, y in _row(chance, (top + bottom) / 2, 9.0, (1.2, 2.6)):
        seeds.append((x, y))
        weights.append(0.0)
    return _grains(seeds, CAST, weights)


def _row(chance: random.Random, y: float, step: float, stray: tuple[float, float]) -> list[Point]:
    found: list[Point] = []
    x = CAST[0] - BEYOND
    while x < CAST[2] + BEYOND:
        found.append((x + chance.uniform(-1, 1) * stray[0], y + chance.uniform(-1, 1) * stray[1]))
        x += step
    return found


@cache
def worked() -> tuple[Grain, ...]:
    """The cast grains after rolling: flattened and drawn out, each with its area kept."""
    return tuple(
        Grain(tuple((x * STRETCH, y / STRETCH) for x, y in grain.cell), grain.toned, grain.slope)
        for grain in cast()
    )


@cache
def annealed() -> tuple[Grain, ...]:
    """After a right anneal of the worked piece: new grains, fine and even."""
    return _equiaxed(3.6, 0.36, 1)


@cache
def overheated() -> tuple[Grain, ...]:
    """The same piece held too hot: few grains, and coarse ones."""
    return _equiaxed(15.0, 0.4, 0)


def _equiaxed(step: float, stray: float, evenings: int) -> tuple[Grain, ...]:
    """Grains about `step` [mm] across on the worked piece, from a shaken triangular net."""
    chance = random.Random(SEED)
    left, top, right, bottom = WORKED
    beyond = 1.5 * step
    rows = max(2, round((bottom - top) / (step * 0.87)))
    seeds: list[Point] = []
    for row in range(rows):
        y = top + (row + 0.5) * (bottom - top) / rows
        x = left - beyond + (step / 2 if row % 2 else 0.0)
        while x < right + beyond:
            shaken = y + chance.uniform(-stray, stray) * step
            seeds.append(
                (
                    x + chance.uniform(-stray, stray) * step,
                    min(max(shaken, top + 0.5), bottom - 0.5),
                )
            )
            x += step
    wide = (left - beyond, top, right + beyond, bottom)
    places: Sequence[Point] = seeds
    for _ in range(evenings):
        places = evened(places, wide)
    return _grains(places, WORKED)


def _grains(seeds: Sequence[Point], box: Box, weights: Sequence[float] = ()) -> tuple[Grain, ...]:
    """The cells as grains; tones and slopes by the golden section, which spreads them evenly."""
    wide = (box[0] - BEYOND, box[1], box[2] + BEYOND, box[3])
    found: list[Grain] = []
    for n, cell in enumerate(tessellation(seeds, wide, weights)):
        kept = inside(cell, box) if cell else ()
        if kept and area(kept) > LEAST:
            found.append(Grain(kept, n * GOLDEN % 1 < 0.45, n * GOLDEN * 180 % 180))
    return tuple(found)


def window(grains: Sequence[Grain], box: Box) -> tuple[Grain, ...]:
    """The parts of the grains that lie in a box [mm], moved so that its corner is at zero."""
    found: list[Grain] = []
    for grain in grains:
        kept = inside(grain.cell, box)
        if kept and area(kept) > LEAST:
            moved = tuple((x - box[0], y - box[1]) for x, y in kept)
            found.append(Grain(moved, grain.toned, grain.slope))
    return tuple(found)


def outlines(
    grains: Sequence[Grain], x: float, y: float, scale: float = 1.0, width: float = LINE
) -> list[Shape]:
    """The grains as shapes, their corner at (x, y) [mm], boundaries `width` [mm] wide."""
    return [
        Polygon(
            placed(grain.cell, x, y, scale), "hairline" if grain.toned else "paper", "ink", width
        )
        for grain in grains
    ]


def placed(cell: Sequence[Point], x: float, y: float, scale: float) -> Cell:
    """A cell [mm] at another place and scale."""
    return tuple((x + scale * px, y + scale * py) for px, py in cell)


def seams(grains: Sequence[Grain], box: Box) -> tuple[tuple[Point, Point], ...]:
    """The boundaries [mm] between grains, each once; the edges of the box are none."""
    found: set[tuple[Point, Point]] = set()
    for grain in grains:
        for one, two in zip(grain.cell, grain.cell[1:] + grain.cell[:1], strict=True):
            if not any(_on_edge(one, box, side) and _on_edge(two, box, side) for side in range(4)):
                ends = sorted((round(x, 3), round(y, 3)) for x, y in (one, two))
                found.add((ends[0], ends[1]))
    return tuple(sorted(found))


def _on_edge(place: Point, box: Box, side: int) -> bool:
    return abs(place[side % 2] - box[side]) < 1e-6


def slip_lines(grains: Sequence[Grain], x: float, y: float, scale: float = 1.0) -> list[Shape]:
    """Slip lines across the worked grains, parallel in each, leaning to the rolling direction."""
    found: list[Shape] = []
    for grain in grains:
        slope = 20.0 + grain.slope / 9 if grain.slope < 90 else -20.0 - (180 - grain.slope) / 9
        middle = centre(grain.cell)
        for n in range(-6, 7):
            line = chord(grain.cell, (middle[0] + n * 3.2, middle[1]), slope)
            if line and area(grain.cell) > 6:
                (x1, y1), (x2, y2) = placed(_shortened(line, 0.8), x, y, scale)
                found.append(Line(x1, y1, x2, y2, "ash", HAIRLINE))
    return found


def twin_lines(grains: Sequence[Grain], x: float, y: float, scale: float = 1.0) -> list[Shape]:
    """Pairs of straight twin boundaries across every fourth of the larger grains."""
    found: list[Shape] = []
    for n, grain in enumerate(grains):
        if (n * GOLDEN + 0.3) % 1 > 0.24 or area(grain.cell) < 8:
            continue
        middle = centre(grain.cell)
        for offset in (-0.45, 0.45):
            line = chord(grain.cell, (middle[0] + offset, middle[1] + offset), grain.slope)
            if line:
                (x1, y1), (x2, y2) = placed(line, x, y, scale)
                found.append(Line(x1, y1, x2, y2, "ink", HAIRLINE))
    return found


def _shortened(line: tuple[Point, Point], share: float) -> tuple[Point, Point]:
    (x1, y1), (x2, y2) = line
    gone = (1 - share) / 2
    return (
        (x1 + gone * (x2 - x1), y1 + gone * (y2 - y1)),
        (x2 - gone * (x2 - x1), y2 - gone * (y2 - y1)),
    )
