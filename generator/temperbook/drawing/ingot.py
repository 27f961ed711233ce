"""Picture ingot-section: an upright mould cut open, the pipe, the columns, what is cut away."""

from __future__ import annotations

import random

from temperbook.drawing.draughting import LEADING, WIDE, label, leader
from temperbook.drawing.shapes import HAIRLINE, LINE, Line, Picture, Point, Polygon, Shape
from temperbook.drawing.tessellation import Box, tessellation

INGOT: Box = (16.0, 11.0, 46.0, 90.0)
WALL = 7.0  # of the mould [mm]
SKIN = 2.2  # scalped from each face [mm]
CROP = 39.0  # height of the cut, under the whole pipe [mm]
SURFACE = (  # the open top and the pipe that sank from it, left to right
    (16.0, 13.0),
    (19.5, 13.8),
    (22.5, 15.2),
    (25.2, 17.8),
    (27.4, 21.6),
    (29.0, 25.6),
    (30.4, 30.4),
    (31.6, 30.5),
    (32.6, 25.8),
    (34.4, 22.0),
    (36.8, 18.0),
    (39.8, 15.4),
    (42.8, 14.0),
    (46.0, 13.0),
)
HOLLOWS = (  # closed hollows under the pipe
    ((30.2, 32.6), (31.4, 32.0), (32.2, 33.2), (31.6, 34.4), (30.6, 34.0)),
    ((30.9, 35.8), (31.7, 35.5), (31.9, 36.5), (31.2, 36.8)),
)


def ingot_section() -> Picture:
    """The ingot in its mould, cut lengthwise, with crop and scalp lines."""
    left, top, right, bottom = INGOT
    shapes: list[Shape] = [
        Polygon(cell, "hairline" if n * 0.618 % 1 < 0.45 else "paper", "ink", HAIRLINE * 1.5)
        for n, cell in enumerate(tessellation(_seeds(), INGOT))
        if cell
    ]
    lid = ((left, top - 1), *SURFACE, (right, top - 1))
    shapes.append(Polygon(lid, "paper", "", HAIRLINE))
    shapes += [Polygon(hollow, "paper", "ink", LINE) for hollow in HOLLOWS]
    shapes.append(Polygon(SURFACE, "", "ink", LINE, closed=False))
    shapes.append(Polygon(_mould(), "ash", "ink", LINE))
    for x in (left + SKIN, right - SKIN):
        shapes.append(Line(x, CROP, x, bottom - SKIN, "ember", LINE, dash=True))
    shapes.append(
        Line(left + SKIN, bottom - SKIN, right - SKIN, bottom - SKIN, "ember", LINE, dash=True)
    )
    shapes.append(Line(left - WALL - 3, CROP, right + WALL + 3, CROP, "ember", LINE))
    texts = right + WALL + 10
    for spot, at, words in (
        ((31.2, 20.0), 14.0, ("the pipe: it sank as the", "metal froze and shrank")),
        ((31.9, 33.4), 28.0, ("small hollows under it",)),
        ((right + WALL + 3, CROP), CROP, ("crop here, below all of it",)),
        ((right - 6.0, 55.6), 56.0, ("columns that grew", "inwards from the wall")),
        ((right - SKIN, 75.0), 74.0, ("scalp to here: the skin", "goes back to the melt")),
        ((right + WALL, bottom), bottom, ("the mould",)),
    ):
        shapes += leader((spot, (texts, at)), words[0])
        shapes += [label(texts + 1.2, at + 1.2 + LEADING, word) for word in words[1:]]
    return Picture(
        WIDE,
        bottom + WALL + 4,
        tuple(shapes),
        "An upright mould cut lengthwise. From its walls and floor long columns of grain grow "
        "inwards and meet in the middle. From the open top a funnel, the pipe, sinks deep into "
        "the ingot, with small closed hollows below it. A line across the ingot under the last "
        "hollow shows where it is cropped. Dashed lines just inside the faces and the foot show "
        "the skin that is scalped off.",
    )


def _mould() -> tuple[Point, ...]:
    left, top, right, bottom = INGOT
    return (
        (left - WALL, top - 4),
        (left - 3.5, top - 4),
        (left, top),
        (left, bottom),
        (right, bottom),
        (right, top),
        (right + 3.5, top - 4),
        (right + WALL, top - 4),
        (right + WALL, bottom + WALL),
        (left - WALL, bottom + WALL),
    )


def _seeds() -> tuple[Point, ...]:
    """Seeds [mm] along both walls and the foot; what lies between the rows becomes columns."""
    chance = random.Random(7)
    left, top, right, bottom = INGOT
    found: list[Point] = []
    y = top + 4.0
    while y < bottom - 8:
        for x, inward in ((left, 1.0), (right, -1.0)):
            found.append((x + inward * chance.uniform(3.6, 5.4), y + chance.uniform(-0.8, 0.8)))
        y += 4.3
    x = left + 2.0
    while x < right:
        found.append((x, bottom - chance.uniform(3.0, 4.2)))
        x += 4.4
    found += [
        ((left + right) / 2 + chance.uniform(-2.5, 2.5), y)
        for y in (24.0, 34.0, 43.0, 52.0, 60.0, 69.0)
    ]
    return tuple(found)
