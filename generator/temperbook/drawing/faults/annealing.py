"""Faults that show in the anneal: overworked, blisters, orange peel, burnt, sweating, and kin."""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from types import MappingProxyType

from temperbook.drawing import grains
from temperbook.drawing.draughting import arc, arrow, label
from temperbook.drawing.faults import annealing_more
from temperbook.drawing.faults.broken import (
    crack,
    field,
    flame,
    grained,
    note,
    picture,
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
from temperbook.drawing.tessellation import centre


def overworked() -> Picture:
    """A strip in section: grains long and flat, slip lines, slanting cracks that meet."""
    x, y, wide, high = 4.0, 6.0, 112.0, 20.0
    part = grains.worked()
    shapes: list[Shape] = [
        *grains.outlines(part, x, y, 1.0, HAIRLINE),
        *grains.slip_lines(part, x, y),
        Rect(x, y, wide, high, "", "ink"),
    ]
    for n, at in enumerate((16.0, 34.0, 56.0, 74.0, 96.0)):
        shapes.append(crack((x + at, y), (x + at - 8, y + 11), 1.8, 0.5, n))
    for n, at in enumerate((30.0, 66.0, 88.0)):
        shapes.append(crack((x + at, y + high), (x + at + 7, y + 10), 1.8, 0.5, n + 7))
    shapes += note((x + 30.6, y + 4.6), (20.0, 36.0), "cracks slant in from both faces")
    shapes += note(
        (x + 108.0, y + 15.0), (94.0, 44.0), "grains drawn out flat, no give left", anchor="end"
    )
    return picture(
        50.0,
        shapes,
        "A strip cut lengthwise that was worked too far without an anneal. Its grains are long, "
        "flat and crossed by slip lines, and cracks slant into it from both faces.",
    )


def blisters() -> Picture:
    """A sheet in section with three bubbles on its face, one of them cut open."""
    y, high = 30.0, 9.0
    shapes: list[Shape] = [Rect(4, y, 112, high, "hairline", "ink")]
    shapes.append(Line(4, y + 3.0, 116, y + 3.0, "ash", HAIRLINE, dash=True))
    for x, half, rise in ((26.0, 9.0, 6.0), (61.0, 16.0, 11.0), (97.0, 6.0, 4.0)):
        shapes += _blister(x, y, half, rise)
    shapes += note((61, y - 4), (83.0, 10.0), "gas has swollen", "inside the sheet")
    shapes += note((21.0, y - 5.0), (15.0, 14.0), "skin lifted")
    shapes += note((97.0, y + 3.0), (82.0, 47.0), "an old hollow, rolled shut", anchor="end")
    return picture(
        52.0,
        shapes,
        "A sheet cut open after annealing. Its upper skin stands up in three domes of different "
        "size. Each is hollow: gas in an old pore that was rolled shut has swollen in the heat.",
    )


def _blister(x: float, y: float, half: float, rise: float) -> list[Shape]:
    """One dome [mm] over the face at y: skin in ember, hollow below it as paper."""
    steps = 20
    outer: list[Point] = []
    inner: list[Point] = []
    for n in range(steps + 1):
        share = 2 * n / steps - 1
        bell = (1 + math.cos(math.pi * share)) / 2
        outer.append((x + half * share, y - rise * bell))
        inner.append((x + half * 0.8 * share, y + 3.0 - (rise + 0.6) * bell))
    floor = [
        (x + half * 0.8 * (1 - 2 * n / 8), y + 3.0 + 0.8 * math.sin(math.pi * n / 8))
        for n in range(9)
    ]
    return [
        Polygon((*outer, (x + half, y + 1), (x - half, y + 1)), "hairline", "", HAIRLINE),
        Polygon((*inner, *floor), "paper", "ember", LINE),
        Polygon(tuple(outer), "", "ember", BOLD, closed=False),
    ]


def orange_peel() -> Picture:
    """A strip bent round: coarse grains, each of which stands out of the outer face."""
    x, y, inner, outer, leg = 36.0, 34.0, 12.0, 25.0, 13.0
    long = math.pi * (inner + outer) / 2
    shapes: list[Shape] = []
    bumps: list[Shape] = []
    for n, cell in enumerate(field((-leg, inner, long + leg, outer), 6.0, 5)):
        points: list[Point] = []
        for one, two in zip(cell, (*cell[1:], cell[0]), strict=True):
            top = min(one[1], two[1]) > outer - 0.01
            side = tuple(_bent(x, y, *_raised(one, two, k / 8, top, long), long) for k in range(9))
            points += side[:-1]
            if top:
                bumps.append(Polygon(side, "", "ember", BOLD, closed=False))
        shapes.append(Polygon(tuple(points), "hairline" if n % 2 else "paper", "ash", HAIRLINE))
    near = [_bent(x, y, -leg + (long + 2 * leg) * n / 60, inner, long) for n in range(61)]
    shapes += [Polygon(tuple(near), "", "ink", LINE, closed=False), *bumps]
    shapes += note(
        (x + 19.6, y - 18.6), (75.0, 13.0), "rough, pebbled skin", "where it is stretched"
    )
    shapes += note((x + 17.5, y - 4.0), (75.0, 30.0), "coarse grains: each", "stands out by itself")
    return picture(
        51.0,
        shapes,
        "A strip bent into an arch and cut open. Its grains are so coarse that few fill the "
        "thickness. On the stretched outer face every grain stands out as a bump of its own, like "
        "the skin of an orange.",
    )


def _raised(one: Point, two: Point, part: float, top: bool, long: float) -> Point:
    """A place between two corners [mm], raised in the middle where the strip is stretched."""
    s, t = (one[n] + part * (two[n] - one[n]) for n in (0, 1))
    bend = min(1.0, max(0.0, min(s, long - s) / 6 + 0.6)) if top else 0.0
    return (s, t + 1.9 * bend * math.sin(math.pi * part))


def _bent(x: float, y: float, s: float, t: float, long: float) -> Point:
    """A place along (s) and across (t) [mm] a strip that is bent half round about (x, y)."""
    if s < 0:
        return (x - t, y - s)
    if s > long:
        return (x + t, y + s - long)
    turn = math.pi * (1 - s / long)
    return (x + t * math.cos(turn), y - t * math.sin(turn))


def burnt() -> Picture:
    """A strip in section: skin wrinkled, grain boundaries melted, broken along them."""
    left, top, right, bottom = 6.0, 8.0, 104.0, 28.0
    cells = field((left, top, right, bottom), 9.5, 21)
    shapes: list[Shape] = []
    for n, cell in enumerate(cells):
        gone = 8.0 if centre(cell)[0] > 66 else 0.0
        moved = tuple((x + gone, y) for x, y in cell)
        shapes.append(Polygon(moved, "hairline" if n % 2 else "paper", "ember", BOLD))
    for start, end in ((left, 60.0), (right - 24, right + 8)):
        shapes.append(Polygon(_wrinkles(start, end, top), "paper", "", HAIRLINE))
        shapes.append(Polygon(_wrinkles(start, end, top)[:-2], "", "ink", LINE, closed=False))
    shapes += note((32.0, top + 1.0), (24.0, 37.0), "skin wrinkled")
    shapes += note((69.0, 18.0), (60.0, 37.0), "broken along melted grain edges")
    return picture(
        43.0,
        shapes,
        "A strip cut open after too much heat. Its skin is wrinkled, the boundaries of its coarse "
        "grains have melted to thick seams, and it has broken in two along them, round the grains.",
    )


def _wrinkles(start: float, end: float, top: float) -> tuple[Point, ...]:
    """A wavy skin [mm] from one x to another, then back round a strip above it."""
    steps = round((end - start) * 1.5)
    wave = [
        (start + (end - start) * n / steps, top + 0.5 + 0.7 * math.sin(n * 1.3 + math.sin(n / 5)))
        for n in range(steps + 1)
    ]
    return (*wave, (end, top - 0.8), (start, top - 0.8))


def sweating() -> Picture:
    """A bar on a brick: beads of melt on its face, fed from between the grains."""
    box = (12.0, 20.0, 66.0, 42.0)
    left, top, right, bottom = box
    cells = field(box, 7.5, 11)
    shapes: list[Shape] = grained(cells, "ember", LINE)
    shapes += [
        Rect(left, top, right - left, bottom - top, "", "ink"),
        Rect(6, bottom, 68, 5, "ash", "ink"),
    ]
    mouths = sorted(
        {p for c in cells for p in c if p[1] < top + 0.01 and left + 1 < p[0] < right - 1}
    )
    beads: list[tuple[float, float, float]] = []
    for n, (x, _) in enumerate(mouths):
        if not beads or x - beads[-1][0] > 7:
            r = 1.7 + 0.9 * (n * 0.618 % 1)
            beads.append((x, top - r * 0.75, r))
    beads += [(right + 1.4, 27.0, 1.8), (right + 2.0, 34.5, 2.4)]
    shapes += [Circle(x, y, r, "ember", "ink", HAIRLINE) for x, y, r in beads]
    x, y, r = beads[-3]
    shapes += note((x, y), (78.0, 12.0), "beads of melt", "sweat out")
    shapes += note((54.0, 31.0), (78.0, 29.0), "they come from", "between the grains")
    shapes.append(label(79.2, 46.6, "the bar keeps its shape", role="ash"))
    return picture(
        52.0,
        shapes,
        "A bar cut open, lying on a brick while it is annealed. Beads of liquid metal stand on its "
        "top and side. They came from between the grains, where it melted first, while the bar "
        "itself kept its shape.",
    )


def fire_cracking() -> Picture:
    """A hard strip from the side over a flame: it cracks by itself at the edge of the heat."""
    y, high = 9.0, 12.0
    shapes: list[Shape] = [
        Rect(6, y, 108, high, "hairline", "ink"),
        Polygon(arc(28, y + high, 10.5, 180, 360), "paper", "ash", HAIRLINE, closed=False),
        Line(6, y + high, 114, y + high),
        *flame(28, y + high + 1.5, 17, 5),
        Rect(26, y + high + 18.5, 4, 6, "ash", "ink", HAIRLINE),
        crack((43.0, y), (40.5, y + 11), 3.0, 0.8, 1),
        crack((52.0, y), (50.5, y + 6), 2.0, 0.6, 2),
        *arrow(41, 5.0, 33, 5.0, "ember"),
        *arrow(54, 5.0, 62, 5.0, "ember"),
        label(28, y + 8.8, "hot", anchor="middle"),
        label(86, y + 7.4, "still cold and hard", anchor="middle"),
        *note(
            (42.4, y + 5.0), (56.0, 31.0), "cracks by itself, in the flame,", "between hot and cold"
        ),
    ]
    return picture(
        48.0,
        shapes,
        "A hard strip from the side, heated by a flame at one place only. Between the hot place "
        "and the part that is still cold and hard, cracks open by themselves and pull apart.",
    )


PICTURES: Mapping[str, Callable[[], Picture]] = MappingProxyType(
    {
        "fault-overworked": overworked,
        "fault-blisters": blisters,
        "fault-orange-peel": orange_peel,
        "fault-burnt": burnt,
        "fault-sweating": sweating,
        "fault-fire-cracking": fire_cracking,
        **annealing_more.PICTURES,
    }
)
