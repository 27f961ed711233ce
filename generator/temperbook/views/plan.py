"""A working plan as plain data: what `--json`, the browser, a route's page and its sheet say."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from temperbook.metal import gauges, hardening
from temperbook.metal.facts import AlloyFacts, Known, Stated
from temperbook.metal.hardening import Hardness
from temperbook.metal.planning import path, texts
from temperbook.metal.planning.bounds import Bound
from temperbook.metal.planning.passes import Pass
from temperbook.metal.planning.plan import Plan, Run
from temperbook.metal.sections import Section
from temperbook.views import filling

Gauges = Mapping[str, Mapping[str, float]]


def data(plan: Plan, gauge_tables: Gauges) -> dict[str, Any]:
    """The whole plan. gauge_tables: sizes [mm] by gauge and number."""
    request = plan.request
    length = _length(plan, request.start)
    return {
        "alloy": plan.facts.id,
        "name": plan.facts.name,
        "start": section(request.start) | {"state": request.state, "length_mm": length},
        "end": section(request.end) | {"length_mm": _length(plan, request.end)},
        "process": plan.process,
        "total_reduction_area_pct": path.area_reduction(request.start, request.end),
        "true_strain": plan.strain,
        "anneals": plan.anneals,
        "temper": request.temper or None,
        "runs": [_run(plan, run, gauge_tables) for run in plan.runs],
        "mass_g": plan.mass,
        "charge_g": plan.charge,
        "charge_by_element_g": plan.parts,
        "width_estimate_mm": plan.width,
        "notes": filling.said(plan.notes, texts.NOTES),
        "warnings": filling.said(plan.warnings, texts.WARNINGS),
        "cautions": cautions(plan.facts),
    }


def cautions(facts: AlloyFacts) -> list[dict[str, str]]:
    """The alloy's cautions, gravest first."""
    return [
        {"id": caution, "signal": signal, "text": name} for caution, signal, name in facts.cautions
    ]


def section(of: Section) -> dict[str, Any]:
    """A section with its text, its area and its sizes."""
    sizes = {
        "round": {"diameter_mm": of.thickness},
        "square": {"side_mm": of.thickness},
        "flat": {"width_mm": of.width, "thickness_mm": of.thickness},
    }[of.shape]
    return {"shape": of.shape, "text": of.text, "area_mm2": of.area, **sizes}


def _length(plan: Plan, of: Section) -> float | None:
    """Length [mm] of the same volume in a section."""
    request = plan.request
    if request.length is not None:
        return request.length * request.end.area / of.area
    if plan.mass is not None and plan.facts.density:
        return plan.mass / plan.facts.density / of.area * 1000
    return None


def _run(plan: Plan, run: Run, gauge_tables: Gauges) -> dict[str, Any]:
    return {
        "from": section(run.start),
        "to": section(run.end),
        "process": run.process,
        **reductions(run.start, run.end),
        "true_strain": run.strain,
        **bound("ceiling", run.ceiling),
        **bound("floor", run.floor),
        "then": run.then,
        "anneal": anneal(plan.facts) if run.then == "anneal" else None,
        "hardness": hardness(run.hardness),
        "hardness_why": texts.HARDNESS_WHY[run.hardness_why] if run.hardness_why else None,
        "passes": [
            _pass(plan, run, number, one, gauge_tables) for number, one in enumerate(run.passes, 1)
        ],
    }


def reductions(before: Section, after: Section) -> dict[str, float]:
    """A reduction [percent] on each basis that the sections have."""
    found = {"reduction_area_pct": path.area_reduction(before, after)}
    linear = path.linear_reduction(before, after)
    if linear:
        found[f"reduction_{linear[0]}_pct"] = linear[1]
    return found


def bound(name: str, limit: Bound | None) -> dict[str, Any]:
    """A limit as area reduction, with its basis and provenance; nulls where there is none."""
    if limit is None:
        return {f"{name}_pct": None, f"{name}_basis": None, f"{name}_how": None}
    return {
        f"{name}_pct": limit.area,
        f"{name}_basis": limit.of,
        f"{name}_how": limit.how,
        f"{name}_stated_pct": limit.percent,
        f"{name}_from": list(limit.sources),
    }


def _pass(plan: Plan, run: Run, number: int, one: Pass, gauge_tables: Gauges) -> dict[str, Any]:
    before = run.passes[number - 2].section if number > 1 else run.start
    since = reductions(run.start, one.section)
    known = not run.hardness_why or run.hardness_why == "beyond-table"
    soft = plan.curve and known
    return {
        "number": number,
        "to": section(one.section),
        **reductions(before, one.section),
        **{f"since_anneal_{key.removeprefix('reduction_')}": v for key, v in since.items()},
        "length_ratio": before.area / one.section.area,
        "length_mm": _length(plan, one.section),
        "gauges": nearest(one.section.thickness, gauge_tables),
        "hardness": hardness(_at(plan, one.strain) if soft else None),
    }


def nearest(millimetres: float, gauge_tables: Gauges) -> dict[str, dict[str, Any]]:
    """The nearest number of each gauge that reaches so far, and how much the size differs."""
    found = {}
    for gauge, table in gauge_tables.items():
        if table and not gauges.beyond(millimetres, table):
            number = gauges.nearest(millimetres, table)
            found[gauge] = {"number": number, "difference_mm": millimetres - table[number]}
    return found


def _at(plan: Plan, strain: float) -> Hardness | None:
    return hardening.at(plan.curve, strain) if plan.curve else None


def hardness(found: Hardness | None) -> dict[str, Any] | None:
    """A hardness with where it comes from."""
    if found is None:
        return None
    sources = dict.fromkeys(s for known in found.between for s in known.sources)
    return {
        "low": found.low,
        "high": found.high,
        "unit": found.unit,
        "how": "computed",
        "from": list(sources),
    }


def anneal(facts: AlloyFacts) -> dict[str, Any]:
    """The anneal as the alloy's page states it, each part with its provenance, or null."""
    heats = facts.of("anneal")
    heat = heats[0] if heats else None
    times = [t for t in facts.of("anneal-time") if heat and t.heat in (heat.heat, "any")]
    return {
        "heating": _stated(facts.heating),
        "heat": _known(heat),
        "colour": {"text": facts.glow, "how": "computed", "from": []} if facts.glow else None,
        "time": _known(times[0] if times else None),
        "avoid": _known(next(iter(facts.of("no-dwell")), None)),
        "quench_from": _known(next(iter(facts.of("quench-from")), None)),
        "quench": _stated(facts.quench),
        "pickle": _stated(facts.pickle),
    }


def _known(known: Known | None) -> dict[str, Any] | None:
    if known is None:
        return None
    return {
        "low": known.low,
        "high": known.high,
        "unit": known.unit,
        "heat": known.heat or None,
        "how": known.how,
        "from": list(known.sources),
    }


def _stated(stated: Stated | None) -> dict[str, Any] | None:
    if stated is None:
        return None
    return {
        "rule": stated.rule,
        "text": stated.text,
        "how": stated.how,
        "from": list(stated.sources),
    }
