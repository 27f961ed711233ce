"""The colours of heat for screen and paper, from the observer's table in data/observers/."""

from __future__ import annotations

import csv
from collections.abc import Callable
from dataclasses import dataclass
from functools import cache, cached_property
from pathlib import Path

from temperbook.metal import heat_colour
from temperbook.metal.heat_colour import BRIGHTEST, DIMMEST, SOOT
from temperbook.paths import Project

TABLE = "observers/cie-1931-2deg.csv"


@dataclass(frozen=True)
class GlowScale:
    """Colours of a black body as a dark-adapted eye sees them in a dim shop."""

    observer: tuple[tuple[float, float, float, float], ...]

    def seen(self, temperature: float) -> heat_colour.Glow:
        """Chromaticity and luminance at a temperature [degC]."""
        return self._remembered(temperature)

    @cached_property
    def _remembered(self) -> Callable[[float], heat_colour.Glow]:
        """The same heats come again and again, in charts, strips and plots."""
        return cache(lambda temperature: heat_colour.glow(temperature, self.observer))

    def colour(self, temperature: float) -> str:
        """`#rrggbb` at a temperature [degC]."""
        return heat_colour.shown_colour(self.seen(temperature), SOOT, DIMMEST, BRIGHTEST)


@cache
def _table(path: Path) -> tuple[tuple[float, float, float, float], ...]:
    with path.open(encoding="utf-8", newline="") as stream:
        rows = list(csv.reader(stream))[1:]
    return tuple((float(r[0]), float(r[1]), float(r[2]), float(r[3])) for r in rows)


def scale(project: Project) -> GlowScale:
    """The scale of a project."""
    return GlowScale(_table(project.data / TABLE))
