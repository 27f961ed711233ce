"""Formulas of the register and their answers, in words and as plain data."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from temperbook.metal import register
from temperbook.metal.register import reading
from temperbook.metal.register.formula import FLAG, NAMES, TEXT, Answer, Formula, Input

# Digits that a terminal shows; JSON keeps them all.
DIGITS = 5
WORDLESS = (TEXT, FLAG, NAMES)  # units of outputs that are no numbers
FORMS = {
    "section": "section (mm)",
    "composition": 'composition ("Ag 90, Cu 10")',
    "alloy": "alloy",
    "list": "sizes (mm), with commas between them",
    "flag": "true | false",
    "name": "text",
}


def listed() -> list[dict[str, Any]]:
    """Every formula as plain data."""
    return [
        {
            "formula": formula.id,
            "label": formula.label,
            "inputs": {name: form(declared) for name, declared in formula.inputs.items()},
            "optional": sorted(name for name, declared in formula.inputs.items() if declared.open),
            "groups": [[list(names) for names in group] for group in formula.groups],
            "outputs": dict(formula.outputs),
            "text": formula.formula,
            "source": formula.source,
        }
        for formula in register.FORMULAS.values()
    ]


def form(declared: Input) -> str:
    """How an input is written: its unit, its words, or its form."""
    if declared.kind == "choice":
        return " | ".join(declared.choices)
    return FORMS.get(declared.kind, declared.unit)


def lines_of_all() -> list[str]:
    """Every formula with its inputs, two lines each."""
    found = []
    for formula in register.FORMULAS.values():
        found.append(f"{formula.id:<24} {formula.label}")
        found.append(f"{'':<24} {reading.usage(formula)}")
    return found


def data(formula_id: str, inputs: Mapping[str, Any], answer: Answer) -> dict[str, Any]:
    """An answer as plain data: `formula`, `inputs`, `outputs` with units, `notes`."""
    formula = register.FORMULAS[formula_id]
    return {
        "formula": formula_id,
        "inputs": dict(inputs),
        "outputs": {
            name: {"value": value, "unit": unit(formula, name, answer)}
            for name, value in answer.outputs.items()
        },
        "notes": [{"id": note, "text": text} for note, text in formula.said(answer)],
    }


def unit(formula: Formula, name: str, answer: Answer) -> str:
    """The unit of an output as people read it; empty for texts."""
    found = formula.unit_in(name, answer)
    return "" if found in WORDLESS else found


def lines(formula_id: str, inputs: Mapping[str, Any], answer: Answer) -> list[str]:
    """An answer in words."""
    formula = register.FORMULAS[formula_id]
    given = ", ".join(f"{name} {_word(value)}" for name, value in inputs.items())
    found = [f"{formula.label}: {given}"]
    wide = max([18, *map(len, answer.outputs)])
    for name, value in answer.outputs.items():
        if isinstance(value, Mapping):
            found.append(f"  {name}")
            found += [f"    {who}: {what}" for who, what in value.items()]
            continue
        in_unit = unit(formula, name, answer)
        found.append(f"  {name:<{wide}} {_word(value)}{' ' + in_unit if in_unit else ''}")
    found.append(f"  {formula.formula}  ({formula.source})")
    return [*found, *(f"  {text}" for _, text in formula.said(answer))]


def _word(value: Any) -> str:
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, list):
        return ", ".join(map(_word, value))
    return f"{value:.{DIGITS}g}" if isinstance(value, int | float) else str(value)
