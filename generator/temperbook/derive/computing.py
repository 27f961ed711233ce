"""Runs formulas of the register for records, prose, packs and commands, with their data tables."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from temperbook.metal import register
from temperbook.metal.register.formula import Answer
from temperbook.records import names
from temperbook.records.figures import Figure
from temperbook.records.load import Library
from temperbook.records.models import Alloy, Record


def compute(formula: str, inputs: Mapping[str, Any], library: Library) -> dict[str, Any]:
    """The outputs of a formula, where `alloy` may be any name that people use.

    Errors: KeyError for an unknown formula; ValueError, with what is allowed, for anything else.
    """
    return answer(formula, inputs, library).outputs


def answer(formula: str, inputs: Mapping[str, Any], library: Library) -> Answer:
    """The same with what is said beside the outputs. Errors: as `compute`.

    The library holds at least the kinds of records that `tables.kinds` names for the formula.
    """
    from temperbook.derive import tables  # it rests on facts, which rest on this module

    if formula not in register.FORMULAS:
        raise KeyError(formula)
    given = named(inputs, library)
    alloys = [given["alloy"]] if "alloy" in given else []
    known = tables.made(register.FORMULAS[formula].tables, library, alloys)
    return register.compute(formula, given, known)


def named(inputs: Mapping[str, Any], library: Library) -> dict[str, Any]:
    """The inputs with an alloy's id in the place of its name.

    Errors: ValueError for a name that is not one alloy's.
    """
    if inputs.get("alloy") is None:
        return dict(inputs)
    name = str(inputs["alloy"])
    found = names.find(name, library.alloys)
    if len(found.ids) != 1:
        raise ValueError(f"`{name}` is not the name of one alloy{_nearest(found)}")
    return {**inputs, "alloy": found.ids[0]}


def _nearest(found: names.Found) -> str:
    if found.ids:
        return f"; it may be {', '.join(found.ids)}"
    return f"; near it: {', '.join(found.near)}" if found.near else ""


def element_densities(library: Library) -> dict[str, float]:
    """Adopted density [g/cm3] of each element that has one."""
    return of_elements("density", library)


def of_elements(quantity: str, library: Library) -> dict[str, float]:
    """Adopted value of a quantity for each element that has one."""
    found: dict[str, float] = {}
    for symbol, element in library.elements.items():
        for figure in element.figures.get(quantity, []):
            if figure.value is not None:
                found.setdefault(symbol, figure.value)
    return found


def adopted_density(alloy: Alloy) -> tuple[float, str] | None:
    """The density [g/cm3] that an alloy's record adopts, and how it is known; None for none."""
    for figure in alloy.figures.get("density", []):
        low, high = figure.ends  # none where the figure itself is still to be computed
        if low is not None and high is not None:
            return (low + high) / 2, figure.how
    return None


def density(alloy: Alloy, library: Library) -> float:
    """Density [g/cm3] of an alloy: the adopted figure, else by mixing."""
    adopted = adopted_density(alloy)
    if adopted:
        return adopted[0]
    mixed: float = compute("density", {"composition": alloy.composition}, library)["density"]
    return mixed


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
