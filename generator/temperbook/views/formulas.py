"""The formulas of the register as their pages show them: what each takes, gives, and an example."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from temperbook.derive import computing
from temperbook.derive.handbook import Handbook
from temperbook.metal import register
from temperbook.metal.register.formula import Answer, Formula
from temperbook.views import answers

DIGITS = 4


@dataclass(frozen=True)
class InputShown:
    """An input: its key, how it is written, and what a form needs of it.

    needed: always, or `one of` where it stands in a group, or empty. example: as typed, empty where
    the example leaves it out.
    """

    name: str
    unit: str
    kind: str
    label: str
    choices: tuple[str, ...]
    default: str
    needed: str
    example: str


@dataclass(frozen=True)
class Named:
    """An output: its key, and its unit in words."""

    name: str
    unit: str


@dataclass(frozen=True)
class FormulaShown:
    """One formula. found and command are empty where the records lack what its example needs."""

    id: str
    label: str
    text: str
    inputs: list[InputShown]
    groups: list[list[list[str]]]
    outputs: list[Named]
    given: list[tuple[str, str]]
    found: list[tuple[str, str]]
    source: str
    notes: list[str]
    command: str


def listed(handbook: Handbook) -> list[FormulaShown]:
    """Every formula of the register, in its order."""
    return [shown(formula, handbook) for formula in register.FORMULAS.values()]


def shown(formula: Formula, handbook: Handbook) -> FormulaShown:
    """One formula, its example computed from the records and not typed."""
    answer = example(formula, handbook)
    given = typed(formula) if answer else {}
    return FormulaShown(
        id=formula.id,
        label=formula.label,
        text=formula.formula,
        inputs=[_input(formula, name, given) for name in formula.inputs],
        groups=[[list(names) for names in group] for group in formula.groups],
        outputs=[Named(name, unit) for name, unit in formula.outputs.items()],
        given=list(given.items()),
        found=_found(formula, answer) if answer else [],
        source=formula.source,
        notes=[text for _, text in formula.said(answer or Answer({}))],
        command=command(formula) if answer else "",
    )


def example(formula: Formula, handbook: Handbook) -> Answer | None:
    """The answer to the formula's example; None where the records lack what it needs."""
    try:
        return computing.answer(formula.id, formula.example, handbook.library)
    except ValueError:
        return None


def typed(formula: Formula) -> dict[str, str]:
    """The example as one types it."""
    return {name: _said(value) for name, value in formula.example.items()}


def command(formula: Formula) -> str:
    """The example as one types it on the command line."""
    quoted = (
        f'{name}="{value}"' if " " in value else f"{name}={value}"
        for name, value in typed(formula).items()
    )
    return " ".join(["temperbook compute", formula.id, *quoted])


def _input(formula: Formula, name: str, given: Mapping[str, str]) -> InputShown:
    declared = formula.inputs[name]
    grouped = name in formula.grouped()
    return InputShown(
        name=name,
        unit=answers.form(declared),
        kind=declared.kind,
        label=declared.label,
        choices=declared.choices,
        default="" if declared.default is None else _said(declared.default),
        needed="one of" if grouped else "" if declared.open else "always",
        example=given.get(name, ""),
    )


def _said(value: Any) -> str:
    if isinstance(value, bool):
        return "true" if value else "false"
    if isinstance(value, Mapping):
        return ", ".join(f"{key} {part:g}" for key, part in value.items())
    return f"{value:g}" if isinstance(value, int | float) else str(value)


def _found(formula: Formula, answer: Answer) -> list[tuple[str, str]]:
    found = []
    for name, value in answer.outputs.items():
        if isinstance(value, Mapping):
            found += [(f"{name}, {who}", what) for who, what in value.items()]
        else:
            found.append((name, _answer(value, answers.unit(formula, name, answer))))
    return found


def _answer(value: Any, unit: str) -> str:
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, list):
        text = ", ".join(f"{part:.{DIGITS}g}" for part in value)
    elif isinstance(value, int | float):
        text = f"{value:,.0f}" if abs(value) >= 10**DIGITS else f"{value:.{DIGITS}g}"
    else:
        text = str(value)
    return f"{text} {unit}" if unit else text
