"""Where the metal stands: work used since the last anneal, what is left, what comes next."""

from __future__ import annotations

import math
from dataclasses import dataclass

from temperbook.metal import hardening
from temperbook.metal.facts import AlloyFacts
from temperbook.metal.hardening import Hardness
from temperbook.metal.planning import path, stages, tempering
from temperbook.metal.planning.asked import STARTS, Impossible, Request, Said, hold_planned
from temperbook.metal.planning.bounds import Bound
from temperbook.metal.planning.plan import Bench
from temperbook.metal.runs import DUST, RESERVE, reduction_of
from temperbook.metal.sections import Section


@dataclass(frozen=True)
class Where:
    """Work used [1] and left [1], the section at which the limit is reached, the one from which an
    anneal is not too early (None where no floor is known or it is passed), and what stands next:
    anneal | work."""

    facts: AlloyFacts
    start: Section
    now: Section
    process: str
    used: float
    left: float
    ceiling: Bound
    floor: Bound | None
    until: Section
    earliest: Section | None
    next: str
    hardness: Hardness | None
    warnings: tuple[Said, ...]


def used(request: Request, facts: AlloyFacts, bench: Bench) -> Where:
    """Where metal stands that was annealed (or cast) at the request's start and is now at its end.

    Errors: Impossible, as for a plan.
    """
    hold_planned(facts)
    if request.state not in STARTS:
        raise Impossible("unknown-start", state=request.state)
    path.hold_smaller(request.start, request.end)
    process = path.process_for(request)
    found = stages.of(request, facts, process, bench.usual)
    ceiling, floor = found.first.ceiling, found.first.floor
    assert ceiling is not None  # the bench's usual one stands in where the alloy has none
    done = path.work(request.start, request.end)
    curve = hardening.curve(facts, tempering.stock_of(request.end))
    early = floor is not None and done < floor.strain - DUST and floor.strain <= ceiling.strain
    return Where(
        facts,
        request.start,
        request.end,
        process,
        done,
        max(0.0, ceiling.strain - done),
        ceiling,
        floor,
        _after(request, ceiling.strain),
        _after(request, floor.strain) if floor and early else None,
        "anneal" if done > ceiling.strain * RESERVE + DUST else "work",
        hardening.at(curve, done) if curve and request.state != "cast" else None,
        (*found.warnings, *_warnings(done, ceiling)),
    )


def _after(request: Request, strain: float) -> Section:
    """The section after a work [1] from the start, in the shape and width of the section now."""
    start, now = request.start, request.end
    if now.shape == "flat":
        return Section("flat", now.width, start.thickness * math.exp(-strain))
    return tempering.thinner(start, now, strain)


def _warnings(done: float, ceiling: Bound) -> tuple[Said, ...]:
    if done <= ceiling.strain + DUST:
        return ()
    percent = 100 * reduction_of(done)
    return (Said("past-ceiling", {"percent": percent, "ceiling": ceiling.area}),)
