"""The registered formula of the temper that cold work gives, from an alloy's own tables."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from temperbook.metal import hardening
from temperbook.metal.facts import AlloyFacts
from temperbook.metal.hardening import Curve
from temperbook.metal.register import alloys
from temperbook.metal.register.formula import TEXT, Answer, Formula, Given, Said, Tables
from temperbook.metal.register.inputs import alloy, choice, number
from temperbook.metal.runs import reduction_of

SLACK = 1 + 1e-9  # dust of rounding at the end of a table


def _temper(given: Given, tables: Tables) -> Answer:
    facts = alloys.facts(alloys.record(given, tables))
    stock = "wire" if given["form"] == "wire" else "flat"
    strain = _work(given, stock)
    curve = hardening.curve(facts, stock)
    steps = _steps(facts, stock)
    if curve is None and not steps:
        raise ValueError(
            f"no table of hardness or temper over cold work of {facts.name} as "
            f"{given['form']} is known"
        )
    _hold_within(strain, curve, steps, facts.name)
    outputs: dict[str, Any] = {}
    notes: list[Said] = []
    units: dict[str, str] = {}
    found = hardening.at(curve, strain) if curve else None
    if curve and found:
        middle = (found.low + found.high) / 2
        outputs |= {"hardness": middle, "hardness-low": found.low, "hardness-high": found.high}
        units = dict.fromkeys(outputs, found.unit)
        notes.append(_between(curve, strain, facts))
    elif curve:
        notes.append(Said("hardness-ends"))
    if steps and strain <= max(steps.values()) * SLACK:
        outputs |= _named(strain, steps)
    return Answer(outputs, tuple(notes), units)


def _work(given: Given, stock: str) -> float:
    if stock == "flat" and given["of"] == "diameter":
        raise ValueError("sheet and strip have no diameter; give the reduction of thickness")
    if stock == "wire" and given["of"] == "thickness":
        raise ValueError("wire has no thickness; give the reduction of diameter or area")
    strain = hardening.strain_on(given["reduction"], given["of"], stock)
    if strain is None:
        raise ValueError("reduction lies between 0 and 100 percent")
    return strain


def _steps(facts: AlloyFacts, stock: str) -> dict[str, float]:
    """Least work [1] of each temper, in order of hardness."""
    found = {}
    for temper, known in hardening.temper_steps(facts, stock).items():
        work = hardening.temper_strain(known, stock)
        if work is not None:
            found[temper] = work[0]
    return found


def _hold_within(strain: float, curve: Curve | None, steps: Mapping[str, float], name: str) -> None:
    """Refuses work [1] beyond every table: nothing is extrapolated."""
    ends = [*([curve.most] if curve else []), *steps.values()]
    if strain > max(ends) * SLACK:
        area = 100 * reduction_of(max(ends))
        raise ValueError(
            f"the table of {name} ends at {area:.1f} percent of the area; what more work gives is "
            "not known"
        )


def _between(curve: Curve, strain: float, facts: AlloyFacts) -> Said:
    right = next(p for p in curve.points if strain <= p.strain * SLACK)
    left = curve.points[max(0, curve.points.index(right) - 1)]
    form = curve.form or "stock"
    return Said(
        "between", {"name": facts.name, "form": form, "left": left.state, "right": right.state}
    )


def _named(strain: float, steps: Mapping[str, float]) -> dict[str, str]:
    """The last temper that is reached and the next one."""
    reached = [temper for temper, work in steps.items() if strain >= work / SLACK]
    ahead = [temper for temper, work in steps.items() if strain < work / SLACK]
    found = {
        "temper": reached[-1] if reached else "annealed" if strain == 0 else "below " + ahead[0]
    }
    return {**found, "next-temper": ahead[0]} if ahead else found


FORMULAS = (
    Formula(
        "temper",
        "Hardness and temper after cold work",
        {
            "alloy": alloy(),
            "reduction": number("Reduction since the last anneal", "percent"),
            "of": choice("Of which measure", "thickness", "diameter", "area"),
            "form": choice("Stock", "sheet", "strip", "wire"),
        },
        {
            "hardness": "HV",
            "hardness-low": "HV",
            "hardness-high": "HV",
            "temper": TEXT,
            "next-temper": TEXT,
        },
        _temper,
        "straight lines in true strain between the points of the alloy's own table",
        "the alloy's own table, see its page",
        example={
            "alloy": "silver/sterling-925",
            "reduction": 21,
            "of": "thickness",
            "form": "sheet",
        },
        expected={
            "hardness": 95,
            "hardness-low": 90,
            "hardness-high": 100,
            "temper": "half-hard",
            "next-temper": "three-quarter-hard",
        },
        note="The hardness is the middle of the range. Work counts from the last full anneal. "
        "Nothing is guessed beyond the table's end.",
        notes={
            "between": "From the table of {name} for {form}, between {left} and {right}.",
            "hardness-ends": "The hardness table ends before this; the temper's name reaches on.",
        },
        tables=("alloys",),
    ),
)
