"""What the pictures of faults share: cracks, specks, slabs, rolls, notes, in millimetres."""

from __future__ import annotations

import math
import random
from collections.abc import Callable, Sequence

from temperbook.drawing.draughting import LEADING, arc, arrow, curved_arrow, label, leader
from temperbook.drawing.shapes import BOLD, HAIRLINE, LINE, Line, Point, Polygon, Role, Shape
from temperbook.drawing.tessellation import Box, Cell, evened, tessellation

GOLDEN = 0.6180339887498949
SLANT, RISE = 0.7, 0.5  # of what lies behind the front of a slab, to the right and up [mm/mm]


def run(*points: Point) -> tuple[Point, ...]:
    """Points [mm] in their order: an outline."""
    return points


def notes(x: float, *entries: tuple[Point, float, tuple[str, ...]]) -> list[Shape]:
    """Leaders from spots [mm] to lines of text that begin at (x, y) [mm]."""
    found: list[Shape] = []
    for spot, y, words in entries:
        found += leader((spot, (x, y)), words[0])
        found += [label(x + 1.2, y + 1.2 + LEADING * n, word) for n, word in enumerate(words) if n]
    return found


def crack(x: float, y: float, angle: float, length: float, mouth: float = 1.6) -> Polygon:
    """A ragged wedge, `mouth` [mm] open at (x, y) [mm], that runs to a point `length` [mm] away.

    `angle` is in degrees, clockwise from the right.
    """
    dx, dy = math.cos(math.radians(angle)), math.sin(math.radians(angle))
    steps = max(3, round(length / 1.6))
    left: list[Point] = []
    right: list[Point] = []
    for n in range(steps + 1):
        share = n / steps
        half = mouth / 2 * (1 - share)
        stray = min(0.5, length / 16) * (1 if n % 2 else -1) if n else 0.0
        at_x, at_y = x + dx * length * share - dy * stray, y + dy * length * share + dx * stray
        left.append((at_x - dy * half, at_y + dx * half))
        right.append((at_x + dy * half, at_y - dx * half))
    return Polygon((*left, *reversed(right)), "ember", "ember", HAIRLINE)


def rift(points: Sequence[Point], width: float, *, sharp: bool = True) -> Polygon:
    """A gap along points [mm], at most `width` [mm] wide in its middle; pointed unless not sharp"""
    last = len(points) - 1
    upper: list[Point] = []
    lower: list[Point] = []
    for n, (x, y) in enumerate(points):
        (x1, y1), (x2, y2) = points[max(0, n - 1)], points[min(last, n + 1)]
        long = math.hypot(x2 - x1, y2 - y1)
        half = width / 2 * (math.sin(math.pi * n / last) if sharp else 1.0)
        upper.append((x + (y2 - y1) / long * half, y - (x2 - x1) / long * half))
        lower.append((x - (y2 - y1) / long * half, y + (x2 - x1) / long * half))
    return Polygon((*upper, *reversed(lower)), "ember", "ember", HAIRLINE)


def speck(x: float, y: float, r: float, seed: int, long: float = 1.0) -> Polygon:
    """An angular grain about `r` [mm] in radius, `long` times as long as high, by its seed."""
    radii = [r * (0.62 + 0.38 * ((seed + 1) * GOLDEN * (n + 2) % 1)) for n in range(7)]
    turns = [2 * math.pi * n / 7 + seed for n in range(7)]
    points = tuple(
        (x + long * radius * math.cos(turn), y + radius * math.sin(turn))
        for radius, turn in zip(radii, turns, strict=True)
    )
    return Polygon(points, "ember", "ember", HAIRLINE)


def cells(box: Box, step: float, seed: int) -> tuple[Cell, ...]:
    """Grains about `step` [mm] across that fill a box [mm]."""
    chance = random.Random(seed)
    left, top, right, bottom = box
    count = round((right - left) * (bottom - top) / step**2)
    seeds = [(chance.uniform(left, right), chance.uniform(top, bottom)) for _ in range(count)]
    return tuple(cell for cell in tessellation(evened(seeds, box), box) if cell)


def slab(x: float, y: float, wide: float, high: float, deep: float) -> list[Shape]:
    """A slab seen from above its front: the front's corner at (x, y) [mm]."""
    dx, dy = deep * SLANT, -deep * RISE
    top = run((x, y), (x + wide, y), (x + wide + dx, y + dy), (x + dx, y + dy))
    right = x + wide
    end = run((right, y), (right + dx, y + dy), (right + dx, y + dy + high), (right, y + high))
    front = run((x, y), (right, y), (right, y + high), (x, y + high))
    return [
        Polygon(top, "paper", "ink", LINE),
        Polygon(end, "hairline", "ink", LINE),
        Polygon(front, "hairline", "ink", LINE),
    ]


def on_top(x: float, y: float, wide: float, deep: float, u: float, v: float) -> Point:
    """A place [mm] on the top of a slab, `u` [1] of its width along and `v` [1] back."""
    return x + u * wide + v * deep * SLANT, y - v * deep * RISE


def roll(
    x: float, y: float, way: float, r: float, shown: float, *, turn: float = 1.0
) -> list[Shape]:
    """A roll that touches at (x, y) [mm] and lies below (way 1) or above (way -1) of it.

    `shown` [mm] of it are drawn, all of it where that is its diameter; turn 0 leaves the arrow out.
    """
    centre = y + way * r
    spread = math.degrees(math.acos(max(-1.0, (r - shown) / r)))
    face = arc(x, centre, r, -way * 90 - spread, -way * 90 + spread, 40)
    found: list[Shape] = [Polygon(face, "ash", "ink", LINE)]
    if turn:
        swing = 600 / r * turn
        found += curved_arrow(
            x, centre, r - 4.5, -way * 90 - way * swing, -way * 90 + way * swing, "paper"
        )
    return found


def rolled_way(x1: float, x2: float, y: float) -> list[Shape]:
    """A two-headed arrow [mm] with the words for the direction of rolling under it."""
    return [
        *arrow(x1, y, x2, y, "ash", HAIRLINE, both=True),
        label((x1 + x2) / 2, y + 4.6, "rolled this way", anchor="middle", role="ash"),
    ]


def sheet_mesh(
    x: float, y: float, lift: Callable[[float, float], float], marked: Callable[[float], bool]
) -> list[Shape]:
    """A sheet 84 mm long seen from above one edge; `lift` [mm] by place along [1] and across (-1
    to 1); lines along it for which `marked` holds are drawn as the fault."""
    long, half = 84.0, 16.0

    def place(u: float, s: float) -> Point:
        return x + long * u - half * SLANT * s, y + half * RISE * s * 1.4 - lift(u, s)

    found: list[Shape] = []
    along = [n / 60 for n in range(61)]
    # from the back edge to the front one: what stands up in front hides what lies behind it
    for n in range(9):
        line = n / 4 - 1
        points = tuple(place(u, line) for u in along)
        if n:
            behind = [place(u, line - 0.25) for u in reversed(along)]
            found.append(Polygon((*points, *behind), "hairline", "", HAIRLINE))
            for k in range(13):
                across = tuple(place(k / 12, line - 0.25 + 0.05 * m) for m in range(6))
                outer = k in (0, 12)
                found.append(Polygon(across, "", "ink" if outer else "ash", HAIRLINE, closed=False))
            if marked(line - 0.25):  # the strip in front covered half of the fault
                found.append(Polygon(tuple(reversed(behind)), "", "ember", BOLD, closed=False))
        role: Role = "ember" if marked(line) else "ink" if abs(line) == 1 else "ash"
        width = BOLD if marked(line) else LINE if abs(line) == 1 else HAIRLINE
        found.append(Polygon(points, "", role, width, closed=False))
    return found


def break_line(x: float, y1: float, y2: float, *, bow: float = 1.0) -> Polygon:
    """The wavering line [mm] where the drawing of a longer piece ends."""
    points = tuple(
        (x + bow * math.sin(2 * math.pi * n / 10), y1 + (y2 - y1) * n / 10) for n in range(11)
    )
    return Polygon(points, "", "ink", HAIRLINE, closed=False)


def strip(x1: float, y1: float, x2: float, y2: float, fill: Role = "paper") -> list[Shape]:
    """A piece [mm] of a longer strip, its long sides drawn, its ends broken off."""
    ends = [break_line(x, y1, y2) for x in (x1, x2)]
    outline = (*ends[0].points, *reversed(ends[1].points))
    return [
        Polygon(outline, fill, "", HAIRLINE),
        Line(x1, y1, x2, y1, "ink", LINE),
        Line(x1, y2, x2, y2, "ink", LINE),
        *ends,
    ]
