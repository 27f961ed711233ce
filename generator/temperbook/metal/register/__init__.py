"""The register of formulas: every computation that may be asked for by id, from all subjects."""

from __future__ import annotations

import math
from collections.abc import Mapping
from typing import Any

from temperbook.metal.register import (
    alloying,
    annealing,
    drawing,
    gauges,
    heat,
    masses,
    melting,
    mixtures,
    reading,
    reductions,
    rolling,
    tempers,
    wire,
)
from temperbook.metal.register.formula import Answer, Formula, Tables

FORMULAS: dict[str, Formula] = {
    formula.id: formula
    for subject in (
        reductions,
        mixtures,
        masses,
        alloying,
        melting,
        heat,
        gauges,
        rolling,
        drawing,
        tempers,
        annealing,
        wire,
    )
    for formula in subject.FORMULAS
}


def compute(formula_id: str, inputs: Mapping[str, Any], tables: Tables | None = None) -> Answer:
    """The answer of a formula; `tables` as derive/tables.py makes them, those that it names.

    Errors: KeyError for an unknown formula; ValueError, with what is allowed, for inputs that do
    not fit or numbers beyond what can be computed.
    """
    formula = FORMULAS[formula_id]
    known = tables or {}
    given = reading.given(formula, inputs, known)
    try:
        answer = formula.run(given, known)
    except ArithmeticError:
        raise _beyond() from None
    except ValueError as error:
        if "math domain" in str(error):
            raise _beyond() from None
        raise
    if not all(_finite(value) for value in answer.outputs.values()):
        raise _beyond()
    return answer


def _beyond() -> ValueError:
    return ValueError("these numbers are too large or too small to compute with")


def _finite(value: Any) -> bool:
    if isinstance(value, list):
        return all(map(_finite, value))
    return not isinstance(value, float) or math.isfinite(value)
