"""Which of an alloy's limits stand for a run, and how much work each allows."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from temperbook.metal.facts import AlloyFacts, Known
from temperbook.metal.runs import Limits, reduction_of, strain_of

# How records name the working and the form of each process of a plan.
WORKING = {"forge": "forging", "groove": "rolling", "flat": "rolling", "draw": "drawing"}
FORMS = {
    "forge": ("bar", "any"),
    "groove": ("wire", "bar", "any"),
    "flat": ("sheet", "strip", "any"),
    "draw": ("wire", "bar", "any"),
}
GIVEN = "given"


@dataclass(frozen=True)
class Bound:
    """A limit as a plan uses it.

    strain: work [1]. percent, of: as its record states it. how, sources: its provenance. fits:
    whether it is published for this working and form, and not taken over from another.
    """

    strain: float
    percent: float
    of: str
    how: str
    sources: tuple[str, ...] = ()
    fits: bool = True

    @property
    def area(self) -> float:
        """The area reduction [percent] of the same work."""
        return 100 * reduction_of(self.strain)


@dataclass(frozen=True)
class Stage:
    """The two limits of a run; None where nothing is known or asked."""

    ceiling: Bound | None
    floor: Bound | None

    @property
    def limits(self) -> Limits:
        """The same as work [1]."""
        return Limits(
            self.ceiling.strain if self.ceiling else math.inf,
            self.floor.strain if self.floor else 0.0,
        )


def given(share: float) -> Bound:
    """A limit that was typed: an area reduction [1]."""
    return Bound(strain_of(share), 100 * share, "area", GIVEN)


def ceiling(facts: AlloyFacts, stage: str, process: str) -> Bound | None:
    """How far a run may go: the alloy's own figure for this working, else the least of the others.

    stage: cast | annealed; a casting without a limit of its own has none here. Valid for: ranges
    are read at their lower end, a basis that is not stated as the area, which allows least.
    """
    found = _at_stage(facts.of("reduction-ceiling"), stage)
    fitting = _best_first([known for known in found if _fits(known, process)])
    if fitting:
        return _bound(fitting[0], process, asks_most=False)
    others = [_bound(known, process, asks_most=False, fits=False) for known in found]
    return min(others, key=lambda bound: bound.strain, default=None)


def floor(facts: AlloyFacts, stage: str, process: str) -> Bound | None:
    """How little is too little before an anneal, where a figure for this working is known.

    Valid for: ranges are read at their lower end; where the basis is not stated, the reading that
    asks for most.
    """
    found = _at_stage(facts.of("reduction-floor"), stage)
    fitting = _best_first([known for known in found if _fits(known, process)])
    return _bound(fitting[0], process, asks_most=True) if fitting else None


def per_pass(facts: AlloyFacts, process: str) -> float | None:
    """The area reduction [1] of one pass that the alloy's own figures allow."""
    for known in facts.of("reduction-per-pass"):
        if _fits(known, process):
            bound = _bound(known, process, asks_most=False)
            return reduction_of(bound.strain)
    return None


def _at_stage(figures: Sequence[Known], stage: str) -> list[Known]:
    return [f for f in figures if f.stage in (stage, "any", "") and not f.name]


def _fits(known: Known, process: str) -> bool:
    working = known.process in (WORKING[process], "any", "")
    return working and known.form in (*FORMS[process], "")


def _best_first(figures: list[Known]) -> list[Known]:
    """Published before common practice, then one for this very working, then the record's order."""
    return sorted(
        figures,
        key=lambda known: (known.how in ("practice", "memory"), known.process in ("any", "")),
    )


def _bound(known: Known, process: str, *, asks_most: bool, fits: bool = True) -> Bound:
    percent = known.lowest
    twice = known.of == "diameter" or (asks_most and process != "flat" and known.of == "not-stated")
    strain = strain_of(percent / 100) * (2 if twice else 1)
    return Bound(strain, percent, known.of, known.how, known.sources, fits)
