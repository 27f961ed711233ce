"""The limits of a plan's first run and of those that follow an anneal."""

from __future__ import annotations

from dataclasses import dataclass

from temperbook.metal.facts import AlloyFacts, Known
from temperbook.metal.planning import bounds
from temperbook.metal.planning.asked import Request, Said
from temperbook.metal.planning.bounds import Bound, Stage
from temperbook.metal.runs import strain_of


@dataclass(frozen=True)
class Stages:
    """Limits of the first run and of the later ones, and what must be said of them."""

    first: Stage
    later: Stage
    warnings: tuple[Said, ...]


def of(request: Request, facts: AlloyFacts, process: str, usual: Known) -> Stages:
    """What was typed, else the alloy's own figures, else the usual ceiling of the bench.

    usual: the bench's common ceiling [percent], for an alloy without any. Valid for: one process.
    """
    warnings: list[Said] = []
    later = Stage(
        _ceiling(request.ceiling, facts, process, usual, warnings),
        _given(request.floor) or bounds.floor(facts, "annealed", process),
    )
    if request.state == "cast":
        first = Stage(
            _cast_ceiling(request, facts, process, later, warnings),
            _cast_floor(request, facts, process),
        )
    else:
        first = Stage(
            _given(request.first_ceiling) or later.ceiling,
            _given(request.first_floor) or later.floor,
        )
    return Stages(first, later, tuple(warnings))


def _given(share: float | None) -> Bound | None:
    return bounds.given(share) if share is not None else None


def _ceiling(
    typed: float | None, facts: AlloyFacts, process: str, usual: Known, warnings: list[Said]
) -> Bound:
    if typed is not None:
        return bounds.given(typed)
    found = bounds.ceiling(facts, "annealed", process)
    if found is None:
        warnings.append(Said("no-limit", {"alloy": facts.name, "percent": usual.lowest}))
        return Bound(
            strain_of(usual.lowest / 100), usual.lowest, usual.of, usual.how, usual.sources
        )
    if not found.fits:
        warnings.append(Said("limit-of-other-working", {"percent": found.percent}))
    return found


def _cast_ceiling(
    request: Request, facts: AlloyFacts, process: str, later: Stage, warnings: list[Said]
) -> Bound | None:
    if request.first_ceiling is not None:
        return bounds.given(request.first_ceiling)
    found = bounds.ceiling(facts, "cast", process)
    if found is None:
        warnings.append(Said("no-cast-limit", {"alloy": facts.name}))
        return later.ceiling
    if not found.fits:
        warnings.append(Said("cast-limit-of-other-working", {"percent": found.percent}))
    return found


def _cast_floor(request: Request, facts: AlloyFacts, process: str) -> Bound | None:
    if request.first_floor is not None:
        return bounds.given(request.first_floor)
    return bounds.floor(facts, "cast", process) or _given(request.floor)
