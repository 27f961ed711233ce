"""The register of formulas: id, inputs with units, outputs with units, the function, formula and
source."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any

from temperbook.metal import mixture, reduction, sections
from temperbook.metal.sections import Section

Outputs = dict[str, float]


@dataclass(frozen=True)
class Formula:
    """One computation that pages, packs and records may ask for by id."""

    id: str
    label: str
    inputs: Mapping[str, str]
    outputs: Mapping[str, str]
    run: Callable[..., Outputs]
    formula: str
    source: str


def _number(given: Mapping[str, Any], name: str) -> float:
    try:
        return float(given[name])
    except (TypeError, ValueError):
        raise ValueError(f"{name} is a number, not `{given[name]}`") from None


def _from_to(given: Mapping[str, Any]) -> tuple[Section, Section]:
    before, after = sections.parse(str(given["from"])), sections.parse(str(given["to"]))
    if after.area > before.area:
        raise ValueError(f"`{after.text}` is larger than `{before.text}`; work takes away")
    return before, after


def _reduction(**given: Any) -> Outputs:
    before, after = _from_to(given)
    found = {"area": 100 * reduction.reduction(before.area, after.area)}
    if before.shape == after.shape == "round":
        found["diameter"] = 100 * reduction.reduction(before.thickness, after.thickness)
    elif "round" not in (before.shape, after.shape):
        found["thickness"] = 100 * reduction.reduction(before.thickness, after.thickness)
    found["true-strain"] = reduction.true_strain(before, after)
    found["length-ratio"] = before.area / after.area
    return found


def _reduction_basis(**given: Any) -> Outputs:
    fraction = _number(given, "value") / 100
    each = reduction.on_each_basis(fraction, given["of"], given["section"])
    return {basis: 100 * value for basis, value in each.items()}


def _mass(**given: Any) -> Outputs:
    section = sections.parse(str(given["section"]))
    density, length = _number(given, "density"), _number(given, "length")
    return {"mass": mixture.mass(density, section.area, length)}


def _rolled_length(**given: Any) -> Outputs:
    before, after = _from_to(given)
    length = _number(given, "length")
    return {"length": mixture.length_after(length, before.area, after.area)}


def _fineness(**given: Any) -> Outputs:
    return {"fineness": mixture.fineness_from_carat(_number(given, "carat"))}


def _density(**given: Any) -> Outputs:
    return {"density": mixture.density_by_mixing(given["shares"], given["densities"])}


SECTION = "section (mm)"
FORMULAS = {
    formula.id: formula
    for formula in (
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
        ),
        Formula(
            "mass",
            "Mass of stock",
            {"density": "g/cm3", "section": SECTION, "length": "mm"},
            {"mass": "g"},
            _mass,
            "m = rho A l",
            "definition",
        ),
        Formula(
            "rolled-length",
            "Length after working",
            {"from": SECTION, "length": "mm", "to": SECTION},
            {"length": "mm"},
            _rolled_length,
            "l1 = l0 A0/A1 (volume is kept)",
            "conservation of volume",
        ),
        Formula(
            "fineness",
            "Fineness of a carat",
            {"carat": "ct"},
            {"fineness": "per-mille"},
            _fineness,
            "f = 1000 ct/24",
            "definition",
        ),
        Formula(
            "density",
            "Density by mixing",
            {"shares": "percent by element", "densities": "g/cm3"},
            {"density": "g/cm3"},
            _density,
            "rho = 100 / sum(w/rho_i)",
            "ideal mixing of volumes",
        ),
    )
}


def compute(formula_id: str, inputs: Mapping[str, Any]) -> Outputs:
    """The outputs of a formula.

    Errors: KeyError for an unknown formula; ValueError, with what is allowed, for inputs that do
    not fit.
    """
    formula = FORMULAS[formula_id]
    missing = [name for name in formula.inputs if name not in inputs]
    unknown = [name for name in inputs if name not in formula.inputs]
    if missing or unknown:
        raise ValueError(
            f"`{formula_id}` takes {', '.join(formula.inputs)}"
            + (f"; missing: {', '.join(missing)}" if missing else "")
            + (f"; unknown: {', '.join(unknown)}" if unknown else "")
        )
    return formula.run(**inputs)
