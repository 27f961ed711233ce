"""Picture quench-choices: four ways down from the annealing heat, each with its cooling curve."""

from __future__ import annotations

import math
from collections.abc import Callable

from temperbook.drawing.draughting import WIDE, arrow, label, titled
from temperbook.drawing.shapes import HAIRLINE, LINE, Line, Picture, Point, Polygon, Rect, Shape

HOT, DARK = 720, 400  # a glowing piece and one whose glow has gone, as colours [degC]
FLOOR = 42.0  # height of the bench [mm]
PLOT_TOP, PLOT_FOOT = 60.0, 80.0
GLOW_ENDS = 0.42  # height of the line below which nothing glows, as a share of the plot [1]
STRIP = (4.0, 15.0)


def quench_choices(colour: Callable[[float], str]) -> Picture:
    """Four scenes side by side; under each, how the heat falls with time."""
    hot, dark = colour(HOT), colour(DARK)
    ways: tuple[tuple[str, str, list[Shape], Callable[[float], float]], ...] = (
        (
            "at once",
            "into water",
            _at_once(17.0, hot),
            lambda t: 1.0 if t < 0.08 else _fall(t - 0.08, 0.03),
        ),
        ("glow gone", "then into water", _glow_gone(45.7, hot, dark), _late),
        ("in air", "on a rest", _in_air(74.3, hot), lambda t: _fall(t, 0.38)),
        ("slowly", "covered up", _slowly(103.0, hot), lambda t: _fall(t, 1.1)),
    )
    shapes: list[Shape] = []
    for x, (title, under, scene, curve) in zip((17.0, 45.7, 74.3, 103.0), ways, strict=True):
        shapes += scene
        shapes += titled(x, FLOOR + 7, title, under)
        shapes += _plot(x - 11.5, curve)
    shapes += [
        label(5.5, PLOT_FOOT + 5, "heat over time; dashed: the glow ends", role="ash"),
    ]
    return Picture(
        WIDE,
        PLOT_FOOT + 9,
        tuple(shapes),
        "Four ways down from the annealing heat, each with a small curve of heat over time. At "
        "once: a glowing strip goes into water, and its curve drops straight. Glow gone: the "
        "strip first turns dark in air, then goes into water; the curve slopes to the line "
        "where the glow ends, and then drops. In air, on a rest: the curve falls gently. "
        "Slowly, covered up in a closed box: the curve falls least. Which one is right, the "
        "alloy decides.",
    )


def _fall(time: float, slowness: float) -> float:
    """Heat left [1] after a time [1]."""
    return math.exp(-time / slowness)


def _late(time: float) -> float:
    turn = -0.38 * math.log(GLOW_ENDS - 0.06)
    return _fall(time, 0.38) if time < turn else _fall(turn, 0.38) * _fall(time - turn, 0.03)


def _plot(x: float, curve: Callable[[float], float]) -> list[Shape]:
    """Axes, the line where the glow ends, and the curve [mm]."""
    w, h = 23.0, PLOT_FOOT - PLOT_TOP
    ends = PLOT_FOOT - 1.2 - GLOW_ENDS * (h - 4.2)
    points = [(x + w * n / 60, PLOT_FOOT - 1.2 - curve(n / 60) * (h - 4.2)) for n in range(61)]
    return [
        Line(x, ends, x + w, ends, "ash", HAIRLINE, dash=True),
        Polygon(tuple(points), "", "ink", LINE * 1.5, closed=False),
        *arrow(x, PLOT_FOOT, x, PLOT_TOP, "ink", HAIRLINE),
        *arrow(x, PLOT_FOOT, x + w, PLOT_FOOT, "ink", HAIRLINE),
    ]


def _strip(x: float, y: float, colour: str) -> Rect:
    """A strip hanging with its upper end at y [mm]."""
    return Rect(x - STRIP[0] / 2, y, *STRIP, colour, "ink", HAIRLINE)


def _glowing(x: float, y: float, colour: str) -> list[Shape]:
    """A hanging strip that glows: short rays say so where colour does not."""
    rays = (y + 2.0, y + STRIP[1] / 2, y + STRIP[1] - 2.0)
    half = STRIP[0] / 2
    return [
        _strip(x, y, colour),
        *[
            Line(x + way * (half + 0.9), at, x + way * (half + 2.7), at, "ink", HAIRLINE)
            for at in rays
            for way in (-1, 1)
        ],
    ]


def _lying(x: float, y: float, long: float, colour: str) -> list[Shape]:
    """A lying strip that glows, its upper face at y [mm]."""
    return [
        Rect(x - long / 2, y, long, STRIP[0], colour, "ink", HAIRLINE),
        *[Line(x + at, y - 0.9, x + at, y - 2.7, "ink", HAIRLINE) for at in (-7.5, -2.5, 2.5, 7.5)],
    ]


def _water(x: float) -> list[Shape]:
    """A vessel with water [mm]."""
    left, right, top = x - 8, x + 8, FLOOR - 15
    vessel: tuple[Point, ...] = ((left, top), (left, FLOOR), (right, FLOOR), (right, top))
    waves = tuple(
        (left + n * 0.5, top + 3 + 0.5 * math.sin(n * 0.5 * math.pi / 2)) for n in range(33)
    )
    return [
        Polygon(vessel, "", "ink", LINE, closed=False),
        Polygon(waves, "", "ink", HAIRLINE, closed=False),
        *[
            Line(x + a, FLOOR - b, x + a + 3, FLOOR - b, "ash", HAIRLINE)
            for a, b in ((-6, 4), (2, 3), (-1, 7))
        ],
    ]


def _at_once(x: float, hot: str) -> list[Shape]:
    return [*_water(x), *_glowing(x, 5, hot), *arrow(x, 21, x, 33)]


def _glow_gone(x: float, hot: str, dark: str) -> list[Shape]:
    return [
        *_water(x + 2),
        *_glowing(x - 10.5, 5, hot),
        _strip(x + 2, 5, dark),
        *arrow(x - 5.0, 14.0, x - 0.8, 14.0),
        *arrow(x + 2, 21, x + 2, 33),
    ]


def _in_air(x: float, hot: str) -> list[Shape]:
    """A glowing strip on a rest, warm air rising from it [mm]."""
    shapes: list[Shape] = [Rect(x + at, FLOOR - 5, 3, 5, "ash", "ink") for at in (-9, 6)]
    shapes += _lying(x, FLOOR - 9, 21, hot)
    for at in (-5.0, 0.0, 5.0):
        wave = [(x + at + math.sin(n * 0.5), FLOOR - 13 - n * 0.9) for n in range(15)]
        end_x, end_y = wave[-1]
        shapes.append(Polygon(tuple(wave), "", "ash", LINE, closed=False))
        shapes += arrow(end_x, end_y, end_x - 0.2, end_y - 3, "ash", LINE)
    return shapes


def _slowly(x: float, hot: str) -> list[Shape]:
    """A glowing strip shut into a box [mm]."""
    wide, high, wall = 28.0, 20.0, 3.5
    return [
        Rect(x - wide / 2, FLOOR - high, wide, high, "ash", "ink"),
        Rect(
            x - wide / 2 + wall,
            FLOOR - high + wall,
            wide - 2 * wall,
            high - 2 * wall,
            "paper",
            "ink",
        ),
        *_lying(x, FLOOR - wall - STRIP[0] - 0.4, 19, hot),
    ]
