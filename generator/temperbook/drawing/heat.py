"""Pictures of an anneal: bright-and-black, and anneal-time-temperature."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from temperbook.drawing import grains
from temperbook.drawing.draughting import WIDE, arrow, label, titled
from temperbook.drawing.shapes import (
    HAIRLINE,
    LINE,
    Line,
    Picture,
    Point,
    Polygon,
    Rect,
    Shape,
    hatching,
)

# The scheme's one heat; that of a black body as dim as a clean face at the one heat (about four
# parts in a hundred, what bright silver gives); an unlit shop; and rays light enough to be seen in
# grey [degC].
ONE_HEAT, SHOWN_BY_CLEAN, UNLIT, RAYS = 700, 585, 400, 1000


def bright_and_black(colour: Callable[[float], str]) -> Picture:
    """An oxidised and a clean strip at one heat in a dim shop: a scheme."""
    x0, x1, top, bottom = 4.0, WIDE - 4.0, 16.0, 46.0
    shapes: list[Shape] = [Rect(x0, top, x1 - x0, bottom - top, colour(UNLIT), "ash", HAIRLINE)]
    strips = ((12.0, ONE_HEAT), (66.0, SHOWN_BY_CLEAN))
    for x, seen in strips:
        shapes.append(Rect(x, top + 9, 42, 12, colour(seen), "ash", HAIRLINE))
    shapes += [Line(x, top + 18, x + 4, top + 12, "ash", HAIRLINE) for x in (88.0, 90.0, 93.5)]
    # rays say "glows" where colour does not, as in quench-choices
    rays = [(15.0 + 6 * n, y) for n in range(7) for y in (top + 5.2, top + 22.2)]
    shapes += [Line(x, y, x, y + 2.6, colour(RAYS), 2 * LINE) for x, y in rays]
    shapes.append(label(WIDE / 2, 7, "one and the same heat", bold=True, anchor="middle"))
    for x, way in ((33.0, -1), (87.0, 1)):
        shapes.append(Line(WIDE / 2 + way * 20, 5.8, x, 5.8, "ink", HAIRLINE))
        shapes += arrow(x, 5.8, x, top - 1, "ink", HAIRLINE)
    shapes += titled(33, bottom + 6.5, "oxidised", "black: it glows")
    shapes += titled(87, bottom + 6.5, "clean", "bright: it hardly glows")
    shapes.append(
        label(
            x0,
            bottom + 19,
            "A scheme, for a dim shop. How much a face hides differs by metal.",
            role="ash",
        )
    )
    return Picture(
        WIDE,
        bottom + 23,
        tuple(shapes),
        "A scheme: two strips side by side in a dim shop, at one and the same heat. The "
        "oxidised one glows a clear dull red, with rays about it. The clean, bright one is nearly "
        "as dark as the shop round it. So a clean piece looks far cooler than it is.",
    )


LEFT, FOOT, TOP = 12.0, 72.0, 18.0  # the plane's left edge, foot and top [mm]


def anneal_time_temperature() -> Picture:
    """A plane of time and temperature with the grain that each region leaves; no numbers."""
    right = WIDE - 4.0
    start = _falling(8.0, 330.0, 5.0, right)
    end = _falling(22.0, 640.0, 10.0, right)
    band = start + end[::-1]
    shapes: list[Shape] = [
        *hatching(LEFT, TOP - 7, right - LEFT, 7),
        Polygon(band, "hairline", "", HAIRLINE),
        Polygon(start, "", "ink", LINE, closed=False),
        Polygon(end, "", "ink", LINE, closed=False),
        Line(LEFT, TOP, right, TOP, "ink", LINE),
        label(right, TOP - 9, "here it begins to melt", anchor="end"),
        *arrow(LEFT, FOOT, LEFT, 4),
        *arrow(LEFT, FOOT, right, FOOT),
        label(LEFT + 3, 6.4, "hotter"),
        label(right, FOOT + 5, "longer", anchor="end"),
    ]
    for (x, y), found, word in (
        ((17.0, 58.0), grains.worked(), "still hard"),
        ((62.0, 42.6), grains.annealed(), "soft and fine"),
        ((78.0, 24.0), grains.overheated(), "coarse"),
    ):
        shapes += _swatch(found, x, y)
        shapes.append(label(x + SWATCH[0] + 2, y + SWATCH[1] / 2 + 1.2, word, bold=True))
    return Picture(
        WIDE,
        FOOT + 9,
        tuple(shapes),
        "A scheme with time to the right and temperature upwards. A band slants down from short "
        "and hot to long and less hot. Below and left of it the metal is still hard, with its "
        "long worked grains. Inside it the metal is soft, with fine new grains. Above and right "
        "of it the grains are coarse. On top a hatched strip: there the metal begins to melt.",
    )


def _falling(least: float, steep: float, shift: float, right: float) -> tuple[Point, ...]:
    """A curve [mm] on the plane: the shorter the time, the hotter it must be."""
    lowest = steep / (right - LEFT - shift)
    heights = [
        (FOOT - TOP - least) * (lowest / (FOOT - TOP - least)) ** (n / 40) for n in range(41)
    ]
    return tuple((LEFT + shift + steep / high, FOOT - least - high) for high in heights)


SWATCH = (18.0, 11.0)


def _swatch(found: Sequence[grains.Grain], x: float, y: float) -> list[Shape]:
    """A piece of the strip's grain as a sample [mm], at less than its own scale."""
    scale, (w, h) = 0.55, SWATCH
    part = grains.window(found, (30.0, 0.0, 30.0 + w / scale, h / scale))
    return [*grains.outlines(part, x, y, scale, HAIRLINE), Rect(x, y, w, h, "", "ink")]
