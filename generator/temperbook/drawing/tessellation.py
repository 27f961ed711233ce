"""A plane cut into convex cells about seeds, and what is measured on a cell, in millimetres."""

from __future__ import annotations

import math
from collections.abc import Sequence

from temperbook.drawing.shapes import Point

Cell = tuple[Point, ...]
Box = tuple[float, float, float, float]  # left, top, right, bottom


def tessellation(
    seeds: Sequence[Point], box: Box, weights: Sequence[float] = ()
) -> tuple[Cell, ...]:
    """The cell [mm] of each seed [mm] inside a box [mm], in the order of the seeds.

    A cell is the box cut by the half-planes between its seed and the others, nearest first. Without
    weights it is the Voronoi cell; a weight [mm2] moves the boundaries outwards (power diagram). A
    seed that is left nothing has an empty cell.
    """
    even = weights or [0.0] * len(seeds)
    found = list(zip(seeds, even, strict=True))
    return tuple(_cell(seed, weight, found, box, bool(weights)) for seed, weight in found)


def _cell(
    seed: Point, weight: float, others: Sequence[tuple[Point, float]], box: Box, weighted: bool
) -> Cell:
    cell = rectangle(box)
    for other, its_weight in sorted(others, key=lambda o: (math.dist(seed, o[0]), o)):
        if other == seed:
            continue
        far = math.dist(seed, other)
        if not cell or (not weighted and far > 2 * max(math.dist(seed, corner) for corner in cell)):
            break
        a, b = other[0] - seed[0], other[1] - seed[1]
        c = (math.hypot(*other) ** 2 - math.hypot(*seed) ** 2 + weight - its_weight) / 2
        cell = cut(cell, a, b, c)
    return cell


def cut(cell: Cell, a: float, b: float, c: float) -> Cell:
    """What is left [mm] of a convex cell where a x + b y <= c."""
    kept: list[Point] = []
    for (x1, y1), (x2, y2) in zip(cell, cell[1:] + cell[:1], strict=True):
        side, next_side = a * x1 + b * y1 - c, a * x2 + b * y2 - c
        if side <= 0:
            kept.append((x1, y1))
        if (side < 0 < next_side) or (next_side < 0 < side):
            share = side / (side - next_side)
            kept.append((x1 + share * (x2 - x1), y1 + share * (y2 - y1)))
    return tuple(kept) if len(kept) > 2 else ()


def rectangle(box: Box) -> Cell:
    """The four corners [mm] of a box [mm]."""
    left, top, right, bottom = box
    return ((left, top), (right, top), (right, bottom), (left, bottom))


def inside(cell: Cell, box: Box) -> Cell:
    """The part [mm] of a cell that lies in a box [mm]; empty where none does."""
    left, top, right, bottom = box
    for a, b, c in ((-1.0, 0.0, -left), (1.0, 0.0, right), (0.0, -1.0, -top), (0.0, 1.0, bottom)):
        cell = cut(cell, a, b, c)
    return cell


def evened(seeds: Sequence[Point], box: Box) -> tuple[Point, ...]:
    """The seeds [mm] moved to the middles of their cells: cells of more even size."""
    return tuple(centre(cell) for cell in tessellation(seeds, box) if cell)


def area(cell: Cell) -> float:
    """Area [mm2] of a cell."""
    pairs = zip(cell, cell[1:] + cell[:1], strict=True)
    return abs(sum(x1 * y2 - x2 * y1 for (x1, y1), (x2, y2) in pairs)) / 2


def centre(cell: Cell) -> Point:
    """Centre of gravity [mm] of a cell."""
    twice = x = y = 0.0
    for (x1, y1), (x2, y2) in zip(cell, cell[1:] + cell[:1], strict=True):
        cross = x1 * y2 - x2 * y1
        twice += cross
        x += (x1 + x2) * cross
        y += (y1 + y2) * cross
    return (x / (3 * twice), y / (3 * twice))


def chord(cell: Cell, through: Point, angle: float) -> tuple[Point, Point] | None:
    """The ends [mm] of a line across a convex cell, through a point [mm] at an angle [degrees]."""
    dx, dy = math.cos(math.radians(angle)), math.sin(math.radians(angle))
    sides = [(x - through[0]) * dy - (y - through[1]) * dx for x, y in cell]
    met: list[Point] = []
    for n, (x1, y1) in enumerate(cell):
        x2, y2 = cell[(n + 1) % len(cell)]
        here, there = sides[n], sides[(n + 1) % len(cell)]
        if (here < 0) != (there < 0):
            share = here / (here - there)
            met.append((x1 + share * (x2 - x1), y1 + share * (y2 - y1)))
    return (met[0], met[1]) if len(met) == 2 else None
