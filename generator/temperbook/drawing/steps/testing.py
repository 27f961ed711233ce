"""Pictures of small tests before metal is worked, and of what a break says."""

from __future__ import annotations

import math

from temperbook.drawing import grains
from temperbook.drawing.draughting import WIDE, arc, arrow, curved_arrow, titled
from temperbook.drawing.pen import disc, drawn
from temperbook.drawing.shapes import HAIRLINE, LINE, Circle, Picture, Point, Polygon, Rect, Shape

SIDE = 28.0  # of a drawn face [mm]


def bend_test() -> Picture:
    """A strip bent over in a vice: whole outside, and cracked outside."""
    shapes: list[Shape] = []
    for x, sound in ((30.0, True), (90.0, False)):
        # the strip stands in the vice and bends to the right about (x + 7, 26)
        middle = (x + 7, 26.0)
        outer, inner = arc(*middle, 10, 180, 270, 16), arc(*middle, 6, 270, 180, 16)
        strip = (
            *((x - 3, 46.0), *outer, (x + 24, 16.0), (x + 24, 20.0)),
            *(*inner, (x + 1, 46.0)),
        )
        shapes.append(Polygon(strip, "hairline", "ink", LINE))
        shapes.append(Rect(x - 17, 30, 14, 16, "ash", "ink"))
        shapes.append(Rect(x + 1, 30, 14, 16, "ash", "ink"))
        shapes += curved_arrow(*middle, 15, 215, 265)
        if sound:
            continue
        for angle in (200.0, 214.0, 228.0, 242.0, 256.0):
            rim = arc(*middle, 10.2, angle - 3.6, angle + 3.6, 1)
            tip = arc(*middle, 7.0, angle, angle, 1)[0]
            shapes.append(Polygon((*rim, tip), "ember", "", HAIRLINE))
    shapes += titled(30, 54, "passes", "the outside is whole")
    shapes += titled(90, 54, "fails", "cracks across the outside")
    return Picture(
        WIDE,
        62,
        tuple(shapes),
        "Two strips stand in the jaws of a vice and are bent over to a right angle. The first "
        "passes: the outside of its bend is smooth and whole. The second fails: short cracks run "
        "across the outside of the bend and point inwards.",
    )


def bead_test() -> Picture:
    """A bead on the anvil under the hammer, and the two discs that it may become."""
    shapes: list[Shape] = [
        Rect(6, 36, 28, 4, "ash", "ink"),
        Circle(20, 31, 5, "hairline", "ink", LINE),
        Rect(11, 4, 18, 12, "ash", "ink"),
        *arrow(20, 17.5, 20, 24.6, "ink", 0.8),
        *arrow(38, 24, 44, 24),
        Circle(62, 24, 14, "hairline", "ink", LINE),
        Polygon(_split_disc(102, 24, 14), "hairline", "ember", 0.8),
    ]
    shapes += titled(20, 48, "a bead", "flatten it cold")
    shapes += titled(62, 48, "sound", "thin, with a whole rim")
    shapes += titled(102, 48, "brittle", "the rim splits")
    return Picture(
        WIDE,
        56,
        tuple(shapes),
        "A small bead of the melt lies on an anvil under a hammer, seen from the side. Beside it "
        "are two flattened beads seen from above. One is a thin disc with a whole round rim: the "
        "metal is sound. In the other deep splits run from the rim inwards: the metal is brittle.",
    )


def _split_disc(x: float, y: float, r: float) -> tuple[Point, ...]:
    """A disc with splits that run inwards from its rim [mm]."""
    found: list[Point] = []
    for n in range(7):
        start = 360 / 7 * n + 4
        found += arc(x, y, r, start, start + 42, 10)
        turn = math.radians(start + 42 + 3 + 3 * math.sin(5 * n))
        deep = r * (0.45 + 0.2 * math.cos(3 * n))
        found.append((x + deep * math.cos(turn), y + deep * math.sin(turn)))
    return tuple(found)


def reading_a_break() -> Picture:
    """Three broken faces: fibrous, crystalline, burnt."""
    y = 6.0
    shapes: list[Shape] = [Rect(6, y, SIDE, SIDE, "hairline", "ink")]
    for row in range(6):
        for n in range(11):
            x = 8.0 + n * 2.4 + (row % 2) * 0.8
            top = y + 1.6 + row * 4.3 + 0.9 * math.sin(n * 2.3 + row)
            tear = f"M {x} {top} C {x - 0.8} {top + 1} {x + 0.8} {top + 2} {x} {top + 3.2}"
            shapes.append(drawn(tear, LINE, "ash" if (n + row) % 3 else "ink"))
    part = grains.window(grains.overheated(), (30.0, 0.0, 50.0, 20.0))
    for x, burnt in ((46.0, False), (86.0, True)):
        scale = SIDE / 20
        if burnt:
            shapes += [
                Polygon(grains.placed(g.cell, x, y, scale), "ash" if g.toned else "hairline", "")
                for g in part
            ]
            shapes += _burnt(part, x, y, scale)
        else:
            shapes += grains.outlines(part, x, y, scale, LINE)
            shapes += grains.slip_lines(part, x, y, scale)
        shapes.append(Rect(x, y, SIDE, SIDE, "", "ink"))
    shapes += titled(20, 41.5, "fibrous", "grey and torn:", "tough metal")
    shapes += titled(60, 41.5, "crystalline", "bright facets:", "brittle, or coarse")
    shapes += titled(100, 41.5, "burnt", "dark and loose:", "melted between grains")
    return Picture(
        WIDE,
        54,
        tuple(shapes),
        "Three broken faces. Fibrous: grey, covered with short torn threads, the break of tough "
        "metal. Crystalline: bright flat facets with lines across them, the break of brittle or "
        "coarse metal. Burnt: the same coarse grains with thick dark gaps between them and holes "
        "where they meet, because the metal melted there.",
    )


def _burnt(part: tuple[grains.Grain, ...], x: float, y: float, scale: float) -> list[Shape]:
    """Thick gaps between the grains, and holes where they meet [mm]."""
    box = (0.0, 0.0, SIDE / scale, SIDE / scale)
    found: list[Shape] = []
    met: dict[Point, int] = {}
    for one, two in grains.seams(part, box):
        ends = grains.placed((one, two), x, y, scale)
        found.append(Polygon(ends, "", "ink", 0.8, closed=False))
        for end in ends:
            met[end] = met.get(end, 0) + 1
    found += [disc(*end, 1.2, "ink") for end, times in sorted(met.items()) if times > 2]
    return found
