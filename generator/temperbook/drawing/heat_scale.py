"""Pictures heat-scale and heat-scale-tall: the scale of heat with the names that observers gave.

Each observer has a lane. A name stands at a bar over its range, or at a diamond on its one heat.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence

from temperbook.drawing.draughting import label
from temperbook.drawing.lettering import width
from temperbook.drawing.shapes import (
    BOLD,
    HAIRLINE,
    Glow,
    Line,
    Picture,
    Polygon,
    Rect,
    Shape,
)

Colour = Callable[[float], str]
Named = tuple[str, float, float]  # colour name, lowest and highest heat [degC]
Observer = tuple[str, tuple[Named, ...]]

COOLEST, HOTTEST = 400, 1100  # ends of the scale [degC]
STEP = 25  # between two colours of the bar [degC]
CAP = 2.2
ROW = 3.7  # from one row of names to the next [mm]
NOTE = ("For a black surface in a dim shop.", "Screen and print are only near.")

WIDE, LEFT, RIGHT = 170.0, 6.0, 146.0  # names near the hot end run on into the margin


def heat_scale(colour: Colour, observers: Sequence[Observer]) -> Picture:
    """The scale lying, a lane under it for each observer; 170 mm wide, for print."""
    top, high = 11.0, 12.0
    shapes = _lying_bar(colour, top, high)
    y = top + high + 15.0
    bottom = y
    for name, names in observers:
        rows = _rows(_shown(names))
        lane = _lane(name, rows, y)
        shapes += lane
        bottom = y + 4.5 + ROW * (1 + max((row for _, row in rows), default=0))
        y = bottom + 6.0
    for x in (_across(t) for t in range(COOLEST, HOTTEST + 1, 100)):
        shapes.insert(0, Line(x, top + high, x, top + high + 1.5, "ink", HAIRLINE))
    shapes.append(label(LEFT, bottom + 7.5, " ".join(NOTE), role="ash", cap=CAP))
    return Picture(WIDE, bottom + 11.5, tuple(shapes), _alt(observers, "from left to right"))


def _across(temperature: float) -> float:
    return LEFT + (temperature - COOLEST) / (HOTTEST - COOLEST) * (RIGHT - LEFT)


def _lying_bar(colour: Colour, top: float, high: float) -> list[Shape]:
    """The glowing bar with degrees Celsius under it and degrees Fahrenheit above [mm]."""
    heats = range(COOLEST, HOTTEST + 1, STEP)
    stops = tuple(((t - COOLEST) / (HOTTEST - COOLEST), colour(t)) for t in heats)
    shapes: list[Shape] = [Glow(LEFT, top, RIGHT - LEFT, high, stops, "ash")]
    for fahrenheit in range(800, 2001, 200):
        x = _across((fahrenheit - 32) / 1.8)
        shapes.append(Line(x, top - 1.5, x, top, "ash", HAIRLINE))
        shapes.append(label(x, top - 3, str(fahrenheit), anchor="middle", role="ash", cap=CAP))
    for t in range(COOLEST, HOTTEST + 1, 100):
        shapes.append(
            label(_across(t), top + high + 5.2, str(t), bold=True, anchor="middle", cap=2.6)
        )
    shapes.append(label(RIGHT + 7, top + high + 5.2, "°C", bold=True, cap=2.6))
    shapes.append(label(RIGHT + 7, top - 3, "°F", role="ash", cap=CAP))
    return shapes


def _shown(names: Sequence[Named]) -> tuple[Named, ...]:
    """Those of the names that the scale reaches, coolest first."""
    reached = [named for named in names if named[1] <= HOTTEST and named[2] >= COOLEST]
    return tuple(sorted(reached, key=lambda named: (named[1], named[2])))


def _rows(names: Sequence[Named]) -> list[tuple[Named, int]]:
    """Each name with its row, so that no name is crossed by the stem of a hotter one.

    A text starts at its own stem and runs right. The stems that it meets on its way belong to
    hotter names: it must hang lower than each of them.
    """
    found: list[tuple[Named, int]] = []
    for named in reversed(names):
        start = _across(max(named[1], COOLEST))
        end = start + 1.0 + width(named[0], CAP) + 2.0
        under = [row for other, row in found if _across(max(other[1], COOLEST)) < end]
        found.append((named, 1 + max(under) if under else 0))
    return found[::-1]


def _lane(title: str, rows: Sequence[tuple[Named, int]], y: float) -> list[Shape]:
    """An observer's title, line, brackets and names, from a line at y [mm]."""
    shapes: list[Shape] = [
        label(LEFT, y - 2.6, title, bold=True, cap=CAP),
        Line(LEFT, y, RIGHT, y, "ash", HAIRLINE),
    ]
    for t in range(COOLEST, HOTTEST + 1, 100):
        shapes.append(Line(_across(t), y - 0.7, _across(t), y + 0.7, "ash", HAIRLINE))
    for (name, low, high), row in rows:
        x1, x2 = _across(max(low, COOLEST)), _across(min(high, HOTTEST))
        base = y + 4.5 + ROW * row
        shapes.append(Line(x1, y - 1.2, x1, base, "ink", HAIRLINE))
        if x2 > x1:
            shapes.append(Line(x1, y, x2 - 0.7, y, "ink", BOLD))
        else:
            shapes.append(Polygon(_diamond(x1, y), "ink", "", HAIRLINE))
        shapes.append(label(x1 + 1.0, base, name, cap=CAP))
    return shapes


def _diamond(x: float, y: float) -> tuple[tuple[float, float], ...]:
    return ((x - 0.9, y), (x, y - 0.9), (x + 0.9, y), (x, y + 0.9))


def _alt(observers: Sequence[Observer], way: str) -> str:
    """What the picture tells, with the names on which the observers differ most."""
    where: dict[str, list[tuple[float, float, str]]] = {}
    for title, names in observers:
        for name, low, high in _shown(names):
            where.setdefault(name, []).append((low, high, title))
    apart = sorted(
        (min(low for low, *_ in places) - max(low for low, *_ in places), name)
        for name, places in where.items()
    )[:3]
    told = [
        f"{name} is "
        + " but ".join(f"{_range(low, high)} for {title}" for low, high, title in where[name])
        for differ, name in apart
        if differ < 0
    ]
    return (
        f"A scale of heat {way} from {COOLEST} to {HOTTEST} °C. It is black up to about 500, "
        "then dark red, and brightens through red to orange. Each observer has a lane of marks "
        "for the heats of the colour names. The same word stands at different heats: "
        f"{'; '.join(told)}."
    )


def _range(low: float, high: float) -> str:
    return f"{low:g} °C" if low == high else f"{low:g} to {high:g} °C"


HIGH = 185.0  # length of the standing scale [mm]
BAR, THICK = 3.0, 5.0  # left edge and thickness of the standing bar [mm]
COLUMNS = 19.5  # left edge of the lanes beside it [mm]
STEM = 1.7  # from a mark to its name in a lane [mm]
LINE_STEP = 3.1  # between the lines of a wrapped name [mm]


def heat_scale_tall(colour: Colour, observers: Sequence[Observer]) -> Picture:
    """The scale standing, hottest on top, with a lane for each observer; about 90 mm wide."""
    shapes: list[Shape] = []
    y = 5.0
    for n, (title, _) in enumerate(observers, 1):
        shapes.append(label(BAR, y, str(n), bold=True, cap=CAP))
        shapes.append(label(BAR + 4, y, title, cap=CAP))
        y += 4.2
    top = y + 8.0
    shapes += _standing_bar(colour, top)
    rooms = [_longest_word(_shown(names)) for _, names in observers]
    x = COLUMNS
    for n, ((_, names), room) in enumerate(zip(observers, rooms, strict=True), 1):
        shapes.append(label(x + 1.2, top - 3, str(n), bold=True, anchor="middle", cap=CAP))
        shapes += _column(_shown(names), x + 1.2, room + 0.1, top)
        x += room + STEM + 2.4
    for n, text in enumerate(NOTE):
        shapes.append(label(BAR, top + HIGH + 9 + n * 4.2, text, role="ash", cap=CAP))
    return Picture(x + 1.0, top + HIGH + 16, tuple(shapes), _alt(observers, "upwards"))


def _longest_word(names: Sequence[Named]) -> float:
    """Width [mm] of the widest word of the names."""
    return max((width(word, CAP) for name, *_ in names for word in name.split()), default=0.0)


def _up(temperature: float, top: float) -> float:
    return top + (HOTTEST - temperature) / (HOTTEST - COOLEST) * HIGH


def _standing_bar(colour: Colour, top: float) -> list[Shape]:
    """The glowing bar from small fields of one colour each, and its degrees Celsius [mm]."""
    shapes: list[Shape] = []
    for t in range(HOTTEST - 10, COOLEST - 1, -10):
        y = _up(t + 10, top)
        # each field reaches under the next, so that no gap shows between them
        shapes.append(Rect(BAR, y, THICK, min(_up(t - 3, top), top + HIGH) - y, colour(t + 5)))
    shapes.append(Rect(BAR, top, THICK, HIGH, "", "ash", HAIRLINE))
    for t in range(COOLEST, HOTTEST + 1, 100):
        y = _up(t, top)
        shapes.append(Line(BAR + THICK, y, BAR + THICK + 1.2, y, "ink", HAIRLINE))
        shapes.append(label(BAR + THICK + 1.8, y + CAP / 2, str(t), bold=True, cap=CAP))
    shapes.append(label(BAR + THICK + 1.8, top - 3, "°C", bold=True, cap=CAP))
    return shapes


def _column(names: Sequence[Named], x: float, room: float, top: float) -> list[Shape]:
    """One observer's line, brackets and wrapped names, hottest on top [mm]."""
    shapes: list[Shape] = [Line(x, top, x, top + HIGH, "ash", HAIRLINE)]
    blocks = [(named, _wrapped(named[0], room)) for named in reversed(names)]
    middles = [
        _up((max(low, COOLEST) + min(high, HOTTEST)) / 2, top) for (_, low, high), _ in blocks
    ]
    heights = [len(lines) * LINE_STEP + 1.0 for _, lines in blocks]
    places = _spread(middles, heights, top, top + HIGH)
    for ((_, low, high), lines), middle, place in zip(blocks, middles, places, strict=True):
        y1, y2 = _up(max(low, COOLEST), top), _up(min(high, HOTTEST), top)
        if y1 > y2:
            shapes.append(Line(x, y2 + 0.7, x, y1, "ink", BOLD))
            shapes.append(Line(x - 1.2, y1, x + 1.2, y1, "ink", HAIRLINE))
        else:
            shapes.append(Polygon(_diamond(x, y1), "ink", "", HAIRLINE))
        shapes.append(Line(x, middle, x + STEM, place, "ink", HAIRLINE))
        first = place - (len(lines) - 1) * LINE_STEP / 2 + CAP / 2
        shapes += [
            label(x + STEM + 0.5, first + n * LINE_STEP, line, cap=CAP)
            for n, line in enumerate(lines)
        ]
    return shapes


def _wrapped(text: str, room: float) -> list[str]:
    """The words of a text in lines no wider than `room` [mm], a longer word alone."""
    lines: list[str] = []
    for word in text.split():
        if lines and width(f"{lines[-1]} {word}", CAP) <= room:
            lines[-1] += f" {word}"
        else:
            lines.append(word)
    return lines


def _spread(
    middles: Sequence[float], heights: Sequence[float], top: float, bottom: float
) -> list[float]:
    """Middles [mm] of blocks near where they want to be, in order, none over another."""
    found: list[float] = []
    edge = top - 2.0
    for middle, high in zip(middles, heights, strict=True):
        found.append(max(middle, edge + high / 2))
        edge = found[-1] + high / 2
    edge = bottom + 2.0
    for n in range(len(found) - 1, -1, -1):
        found[n] = min(found[n], edge - heights[n] / 2)
        edge = found[n] - heights[n] / 2
    return found
