"""Registered formulas of reduction."""

from __future__ import annotations

from math import log

from temperbook.metal import reduction
from temperbook.metal.register.formula import Answer, Formula, Given, Tables
from temperbook.metal.register.inputs import choice, number, section


def _reduction(given: Given, tables: Tables) -> Answer:
    before, after = given["from"], given["to"]
    if after.area > before.area:
        raise ValueError(f"`{after.text}` is larger than `{before.text}`; work takes away")
    found = {"area": 100 * reduction.reduction(before.area, after.area)}
    if before.shape == after.shape == "round":
        found["diameter"] = 100 * reduction.reduction(before.thickness, after.thickness)
    elif "round" not in (before.shape, after.shape):
        found["thickness"] = 100 * reduction.reduction(before.thickness, after.thickness)
    found["true-strain"] = reduction.true_strain(before, after)
    found["length-ratio"] = before.area / after.area
    return Answer(found)


def _reduction_basis(given: Given, tables: Tables) -> Answer:
    each = reduction.on_each_basis(given["value"] / 100, given["of"], given["section"])
    return Answer({basis: 100 * value for basis, value in each.items()})


FORMULAS = (
    Formula(
        "reduction",
        "Reduction between two sections",
        {"from": section("Section before"), "to": section("Section after")},
        {
            "area": "percent",
            "thickness": "percent",
            "diameter": "percent",
            "true-strain": "",
            "length-ratio": "times",
        },
        _reduction,
        "r = 1 - A1/A0, 1 - t1/t0, 1 - d1/d0; e = ln(A0/A1), to a flat at least ln(t0/t1)",
        "definition",
        example={"from": "round 2", "to": "round 1"},
        expected={"area": 75, "diameter": 50, "true-strain": log(4), "length-ratio": 4},
    ),
    Formula(
        "reduction-basis",
        "One reduction on each basis",
        {
            "value": number("Reduction", "percent"),
            "of": choice("Of which measure", "thickness", "diameter", "area"),
            "section": choice("Stock", "round", "square", "wide"),
        },
        {"area": "percent", "thickness": "percent", "diameter": "percent"},
        _reduction_basis,
        "round, square: r_area = 1 - (1 - r)^2; wide sheet: the same",
        "geometry",
        example={"value": 60, "of": "diameter", "section": "round"},
        expected={"area": 84, "diameter": 60},
    ),
)
