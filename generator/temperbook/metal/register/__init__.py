"""The register of formulas: every computation that may be asked for by id, from all subjects."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from temperbook.metal.register import alloying, drawing, heat, reductions, rolling, wire
from temperbook.metal.register.formula import Formula, Outputs

FORMULAS: dict[str, Formula] = {
    formula.id: formula
    for subject in (reductions, alloying, rolling, drawing, wire, heat)
    for formula in subject.FORMULAS
}


def compute(formula_id: str, inputs: Mapping[str, Any]) -> Outputs:
    """The outputs of a formula.

    Errors: KeyError for an unknown formula; ValueError, with what is allowed, for inputs that do
    not fit.
    """
    formula = FORMULAS[formula_id]
    given = {**formula.optional, **inputs}
    missing = [name for name in formula.inputs if name not in given]
    unknown = [name for name in inputs if name not in formula.inputs]
    if missing or unknown:
        raise ValueError(
            f"`{formula_id}` takes {', '.join(formula.inputs)}"
            + (f"; missing: {', '.join(missing)}" if missing else "")
            + (f"; unknown: {', '.join(unknown)}" if unknown else "")
        )
    return formula.run(**given)
