"""Pictures of how often to anneal, how to quench sheet, and in which order to solder."""

from __future__ import annotations

from temperbook.drawing import grains
from temperbook.drawing.draughting import WIDE, arrow, label, leader, pointer, titled
from temperbook.drawing.pen import drawn, placed
from temperbook.drawing.shapes import HAIRLINE, LINE, Line, Picture, Polygon, Rect, Shape
from temperbook.drawing.signs.symbols import flame


def annealing_too_often() -> Picture:
    """The work between heats as a wedge, and the grain that either way leaves."""
    wide, high, scale = 50.0, 18.0, 0.9
    shapes: list[Shape] = []
    for x, found, heats in (
        (5.0, grains.annealed(), (0.9,)),
        (65.0, grains.overheated(), (0.22, 0.42, 0.62, 0.82)),
    ):
        wedge = ((x, 14.0), (x + wide, 17.0), (x + wide, 19.0), (x, 22.0))
        shapes.append(Polygon(wedge, "hairline", "ink", LINE))
        for share in heats:
            shapes += placed(flame("ember"), x + wide * share, 8.2, 0.42)
            shapes.append(Line(x + wide * share, 13, x + wide * share, 23, "ember", LINE))
        shapes += arrow(x + 19, 26, x + 31, 26, "ash")
        start = (grains.WORKED[2] - wide / scale) / 2
        box = (start, grains.WORKED[1], start + wide / scale, grains.WORKED[3])
        shapes += grains.outlines(grains.window(found, box), x, 31, scale, HAIRLINE * 1.5)
        shapes.append(Rect(x, 31, wide, high, "", "ink"))
    shapes += titled(30, 56, "one anneal, late", "much work before it: fine grain")
    shapes += titled(90, 56, "four anneals, early", "little work each: coarse grain")
    return Picture(
        WIDE,
        64,
        tuple(shapes),
        "Two bars are rolled from thick to thin; a flame marks each anneal. On the left there is "
        "one anneal near the end, after much work, and the grain below is small and even. On the "
        "right there are four, each after little work, and the grain has grown to a few large "
        "pieces.",
    )


def quench_edge_first() -> Picture:
    """Sheet that goes into water by its edge, and sheet that is dropped flat."""
    water, deep = 28.0, 20.0
    shapes: list[Shape] = []
    for x in (30.0, 90.0):
        tank = f"M {x - 23} 23 L {x - 23} {water + deep} L {x + 23} {water + deep} L {x + 23} 23"
        shapes.append(Rect(x - 23, water, 46, deep, "hairline"))
        shapes.append(drawn(tank, 0.8))
        shapes.append(Line(x - 23, water, x + 23, water, "ink", HAIRLINE))
    shapes += [
        Rect(29, 15, 2, 24, "ember", "ink"),
        drawn("M 28.6 19 L 28.6 13 L 25 4", 0.8),
        drawn("M 31.4 19 L 31.4 13 L 35 4", 0.8),
        *arrow(38, 12, 38, 24),
        *arrow(26, 44, 26, 33, "ash", HAIRLINE),
        *arrow(34, 44, 34, 33, "ash", HAIRLINE),
        drawn(
            "M 72 27 C 78 33 84 21 90 27 C 96 33 102 21 108 27 L 108 29 C 102 23 96 35 90 29 "
            "C 84 23 78 35 72 29 L 72 27",
            LINE,
            "ink",
            fill="ember",
        ),
        *arrow(90, 12, 90, 22),
    ]
    for x in (81.0, 99.0):
        shapes.append(drawn(f"M {x} 21 C {x - 3} 17 {x + 3} 14 {x} 10", LINE, "ash"))
    shapes += pointer(((78, 33), (80, 40)))
    shapes.append(label(90, 44, "steam caught under it", anchor="middle"))
    shapes += titled(30, 56, "edge first", "straight: both faces cool as one")
    shapes += titled(90, 56, "flat", "warped: one face cools first")
    return Picture(
        WIDE,
        64,
        tuple(shapes),
        "Two tanks of water. On the left a hot sheet, held in tongs, goes in upright, edge first: "
        "both faces cool together and it stays straight. On the right a hot sheet was dropped "
        "flat: steam is caught under it, one face cools before the other, and it is warped.",
    )


def solder_order() -> Picture:
    """Three joints in order; each solder flows at less heat than the one before."""
    foot = 50.0
    shapes: list[Shape] = [
        Line(12, 10, 116, 10, "ink", 0.8),
        label(64, 6.6, "the metal itself melts", anchor="middle"),
        *arrow(7, foot, 7, 8),
        label(4, 5, "hotter", role="ash"),
    ]
    for n, (name, flows) in enumerate((("hard", 18.0), ("medium", 26.0), ("easy", 34.0))):
        x = 29.0 + 35.0 * n
        shapes.append(Rect(x - 14, flows, 28, foot - flows, "hairline", "ink"))
        shapes.append(Line(x - 14, flows, x + 14, flows, "ember", 0.8))
        shapes.append(label(x, foot - 7.4, f"joint {n + 1}", anchor="middle", bold=True))
        shapes.append(label(x, foot - 3.0, name, anchor="middle"))
        if n:
            shapes.append(Line(x - 21, flows, x - 14, flows, "ember", HAIRLINE))
    shapes += leader(((38, 18), (48, 16)), "thick line: here the solder flows")
    shapes.append(label(4, 58, "Hardest solder first. The next joint is made below the heat at"))
    shapes.append(label(4, 62.4, "which the last one would open again."))
    return Picture(
        WIDE,
        67,
        tuple(shapes),
        "Three columns side by side, each lower than the one before, under a line where the metal "
        "itself melts. The first joint is made with hard solder, which flows hottest, the second "
        "with medium, the third with easy. Each flows below the one before, so that the earlier "
        "joints stay shut.",
    )
