"""The formulas of the register as their page shows them: what each takes, gives, and an example."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from temperbook.derive.handbook import Handbook
from temperbook.metal import register
from temperbook.metal.register.formula import Formula

DIGITS = 4


@dataclass(frozen=True)
class Named:
    """An input or output: its key, and its unit in words."""

    name: str
    unit: str


@dataclass(frozen=True)
class FormulaShown:
    """One formula."""

    id: str
    label: str
    text: str
    inputs: list[Named]
    outputs: list[Named]
    given: list[tuple[str, str]]
    found: list[tuple[str, str]]
    source: str
    note: str
    command: str


def listed(handbook: Handbook) -> list[FormulaShown]:
    """Every formula of the register, in its order."""
    return [shown(formula) for formula in register.FORMULAS.values()]


def shown(formula: Formula) -> FormulaShown:
    """One formula, its example computed and not typed."""
    found = register.compute(formula.id, formula.example)
    return FormulaShown(
        id=formula.id,
        label=formula.label,
        text=formula.formula,
        inputs=[Named(_input(formula, name), unit) for name, unit in formula.inputs.items()],
        outputs=[Named(name, unit) for name, unit in formula.outputs.items()],
        given=[(name, _said(value)) for name, value in formula.example.items()],
        found=[(name, _answer(formula, name, value)) for name, value in found.items()],
        source=formula.source,
        note=formula.note,
        command=command(formula),
    )


def command(formula: Formula) -> str:
    """The example as one types it; what comes from the records is left to them."""
    typed = (f"{k}={v}" for k, v in formula.example.items() if not isinstance(v, Mapping))
    words = (f'"{word}"' if " " in word else word for word in typed)
    return " ".join(["temperbook compute", formula.id, *words])


def _input(formula: Formula, name: str) -> str:
    return f"{name} (may be left out)" if name in formula.optional else name


def _said(value: Any) -> str:
    if isinstance(value, Mapping):
        return ", ".join(f"{key} {part:g}" for key, part in value.items())
    return f"{value:,}" if isinstance(value, int) and not isinstance(value, bool) else str(value)


def _answer(formula: Formula, name: str, value: float) -> str:
    unit = formula.unit(name)
    text = f"{value:,.0f}" if abs(value) >= 10**DIGITS else f"{value:.{DIGITS}g}"
    return f"{text} {unit}" if unit else text
