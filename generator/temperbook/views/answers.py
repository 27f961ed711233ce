"""Formulas of the register and their answers, in words and as plain data."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from temperbook.metal import register
from temperbook.metal.register.formula import Formula

# Digits that a terminal shows; JSON keeps them all.
DIGITS = 5


def listed() -> list[dict[str, Any]]:
    """Every formula as plain data."""
    return [
        {
            "formula": formula.id,
            "label": formula.label,
            "inputs": dict(formula.inputs),
            "optional": sorted(formula.optional),
            "outputs": dict(formula.outputs),
            "text": formula.formula,
            "source": formula.source,
        }
        for formula in register.FORMULAS.values()
    ]


def lines_of_all() -> list[str]:
    """Every formula with its inputs, a line or two each."""
    found = []
    for formula in register.FORMULAS.values():
        found.append(f"{formula.id:<24} {formula.label}")
        found.append(f"{'':<24} {' '.join(_key(formula, name) for name in formula.inputs)}")
    return found


def _key(formula: Formula, name: str) -> str:
    return f"[{name}=...]" if name in formula.optional else f"{name}=..."


def data(
    formula_id: str, inputs: Mapping[str, Any], outputs: Mapping[str, float]
) -> dict[str, Any]:
    """An answer as plain data: `formula`, `inputs`, `outputs` with units, `notes`."""
    formula = register.FORMULAS[formula_id]
    return {
        "formula": formula_id,
        "inputs": dict(inputs),
        "outputs": {
            name: {"value": value, "unit": formula.unit(name)} for name, value in outputs.items()
        },
        "notes": [{"id": "formula", "text": formula.note}] if formula.note else [],
    }


def lines(formula_id: str, inputs: Mapping[str, Any], outputs: Mapping[str, float]) -> list[str]:
    """An answer in words."""
    formula = register.FORMULAS[formula_id]
    given = ", ".join(f"{name} {value}" for name, value in inputs.items())
    found = [f"{formula.label}: {given}"]
    for name, value in outputs.items():
        unit = formula.unit(name)
        found.append(f"  {name:<18} {value:.{DIGITS}g}{' ' + unit if unit else ''}")
    found.append(f"  {formula.formula}  ({formula.source})")
    return [*found, f"  {formula.note}"] if formula.note else found
