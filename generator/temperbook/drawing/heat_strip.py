"""A strip of glow with an anneal's window and the hatched stop, in shares of its width: it fits any screen."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass

LEAST, STEP, STOPS = 400, 100, 24


@dataclass(frozen=True)
class Strip:
    """Heat colours by share, the window and stop as (left, width) in percent, ticks as (percent, text)."""

    low: float
    high: float
    stops: list[tuple[float, str]]
    window: tuple[float, float] | None
    stop: tuple[float, float] | None
    melts: float | None
    ticks: list[tuple[float, str]]


def strip(
    anneal: tuple[float, float] | None,
    melts: float | None,
    margin: float,
    colour: Callable[[float], str],
) -> Strip:
    """The strip for an anneal [degC] and the heat [degC] at which melting begins; `margin` [K] before it."""
    low, high = _span(anneal, melts)

    def share(temperature: float) -> float:
        inside = min(high, max(low, temperature))
        return 100 * (inside - low) / (high - low)

    stops = [(n / STOPS, colour(low + (high - low) * n / STOPS)) for n in range(STOPS + 1)]
    window = stop = melting = None
    if anneal:
        left, right = share(anneal[0]), share(anneal[1])
        window = (min(left, 99.2), max(right - left, 0.8))
    if melts is not None and melts - margin < high:
        stop = (share(melts - margin), 100 - share(melts - margin))
        melting = share(melts) if melts < high else None
    ticks = [
        (share(t), str(t))
        for t in range(int(low) + STEP, int(high), STEP * (2 if high - low > 900 else 1))
    ]
    return Strip(low, high, stops, window, stop, melting, ticks)


def _span(anneal: tuple[float, float] | None, melts: float | None) -> tuple[float, float]:
    low, high = anneal or (500.0, 700.0)
    bottom = min(LEAST, math.floor((low - 20) / STEP) * STEP)
    top = max(high + 150, min(melts + 60, high + 400)) if melts else high + 300
    return bottom, math.ceil(top / STEP) * STEP
