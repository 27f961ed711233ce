"""What a plan must say of itself: warnings for the bench, and notes on how it was reckoned."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from temperbook.metal import drawing, rolling
from temperbook.metal.planning import passes, path, tempering
from temperbook.metal.planning.asked import SOFT, Said
from temperbook.metal.planning.bounds import GIVEN, Bound
from temperbook.metal.planning.stages import Stages
from temperbook.metal.runs import DUST
from temperbook.metal.sections import Section

if TYPE_CHECKING:
    from temperbook.metal.planning.plan import Bench, Plan, Run

HALF_ANGLE = 6.0  # degrees: the sharp end of what dies have, so that the note errs to silence
TRIMMED = 1.02  # a width beyond this share of the end's is worth a trim


def warnings(plan: Plan, stages: Stages, bench: Bench) -> Iterator[Said]:
    """What can spoil the metal if the plan is followed without a thought."""
    if plan.runs and any(run.under_floor for run in plan.runs):
        yield from _floors(plan, stages)
    for number, run in enumerate(plan.runs, 1):
        if run.without_reserve:
            yield Said("no-reserve", {"run": number, "percent": _area(run)})
        if run.then == "anneal" and not run.floor and _area(run) < bench.critical:
            values = {"run": number, "percent": _area(run), "critical": bench.critical}
            yield Said("little-work", values)
        thin = run.end.shape == "round" and run.end.thickness < bench.thick_wire - DUST
        if run.then == "anneal" and plan.process == "draw" and thin:
            values = {"run": number, "diameter": run.end.thickness, "thick": bench.thick_wire}
            yield Said("fine-wire-anneal", values)
    if plan.request.last is not None and plan.request.state == "cast" and len(plan.runs) == 1:
        yield Said("last-from-cast")
    if not plan.facts.of("anneal") and plan.anneals:
        yield Said("no-anneal-published", {"alloy": plan.facts.name})


def _floors(plan: Plan, stages: Stages) -> Iterator[Said]:
    for number, run in enumerate(plan.runs, 1):
        if run.under_floor and run.floor:
            values = {"run": number, "percent": _area(run), "floor": run.floor.area}
            yield Said("under-floor", values)
    contradicts = [
        stage
        for stage in (stages.first, stages.later)
        if stage.floor and stage.ceiling and stage.floor.strain > stage.ceiling.strain + DUST
    ]
    for stage in contradicts[:1]:
        assert stage.floor is not None
        assert stage.ceiling is not None
        values = {"floor": stage.floor.area, "ceiling": stage.ceiling.area}
        yield Said("floor-over-ceiling", values)
    if not contradicts and not plan.request.more:
        yield from _nearest(plan, stages)


def _nearest(plan: Plan, stages: Stages) -> Iterator[Said]:
    """The nearest start and end for which every run before an anneal reaches its floor."""
    request = plan.request
    bound = [run for run in plan.runs if run.then == "anneal"]
    free = plan.strain - sum(run.strain for run in bound)
    rest = plan.strain - free
    more = sum(_floor(stages, position) for position in range(len(bound)))
    fewer = sum(_ceiling(stages, position) for position in range(len(bound) - 1))
    least = sum(_floor(stages, position) for position in range(len(bound) - 1))
    fitting = [w for w in (more, fewer) if w >= least - DUST and (w > DUST or len(bound) == 1)]
    if not fitting:
        return
    wanted = min(fitting, key=lambda w: (abs(w - rest), w)) + free
    if wanted <= DUST:
        return
    yield Said(
        "nearest-sizes",
        {
            "start": tempering.thicker(request.start, request.end, wanted).text,
            "end": tempering.thinner(request.start, request.end, wanted).text,
        },
    )


def _floor(stages: Stages, position: int) -> float:
    return (stages.later if position else stages.first).limits.floor


def _ceiling(stages: Stages, position: int) -> float:
    return (stages.later if position else stages.first).limits.ceiling


def notes(plan: Plan, stages: Stages, bench: Bench) -> Iterator[Said]:
    """How the plan was reckoned, and what it does not know."""
    for name, stage in (("later", stages.later), ("first", stages.first)):
        if stage.ceiling and (name == "later" or stage.ceiling != stages.later.ceiling):
            yield from _of_limit(stage.ceiling, name)
    yield from _of_shape(plan, bench)
    request = plan.request
    if request.start.shape == "square" and plan.process == "draw":
        yield Said("square-to-round")
    if plan.process == "forge":
        yield Said("forging-has-no-passes")
    if plan.process == "draw":
        yield from _torn_middle(plan, bench)
    if plan.temper:
        low, high, of = plan.temper.lowest, plan.temper.highest, plan.temper.of
        yield Said(
            "temper-from-table", {"temper": request.temper, "low": low, "high": high, "of": of}
        )
    elif request.temper == SOFT:
        yield Said("soft-end")
    if request.more:
        yield Said("more-anneals", {"more": request.more, "percent": _area(plan.runs[-1])})
    if plan.mass is not None:
        yield Said(
            "mass-from-density", {"density": plan.facts.density or 0, "how": plan.facts.density_how}
        )
    if plan.charge is not None:
        shares = {
            name: 100 * getattr(bench.equipment, name) for name in ("trim", "crop", "scalp", "loss")
        }
        yield Said("charge-settings", shares)


def _of_limit(bound: Bound, which: str) -> Iterator[Said]:
    if bound.how == GIVEN:
        return
    if bound.how == "practice":
        yield Said(f"{which}-limit-is-practice", {"percent": bound.percent})
    if bound.of == "not-stated":
        yield Said(f"{which}-basis-not-stated", {"percent": bound.percent, "area": bound.area})


def _of_shape(plan: Plan, bench: Bench) -> Iterator[Said]:
    if plan.process != "flat":
        return
    request = plan.request
    if plan.width is None:
        yield Said("width-constant", {"width": request.end.width})
    else:
        values = {"width": plan.width, "roll": bench.equipment.roll_diameter}
        yield Said("width-estimated", values)
        if plan.width > request.end.width * TRIMMED:
            yield Said("width-to-trim", {"width": plan.width, "end": request.end.width})
    if request.end.width < request.start.width / path.SAME:
        cut = Section("flat", request.end.width, request.start.thickness)
        yield Said("narrower-by-work", {"cut": cut.text})
    yield from _split_ends(plan, bench)
    per_pass = bench.equipment.per_pass["flat"]
    if any(passes.bitten(run.start, bench.equipment, per_pass) for run in plan.runs):
        yield Said("bite-sets-passes", {"roll": bench.equipment.roll_diameter})


def _split_ends(plan: Plan, bench: Bench) -> Iterator[Said]:
    """Flat passes that leave the middle behind, and down to which thickness."""
    radius = bench.equipment.roll_diameter / 2
    thin: list[float] = []
    for run in plan.runs:
        before = run.start.thickness
        for one in run.passes:
            after = one.section.thickness
            if bench.split_ends and rolling.splits_ends(before, after, radius, bench.split_ends):
                thin.append(after)
            before = after
    if thin:
        yield Said("middle-behind", {"passes": len(thin), "thickness": min(thin)})


def _torn_middle(plan: Plan, bench: Bench) -> Iterator[Said]:
    """Draws so light that the middle of the wire may tear, at the usual angle of a hole."""
    most = 0.0
    for run in plan.runs:
        before = run.start.area
        for one in run.passes:
            share = 1 - one.section.area / before
            most = max(most, drawing.delta_factor(HALF_ANGLE, share))
            before = one.section.area
    if bench.delta and most > bench.delta:
        yield Said("light-draws", {"delta": most, "limit": bench.delta, "angle": HALF_ANGLE})


def _area(run: Run) -> float:
    return path.area_reduction(run.start, run.end)
