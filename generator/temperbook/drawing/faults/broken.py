"""What several pictures of faults share: cracks, fields of grain, wire, rings, notes."""

from __future__ import annotations

import math
import random
from collections.abc import Sequence
from itertools import pairwise

from temperbook.drawing.draughting import LEADING, WIDE, arc, label, leader
from temperbook.drawing.shapes import (
    HAIRLINE,
    LINE,
    Anchor,
    Line,
    Picture,
    Point,
    Polygon,
    Role,
    Shape,
)
from temperbook.drawing.tessellation import Box, Cell, area, cut, evened, tessellation


def picture(height: float, shapes: Sequence[Shape], alt: str) -> Picture:
    """A finished picture as wide as all are [mm], its `height` [mm] and what it teaches."""
    return Picture(WIDE, height, tuple(shapes), alt)


def note(spot: Point, at: Point, *words: str, anchor: Anchor = "start") -> list[Shape]:
    """A leader from a spot to the first of some lines of words at a place [mm]."""
    gap = {"start": 1.2, "middle": 0.0, "end": -1.2}[anchor]
    found = leader((spot, at), words[0], anchor=anchor)
    for n, word in enumerate(words[1:], 1):
        found.append(label(at[0] + gap, at[1] + 1.2 + n * LEADING, word, anchor=anchor))
    return found


def ragged(start: Point, end: Point, stray: float = 0.8, seed: int = 1) -> tuple[Point, ...]:
    """A crooked run of points [mm] between two, which strays so far [mm] to the sides."""
    chance = random.Random(seed)
    far = math.dist(start, end)
    steps = max(3, round(far / 2.2))
    dx, dy = (end[0] - start[0]) / far, (end[1] - start[1]) / far
    found = [start]
    for n in range(1, steps):
        along = far * (n + chance.uniform(-0.3, 0.3)) / steps
        aside = stray * chance.uniform(0.3, 1.0) * (1 if n % 2 else -1)
        found.append((start[0] + dx * along - dy * aside, start[1] + dy * along + dx * aside))
    return (*found, end)


def crack(
    start: Point, end: Point, gape: float = 1.4, stray: float = 0.8, seed: int = 1
) -> Polygon:
    """A crack [mm]: `gape` [mm] wide where it starts, pointed where it ends."""
    return opened(ragged(start, end, stray, seed), gape)


def opened(middle: Sequence[Point], gape: float) -> Polygon:
    """A filled wedge about a run of points [mm], `gape` [mm] wide at the first, pointed at the
    last."""
    left: list[Point] = []
    right: list[Point] = []
    (x1, y1), (x2, y2) = middle[0], middle[-1]
    far = math.hypot(x2 - x1, y2 - y1)
    across = (-(y2 - y1) / far, (x2 - x1) / far)
    for n, (x, y) in enumerate(middle[:-1]):
        half = gape / 2 * (1 - n / (len(middle) - 1))
        left.append((x + across[0] * half, y + across[1] * half))
        right.append((x - across[0] * half, y - across[1] * half))
    return Polygon((*left, middle[-1], *reversed(right)), "ember", "ember", HAIRLINE)


def field(box: Box, step: float, seed: int = 3, evenings: int = 2) -> tuple[Cell, ...]:
    """Grains about `step` [mm] across that fill a box [mm]."""
    chance = random.Random(seed)
    left, top, right, bottom = box
    places: Sequence[Point] = [
        (chance.uniform(left, right), chance.uniform(top, bottom))
        for _ in range(max(4, round((right - left) * (bottom - top) / step**2)))
    ]
    for _ in range(evenings):
        places = evened(places, box)
    return tuple(cell for cell in tessellation(places, box) if cell and area(cell) > 0.05)


def grained(cells: Sequence[Cell], role: Role = "ash", width: float = HAIRLINE) -> list[Shape]:
    """Cells as metal: toned and plain ones mixed, their boundaries in a role."""
    return [
        Polygon(cell, "hairline" if n * 0.618 % 1 < 0.45 else "paper", role, width)
        for n, cell in enumerate(cells)
    ]


def edges(cells: Sequence[Cell]) -> tuple[tuple[Point, Point], ...]:
    """The boundaries [mm] that two cells share, each once."""
    met: dict[tuple[Point, Point], int] = {}
    for cell in cells:
        for one, two in pairwise((*cell, cell[0])):
            ends = sorted((round(x, 2), round(y, 2)) for x, y in (one, two))
            met[ends[0], ends[1]] = met.get((ends[0], ends[1]), 0) + 1
    return tuple(sorted(pair for pair, times in met.items() if times > 1))


def within(cell: Cell, x: float, y: float, r: float) -> Cell:
    """The part [mm] of a convex cell that lies in a circle about (x, y) [mm]."""
    for n in range(40):
        a, b = math.cos(math.tau * n / 40), math.sin(math.tau * n / 40)
        cell = cut(cell, a, b, a * x + b * y + r) if cell else ()
    return cell


def lens(x: float, y: float, r: float, step: float, seed: int = 3) -> list[Shape]:
    """A round window [mm] upon grains, without its rim."""
    cells = field((x - r, y - r, x + r, y + r), step, seed)
    return grained([kept for cell in cells if (kept := within(cell, x, y, r))])


def band(
    x: float, y: float, inner: float, outer: float, start: float = 0.0, end: float = 360.0
) -> Polygon:
    """A piece of a ring [mm] between two angles [degrees, clockwise from the right]."""
    steps = max(6, round(abs(end - start) / 6))
    far = arc(x, y, outer, start, end, steps)
    near = arc(x, y, inner, end, start, steps)
    return Polygon((*far, *near), "hairline", "ink", LINE)


def wire(x1: float, x2: float, y: float, half: float) -> list[Shape]:
    """A wire [mm] from the side, its ends left open: it runs on."""
    return [
        Polygon(((x1, y - half), (x2, y - half), (x2, y + half), (x1, y + half)), "hairline", ""),
        Line(x1, y - half, x2, y - half),
        Line(x1, y + half, x2, y + half),
    ]


def plate(x: float, y: float, half: float, mouth: float, high: float = 16.0) -> list[Shape]:
    """A drawplate cut through one hole [mm]: `half` is half the hole, `mouth` half its mouth; wire
    is pulled to the right. The plate is 16 mm thick, its bearing 4 mm long."""
    found: list[Shape] = []
    for way in (-1.0, 1.0):
        wall = (
            (x, y + way * mouth),
            (x + 10, y + way * half),
            (x + 14, y + way * half),
            (x + 16, y + way * (half + 1)),
        )
        outer = ((x + 16, y + way * high), (x, y + way * high))
        found.append(Polygon((*wall, *outer), "ash", "ink", LINE))
    return found


def flame(x: float, y: float, long: float, half: float) -> list[Shape]:
    """A flame [mm] whose tip points up to (x, y), with its inner cone."""
    found: list[Shape] = []
    for share in (1.0, 0.5):
        foot = y + long
        side = [
            (
                half * share * math.sin(math.pi * s) ** 0.8 * (0.4 + 0.6 * s),
                foot - long * share * (1 - s),
            )
            for s in (0.0, 0.15, 0.35, 0.55, 0.75, 0.92, 1.0)
        ]
        points = [(x - w, h) for w, h in side] + [(x + w, h) for w, h in reversed(side[1:-1])]
        found.append(Polygon(tuple(points), "", "ink", HAIRLINE))
    return found
