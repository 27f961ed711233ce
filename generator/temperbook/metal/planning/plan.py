"""The working plan: runs between anneals, their passes, and what the metal is like after each."""

from __future__ import annotations

from dataclasses import dataclass, replace

from temperbook.metal import alloying, hardening, mixture, spread
from temperbook.metal.facts import AlloyFacts, Known
from temperbook.metal.hardening import Hardness
from temperbook.metal.planning import (
    bounds,
    dividing,
    passes,
    path,
    remarks,
    stages,
    tempering,
)
from temperbook.metal.planning.asked import (
    SOFT,
    STARTS,
    Equipment,
    Impossible,
    Request,
    Said,
    hold_planned,
)
from temperbook.metal.planning.bounds import Bound
from temperbook.metal.planning.dividing import Leg
from temperbook.metal.planning.passes import Pass
from temperbook.metal.planning.stages import Stages
from temperbook.metal.runs import DUST, RESERVE
from temperbook.metal.sections import Section


@dataclass(frozen=True)
class Bench:
    """What the handbook knows of benches besides the alloy.

    usual: the common ceiling [percent]. thick_wire: diameter [mm] down to which an anneal of wire
    does no harm. critical: reduction [percent] below which an anneal coarsens the grain. rule:
    the spread formula; split_ends: factor [1] of that criterion; delta: shape of the zone [1]
    above which the middle of a wire may tear. None where none is known.
    """

    equipment: Equipment
    usual: Known
    thick_wire: float
    critical: float
    rule: spread.SpreadRule | None = None
    split_ends: float | None = None
    delta: float | None = None


@dataclass(frozen=True)
class Run:
    """A run between two anneals. then: anneal | end. hardness: None, with why in hardness_why."""

    start: Section
    end: Section
    process: str
    strain: float
    ceiling: Bound | None
    floor: Bound | None
    then: str
    passes: tuple[Pass, ...]
    hardness: Hardness | None
    hardness_why: str

    @property
    def under_floor(self) -> bool:
        """Whether the anneal behind it comes too early."""
        return self.floor is not None and self.strain < self.floor.strain - DUST

    @property
    def without_reserve(self) -> bool:
        """Whether it ends within 2 percent of its ceiling."""
        return self.ceiling is not None and self.strain > self.ceiling.strain * RESERVE + DUST


@dataclass(frozen=True)
class Plan:
    """A plan. mass: of the end [g]. charge: metal to melt [g], whole and by element; None where
    no length or mass was given, or no bench melts the alloy. width: estimated width [mm] of a
    flat that is left to spread, None where it is taken as constant."""

    facts: AlloyFacts
    request: Request
    process: str
    strain: float
    runs: tuple[Run, ...]
    curve: hardening.Curve | None
    temper: Known | None
    mass: float | None
    charge: float | None
    parts: dict[str, float]
    width: float | None
    notes: tuple[Said, ...]
    warnings: tuple[Said, ...]

    @property
    def anneals(self) -> int:
        """How often the metal is annealed, at the end included."""
        return sum(run.then == "anneal" for run in self.runs)


def make(request: Request, facts: AlloyFacts, bench: Bench) -> Plan:
    """The plan with the fewest anneals. Errors: Impossible, which tells why and what would do."""
    process = _held(request, facts)
    width = _width(request, process, bench)
    total = path.work(request.start, request.end)
    if total <= DUST:
        raise Impossible("nothing-to-do", end=request.end.text)
    found = stages.of(request, facts, process, bench.usual)
    last = tempering.last_run(request, facts)
    if last:
        tempering.hold_reachable(last, request, total, found)
    strain = last.strain if last else None
    legs = dividing.legs(request, process, found, strain, bench.equipment, bench.thick_wire)
    curve = hardening.curve(facts, tempering.stock_of(request.end))
    runs = tuple(
        _run(leg, number, len(legs), request, facts, process, bench, curve)
        for number, leg in enumerate(legs)
    )
    mass, charge, parts = _masses(request, facts, bench.equipment)
    plan = Plan(
        facts,
        request,
        process,
        total,
        runs,
        curve,
        last.known if last else None,
        mass,
        charge,
        parts,
        width,
        (),
        (),
    )
    return _with_remarks(plan, found, bench)


def _with_remarks(plan: Plan, found: Stages, bench: Bench) -> Plan:
    warned = (*found.warnings, *remarks.warnings(plan, found, bench))
    return replace(plan, notes=tuple(remarks.notes(plan, found, bench)), warnings=warned)


def _held(request: Request, facts: AlloyFacts) -> str:
    """The process, once everything that forbids the plan from the first is ruled out."""
    hold_planned(facts)
    if request.state not in STARTS:
        raise Impossible("unknown-start", state=request.state)
    if request.state == "cast" and facts.melt != "bench":
        raise Impossible("not-melted", alloy=facts.name, melt=facts.melt)
    if request.more < 0:
        raise Impossible("fewer-anneals")
    path.hold_smaller(request.start, request.end)
    path.hold_rolled(request.start, request.end)
    return path.process_for(request)


def _width(request: Request, process: str, bench: Bench) -> float | None:
    """The width [mm] that a flat spreads to. Errors: Impossible for an end that is wider."""
    start, end = request.start, request.end
    if process != "flat":
        return None
    equipment = bench.equipment
    if bench.rule is None:
        reached = start.width
    else:
        reached = spread.width_after(
            start.width,
            start.thickness,
            end.thickness,
            equipment.roll_diameter,
            equipment.per_pass["flat"],
            bench.rule,
        )
    if end.width > max(reached, start.width) * path.SAME:
        raise Impossible("end-too-wide", width=end.width, reached=reached, start=start.text)
    return reached if bench.rule else None


def _run(
    leg: Leg,
    number: int,
    count: int,
    request: Request,
    facts: AlloyFacts,
    process: str,
    bench: Bench,
    curve: hardening.Curve | None,
) -> Run:
    closes = number == count - 1
    then = "end" if closes and request.temper != SOFT else "anneal"
    why = "from-cast" if number == 0 and request.state == "cast" else ""
    hardness = None
    if not why:
        hardness = hardening.at(curve, leg.strain) if curve else None
        why = "" if hardness else "beyond-table" if curve else "no-table"
    return Run(
        leg.start,
        leg.end,
        process,
        leg.strain,
        leg.stage.ceiling,
        leg.stage.floor if then == "anneal" else None,
        then,
        tuple(_passes(leg, process, facts, bench.equipment)),
        hardness,
        why,
    )


def _passes(leg: Leg, process: str, facts: AlloyFacts, equipment: Equipment) -> list[Pass]:
    if process == "forge":
        return []
    own = None if "per-pass" in equipment.given else bounds.per_pass(facts, process)
    if process == "draw" and equipment.holes:
        before = passes.as_round(leg.start)
        between = [h for h in equipment.holes if leg.end.thickness <= h < before]
        sizes = sorted({*between, leg.end.thickness}, reverse=True)
        return passes.through_holes(leg.start, sizes, equipment.per_pass["draw"])
    return passes.of_run(leg.start, leg.end, process, equipment, own or equipment.per_pass[process])


def _masses(
    request: Request, facts: AlloyFacts, equipment: Equipment
) -> tuple[float | None, float | None, dict[str, float]]:
    mass = request.mass
    if mass is None and request.length is not None:
        if facts.density is None:
            return None, None, {}
        mass = mixture.mass(facts.density, request.end.area, request.length)
    if mass is None or facts.melt != "bench":
        return mass, None, {}
    untrimmed = mass / (1 - equipment.trim)
    charge = alloying.charge(untrimmed, equipment.crop, equipment.scalp, equipment.loss)
    return mass, charge, {e: charge * share / 100 for e, share in facts.composition.items()}
