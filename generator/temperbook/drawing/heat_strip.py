"""A strip of glow with an anneal's window and the hatched stop, in shares of its width: it fits
any screen."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass

LEAST, STEP, STOPS = 400, 100, 24
SHARED = (200.0, 1200.0)  # degC of the strips in the index
Colour = Callable[[float], str]


@dataclass(frozen=True)
class Strip:
    """Heat colours by share, the window and stop as (left, width) in percent, ticks as (percent,
    text)."""

    low: float
    high: float
    stops: list[tuple[float, str]]
    window: tuple[float, float] | None
    stop: tuple[float, float] | None
    melts: float | None
    ticks: list[tuple[float, str]]


def strip(
    anneal: tuple[float, float] | None, melts: float | None, margin: float, colour: Colour
) -> Strip:
    """The strip for an anneal [degC] and the heat [degC] at which melting begins, `margin` [K]
    before it.

    It spans what matters to this alloy, with the colours of its whole span.
    """
    low, high = _span(anneal, melts)
    return _strip(anneal, melts, margin, (low, high), (low, high), colour)


def shared(
    anneal: tuple[float, float] | None, melts: float | None, margin: float, colour: Colour
) -> Strip:
    """The same on a span that all alloys share, with the colours of the anneal alone."""
    return _strip(anneal, melts, margin, SHARED, anneal or SHARED, colour)


def _strip(
    anneal: tuple[float, float] | None,
    melts: float | None,
    margin: float,
    span: tuple[float, float],
    coloured: tuple[float, float],
    colour: Colour,
) -> Strip:
    low, high = span

    def share(temperature: float) -> float:
        inside = min(high, max(low, temperature))
        return 100 * (inside - low) / (high - low)

    cool, hot = coloured
    stops = [(n / STOPS, colour(cool + (hot - cool) * n / STOPS)) for n in range(STOPS + 1)]
    window = stop = melting = None
    if anneal:
        left, right = share(anneal[0]), share(anneal[1])
        window = (min(left, 99.2), max(right - left, 0.8))
    if melts is not None and melts - margin < high:
        stop = (share(melts - margin), 100 - share(melts - margin))
        melting = share(melts) if melts < high else None
    step = STEP * (2 if high - low > 900 else 1)
    ticks = [(share(t), str(t)) for t in range(int(low) + STEP, int(high), step)]
    return Strip(low, high, stops, window, stop, melting, ticks)


def _span(anneal: tuple[float, float] | None, melts: float | None) -> tuple[float, float]:
    low, high = anneal or (500.0, 700.0)
    bottom = min(LEAST, math.floor((low - 20) / STEP) * STEP)
    top = max(high + 150, min(melts + 60, high + 400)) if melts else high + 300
    return bottom, math.ceil(top / STEP) * STEP
