"""Faults of forging and rolling that open the metal or unflatten the sheet."""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from types import MappingProxyType

from temperbook.drawing.draughting import WIDE, arc, arrow, label, size_across
from temperbook.drawing.faults.parts import (
    crack,
    notes,
    rift,
    roll,
    rolled_way,
    run,
    sheet_mesh,
    slab,
    strip,
)
from temperbook.drawing.shapes import (
    BOLD,
    HAIRLINE,
    LINE,
    Line,
    Picture,
    Point,
    Polygon,
    Rect,
    Shape,
)


def forging_burst() -> Picture:
    """A bar from its end between hammer and anvil, pulled apart in its middle."""
    x, y, half = 38.0, 38.0, 21.0
    bar = (
        (x - 15, y - 13), (x + 15, y - 13), *arc(x + 15, y, 13, -90, 90),
        (x - 15, y + 13), *arc(x - 15, y, 13, 90, 270),
    )  # fmt: skip
    shapes: list[Shape] = [
        Rect(x - half, 6, 2 * half, 19, "ash", "ink"),
        Rect(x - 32, y + 13, 64, 6, "ash", "ink"),
        Polygon(bar, "hairline", "ink", LINE),
        Polygon(arc(x, y, 17.5, 0, 360, 60)[:-1], "", "ash", HAIRLINE, dash=True),
        *(
            rift(
                (
                    (x - 10, y - 7 * s),
                    (x - 4, y - 2 * s),
                    (x, y),
                    (x + 4, y + 2 * s),
                    (x + 10, y + 7 * s),
                ),
                4.0,
            )
            for s in (1, -1)
        ),
        *arrow(x - 13, y, x - 23, y),
        *arrow(x + 13, y, x + 23, y),
        *arrow(x, 10, x, 22, "paper", BOLD),
        *notes(
            78,
            ((59, 14), 12, ("hammer",)),
            ((62, 34), 28, ("the blow drives the", "metal sideways")),
            ((x + 5, y + 0.6), 48, ("burst: the middle is", "torn apart, unseen", "from outside")),
        ),
        label(6, 65, "The bar from its end; dashed: the bar before", role="ash"),
    ]
    return Picture(
        WIDE,
        70,
        tuple(shapes),
        "A once round bar seen from its end between hammer and anvil, flattened to an oval. The "
        "blow drives the metal out to both sides, and a cross-shaped burst has torn open in the "
        "middle, where nobody sees it from outside.",
    )


def edge_cracks() -> Picture:
    """Wedges along both edges of a strip, and where to trim them."""
    shapes: list[Shape] = [*strip(6, 10, 114, 46)]
    for n in range(9):
        px = 13 + 11.6 * n
        long = 3.2 + 3.6 * ((n * 0.618 + 0.3) % 1)
        shapes.append(crack(px, 10, 90 - 12 * (n % 3 - 1), long, 2.0))
        shapes.append(crack(px + 4, 46, -90 + 12 * (n % 3 - 1), 9.4 - long, 2.0))
    for py in (19.0, 37.0):
        shapes.append(Line(3, py, 117, py, "ink", LINE, dash=True))
    shapes += [
        *rolled_way(18, 46, 26.5),
        *notes(58, ((60.6, 13.6), 28.5, ("cracks start at the edge",))),
        *notes(12, ((14, 37), 54, ("trim both edges to here, past every tip",))),
    ]
    return Picture(
        WIDE,
        60,
        tuple(shapes),
        "A rolled strip from above. Short wedge-shaped cracks, wide at the mouth and pointed "
        "inside, stand close together along both long edges; the middle is sound. Dashed lines "
        "just past the longest tips show how far to trim both edges before going on.",
    )


def cross_cracks() -> Picture:
    """Cracks across a whole strip at one spacing, from above and in section."""
    shapes: list[Shape] = [*strip(6, 8, 80, 36), *strip(6, 52, 80, 62, "hairline")]
    for n in range(6):
        px = 14 + 11.6 * n
        line = tuple((px + 0.7 * math.sin(k * 2.1 + n), 10.5 + 23 * k / 10) for k in range(11))
        shapes.append(rift(line, 1.3))
        shapes.append(crack(px, 52, 90, 5.0 + n % 2, 1.6))
        shapes.append(Line(px, 37.2, px, 51, "ash", HAIRLINE, dash=True))
    shapes += size_across(25.6, 37.2, 41.5, "", above=True)[:-1]
    shapes += [
        *notes(
            86,
            ((72.4, 20), 14, ("straight across,", "at one spacing")),
            ((72.2, 55), 55, ("in section: they", "start at the face")),
        ),
        *rolled_way(12, 40, 68),
    ]
    return Picture(
        WIDE,
        76,
        tuple(shapes),
        "A rolled strip from above and, below it, cut through. Six cracks run straight across "
        "it, square to the rolling direction and all at the same spacing. In section each is a "
        "wedge that starts at the face and points down into the metal.",
    )


def alligator() -> Picture:
    """The end of a bar that leaves the rolls split into two tongues."""
    x, y, half = 30.0, 36.0, 6.0
    before = run((4, y - 9), (16.5, y - 9), (23, y - 6.8), (x, y - half))
    tongue = run((54, y - half), (63, 27.5), (71, 22), (79, 15), (81.5, 18.5))
    inner = run((81.5, 18.5), (73.5, 25.5), (65.5, 32), (57.5, 35.4), (48, y))
    upper = (*before, *tongue, *inner[1:])
    shapes: list[Shape] = [
        *roll(x, y - half, -1, 32, 18),
        *roll(x, y + half, 1, 32, 18),
    ]
    for way in (1, -1):
        half_bar = tuple((px, y + way * (py - y)) for px, py in upper)
        cleft = tuple((px, y + way * (py - y)) for px, py in inner)
        shapes += [
            Polygon((*half_bar, (4, y)), "hairline", "", HAIRLINE),
            Polygon(half_bar[:9], "", "ink", LINE, closed=False),
            Polygon(cleft, "", "ember", BOLD, closed=False),
        ]
    shapes += [
        Rect(4, y - 1, 44, 2, "hairline", ""),
        rift(((x + 4, y), (40, y + 0.4), (50, y), (60, y)), 1.4),
        *arrow(7, y, 17, y),
        *notes(
            88,
            ((80, 16.6), 20, ("two tongues curl", "apart like jaws")),
            ((48, y), 36, ("split in mid", "thickness")),
        ),
        label(62, 64, "The skin ran ahead; the", role="ash"),
        label(62, 68.4, "middle was not worked.", role="ash"),
    ]
    return Picture(
        WIDE,
        72,
        tuple(shapes),
        "A thick bar leaves a pair of rolls, seen from the side. Its end has split in mid "
        "thickness, and two tongues curl away from each other, one up and one down, like the "
        "open jaws of a crocodile. The split runs back towards the rolls.",
    )


def lamination() -> Picture:
    """A sound-looking sheet with a split in its sawn edge, and the blister that heat makes."""
    blister = tuple((10 + 60 * n / 30, 58 - 7.5 * math.sin(math.pi * n / 30)) for n in range(31))
    inner = tuple((px, py + 3.2) for px, py in blister[2:-2])
    shapes: list[Shape] = [
        *slab(6, 20, 56, 9, 26),
        rift(((12, 24.8), (24, 24.4), (38, 25), (50, 24.6), (58, 24.8)), 1.6),
        Polygon(run((62, 20), (62, 29), (80.2, 16), (80.2, 7)), "", "ink", LINE),
        rift(((62.4, 24.4), (68, 20.4), (74, 16), (79.6, 11.8)), 1.2),
        *arrow(36, 35, 36, 44, "ink", LINE),
        label(39, 41, "heated quickly", role="ash"),
        Polygon(
            ((4, 58), *blister, (76, 58), (76, 67), (4, 67)),
            "hairline", "ink", LINE,
        ),
        Polygon((*inner, (64, 62.2), (16, 62.2)), "paper", "ember", BOLD),
        *notes(
            86,
            ((50, 15), 9, ("the face is bright", "and sound")),
            ((71, 18.2), 26, ("a slit in the", "sawn edge")),
            ((54, 55.6), 56, ("the hidden split", "lifts as one long", "blister")),
        ),
    ]  # fmt: skip
    return Picture(
        WIDE,
        72,
        tuple(shapes),
        "Above, a sheet with a sound, bright face; in its sawn edges a thin slit runs in mid "
        "thickness. Below, the same sheet cut through after quick heating: the upper layer has "
        "lifted off as one long blister with a flat hollow under it.",
    )


def _cut_across(half: Callable[[float], float]) -> tuple[Point, ...]:
    """The section [mm] of a sheet whose half thickness changes across it, -1 to 1."""
    halves = [half(n / 30 - 1) for n in range(61)]
    upper = ((8 + n, 64 - high) for n, high in enumerate(halves))
    lower = ((68 - n, 64 + high) for n, high in enumerate(reversed(halves)))
    return (*upper, *lower)


def wavy_edges() -> Picture:
    """A sheet that is flat in the middle and waves along both edges."""

    def lift(along: float, across: float) -> float:
        return 4.2 * across**4 * math.sin(2 * math.pi * 5 * along)

    section = _cut_across(lambda across: 3 - 2.4 * across**2)
    shapes: list[Shape] = [
        *sheet_mesh(18, 26, lift, lambda across: abs(across) == 1),
        Polygon(section, "hairline", "ink", LINE),
        label(8, 54, "Cut across: thinner at the edges", role="ash"),
        *arrow(8, 58, 8, 61.6, "ember"),
        *arrow(68, 58, 68, 61.6, "ember"),
        *notes(76, ((68, 64), 62, ("so the edges grew", "longer and ripple"))),
        label(56, 6, "middle flat, both edges wavy", anchor="middle"),
    ]
    return Picture(
        WIDE,
        73,
        tuple(shapes),
        "A wide thin sheet seen at a slant. Its middle is flat, but both long edges rise and "
        "fall in five even waves. Below, the sheet cut across: it is thinner at both edges than "
        "in the middle, because the rolls bent, so the edges grew too long.",
    )


def centre_buckle() -> Picture:
    """A sheet whose edges are tight while its middle bulges."""

    def lift(along: float, across: float) -> float:
        return 8.0 * max(0.0, 1 - across**2) ** 2 * math.sin(2 * math.pi * 1.5 * along) ** 2

    section = _cut_across(lambda across: 2 - 1.2 * (1 - across**2) ** 2)
    shapes: list[Shape] = [
        *sheet_mesh(18, 28, lift, lambda across: across == 0),
        Polygon(section, "hairline", "ink", LINE),
        label(8, 54, "Cut across: thinner in the middle", role="ash"),
        *arrow(38, 57, 38, 62.4, "ember"),
        *notes(76, ((42, 64), 62, ("so the middle grew", "longer than the edges"))),
        label(56, 6, "edges straight, the middle stands up in bulges", anchor="middle"),
    ]
    return Picture(
        WIDE,
        73,
        tuple(shapes),
        "A wide thin sheet seen at a slant. Both long edges are straight and tight, while the "
        "middle stands up in a row of bulges that pop when pressed. Below, the sheet cut across: "
        "it is thinner in the middle, which was rolled too long for its edges.",
    )


PICTURES: Mapping[str, Callable[[], Picture]] = MappingProxyType(
    {
        "fault-forging-burst": forging_burst,
        "fault-edge-cracks": edge_cracks,
        "fault-cross-cracks": cross_cracks,
        "fault-alligator": alligator,
        "fault-lamination": lamination,
        "fault-wavy-edges": wavy_edges,
        "fault-centre-buckle": centre_buckle,
    }
)
