"""Registered formulas of reduction, length, mass and composition."""

from __future__ import annotations

from math import log
from typing import Any

from temperbook.metal import compositions, mixture, reduction, sections
from temperbook.metal.register.formula import (
    COMPOSITION,
    SECTION,
    Formula,
    Outputs,
    from_to,
    number,
)


def _reduction(**given: Any) -> Outputs:
    before, after = from_to(given)
    found = {"area": 100 * reduction.reduction(before.area, after.area)}
    if before.shape == after.shape == "round":
        found["diameter"] = 100 * reduction.reduction(before.thickness, after.thickness)
    elif "round" not in (before.shape, after.shape):
        found["thickness"] = 100 * reduction.reduction(before.thickness, after.thickness)
    found["true-strain"] = reduction.true_strain(before, after)
    found["length-ratio"] = before.area / after.area
    return found


def _reduction_basis(**given: Any) -> Outputs:
    fraction = number(given, "value") / 100
    each = reduction.on_each_basis(fraction, given["of"], given["section"])
    return {basis: 100 * value for basis, value in each.items()}


def _mass(**given: Any) -> Outputs:
    section = sections.parse(str(given["section"]))
    density, length = number(given, "density"), number(given, "length")
    return {"mass": mixture.mass(density, section.area, length)}


def _rolled_length(**given: Any) -> Outputs:
    before, after = from_to(given)
    length = number(given, "length")
    return {"length": mixture.length_after(length, before.area, after.area)}


def _fineness(**given: Any) -> Outputs:
    return {"fineness": mixture.fineness_from_carat(number(given, "carat"))}


def _density(**given: Any) -> Outputs:
    shares = compositions.parse(given["composition"])
    return {"density": mixture.density_by_mixing(shares, given["densities"])}


FORMULAS = (
    Formula(
        "reduction",
        "Reduction between two sections",
        {"from": SECTION, "to": SECTION},
        {
            "area": "percent",
            "thickness": "percent",
            "diameter": "percent",
            "true-strain": "",
            "length-ratio": "times",
        },
        _reduction,
        "r = 1 - A1/A0, 1 - t1/t0, 1 - d1/d0; e = ln(A0/A1)",
        "definition",
        example={"from": "round 2", "to": "round 1"},
        expected={"area": 75, "diameter": 50, "true-strain": log(4), "length-ratio": 4},
    ),
    Formula(
        "reduction-basis",
        "One reduction on each basis",
        {
            "value": "percent",
            "of": "thickness | diameter | area",
            "section": "round | square | wide",
        },
        {"area": "percent", "thickness": "percent", "diameter": "percent"},
        _reduction_basis,
        "round, square: r_area = 1 - (1 - r)^2; wide sheet: the same",
        "geometry",
        example={"value": 60, "of": "diameter", "section": "round"},
        expected={"area": 84, "diameter": 60},
    ),
    Formula(
        "mass",
        "Mass of stock",
        {"density": "g/cm3", "section": SECTION, "length": "mm"},
        {"mass": "g"},
        _mass,
        "m = rho A l",
        "definition",
        example={"density": 10, "section": "square 6", "length": 100},
        expected={"mass": 36},
    ),
    Formula(
        "rolled-length",
        "Length after working",
        {"from": SECTION, "length": "mm", "to": SECTION},
        {"length": "mm"},
        _rolled_length,
        "l1 = l0 A0/A1 (volume is kept)",
        "conservation of volume",
        example={"from": "square 6", "length": 60, "to": "square 3"},
        expected={"length": 240},
    ),
    Formula(
        "fineness",
        "Fineness of a carat",
        {"carat": "ct"},
        {"fineness": "per-mille"},
        _fineness,
        "f = 1000 ct/24",
        "definition",
        example={"carat": 18},
        expected={"fineness": 750},
    ),
    Formula(
        "density",
        "Density by mixing",
        {"composition": COMPOSITION, "densities": "g/cm3 by element, from the element records"},
        {"density": "g/cm3"},
        _density,
        "rho = 100 / sum(w/rho_i)",
        "ideal mixing of volumes",
        example={"composition": "Cu 90, Sn 10", "densities": {"Cu": 8.96, "Sn": 7.29}},
        expected={"density": 8.7594},
    ),
)
