"""Faults of drawn wire: broken points, necks, bursts, slivers, scores, chatter, weak fine wire."""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from itertools import pairwise
from types import MappingProxyType

from temperbook.drawing.draughting import arrow, label, pointer
from temperbook.drawing.faults.broken import (
    field,
    grained,
    note,
    picture,
    plate,
    ragged,
    wire,
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


def point_breaks() -> Picture:
    """The point of a wire torn off between the plate and the jaws that pull it."""
    y = 26.0
    upper = ((4.0, -6.0), (36.0, -6.0), (46.0, -3.0), (54.0, -1.8), (66.0, -1.6))
    outline = [(x, y + dy) for x, dy in upper]
    shapes: list[Shape] = [
        Polygon(_both(outline, y), "hairline", "", HAIRLINE),
        *_sides(outline, y),
        *plate(34.0, y, 5.0, 9.0),
        Polygon(
            ((72, y - 1.6), (96, y - 1.6), (96, y + 1.6), (72, y + 1.6)), "hairline", "ink", LINE
        ),
    ]
    for x in (66.0, 72.0):
        shapes.append(
            Polygon(ragged((x, y - 1.8), (x, y + 1.8), 0.6, 4), "", "ember", BOLD, closed=False)
        )
    for way in (-1.0, 1.0):
        jaw = ((82, y + way * 1.6), (98, y + way * 1.6), (116, y + way * 7), (116, y + way * 12))
        shapes.append(Polygon((*jaw, (84, y + way * 8)), "ash", "ink", LINE))
    shapes += [
        *pointer(((69.0, y), (69.0, 8.0))),
        label(69.0, 5.6, "the point tears off", anchor="middle"),
    ]
    shapes += note((57.0, y + 0.6), (62.0, y + 20.0), "filed too thin or too short")
    shapes.append(label(101.0, y + 1.2, "jaws"))
    shapes.append(label(4.0, y + 21.2, "wire", role="ash"))
    shapes.append(label(42.0, 5.6, "plate", anchor="middle", role="ash"))
    return picture(
        52.0,
        shapes,
        "A drawplate cut through one hole. A wire with a long thin point goes through it to the "
        "jaws of the tongs. The point has torn off between the plate and the jaws, before the "
        "thick part could follow.",
    )


def _both(upper: list[Point], y: float) -> tuple[Point, ...]:
    """An outline [mm]: an upper side and its mirror image below the axis at y."""
    return (*upper, *((px, 2 * y - py) for px, py in reversed(upper)))


def _sides(upper: list[Point], y: float, role: str = "ink", width: float = LINE) -> list[Shape]:
    mirrored = tuple((px, 2 * y - py) for px, py in upper)
    return [Polygon(side, "", role, width, closed=False) for side in (tuple(upper), mirrored)]


def necking() -> Picture:
    """A wire that thins to a neck behind the plate and parts there."""
    y, half = 24.0, 5.0

    def side(start: float, end: float, middle: float) -> list[Point]:
        """The upper side between two places [mm], thinnest at the middle of the neck."""
        xs = [start + (end - start) * n / 30 for n in range(31)]
        return [(x, y - half * (1 - 0.72 * math.exp(-(((x - middle) / 6.0) ** 2)))) for x in xs]

    one = [(4.0, y - 7.0), (23.0, y - 7.0), (32.0, y - half), *side(36.0, 71.0, 72.5)]
    other = side(76.0, 104.0, 74.5)
    shapes: list[Shape] = []
    for upper in (one, other):
        shapes += [Polygon(_both(upper, y), "hairline", "", HAIRLINE), *_sides(upper, y)]
    shapes += _sides([p for p in one if p[0] > 60], y, "ember", BOLD)
    shapes += _sides([p for p in other if p[0] < 86], y, "ember", BOLD)
    for x in (71.0, 76.0):
        end = ragged((x, y - 1.5), (x, y + 1.5), 0.5, 3)
        shapes.append(Polygon(end, "", "ember", BOLD, closed=False))
    shapes += plate(22.0, y, half, 8.0)
    shapes += arrow(106.0, y, 117.0, y)
    shapes.append(label(111.0, y - 3.0, "pull", anchor="middle"))
    shapes += note((68.0, y - 2.6), (58.0, 8.0), "a neck: thinner than the hole")
    shapes += note((73.5, y + 2.4), (66.0, y + 18.0), "and parts there")
    shapes.append(label(30.0, 5.0, "plate", anchor="middle", role="ash"))
    return picture(
        50.0,
        shapes,
        "A wire pulled through a drawplate to the right. Well behind the plate it has thinned to "
        "a neck, much thinner than the hole, and has parted in the middle of the neck.",
    )


def centre_burst() -> Picture:
    """A wire cut lengthwise: arrow-shaped hollows along its axis, a cup and a cone at the break."""
    y, half = 24.0, 12.0
    cup = [(84.0, y - half), (88.0, y - half), (78.0, y), (88.0, y + half), (84.0, y + half)]
    shapes: list[Shape] = [
        Polygon(((4, y - half), *cup[1:4], (4, y + half)), "hairline", "", HAIRLINE),
        Line(4, y - half, 88, y - half),
        Line(4, y + half, 88, y + half),
        Polygon(tuple(cup[1:4]), "", "ember", BOLD, closed=False),
        Polygon(
            ((116, y - half), (99, y - half), (89, y), (99, y + half), (116, y + half)),
            "hairline",
            "",
            HAIRLINE,
        ),
        Line(99, y - half, 116, y - half),
        Line(99, y + half, 116, y + half),
        Polygon(((99, y - half), (89, y), (99, y + half)), "", "ember", BOLD, closed=False),
        Line(4, y, 76, y, "ash", HAIRLINE, dash=True),
    ]
    for n in range(4):
        x, tall = 12.0 + n * 17.5, 3.0 + n * 1.2
        burst = ((x, y), (x + tall, y - tall), (x + tall * 0.75, y), (x + tall, y + tall))
        shapes.append(Polygon(burst, "ember", "ink", HAIRLINE))
    shapes += note((50.4, y + 2.0), (46.0, 43.0), "bursts along the middle")
    shapes += [
        label(84.0, 7.6, "cup", anchor="middle"),
        label(107.0, 7.6, "cone", anchor="middle"),
        label(5.2, 7.6, "the skin looks sound"),
    ]
    return picture(
        48.0,
        shapes,
        "A wire cut lengthwise. Along its axis lie arrow-shaped hollows, one behind the other, "
        "which cannot be seen from outside. At the last one it has broken: one end is a hollow "
        "cup, the other a cone.",
    )


def drawn_slivers() -> Picture:
    """A wire from the side with thin tongues of metal that lift from it, all one way."""
    y, half = 26.0, 9.0
    shapes: list[Shape] = wire(4, 116, y, half)
    for x, long, rise in ((24.0, 15.0, 5.0), (52.0, 22.0, 8.0), (88.0, 13.0, 4.0)):
        tongue = (
            (x, y - half),
            (x + long * 0.5, y - half - rise * 0.35),
            (x + long, y - half - rise),
            (x + long * 0.55, y - half + 0.4),
            (x + long * 0.45, y - half + 1.6),
        )
        shapes.append(Polygon(tongue, "hairline", "ember", BOLD))
    for x, up in ((34.0, -1.0), (70.0, 3.0), (98.0, 0.0)):
        flat = ((x, y + up - 2.0), (x + 13, y + up), (x, y + up + 2.0))
        shapes.append(Polygon(flat, "paper", "ember", LINE, closed=False))
    shapes += note((71.0, y - half - 6.6), (80.0, 6.4), "slivers lift and catch")
    shapes += note((77.0, y + 3.4), (66.0, 45.0), "others still lie flat")
    shapes += arrow(26.0, 43.8, 12.0, 43.8)
    shapes.append(label(28.0, 45.0, "drawn this way", role="ash"))
    return picture(
        49.0,
        shapes,
        "A wire from the side. Thin pointed tongues of metal lift from its skin, all "
        "trailing behind the pull; others still lie flat on it like fish scales.",
    )


def die_scoring() -> Picture:
    """A wire from the side with straight lines along it, and from its end with the grooves."""
    y, half, x = 24.0, 13.0, 99.0
    shapes: list[Shape] = wire(4, 74, y, half)
    angles = (-62.0, -48.0, 8.0, 20.0)
    for angle in angles:
        at = y + half * math.sin(math.radians(angle))
        shapes.append(Line(4, at, 74, at, "ember", BOLD))
    outline: list[Point] = []
    for n in range(360):
        near = min(abs((180 - n - angle + 180) % 360 - 180) for angle in angles)
        r = half - max(0.0, 2.2 - near * 0.45)
        a = math.radians(n)
        outline.append((x + r * math.cos(a), y + r * math.sin(a)))
    shapes.append(Polygon(tuple(outline), "hairline", "ink", LINE))
    for angle in angles:
        a = math.radians(180 - angle)
        notch = [
            (x + r * math.cos(a + s), y + r * math.sin(a + s))
            for s, r in ((-0.085, half), (0.0, half - 2.2), (0.085, half))
        ]
        shapes.append(Polygon(tuple(notch), "", "ember", BOLD, closed=False))
    shapes += note(
        (40.0, y + half * math.sin(math.radians(20.0))), (24.0, 45.0), "straight lines all along"
    )
    shapes += [
        label(x, 45.6, "seen from its end", anchor="middle"),
        label(4.0, 6.4, "each groove from one nick in the hole", role="ash"),
    ]
    return picture(
        50.0,
        shapes,
        "A wire from the side and from its end. Straight lines run along its whole length; seen "
        "from the end they are grooves, always in the same places, cut by a nicked or dirty hole.",
    )


def chatter_marks() -> Picture:
    """A wire with ripples across it at even steps as it leaves the plate."""
    y, half = 24.0, 7.0
    upper = [
        (29.0 + n * 0.5, y - half - 0.8 * math.sin((n - 10) * math.tau / 11)) for n in range(175)
    ]
    entry = [(4.0, y - 9.5), (16.0, y - 9.5), (24.0, y - half), (30.0, y - half)]
    whole = [*entry, *upper]
    shapes: list[Shape] = [
        Polygon(_both(whole, y), "hairline", "", HAIRLINE),
        *_sides(entry, y),
        *_sides(upper, y, "ember", BOLD),
    ]
    for n in range(14):
        x = 38.2 + n * 5.5
        bow = tuple((x + 1.2 * (1 - (m / 5) ** 2), y + (half - 0.8) * m / 5) for m in range(-5, 6))
        if x < 113:
            shapes.append(Polygon(bow, "", "ember", LINE, closed=False))
    shapes += plate(14.0, y, half, 11.0)
    shapes += note((60.2, y - 3.0), (64.0, 8.0), "ripples at even steps")
    shapes += arrow(66.0, 43.0, 71.5, 43.0, "ash", HAIRLINE, both=True)
    shapes += [
        Line(65.7, y + half + 1.6, 65.7, 45.0, "ash", HAIRLINE),
        Line(71.2, y + half + 1.6, 71.2, 45.0, "ash", HAIRLINE),
        label(74.0, 44.2, "always the same"),
        label(22.0, 5.0, "plate", anchor="middle", role="ash"),
    ]
    return picture(
        49.0,
        shapes,
        "A wire as it leaves the hole of a drawplate. Ripples run across it at even steps, all "
        "along, because the wire shook or stuck and slipped in the hole.",
    )


def weak_fine_wire() -> Picture:
    """The same speck in a thick and in a fine wire: small in one, half of the other."""
    shapes: list[Shape] = []
    thick, fine, r = 16.0, 42.0, 1.7
    shapes += grained(field((4.0, thick - 11, 88.0, thick + 11), 6.0, 9))
    shapes += [Line(4, thick + way * 11, 88, thick + way * 11) for way in (-1, 1)]
    shapes.append(Circle(44, thick + 2, r, "ember", "ink", HAIRLINE))
    cuts = (4.0, 17.0, 27.0, 44.0)
    for n, (x1, x2) in enumerate(pairwise(cuts)):
        for shift in (0.0, 44.0):
            left, right = (x1, x2) if not shift else (4 + 88 - x2, 4 + 88 - x1)
            shapes.append(
                Rect(
                    left,
                    fine - 2.6,
                    right - left,
                    5.2,
                    "hairline" if n % 2 else "paper",
                    "ash",
                    HAIRLINE,
                )
            )
    for x1, x2 in ((4.0, 44.0), (48.0, 88.0)):
        shapes += [Line(x1, fine + way * 2.6, x2, fine + way * 2.6) for way in (-1, 1)]
    for x in (44.0, 48.0):
        end = ragged((x, fine - 2.6), (x, fine + 2.6), 0.7, 5)
        shapes.append(Polygon(end, "", "ember", BOLD, closed=False))
    shapes.append(Circle(45.0, fine, r, "ember", "ink", HAIRLINE))
    shapes += note((44.0, thick + 2), (92.0, thick - 1.2), "a speck does", "little harm")
    shapes += note((46.0, fine), (60.0, fine + 12.0), "the same speck breaks fine wire")
    shapes += note((78.0, fine - 1.0), (92.0, fine - 6.0), "grains as wide", "as the wire")
    return picture(
        59.0,
        shapes,
        "Two wires cut lengthwise. In the thick one, many grains wide, a small hard speck does "
        "little harm. In the fine one each grain fills the width, the same speck takes most "
        "of it, and the wire has broken there.",
    )


PICTURES: Mapping[str, Callable[[], Picture]] = MappingProxyType(
    {
        "fault-point-breaks": point_breaks,
        "fault-necking": necking,
        "fault-centre-burst": centre_burst,
        "fault-drawn-slivers": drawn_slivers,
        "fault-die-scoring": die_scoring,
        "fault-chatter-marks": chatter_marks,
        "fault-weak-fine-wire": weak_fine_wire,
    }
)
