"""Faults of the quench and the pickle: cracked in water, coppered, etched, robbed of its zinc."""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from types import MappingProxyType

from temperbook.drawing.draughting import arrow, label
from temperbook.drawing.faults.broken import crack, field, grained, note, picture
from temperbook.drawing.shapes import (
    BOLD,
    HAIRLINE,
    LINE,
    Circle,
    Line,
    Picture,
    Polygon,
    Rect,
    Shape,
)


def quench_cracks() -> Picture:
    """A bar held by tongs, half under water, cracked from the face inwards where it is wet."""
    water = 24.0
    shapes: list[Shape] = [
        *_pot(8.0, 70.0, 18.0, 58.0, water),
        Rect(32, 9, 14, 43, "hairline", "ink"),
    ]
    for n, (x, y, way, deep) in enumerate(
        ((32.0, 28.0, 1.0, 9.0), (46.0, 33.0, -1.0, 8.0), (32.0, 39.0, 1.0, 7.0))
    ):
        shapes.append(crack((x, y), (x + way * deep, y + 2.0), 2.2, 0.8, n + 4))
    shapes.append(crack((39.0, 52.0), (38.0, 40.0), 2.2, 0.8, 9))
    for x, y, r in ((26.0, 30.0, 1.2), (28.0, 36.0, 0.9), (51.0, 28.0, 1.1), (54.0, 35.0, 0.8)):
        shapes.append(Circle(x, y, r, "paper", "ash", HAIRLINE))
    shapes += note((42.0, 16.0), (78.0, 12.0), "goes in while still red")
    shapes += note((43.0, 34.0), (78.0, 33.0), "cracks where the", "water strikes first")
    shapes += note((62.0, 50.0), (78.0, 50.0), "water")
    return picture(
        62.0,
        shapes,
        "A thick bar that was put into water while still red. Below the water line cracks run "
        "from its faces and its end inwards; above the water it is whole.",
    )


def _pot(left: float, right: float, top: float, bottom: float, liquid: float) -> list[Shape]:
    """A pot cut open, filled up to a height [mm]."""
    wall = 2.0
    outside = ((left, top), (left, bottom), (right, bottom), (right, top))
    inside = ((right - wall, top), (right - wall, bottom - wall), (left + wall, bottom - wall))
    shapes: list[Shape] = [
        Polygon((*outside, *inside, (left + wall, top)), "ash", "ink", LINE),
        Line(left + wall, liquid, right - wall, liquid, "ink", LINE),
    ]
    for n in range(3):
        x = left + 5 + n * 4.0
        shapes.append(Line(x, liquid + 2 + n * 1.6, x + 8, liquid + 2 + n * 1.6, "ash", HAIRLINE))
    return shapes


def copper_flash() -> Picture:
    """Steel tweezers in the pickle with a ring: copper comes out of the liquid on to the ring."""
    shapes: list[Shape] = [
        *_pot(6.0, 70.0, 16.0, 58.0, 22.0),
        Circle(35.0, 42.5, 10.0, "ember", "ink"),
        Circle(35.0, 42.5, 8.6, "hairline", "ember"),
        Circle(35.0, 42.5, 6.8, "ember", "", HAIRLINE),
        Circle(35.0, 42.5, 5.6, "paper", "ink", LINE),
    ]
    for way in (-1.0, 1.0):
        jaw = ((58.0 + way * 0.4, 4.0), (58.0 + way * 3.4, 7.0), (45.8 + way * 2.4, 38.0))
        tip = ((44.0 + way * 1.6, 41.0), (44.6 + way * 1.6, 37.0))
        shapes.append(Polygon((*jaw, *tip), "ash", "ink", LINE))
    for x, y in ((18.0, 34.0), (18.0, 50.0), (30.0, 27.5)):
        far = math.dist((x, y), (35.0, 42.5))
        dx, dy = (35.0 - x) / far, (42.5 - y) / far
        stop = far - 11.4
        shapes += arrow(x, y, x + dx * stop, y + dy * stop, "ember")
    shapes += note((53.0, 19.0), (76.0, 10.0), "steel tweezers: iron")
    shapes += note((27.4, 47.8), (76.0, 54.0), "a pink film of copper")
    shapes += note((62.0, 33.0), (76.0, 32.0), "old pickle, full", "of copper")
    return picture(
        62.0,
        shapes,
        "A ring held by steel tweezers in a pot of used pickle. Arrows show copper coming out of "
        "the liquid and on to the ring, which is covered inside and out with a film of copper.",
    )


def pickle_etch() -> Picture:
    """A skin in section: half as it was, half eaten down along the edges of its grains."""
    left, right, top, bottom, middle = 6.0, 114.0, 18.0, 38.0, 52.0
    cells = field((left, top, right, bottom), 7.5, 31)
    floor = [(middle, top)]
    for n, cell in enumerate(sorted(cells, key=lambda c: min(c))):
        face = sorted(x for x, y in cell if y < top + 0.01)
        if len(face) > 1 and face[-1] - 3 > max(face[0], middle):
            down = top + 2.0 + 3.2 * (n * 0.618 % 1)
            floor += [(max(face[0], middle) + 0.8, down), (face[-1] - 0.8, down)]
            floor.append((face[-1], down + 2.6))
    floor[-1] = (right, floor[-2][1])
    shapes: list[Shape] = [
        *grained(cells),
        Polygon((*floor, (right, top)), "paper", "", HAIRLINE),
        Polygon(tuple(floor), "", "ember", BOLD, closed=False),
    ]
    shapes += [
        Polygon(
            ((middle, top), (left, top), (left, bottom), (right, bottom)),
            "",
            "ink",
            LINE,
            closed=False,
        ),
        Line(right, bottom, right, floor[-1][1]),
        Line(middle, top, right, top, "ink", LINE, dash=True),
        label(8.0, 12.0, "as it was: smooth"),
        label(112.0, 12.0, "acid too strong or too long", anchor="end"),
        *note((floor[6][0], floor[6][1] + 0.4), (66.0, 46.0), "steps and grooves, dull"),
    ]
    return picture(
        52.0,
        shapes,
        "The skin of a piece cut open, much enlarged. At the left it is smooth as it was. At the "
        "right the pickle has eaten it below the dashed old surface, each grain to another depth, "
        "with grooves between the grains.",
    )


def dezincification() -> Picture:
    """Brass in section: a spongy layer of copper at the face and in plugs, zinc going out."""
    left, right, top, bottom = 6.0, 114.0, 22.0, 48.0
    floor = [(right - n * 1.0, top + 4.0 + 9.0 * _plug(right - n * 1.0)) for n in range(109)]
    shapes: list[Shape] = [
        Rect(left, top, right - left, bottom - top, "hairline", "ink"),
        Polygon(((left, top), (right, top), *floor), "ember", "ink", HAIRLINE),
    ]
    for n in range(46):
        x = left + 2.0 + n * 2.3
        deep = 4.0 + 9.0 * _plug(x)
        for m in range(5):
            y = top + 1.6 + m * 2.4 + 0.8 * (n % 2)
            if y < top + deep - 1.0:
                shapes.append(Circle(x, y, 0.55, "paper", ""))
    for x in (34.0, 82.0):
        shapes += arrow(x, top - 1, x, top - 9)
    shapes += [
        label(58.0, top - 9.0, "zinc goes out", anchor="middle"),
        label(9.0, bottom - 3.0, "sound brass"),
        *note((82.0, top + 10.0), (66.0, 55.0), "spongy red copper is left"),
    ]
    return picture(
        60.0,
        shapes,
        "A piece of brass cut open. Arrows show zinc leaving its face. What is left there is a "
        "layer of copper full of pores, which reaches down into the sound brass in two plugs.",
    )


def _plug(x: float) -> float:
    """How deep the attack goes at a place [mm], as a share of its most."""
    return max(math.exp(-(((x - 34) / 6) ** 2)), math.exp(-(((x - 82) / 9) ** 2)))


PICTURES: Mapping[str, Callable[[], Picture]] = MappingProxyType(
    {
        "fault-quench-cracks": quench_cracks,
        "fault-copper-flash": copper_flash,
        "fault-pickle-etch": pickle_etch,
        "fault-dezincification": dezincification,
    }
)
