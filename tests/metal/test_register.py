"""Every formula of the register: its worked example, its declared inputs and outputs."""

from __future__ import annotations

import re

import pytest

from temperbook.metal import register
from temperbook.metal.register.formula import Formula

FORMULAS = list(register.FORMULAS.values())


@pytest.mark.parametrize("formula", FORMULAS, ids=lambda formula: formula.id)
def test_the_worked_example_comes_out(formula: Formula) -> None:
    """Sources: each formula names its own; the examples that are printed carry their number."""
    found = register.compute(formula.id, formula.example)
    assert found == pytest.approx(dict(formula.expected), rel=5e-4)


@pytest.mark.parametrize("formula", FORMULAS, ids=lambda formula: formula.id)
def test_it_declares_what_it_takes_and_gives(formula: Formula) -> None:
    found = register.compute(formula.id, formula.example)
    others = found.keys() - formula.outputs.keys()
    assert bool(others) == bool(formula.series)
    assert all(re.fullmatch(r"size-\d+|[A-Z][a-z]?", name) for name in others)
    assert formula.example.keys() | formula.optional.keys() == formula.inputs.keys()
    assert formula.formula
    assert formula.source


@pytest.mark.parametrize("formula", FORMULAS, ids=lambda formula: formula.id)
def test_it_refuses_what_is_missing_and_what_it_does_not_know(formula: Formula) -> None:
    needed = next(name for name in formula.inputs if name not in formula.optional)
    without = {k: v for k, v in formula.example.items() if k != needed}
    with pytest.raises(ValueError, match=f"missing: .*{needed}"):
        register.compute(formula.id, without)
    with pytest.raises(ValueError, match="unknown: spring"):
        register.compute(formula.id, {**formula.example, "spring": 1})
