"""How much work goes into each run between two anneals, so that there are as few anneals as can be.

Work is true strain [1]. A ceiling binds: no run passes it. A floor warns: a run below it is marked.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from temperbook.metal import guards

DUST = 1e-9  # strain that is none: rounding must never cost an anneal
RESERVE = 0.98  # share of its ceiling from which a run has no reserve


@dataclass(frozen=True)
class Limits:
    """Least and greatest strain [1] of a run; no floor is 0, no ceiling infinite."""

    ceiling: float = math.inf
    floor: float = 0.0


@dataclass(frozen=True)
class Run:
    """Work between two anneals: its strain [1] and the limits that it stands under."""

    strain: float
    limits: Limits

    @property
    def under_floor(self) -> bool:
        """Whether an anneal after this run would come too early."""
        return self.strain < self.limits.floor - DUST

    @property
    def without_reserve(self) -> bool:
        """Whether the run ends within 2 percent of its ceiling."""
        return self.strain > self.limits.ceiling * RESERVE + DUST


def strain_of(area_reduction: float) -> float:
    """True strain [1] of an area reduction [1]. Formula: -ln(1 - r). Valid for: 0 <= r < 1."""
    guards.fraction(area_reduction)
    return -math.log(1 - area_reduction)


def reduction_of(strain: float) -> float:
    """Area reduction [1] of a true strain [1]. Formula: 1 - exp(-e). Valid for: e >= 0."""
    return 1 - math.exp(-strain)


def split(
    total: float, first: Limits, later: Limits, last: float | None = None, more: int = 0
) -> list[Run]:
    """The fewest runs that do a work [1] within the ceilings; an anneal follows each but the last.

    total: true strain from start to end. first: limits of the first run (from cast, or the same as
    later). later: limits after an anneal. last: strain of a last run that gives the temper, under
    the limits of its place. more: anneals beyond the fewest, to show what they do.
    Valid for: total >= 0. Formula: smallest k with the sum of ceilings at or above the work, equal
    strains, the first held to its own limits. Source: the handbook's own rule (Reduction page).
    Errors: ValueError where the last run is larger than its ceiling or than the work.
    """
    if total < 0:
        raise ValueError("work is not taken back: the end must not be larger than the start")
    rest = total - (last or 0)
    if rest < -DUST:
        raise ValueError("the last run is larger than the whole work")
    runs = _even(rest, first, later, more) if rest > DUST else []
    if last is not None:
        place = later if runs else first
        if last > place.ceiling + DUST:
            raise ValueError("the last run passes its ceiling")
        runs.append(Run(last, place))
    return runs


def _even(rest: float, first: Limits, later: Limits, more: int) -> list[Run]:
    number = 1 + more
    if rest > first.ceiling + DUST:
        number += math.ceil((rest - first.ceiling) / later.ceiling - DUST)
    if number == 1:
        return [Run(rest, first)]
    opening = _opening(rest, number, first, later)
    each = (rest - opening) / (number - 1)
    return [Run(opening, first), *(Run(each, later) for _ in range(number - 1))]


def _opening(rest: float, number: int, first: Limits, later: Limits) -> float:
    """The first run: an equal part; held to limits of its own where it has them.

    A reserve is kept in the others and in it as long as the work leaves room for one.
    """
    equal = rest / number
    if first == later:
        return equal
    for reserve in (RESERVE, 1.0):
        most = first.ceiling * reserve
        least = rest - (number - 1) * later.ceiling * reserve
        if least <= most + DUST:
            wanted = max(equal, min(first.floor, rest))
            return min(max(wanted, least), most)
    return first.ceiling
