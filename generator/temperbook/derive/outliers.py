"""Figures that lie far from what others of the same metal lead one to expect: found by rule."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from temperbook.derive import comparing, facts
from temperbook.derive.handbook import Handbook
from temperbook.derive.limits import highest, lowest, stop
from temperbook.records.models import Alloy

KELVIN = 273.15
DENSITY_OFF = 3.0  # percent: mixing misses published densities by less, zinc alloys apart
HOTTEST = 0.9  # share of the first melting, in kelvin, above which an anneal is suspect
TENSILE_OVER_HARDNESS = (2.2, 4.8)  # MPa over HV of annealed metal; Tabor's 3 with a wide berth


@dataclass(frozen=True)
class Outlier:
    """A figure that a rule points at: its record, quantity, what was found, what is expected."""

    record: str
    quantity: str
    found: float
    expected: str


def of(handbook: Handbook) -> list[Outlier]:
    """Every figure of an alloy that one of the rules points at, by record."""
    found = []
    for alloy in handbook.library.alloys.values():
        found += [*_density(alloy), *_anneal(alloy), *_strength(alloy)]
    return found


def _density(alloy: Alloy) -> Iterator[Outlier]:
    mixed = comparing.densities(alloy).mixed
    if mixed is None:
        return
    for figure in alloy.figures.get("density", []):
        if figure.how == "computed" or figure.ends == (None, None):
            continue
        off = comparing.off(figure, mixed)
        if abs(off) > DENSITY_OFF:
            yield Outlier(alloy.id, "density", off, f"within {DENSITY_OFF:g} percent of mixing")


def _anneal(alloy: Alloy) -> Iterator[Outlier]:
    melts = stop(alloy)
    if melts is None:
        return
    most = HOTTEST * (lowest(melts[1]) + KELVIN) - KELVIN
    for figure in alloy.figures.get("anneal", []):
        if highest(figure) > most:
            yield Outlier(alloy.id, "anneal", highest(figure), f"at most {most:.0f} degC")


def _strength(alloy: Alloy) -> Iterator[Outlier]:
    """Annealed tensile strength [MPa] over Vickers hardness, each the middle of its range."""
    middles = []
    for quantity in ("tensile", "hardness"):
        known = [
            k
            for k in facts.known(alloy.figures.get(quantity, []))
            if k.state == "annealed" and k.low is not None and k.high is not None  # no bound
        ]
        if not known:
            return
        middles.append((known[0].lowest + known[0].highest) / 2)
    ratio = middles[0] / middles[1]
    low, high = TENSILE_OVER_HARDNESS
    if not low <= ratio <= high:
        yield Outlier(alloy.id, "tensile", ratio, f"{low:g} to {high:g} times the hardness")
