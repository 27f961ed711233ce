"""What a comparison has drawn: rows on one scale, and curves. Numbers in the unit of the scale."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

TickKind = Literal["floor", "first", "ring", "disc"]


@dataclass(frozen=True)
class Tick:
    """A sign at a place of a row: a least, a first run, a published value, a computed one."""

    at: float
    kind: TickKind


@dataclass(frozen=True)
class Bar:
    """A row: its name, the range that is drawn (None for none), what is said at its right end.

    mark: how the range is known. hollow: drawn as an outline, since something about it is open.
    stop: where a hatched part begins; melts: a line in it.
    """

    label: str
    low: float | None
    high: float | None
    text: str
    mark: str = ""
    hollow: bool = False
    stop: float | None = None
    melts: float | None = None
    ticks: tuple[Tick, ...] = ()


@dataclass(frozen=True)
class Ladder:
    """Rows on one scale from `low` to `high` with a line at each `step`; `glow`: bars are heat."""

    low: float
    high: float
    step: float
    unit: str
    bars: tuple[Bar, ...]
    alt: str
    glow: bool = False


@dataclass(frozen=True)
class Line:
    """A curve: its name and its points (x, lower end, upper end); `thin`: two points alone."""

    label: str
    points: tuple[tuple[float, float, float], ...]
    thin: bool


@dataclass(frozen=True)
class Curves:
    """Curves over percent of the area, from 0 to `right`; `steps` are those of the two axes."""

    right: float
    low: float
    high: float
    steps: tuple[float, float]
    unit: str
    lines: tuple[Line, ...]
    alt: str


Plot = Ladder | Curves
