"""Faults of annealed metal: still hard, stiff from slow cooling, gassed, stained, ordered."""

from __future__ import annotations

import math
import random
from collections.abc import Callable, Mapping
from types import MappingProxyType

from temperbook.drawing.draughting import arc, arrow, curved_arrow, label, titled
from temperbook.drawing.faults.broken import (
    band,
    edges,
    field,
    grained,
    lens,
    note,
    picture,
    ragged,
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


def still_hard() -> Picture:
    """Two strips bent alike in the jaws: the soft one stays, the hard one springs back."""
    shapes: list[Shape] = []
    for x, turn, role in ((20.0, 88.0, "ink"), (78.0, 30.0, "ember")):
        foot = 40.0
        bent = _strip(x, foot - 8, turn)
        if turn < 60:
            shapes.append(Polygon(_strip(x, foot - 8, 88.0), "", "ash", HAIRLINE, dash=True))
        shapes.append(Polygon(bent, "hairline", role, LINE if turn > 60 else BOLD))
        for side in (-9.0, 1.1):
            shapes.append(Rect(x + side - 0.05, foot - 6, 8, 12, "ash", "ink"))
    shapes += curved_arrow(78.0 + 6, 32.0 - 3, 19.0, -12, -52, "ember", BOLD)
    shapes += titled(20.0, 53.0, "soft", "stays where it is bent")
    shapes += titled(78.0, 53.0, "still hard", "springs back from the bend")
    return picture(
        62.0,
        shapes,
        "Two strips held upright in jaws and bent over alike. The soft one stays where it was "
        "bent. The one that is still hard springs back most of the way; a dashed outline shows "
        "where it was bent to.",
    )


def _strip(x: float, y: float, turn: float) -> tuple[Point, ...]:
    """A strip 2 mm thick that stands in jaws at x and above y is bent over to the right by an
    angle [degrees]."""
    r, long = 5.0, 18.0
    end = math.radians(turn)
    found: list[list[Point]] = []
    for half in (-1.0, 1.0):
        bend = [
            (x + r - (r - half) * math.cos(end * n / 10), y - (r - half) * math.sin(end * n / 10))
            for n in range(11)
        ]
        last = bend[-1]
        tip = (last[0] + long * math.sin(end), last[1] - long * math.cos(end))
        found.append([(x + half, y + 10), *bend, tip])
    return (*found[0], *reversed(found[1]))


def slow_cool_stiff() -> Picture:
    """Two round windows upon grains: clear after a quench, full of specks after slow cooling."""
    shapes: list[Shape] = []
    y, r = 24.0, 20.0
    for x, specks in ((30.0, False), (90.0, True)):
        shapes += lens(x, y, r, 10.0, 4)
        if specks:
            chance = random.Random(8)
            for n in range(17):
                for m in range(17):
                    dx, dy = (n - 8) * 2.4, (m - 8) * 2.4
                    spot = (x + dx + chance.uniform(-0.8, 0.8), y + dy + chance.uniform(-0.8, 0.8))
                    if math.hypot(dx, dy) < r - 1.6:
                        shapes.append(Circle(*spot, 0.5, "ember", ""))
        shapes.append(Circle(x, y, r, "", "ink"))
    shapes += titled(30.0, 52.0, "quenched: soft", "all is dissolved")
    shapes += titled(90.0, 52.0, "cooled slowly: stiff", "fine specks came out")
    return picture(
        61.0,
        shapes,
        "Two magnified views of one alloy after annealing. Quenched, its grains are clear and the "
        "metal is soft. Cooled slowly, fine specks have come out all through the grains and "
        "stiffen it.",
    )


def hydrogen_sickness() -> Picture:
    """Copper in section: hydrogen goes in at the face, bubbles lie along the grain boundaries."""
    box = (6.0, 19.0, 86.0, 45.0)
    cells = field(box, 8.0, 12)
    shapes: list[Shape] = grained(cells)
    shapes.append(Rect(box[0], box[1], box[2] - box[0], box[3] - box[1], "", "ink"))
    for (x1, y1), (x2, y2) in edges(cells):
        count = int(math.dist((x1, y1), (x2, y2)) / 1.9)
        for n in range(count):
            share = (n + 0.5) / count
            x, y = x1 + share * (x2 - x1), y1 + share * (y2 - y1)
            r = 0.8 - 0.4 * (y - box[1]) / (box[3] - box[1])
            if box[1] + 1 < y < box[3] - 1 and box[0] + 1 < x < box[2] - 1:
                shapes.append(Circle(x, y, r, "paper", "ember", LINE))
    for x in (18.0, 34.0, 58.0, 74.0):
        shapes += arrow(x, 11.0, x, 18.0)
    shapes.append(label(6.0, 7.4, "hydrogen from the flame soaks in"))
    bubbles = [(s.x, s.y) for s in shapes if isinstance(s, Circle)]
    spot = min(bubbles, key=lambda place: math.dist(place, (81.0, 24.5)))
    shapes += note(spot, (92.0, 24.0), "bubbles of", "steam part", "the grains")
    shapes.append(label(6.0, 51.5, "copper that holds oxide", role="ash"))
    return picture(
        55.0,
        shapes,
        "A piece of copper cut open. Arrows show hydrogen of the flame going in at its face. Rows "
        "of small bubbles, steam made from the oxide in the copper, lie along the boundaries and "
        "part the grains.",
    )


def firestain() -> Picture:
    """The skin of silver in section: bright skin, stain under it, bared where it was polished."""
    left, right, top, bottom = 6.0, 114.0, 16.0, 44.0
    under = ragged((left, 27.0), (right, 27.0), 0.9, 6)
    surface: tuple[Point, ...] = (
        (left, top),
        (62.0, top),
        *((62.0 + n * 2, top + 6.5 * (1 - math.cos(math.pi * n / 26)) / 2) for n in range(1, 27)),
    )
    skin = tuple((x, 20.5) for x in (left, 88.0))
    shapes: list[Shape] = [
        Polygon((*surface, (right, bottom), (left, bottom)), "paper", "", HAIRLINE),
        Polygon((*surface, *reversed(under)), "ember", "", HAIRLINE),
        Polygon((*[p for p in surface if p[1] < 20.5], *reversed(skin)), "paper", "", HAIRLINE),
        Polygon((*surface, (right, bottom), (left, bottom)), "", "ink", LINE),
        Line(62, top, right, top, "ash", LINE, dash=True),
        *note((24.0, 18.3), (25.0, 7.0), "bright skin after pickling"),
        label(9.0, 38.0, "sound silver"),
        *note((44.0, 24.0), (52.0, 37.0), "grey stain: oxide of copper"),
        *note((106.0, 23.0), (108.0, 7.0), "polished through", anchor="end"),
    ]
    return picture(
        48.0,
        shapes,
        "The skin of a piece of sterling cut open, much enlarged. Under a thin bright skin lies a "
        "layer of stain, and sound silver under that. At the right polishing has cut through the "
        "bright skin, so that the stain lies bare.",
    )


def order_embrittlement() -> Picture:
    """A ring in three pieces, and a lens upon its atoms in strict rows."""
    shapes: list[Shape] = []
    for n, (start, end) in enumerate(((100.0, 205.0), (212.0, 330.0), (340.0, 448.0))):
        middle = math.radians((start + end) / 2)
        x, y = 27.0 + 3.0 * math.cos(middle), 27.0 + 3.0 * math.sin(middle)
        shapes.append(band(x, y, 13.0, 19.0, start, end))
        for at in (start, end):
            one, two = arc(x, y, 12.6, at, at, 1)[0], arc(x, y, 19.4, at, at, 1)[0]
            shapes.append(
                Polygon(ragged(one, two, 0.9, n + round(at)), "", "ember", BOLD, closed=False)
            )
    shapes.append(label(27.0, 55.0, "breaks like glass", anchor="middle"))
    x, y, r = 88.0, 27.0, 21.0
    for row in range(9):
        for column in range(9):
            dx, dy = (column - 4) * 4.6, (row - 4) * 4.6
            if math.hypot(dx, dy) < r - 1.8:
                shapes.append(
                    Circle(x + dx, y + dy, 1.5, "ember" if row % 2 else "paper", "ink", LINE)
                )
    shapes.append(Circle(x, y, r, "", "ink"))
    shapes += [Line(46, 24, x - r + 1.0, 20.5, "ash", HAIRLINE)]
    shapes.append(label(x, 55.0, "gold and copper in strict layers", anchor="middle"))
    return picture(
        60.0,
        shapes,
        "A red gold ring broken into three pieces with ragged ends. A magnified view beside it "
        "shows why: slow cooling let gold and copper atoms settle in strict layers, row by row, "
        "which cannot give.",
    )


PICTURES: Mapping[str, Callable[[], Picture]] = MappingProxyType(
    {
        "fault-still-hard": still_hard,
        "fault-slow-cool-stiff": slow_cool_stiff,
        "fault-hydrogen-sickness": hydrogen_sickness,
        "fault-firestain": firestain,
        "fault-order-embrittlement": order_embrittlement,
    }
)
