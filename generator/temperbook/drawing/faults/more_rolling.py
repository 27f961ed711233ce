"""Faults that the mill brings: bends, prints, flaps, fins, and a mill that does not bite."""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from types import MappingProxyType

from temperbook.drawing.draughting import WIDE, arc, arrow, curved_arrow, label, size_across, titled
from temperbook.drawing.faults.parts import notes, rift, roll, run, speck, strip
from temperbook.drawing.shapes import (
    BOLD,
    HAIRLINE,
    LINE,
    Line,
    Picture,
    Polygon,
    Rect,
    Shape,
)


def curl() -> Picture:
    """A strip that leaves the rolls and curls upwards."""
    x, y = 28.0, 46.0
    outer, inner = arc(x + 6, 21.8, 26.2, 90, -35, 40), arc(x + 6, 21.8, 22.2, -35, 90, 40)
    ends = run((x, 44), (18, 43.2), (4, 43.2), (4, 48.8), (18, 48.8), (x, 48))
    shapes: list[Shape] = [
        *roll(x, y - 2, -1, 11, 22),
        *roll(x, y + 2, 1, 11, 22),
        Polygon((*outer, *inner, *ends), "hairline", "ink", LINE),
        Polygon(outer, "", "ember", BOLD, closed=False),
        Line(52, 48, 114, 48, "ash", LINE, dash=True),
        *arrow(6, 46, 16, 46),
        *notes(
            72,
            ((59.7, 17.5), 12, ("outer face: softer,", "grew longer")),
            ((55.2, 29), 30, ("inner face: shorter",)),
            ((78, 48), 56, ("where it should run",)),
        ),
    ]
    return Picture(
        WIDE,
        74,
        tuple(shapes),
        "A pair of rolls from the side. The strip leaves the gap and, instead of running straight "
        "on along a dashed line, curls upwards over the upper roll in a wide bow. Its outer face "
        "grew longer than its inner one.",
    )


def camber() -> Picture:
    """A strip that leaves the rolls bent sideways, against a straight edge."""
    centre_y = 140.0
    top = arc(40, centre_y, 122, -90, -54.5, 30)
    low = arc(40, centre_y, 104, -54.5, -90, 30)
    shapes: list[Shape] = [
        Polygon((*top, *low), "hairline", "ink", LINE),
        Rect(4, 18, 26, 18, "hairline", "ink"),
        Polygon(top, "", "ember", BOLD, closed=False),
        Line(40, 18, 116, 18, "ash", LINE, dash=True),
        Rect(28, 8, 12, 44, "ash", "ink"),
        *arrow(8, 27, 20, 27),
        *arrow(96, 18.4, 96, 31, "ember", HAIRLINE, both=True),
        label(98.5, 24, "gap", role="ash"),
        *notes(66, ((60, 18), 8, ("straight edge laid against it",))),
        label(49, 26, "thin side, longer"),
        label(44, 44.5, "thick side, shorter"),
        label(34, 58, "rolls from above,", anchor="middle", role="ash"),
        label(34, 62.4, "closer at one end", anchor="middle", role="ash"),
    ]
    return Picture(
        WIDE,
        68,
        tuple(shapes),
        "The rolls from above. A strip enters straight and leaves bent sideways in its own plane "
        "like a banana. Its outer edge, where the rolls stood closer and made it thinner, is the "
        "longer one; a straight edge laid along it leaves a growing gap.",
    )


def roll_marks() -> Picture:
    """One lump on a roll that prints itself at each turn."""
    x, y, r = 14.0, 24.0, 5.6
    pitch = 2 * math.pi * r
    since = 18.0  # the sheet has moved so far since the last print
    lump = (x + r * math.sin(since / r), y - r + r * math.cos(since / r))
    sheet = run((4, y - 1), (x, y), (116, y), (116, y + 4), (x, y + 4), (4, y + 5))
    shapes: list[Shape] = [
        *roll(x, y, -1, r, 2 * r, turn=0),
        *roll(x, y + 4, 1, r, 2 * r, turn=0),
        *curved_arrow(x, y - r, 3.0, 150, 20, "paper"),
        *curved_arrow(x, y + 4 + r, 3.0, -150, -20, "paper"),
        Polygon(sheet, "hairline", "ink", LINE),
        speck(*lump, 1.9, 3),
        *notes(28, (lump, 8, ("one lump stuck to the roll",))),
        *strip(8, 46, 116, 62),
    ]
    for n in range(3):
        px = x + since + pitch * n
        dent = run((px - 1.8, y), (px, y + 2), (px + 1.8, y))
        shapes.append(Polygon(dent, "paper", "ember", BOLD))
        shapes.append(speck(px, 54, 1.9, 3))
        shapes.append(Line(px, y + 5, px, 50.6, "ash", HAIRLINE, dash=True))
    shapes += size_across(x + since, x + since + pitch, 40, "one turn of roll")
    shapes += [
        *notes(76, ((x + since + pitch, 54), 54, ("same dent",))),
        label(8, 68.5, "The sheet from above: dents in one line, all one step apart", role="ash"),
    ]
    return Picture(
        WIDE,
        73,
        tuple(shapes),
        "A pair of rolls from the side; a lump sticks to the upper one. In the sheet that has "
        "passed there is a dent of the same shape again and again, in one line and always one "
        "turn of the roll apart, both in section and from above.",
    )


def rolled_in_scale() -> Picture:
    """Flakes of scale under the roll, and where they end up."""
    shapes: list[Shape] = [
        *roll(60, 22, -1, 24, 14),
        Polygon(
            run((6, 19), (48.4, 19), (54, 21.2), (60, 22), (112, 22), (112, 36), (6, 36)),
            "hairline", "ink", LINE,
        ),
        *arrow(8, 28, 20, 28),
    ]  # fmt: skip
    for n, px in enumerate((10.0, 18.5, 26.0, 34.5)):
        lift = 0.4 * (n % 2)
        flake = run((px, 18.6 - lift), (px + 5, 17.2), (px + 4.6, 16.2), (px + 0.6, 17.4 - lift))
        shapes.append(Polygon(flake, "ember", "ember", HAIRLINE))
    for n, px in enumerate((68.0, 78.0, 86.0, 96.0, 106.0)):
        shapes.append(speck(px, 23.6, 1.6, n, 2.0))
    shapes.append(Line(62, 22, 112, 22, "ink", LINE))
    shapes += strip(6, 50, 112, 66)
    for n in range(26):
        px, py = 10 + 98 * (n * 0.618 % 1), 52.4 + 11 * (n * 0.382 * 1.7 % 1)
        shapes.append(speck(px, py, 0.5 + 0.7 * (n % 4) / 3, n, 1.7))
    shapes += [
        label(8, 13, "flakes of oxide"),
        *notes(86, ((78, 23.4), 8, ("pressed in, flush", "with the face"))),
        label(34, 32, "cut through", role="ash"),
        label(6, 72.5, "From above: specks at random, some drawn out", role="ash"),
    ]
    return Picture(
        WIDE,
        76,
        tuple(shapes),
        "A roll above a sheet in section. Before the gap loose flakes of oxide lie on the face; "
        "behind the gap they are pressed into it and lie flush. From above the rolled sheet is "
        "strewn with dark specks of different size at random places.",
    )


def flap() -> Picture:
    """A fin that stands up, lies down and is rolled in, but never joins."""
    shapes: list[Shape] = []
    for n, (title, under) in enumerate(
        (("1 a fin stands", "on the ingot"), ("2 rolled flat,", "folded over"),
         ("3 a flap, lifted", "with a knife"))
    ):  # fmt: skip
        left = 5 + 39.0 * n
        if n < 2:
            shapes.append(Rect(left, 30, 33, 14, "hairline", "ink"))
        shapes += titled(left + 16.5, 52, title, under)
    fin = run((17, 30), (19.4, 13.5), (20.6, 13.5), (24, 30))
    shapes += [
        Polygon(fin, "hairline", "ember", BOLD, closed=False),
        Line(17.8, 30, 23.2, 30, "hairline", BOLD),
        *curved_arrow(20, 30, 21, -72, -38),
    ]
    shapes += [
        rift(((51, 32.6), (57, 33.4), (63, 33), (69, 31.6), (73.6, 29.8)), 1.2, sharp=False),
        Line(51, 30, 74, 30, "ink", LINE),
        *arrow(60, 17, 60, 27),
        label(60, 14, "rolls", anchor="middle", role="ash"),
    ]
    tongue = run((87, 30), (95, 27), (102, 22), (107, 15), (109, 16), (104.5, 25), (98, 31))
    base = run((83, 30), (87, 30), (90, 34), (104, 33), (112, 30), (116, 30), (116, 44), (83, 44))
    shapes += [
        Polygon(base, "hairline", "ink", LINE),
        Polygon(run((119, 22), (103, 29.4), (119, 27.6)), "ash", "ink", LINE),
        Polygon((*tongue, (90, 34)), "hairline", "ember", BOLD),
        speck(100, 32.8, 0.7, 1),
        speck(103.4, 32.2, 0.6, 2),
        Line(101, 33, 101, 36.4, "ink", HAIRLINE),
        label(99.5, 40.4, "dirt under it", anchor="middle"),
    ]
    return Picture(
        WIDE,
        62,
        tuple(shapes),
        "Three sections. First a sharp fin stands up from an ingot. Second the rolls have folded "
        "it over and pressed it into the face, where a slanting seam remains. Third a knife lifts "
        "the end of it: a long thin flap, held only at its root.",
    )


def groove_fins() -> Picture:
    """Too much metal in a square groove, seen along the bar."""
    x, y, half, gap = 40.0, 36.0, 14.0, 1.1
    shapes: list[Shape] = []
    for way in (-1.0, 1.0):
        near, far = y + way * gap, y + way * 27
        shapes.append(
            Polygon(
                run((8, near), (x - half, near), (x, near + way * half), (x + half, near),
                    (72, near), (72, far), (8, far)),
                "ash", "ink", LINE,
            )
        )  # fmt: skip
    bar = run((x - half, y - gap), (x, y - gap - half), (x + half, y - gap))
    shapes += [
        Polygon((*bar, *((px, 2 * y - py) for px, py in reversed(bar))), "hairline", "ink", LINE),
        Polygon(
            run((x + half - 1, y - gap), (x + half + 8, y - 0.6), (x + half + 10, y),
                (x + half + 8, y + 0.6), (x + half - 1, y + gap)), "ember", "ember", LINE,
        ),
        Polygon(
            run((x - half + 1, y - gap), (x - half - 8, y - 0.6), (x - half - 10, y),
                (x - half - 8, y + 0.6), (x - half + 1, y + gap)), "ember", "ember", LINE,
        ),
        *arrow(x, y, x + 8, y),
        *arrow(x, y, x - 8, y),
        *notes(
            80,
            ((72, 16), 14, ("upper roll",)),
            ((x + half + 6, y), 32, ("fin: metal squeezed", "into the gap between", "the rolls")),
            ((x + 3, y + 8), 60, ("too much metal for", "this groove")),
        ),
    ]  # fmt: skip
    return Picture(
        WIDE,
        70,
        tuple(shapes),
        "Two grooved rolls cut through, with a square bar standing on its edge between them. "
        "The bar held too much metal for the groove: on both sides a thin, sharp fin has been "
        "squeezed out into the gap between the rolls.",
    )


def mill_skids() -> Picture:
    """A thick blunt bar that the rolls do not take in."""
    x, y, r, half = 52.0, 38.0, 34.0, 3.5
    reach = math.sqrt(r**2 - (r + half - 9) ** 2)
    left = x - reach
    taper = run((left - 22, y - 9), (left + 7, y - 3), (left + 7, y + 3), (left - 22, y + 9))
    shapes: list[Shape] = [
        *roll(x, y - half, -1, r, 28),
        *roll(x, y + half, 1, r, 28),
        Rect(4, y - 9, left - 4, 18, "hairline", "ink"),
        Polygon(taper, "", "ink", LINE, dash=True, closed=False),
        *arrow(7, y, 14, y),
    ]
    for way in (-1.0, 1.0):
        shapes.append(Line(left, y + way * 4.6, left, y + way * 9, "ember", BOLD))
        for n in range(3):
            shapes += _scuff(left - 1.2 - 1.7 * n, y + way * (9 + 1.0), way, 4.2 - n)
    shapes += [
        *arrow(left - 3, y, left - 12, y, "ember"),
        *notes(
            88,
            ((left + 0.2, y - 8), 14, ("it only rubs here:", "bright scuffs")),
            ((x, y), 38, ("gap far smaller", "than the bar")),
            ((left + 5, y + 3), 61, ("dashed: a tapered", "nose would bite")),
        ),
    ]
    return Picture(
        WIDE,
        76,
        tuple(shapes),
        "A thick blunt bar stands before a pair of turning rolls whose gap is far smaller than "
        "the bar. The rolls only rub on its two corners and push it back; it is not drawn in. "
        "A dashed outline shows the tapered nose that they would take.",
    )


def _scuff(x: float, y: float, way: float, long: float) -> list[Shape]:
    return [Line(x, y, x - 0.5, y + way * long, "ember", LINE)]


PICTURES: Mapping[str, Callable[[], Picture]] = MappingProxyType(
    {
        "fault-curl": curl,
        "fault-camber": camber,
        "fault-roll-marks": roll_marks,
        "fault-rolled-in-scale": rolled_in_scale,
        "fault-flap": flap,
        "fault-groove-fins": groove_fins,
        "fault-mill-skids": mill_skids,
    }
)
