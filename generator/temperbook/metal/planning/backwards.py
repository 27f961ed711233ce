"""From a finished piece back to the ingot, its mould and the charge."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

from temperbook.metal import mixture
from temperbook.metal.facts import AlloyFacts
from temperbook.metal.planning import path, plan, stages, tempering
from temperbook.metal.planning.asked import SOFT, Impossible, Request, hold_planned
from temperbook.metal.planning.plan import Bench, Plan
from temperbook.metal.runs import RESERVE
from temperbook.metal.sections import Section

MOST_ANNEALS = 3  # options that are shown: more is a habit, not a need


@dataclass(frozen=True)
class Option:
    """The largest start, scalped, from which so many anneals suffice; work [1] to the end."""

    anneals: int
    start: Section
    strain: float


@dataclass(frozen=True)
class Backwards:
    """Options, the plan from the chosen start, the mould's section and the length to pour [mm]."""

    options: tuple[Option, ...]
    plan: Plan
    mould: Section
    pour_length: float
    poured: float


def backwards(
    request: Request, facts: AlloyFacts, bench: Bench, mould: Section | None, anneals: int
) -> Backwards:
    """Ingot, mould and charge of a finished piece with a length or mass.

    request: its start is not read. mould: section of the mould to pour [mm], None for the one
    that needs `anneals` anneals. Errors: Impossible, which tells why and what would do.
    """
    hold_planned(facts)
    if facts.melt != "bench":
        raise Impossible("not-melted", alloy=facts.name, melt=facts.melt)
    options = _options(request, facts, bench)
    start = scalped(mould, bench.equipment.scalp) if mould else _chosen(options, anneals).start
    made = plan.make(replace(request, start=start, state="cast"), facts, bench)
    if made.mass is None or made.charge is None or facts.density is None:
        raise Impossible("no-density", alloy=facts.name)
    cast = mould or unscalped(start, bench.equipment.scalp)
    poured = made.charge * (1 - bench.equipment.loss)
    length = poured / mixture.mass(facts.density, cast.area, 1.0)
    return Backwards(options, made, cast, length, poured)


def _chosen(options: tuple[Option, ...], anneals: int) -> Option:
    for option in options:
        if option.anneals == anneals:
            return option
    raise Impossible("no-such-option", anneals=anneals, least=options[0].anneals if options else 0)


def _options(request: Request, facts: AlloyFacts, bench: Bench) -> tuple[Option, ...]:
    end = request.end
    ingot = Section("flat", end.width, end.thickness) if end.shape == "flat" else _square(end)
    process = request.process or path.process_of(ingot, end)
    cast = replace(request, start=ingot, state="cast")
    found = stages.of(cast, facts, process, bench.usual)
    last = tempering.last_run(cast, facts)
    first, later = found.first.limits.ceiling, found.later.limits.ceiling
    options = []
    for anneals in range(MOST_ANNEALS + 1):
        strain = _reach(anneals, first, later, request, last.strain if last else None)
        if strain is not None:
            options.append(Option(anneals, tempering.thicker(ingot, end, strain), strain))
    return tuple(options)


def _reach(
    anneals: int, first: float, later: float, request: Request, last: float | None
) -> float | None:
    """The most work [1] that so many anneals allow; None where they cannot give the temper."""
    if request.temper == SOFT:
        return (first + (anneals - 1) * later) * RESERVE if anneals else None
    if last is not None:
        return (first + (anneals - 1) * later) * RESERVE + last if anneals else None
    return (first + anneals * later) * RESERVE


def _square(end: Section) -> Section:
    side = math.sqrt(end.area)
    return Section("square", side, side)


def scalped(mould: Section, scalp: float) -> Section:
    """The section that is left of a cast one: a flat loses thickness, a square all around."""
    return _scaled(mould, 1 - scalp)


def unscalped(start: Section, scalp: float) -> Section:
    """The section to cast for one that is left after scalping."""
    return _scaled(start, 1 / (1 - scalp))


def _scaled(section: Section, share: float) -> Section:
    if section.shape == "flat":
        return Section("flat", section.width, section.thickness * share)
    size = section.thickness * math.sqrt(share)
    return Section(section.shape, size, size)
