"""Where things stand on an anneal sheet: columns, the temperature axis, and how rows flow to sheets."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator
from dataclasses import dataclass

from temperbook.drawing import lettering
from temperbook.drawing.paper import Lettering
from temperbook.views.anneal_chart import AnnealChart, ChartGroupShown, ChartRow

MARGIN = 11.0  # mm of empty paper round the sheet
STEP = 100  # degC between ticks
STOPS = 24  # heat colours along a bar
Colour = Callable[[float], str]


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


def pitch(letters: Lettering, line: Line) -> float:
    """Height [mm] of a row."""
    return letters.other * 1.5 if line.heading else letters.key * 1.42


def sheets(chart: AnnealChart, letters: Lettering, room: float) -> list[list[Line]]:
    """The rows of each sheet: never more than fit into `room` [mm], a heading never last."""
    found: list[list[Line]] = [[]]
    left = room
    for group in chart.groups:
        for first, row in _with_first(group):
            lines = [Line(heading=group.title)] if first or not found[-1] else []
            lines.append(Line(row=row))
            needed = sum(pitch(letters, line) for line in lines)
            if needed > left and found[-1]:
                found.append([])
                left = room
                lines = [Line(heading=group.title), Line(row=row)]
                needed = sum(pitch(letters, line) for line in lines)
            found[-1] += lines
            left -= needed
    return found


def _with_first(group: ChartGroupShown) -> Iterator[tuple[bool, ChartRow]]:
    for position, row in enumerate(group.rows):
        yield position == 0, row


def columns(rows: list[ChartRow], letters: Lettering, left: float, right: float) -> Columns:
    """Columns as wide as the texts of these rows need; the bars take what is left."""
    gap = letters.other * 0.7
    mark = letters.other * 0.85
    name = max(lettering.width(r.name, letters.other, 700) for r in rows)
    figure = max(lettering.width(r.figure, letters.key, 800) for r in rows) + mark
    hold = max(lettering.width(r.hold or "—", letters.other, 400) for r in rows) + mark
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
    tops = [
        min(r.stop or h, (r.high or h) + 200)
        for r, h in zip(rows, _padded(highs, rows), strict=True)
    ]
    low = math.floor((min(lows) - 20) / STEP) * STEP
    high = math.ceil((max(*tops, max(highs)) + 20) / STEP) * STEP
    return Axis(low, high, at.bars, at.bars_width)


def _padded(highs: list[float], rows: list[ChartRow]) -> list[float]:
    return [max(highs)] * len(rows)


def glow_stops(low: float, high: float, colour: Colour) -> tuple[tuple[float, str], ...]:
    """Heat colours from one temperature [degC] to another as shares of a bar."""
    return tuple(
        (step / STOPS, colour(low + (high - low) * step / STOPS)) for step in range(STOPS + 1)
    )
