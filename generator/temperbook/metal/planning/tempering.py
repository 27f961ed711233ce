"""The last run of a plan: how much work gives the temper that is asked for."""

from __future__ import annotations

import math
import re
from dataclasses import dataclass

from temperbook.metal import hardening
from temperbook.metal.facts import AlloyFacts, Known
from temperbook.metal.planning.asked import SOFT, Impossible, Request
from temperbook.metal.planning.stages import Stages
from temperbook.metal.runs import DUST, reduction_of, strain_of
from temperbook.metal.sections import Section

FORM = {"flat": "sheet or strip", "wire": "wire"}
_HARDNESS = re.compile(r"(\d+(?:\.\d+)?)[- ]?(hv|hb)?", re.ASCII)


@dataclass(frozen=True)
class Last:
    """Work [1] of the last run; the table's reduction, or the hardness, that it was asked by."""

    strain: float
    known: Known | None = None
    hardness: float | None = None

    @property
    def claimed(self) -> bool:
        """Whether it promises what the metal is like, and not a reduction alone."""
        return self.known is not None or self.hardness is not None


def stock_of(section: Section) -> str:
    """Which tables serve for a section: flat or wire."""
    return "flat" if section.shape == "flat" else "wire"


def last_run(request: Request, facts: AlloyFacts) -> Last | None:
    """The last run that is asked for; None for none, or where an anneal closes the plan.

    Errors: Impossible for a temper that no table of this alloy and form has.
    """
    if request.last is not None:
        return Last(strain_of(request.last))
    if request.temper in ("", SOFT):
        return None
    asked = _HARDNESS.fullmatch(request.temper)
    if asked:
        return _by_hardness(float(asked[1]), (asked[2] or "HV").upper(), request, facts)
    steps = hardening.temper_steps(facts, stock_of(request.end))
    if request.temper not in steps:
        raise _unknown(request, facts, list(steps))
    strains = hardening.temper_strain(steps[request.temper], stock_of(request.end))
    if strains is None:
        raise Impossible("temper-basis-not-stated", temper=request.temper, alloy=facts.name)
    return Last(sum(strains) / 2, steps[request.temper])


def _by_hardness(value: float, unit: str, request: Request, facts: AlloyFacts) -> Last:
    """The last run for a hardness, from the alloy's own table and never beyond its ends."""
    stock = stock_of(request.end)
    curve = hardening.curve(facts, stock)
    if curve is None or curve.unit != unit:
        raise Impossible("no-hardness-table", alloy=facts.name, form=FORM[stock], unit=unit)
    strain = hardening.strain_for(curve, value)
    if strain is None or strain <= DUST:
        ends = [(point.low + point.high) / 2 for point in (curve.points[0], curve.points[-1])]
        raise Impossible(
            "hardness-not-in-table",
            alloy=facts.name,
            form=FORM[stock],
            hardness=value,
            unit=unit,
            soft=ends[0],
            hard=ends[1],
        )
    return Last(strain, hardness=value)


def _unknown(request: Request, facts: AlloyFacts, known: list[str]) -> Impossible:
    form = FORM[stock_of(request.end)]
    if request.temper not in hardening.TEMPERS:
        words = ", ".join((SOFT, *hardening.TEMPERS))
        return Impossible("unknown-temper", temper=request.temper, words=words)
    if known:
        given = ", ".join(known)
        return Impossible(
            "temper-not-in-table", temper=request.temper, alloy=facts.name, form=form, known=given
        )
    return Impossible("no-temper-table", alloy=facts.name, form=form)


def hold_reachable(last: Last, request: Request, total: float, stages: Stages) -> None:
    """Refuses a last run that is over its ceiling, or larger than all the work there is.

    total: work [1] from start to end. Errors: Impossible, with the start that would do.
    """
    ceiling = stages.later.limits.ceiling
    if last.strain > ceiling + DUST:
        raise Impossible("last-over-ceiling", last=_percent(last.strain), ceiling=_percent(ceiling))
    if last.strain > total + DUST:
        raise Impossible(
            "too-thin-for-temper",
            last=_percent(last.strain),
            there=_percent(total),
            start=thicker(request.start, request.end, last.strain).text,
        )
    claimed = last.claimed and request.state == "cast"
    if claimed and total - last.strain <= DUST:
        raise Impossible(
            "temper-from-cast", start=thicker(request.start, request.end, last.strain).text
        )


def thicker(start: Section, end: Section, strain: float) -> Section:
    """The start, in the start's own shape, from which the end is a work [1] away."""
    if end.shape == "flat":
        size = end.thickness * math.exp(strain)
        return Section(start.shape, start.width if start.shape == "flat" else size, size)
    area = end.area * math.exp(strain)
    if start.shape == "flat":
        return Section("flat", start.width, area / start.width)
    size = math.sqrt(area * 4 / math.pi) if start.shape == "round" else math.sqrt(area)
    return Section(start.shape, size, size)


def thinner(start: Section, end: Section, strain: float) -> Section:
    """The end that is a work [1] away from a start, in the end's shape and width."""
    if end.shape == "flat":
        return Section("flat", end.width, start.thickness * math.exp(-strain))
    side = math.sqrt(start.area * math.exp(-strain))
    size = side * math.sqrt(4 / math.pi) if end.shape == "round" else side
    return Section(end.shape, size, size)


def _percent(strain: float) -> float:
    return 100 * reduction_of(strain)
