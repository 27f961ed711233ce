"""Runs formulas of the register for records, prose and packs, and turns an alloy's name into its
density."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from temperbook.metal import register
from temperbook.records import names
from temperbook.records.figures import Figure
from temperbook.records.load import Library
from temperbook.records.models import Alloy, Record


def compute(formula: str, inputs: Mapping[str, Any], library: Library) -> dict[str, float]:
    """The outputs of a formula, where `alloy` may stand for what the formula needs of it.

    Errors: KeyError for an unknown formula; ValueError, with what is allowed, for anything else.
    """
    if formula not in register.FORMULAS:
        raise KeyError(formula)
    given = dict(inputs)
    if "alloy" in given:
        alloy = _alloy(str(given.pop("alloy")), library)
        given |= _of_alloy(formula, alloy, library)
    if "densities" in register.FORMULAS[formula].inputs:
        given.setdefault("densities", element_densities(library))
    return register.compute(formula, given)


def _alloy(name: str, library: Library) -> Alloy:
    found = names.find(name, library.alloys)
    if len(found.ids) != 1:
        raise ValueError(f"`{name}` is not the name of one alloy")
    return library.alloys[found.ids[0]]


def _of_alloy(formula: str, alloy: Alloy, library: Library) -> dict[str, Any]:
    needed = register.FORMULAS[formula].inputs
    if "density" in needed:
        return {"density": density(alloy, library)}
    if "composition" in needed:
        return {"composition": alloy.composition}
    raise ValueError(f"`{formula}` takes no alloy")


def element_densities(library: Library) -> dict[str, float]:
    """Adopted density [g/cm3] of each element that has one."""
    found: dict[str, float] = {}
    for symbol, element in library.elements.items():
        for figure in element.figures.get("density", []):
            if figure.value is not None:
                found.setdefault(symbol, figure.value)
    return found


def density(alloy: Alloy, library: Library) -> float:
    """Density [g/cm3] of an alloy: the adopted figure, else by mixing."""
    for figure in alloy.figures.get("density", []):
        low, high = figure.ends  # none where the figure itself is still to be computed
        if low is not None and high is not None:
            return (low + high) / 2
    return compute("density", {"composition": alloy.composition}, library)["density"]


def completed(record: Record, library: Library) -> Record:
    """The record with its computed figures filled in; an alloy gets its density by mixing as well.

    Errors: as `compute`; the check `figure_computes` finds them before.
    """
    given: dict[str, list[Figure]] = getattr(record, "figures", {})
    figures = {q: [filled(q, figure, library) for figure in found] for q, found in given.items()}
    if isinstance(record, Alloy) and record.composition.keys() <= element_densities(library).keys():
        mixed = Figure(
            unit="g/cm3",
            name="by mixing",
            how="computed",
            formula="density",
            inputs={"alloy": record.id},
        )
        figures.setdefault("density", []).append(filled("density", mixed, library))
    return record.model_copy(update={"figures": figures})


def filled(quantity: str, figure: Figure, library: Library) -> Figure:
    """A computed figure with its value: the output of its formula that is named as the quantity."""
    if figure.how != "computed" or figure.formula is None:
        return figure
    value = compute(figure.formula, figure.inputs, library)[quantity]
    return figure.model_copy(update={"value": value})


def unit_of(formula: str, output: str) -> str:
    """The unit of a formula's output."""
    return register.FORMULAS[formula].unit(output)


def formula_text(formula: str) -> str:
    """The formula as it is written."""
    return register.FORMULAS[formula].formula
