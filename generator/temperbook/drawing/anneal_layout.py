"""Where things stand on an anneal sheet: columns, the temperature axis, and how rows flow to
sheets."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass

from temperbook.drawing import lettering
from temperbook.drawing.paper import Lettering
from temperbook.views.anneal_chart import AnnealChart, ChartRow

MARGIN = 10.0  # mm of empty paper round the sheet
STEP = 100  # degC between ticks
STOPS = 24  # heat colours along a bar
LEAST_SPAN = 400  # degC that an axis spans at least
HOLD, COOL, NONE = (
    "min",
    "cool",
    "—",
)  # heads of columns, and what stands where nothing is published
Colour = Callable[[float], str]
Room = Callable[[list[ChartRow]], float]


@dataclass(frozen=True)
class Line:
    """A row of a sheet: a group's heading, or an alloy."""

    heading: str = ""
    row: ChartRow | None = None


@dataclass(frozen=True)
class Columns:
    """Left edges and widths [mm] of the columns of a sheet, from left to right."""

    name: float
    bars: float
    bars_width: float
    figure: float
    hold: float
    cooling: float
    right: float


@dataclass(frozen=True)
class Axis:
    """The temperature axis [degC] over the bars' column."""

    low: float
    high: float
    left: float
    width: float

    def x(self, temperature: float) -> float:
        """Place [mm] of a temperature, held inside the axis."""
        inside = min(self.high, max(self.low, temperature))
        return self.left + self.width * (inside - self.low) / (self.high - self.low)

    def ticks(self) -> list[int]:
        """Temperatures with a tick."""
        return list(range(int(self.low), int(self.high) + 1, STEP))

    def labelled(self, cap: float) -> list[int]:
        """The ticks whose figures, `cap` [mm] high, stand clear of each other."""
        wide = max(lettering.width(f"{tick} ", cap) for tick in self.ticks())
        every = math.ceil(wide / (self.width * STEP / (self.high - self.low)))
        return self.ticks()[::every]


def pitch(letters: Lettering, line: Line) -> float:
    """Height [mm] of a row."""
    return letters.other * 1.45 if line.heading else letters.key * 1.3


def sheets(chart: AnnealChart, letters: Lettering, room: Room) -> list[list[Line]]:
    """The rows of each sheet: never more than there is room for, spread evenly, a heading never
    last. room: what is left for the rows of a sheet [mm], which depends on the foot below them."""
    fewest = _flow(chart, letters, room, 0)
    step = letters.key * 0.2
    spare = 0.0
    found = fewest
    while len(fewest) > 1:
        spare += step
        evener = _flow(chart, letters, room, spare)
        if len(evener) > len(fewest):
            break
        found = evener
    return found


def _flow(chart: AnnealChart, letters: Lettering, room: Room, spare: float) -> list[list[Line]]:
    found: list[list[Line]] = [[]]
    for group in chart.groups:
        for position, row in enumerate(group.rows):
            lines = [Line(heading=group.title)] if position == 0 or not found[-1] else []
            lines.append(Line(row=row))
            sheet = found[-1] + lines
            high = sum(pitch(letters, line) for line in sheet)
            if found[-1] and high > room([line.row for line in sheet if line.row]) - spare:
                found.append([Line(heading=group.title), Line(row=row)])
            else:
                found[-1] = sheet
    return found


def columns(rows: list[ChartRow], letters: Lettering, left: float, right: float) -> Columns:
    """Columns as wide as the texts of these rows need; the bars take what is left."""
    gap = letters.other * 0.7
    mark = letters.other * 0.85
    name = max(lettering.width(r.name, letters.other, 700) for r in rows)
    figure = max(lettering.width(r.figure, letters.key, 800) for r in rows) + mark
    holds = [HOLD, *(r.hold or NONE for r in rows)]
    hold = max(lettering.width(text, letters.other, 400) for text in holds) + mark
    cooling = letters.other * 1.9 + mark
    cooling_at = right - cooling
    hold_at = cooling_at - gap - hold
    figure_at = hold_at - gap - figure
    bars_at = left + name + gap
    return Columns(left, bars_at, figure_at - gap - bars_at, figure_at, hold_at, cooling_at, right)


def axis(rows: list[ChartRow], at: Columns) -> Axis:
    """An axis that holds every anneal of the rows and what lies above it, in whole hundreds."""
    lows = [r.low for r in rows if r.low is not None] or [500.0]
    highs = [r.high for r in rows if r.high is not None] or [700.0]
    tops = [min(r.stop, max(highs) + 150) for r in rows if r.stop is not None]
    low = math.floor((min(lows) - 40) / STEP) * STEP
    high = math.ceil((max(*tops, max(highs), 0) + 40) / STEP) * STEP
    return Axis(low, max(high, low + LEAST_SPAN), at.bars, at.bars_width)


def glow_stops(low: float, high: float, colour: Colour) -> tuple[tuple[float, str], ...]:
    """Heat colours from one temperature [degC] to another as shares of a bar."""
    return tuple(
        (step / STOPS, colour(low + (high - low) * step / STOPS)) for step in range(STOPS + 1)
    )
