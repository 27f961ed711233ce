"""Divides the work of a plan into runs: where the metal is annealed."""

from __future__ import annotations

import math
from dataclasses import dataclass

from temperbook.metal import runs
from temperbook.metal.planning import holes, passes, path
from temperbook.metal.planning.asked import Equipment, Request
from temperbook.metal.planning.bounds import Stage
from temperbook.metal.planning.stages import Stages
from temperbook.metal.runs import DUST, Limits
from temperbook.metal.sections import Section


@dataclass(frozen=True)
class Leg:
    """A run between two anneals: its ends, its work [1] and the limits that it stands under."""

    start: Section
    end: Section
    strain: float
    stage: Stage


def legs(
    request: Request,
    process: str,
    stages: Stages,
    last: float | None,
    equipment: Equipment,
    thick_wire: float,
) -> list[Leg]:
    """The runs of a plan with the fewest anneals.

    last: work [1] of the last run, or None. thick_wire: diameter [mm] below which an anneal is
    better avoided. Errors: Impossible.
    """
    if process == "draw" and equipment.holes:
        return _through_holes(request, stages, last, equipment)
    total = path.work(request.start, request.end)
    first, later = stages.first.limits, stages.later.limits
    found = runs.split(total, first, later, last, request.more)
    if process == "draw" and last is None:
        found = _annealed_thick(found, request, total, first, later, thick_wire)
    return _placed(request, [run.strain for run in found], stages)


def _placed(request: Request, strains: list[float], stages: Stages) -> list[Leg]:
    total, done = sum(strains), 0.0
    found: list[Leg] = []
    section = request.start
    for number, strain in enumerate(strains):
        done += strain
        share = 1.0 if number == len(strains) - 1 else done / total
        end = path.at(request.start, request.end, share)
        found.append(Leg(section, end, strain, stages.later if number else stages.first))
        section = end
    return found


def _annealed_thick(
    found: list[runs.Run],
    request: Request,
    total: float,
    first: Limits,
    later: Limits,
    thick_wire: float,
) -> list[runs.Run]:
    """As many runs with the last anneal at thick_wire [mm], where the limits allow it."""
    if (
        len(found) < 2
        or request.end.thickness >= thick_wire
        or request.start.thickness <= thick_wire
    ):
        return found
    last = 2 * math.log(thick_wire / request.end.thickness)
    if last <= found[-1].strain + DUST or last > later.ceiling + DUST:
        return found
    moved = runs.split(total, first, later, last, request.more)
    worse = sum(r.under_floor for r in moved[:-1]) > sum(r.under_floor for r in found[:-1])
    return found if len(moved) > len(found) or worse else moved


def _through_holes(
    request: Request, stages: Stages, last: float | None, equipment: Equipment
) -> list[Leg]:
    start, end = request.start, request.end
    per_draw = equipment.per_pass["draw"]
    sizes = holes.usable(passes.as_round(start), end.thickness, per_draw, equipment.holes)
    ends = holes.stops(sizes, stages.first.limits, stages.later.limits, last, request.more)
    found: list[Leg] = []
    section = start
    for number, position in enumerate(ends):
        target = end if position == len(sizes) - 1 else Section("round", *[sizes[position]] * 2)
        stage = stages.later if number else stages.first
        found.append(Leg(section, target, path.work(section, target), stage))
        section = target
    return found
