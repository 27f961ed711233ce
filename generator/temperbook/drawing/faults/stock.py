"""Faults of finished stock: cracked in the drawer, at a claw, a ring that opens or tears."""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from types import MappingProxyType

from temperbook.drawing.draughting import arc, arrow, curved_arrow, label
from temperbook.drawing.faults import pickling
from temperbook.drawing.faults.broken import band, crack, note, picture, ragged
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


def season_cracking() -> Picture:
    """A pressed brass cup from the side, split down from its rim; damp ammonia in the air."""
    left, right, top, bottom = 14.0, 60.0, 14.0, 58.0
    rim = tuple(
        ((left + right) / 2 + 23.0 * math.cos(a), top + 4.0 * math.sin(a))
        for a in (math.tau * n / 48 for n in range(48))
    )
    foot = tuple(
        ((left + right) / 2 + 21.0 * math.cos(a), bottom + 4.0 * math.sin(a))
        for a in (math.pi * n / 24 for n in range(25))
    )
    shapes: list[Shape] = [
        Polygon(((left, top), *reversed(foot), (right, top)), "hairline", "ink", LINE),
        Polygon(rim, "paper", "ink", LINE),
        crack((27.0, top + 3.6), (26.0, 44.0), 3.0, 0.9, 2),
        crack((41.0, top + 3.9), (42.5, 34.0), 2.4, 0.9, 5),
        crack((52.0, top + 3.0), (51.0, 51.0), 3.2, 0.9, 8),
    ]
    shapes += note((41.4, 22.0), (72.0, 22.0), "splits along, from the rim,", "with no load on it")
    shapes += note((56.0, 44.0), (72.0, 40.0), "stress left by pressing,", "never annealed out")
    shapes.append(label(73.2, 58.0, "after weeks in damp air", role="ash"))
    return picture(
        66.0,
        shapes,
        "A cup pressed from brass, seen from the side, some weeks after it was made. Long cracks "
        "run down its wall from the rim although nothing loads it.",
    )


def gold_stress_cracking() -> Picture:
    """A stone in claws from the side: one claw cracked where it was bent over."""
    x, girdle = 40.0, 22.0
    stone = ((x - 17, girdle), (x - 9, girdle - 9), (x + 9, girdle - 9), (x + 17, girdle))
    shapes: list[Shape] = [
        Polygon((*stone, (x, girdle + 19)), "paper", "ink", LINE),
        Line(x - 17, girdle, x + 17, girdle, "ink", HAIRLINE),
        Polygon(
            ((x - 9, girdle - 9), (x - 5, girdle), (x, girdle + 19)),
            "",
            "ink",
            HAIRLINE,
            closed=False,
        ),
        Polygon(
            ((x + 9, girdle - 9), (x + 5, girdle), (x, girdle + 19)),
            "",
            "ink",
            HAIRLINE,
            closed=False,
        ),
    ]
    for way in (-1.0, 1.0):
        claw = (
            (x + way * 9, girdle + 34),
            (x + way * 19, girdle - 2),
            (x + way * 13, girdle - 8),
            (x + way * 15, girdle - 11),
            (x + way * 24, girdle - 3),
            (x + way * 14, girdle + 34),
        )
        shapes.append(Polygon(claw, "hairline", "ink", LINE))
    shapes.append(Rect(x - 15, girdle + 32, 30, 6, "hairline", "ink"))
    shapes.append(crack((x + 23.2, girdle - 2.4), (x + 16.8, girdle - 3.6), 3.4, 0.7, 3))
    for dx, dy in ((27.0, -8.0), (32.0, -4.6), (31.0, -12.0)):
        shapes += _drop(x + dx, girdle + dy)
    shapes += note((x + 21.6, girdle - 2.2), (x + 38.0, girdle + 9.0), "cracks where it was bent")
    shapes += note((x + 32.0, girdle - 4.4), (x + 42.0, girdle - 9.0), "bleach, pool water")
    shapes.append(label(x + 39.2, girdle + 24.0, "weeks after finishing", role="ash"))
    return picture(
        63.0,
        shapes,
        "A stone held in claws of low carat gold, seen from the side. One claw has cracked on the "
        "outside of its bend, where drops of bleach or pool water reached it.",
    )


def _drop(x: float, y: float) -> list[Shape]:
    round_part = arc(x, y, 1.4, -30, 210, 16)
    return [Polygon((*round_part, (x, y - 3.0)), "paper", "ink", HAIRLINE)]


def ring_opens() -> Picture:
    """A ring blank whose ends have sprung apart; dashed where they were pressed together."""
    x, y = 36.0, 33.0
    shapes: list[Shape] = [
        band(x, y, 18.0, 23.0, -62, 242),
        *curved_arrow(x, y, 26.5, -86, -58, "ember", BOLD),
        *curved_arrow(x, y, 26.5, 266, 238, "ember", BOLD),
    ]
    for at in (-62.0, 242.0):
        one, two = arc(x, y, 18.0, at, at, 1)[0], arc(x, y, 23.0, at, at, 1)[0]
        shapes.append(Line(*one, *two, "ember", BOLD))
    for way in (-1.0, 1.0):
        old = arc(x, y, 20.5, 270 + way * 2, 270 + way * 28, 12)
        shapes.append(Polygon(old, "", "ash", LINE, closed=False, dash=True))
    shapes += note(
        (x + 10.2, y - 19.2), (76.0, 14.0), "ends spring apart:", "the joint won't close"
    )
    shapes += note((x + 20.5, y + 2.0), (76.0, 35.0), "the band is still springy")
    return picture(
        62.0,
        shapes,
        "A ring bent from a strip, seen from the front. Arrows show that its two ends have sprung "
        "apart at the joint; a dashed line shows where they were pressed together.",
    )


def ring_cracks() -> Picture:
    """A band on a tapered mandrel, torn across while it is stretched."""
    y, left, right = 26.0, 38.0, 54.0
    shapes: list[Shape] = [
        Polygon(((5, y - 7), (114, y - 17), (114, y + 17), (5, y + 7)), "ash", "ink", LINE),
        Polygon(
            ((left, y - 13), (right, y - 14), (right, y + 14), (left, y + 13)),
            "hairline",
            "ink",
            LINE,
        ),
        Rect(left + 0.2, y - 2.4, right - left - 0.4, 4.8, "ash", "", HAIRLINE),
        Polygon(
            ragged((left, y - 2.4), (right, y - 2.4), 0.9, 3),
            "",
            "ember",
            BOLD,
            closed=False,
        ),
        Polygon(
            ragged((left, y + 2.4), (right, y + 2.4), 0.9, 6),
            "",
            "ember",
            BOLD,
            closed=False,
        ),
        crack((left, y + 8.5), (left + 7, y + 8.0), 1.8, 0.5, 4),
        crack((right, y - 8.5), (right - 6, y - 8.0), 1.8, 0.5, 7),
        *arrow(57, y, 70, y, "paper", LINE),
        *note((52.0, y + 1.6), (62.0, y + 25.0), "torn across the band"),
        label(92.0, y + 1.2, "mandrel", anchor="middle", role="paper"),
        *note((40.0, y + 8.4), (30.0, y + 25.0), "edge cracks", anchor="end"),
    ]
    return picture(
        57.0,
        shapes,
        "A ring driven up a tapered mandrel to make it larger, seen from the side. The band has "
        "torn right across and gapes; smaller cracks begin at both of its edges.",
    )


PICTURES: Mapping[str, Callable[[], Picture]] = MappingProxyType(
    {
        **pickling.PICTURES,
        "fault-season-cracking": season_cracking,
        "fault-gold-stress-cracking": gold_stress_cracking,
        "fault-ring-opens": ring_opens,
        "fault-ring-cracks": ring_cracks,
    }
)
