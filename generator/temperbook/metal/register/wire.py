"""Registered formulas of what a wire bears."""

from __future__ import annotations

from typing import Any

from temperbook.metal import wire
from temperbook.metal.register.formula import Formula, Outputs, number

NEWTONS = 9.80665  # in a kilogram-force, exact


def _breaking_load(**given: Any) -> Outputs:
    load = wire.breaking_load(number(given, "diameter"), number(given, "tensile"))
    return {"load": load, "load-kgf": load / NEWTONS}


def _grains_across(**given: Any) -> Outputs:
    return {"number": wire.grains_across(number(given, "diameter"), number(given, "grain-size"))}


FORMULAS = (
    Formula(
        "breaking-load",
        "Load that breaks a wire",
        {"diameter": "mm", "tensile": "MPa"},
        {"load": "N", "load-kgf": "kgf"},
        _breaking_load,
        "F = pi d^2/4 s",
        "definition of tensile strength",
        example={"diameter": 1.0, "tensile": 300},
        expected={"load": 235.62, "load-kgf": 24.027},
    ),
    Formula(
        "grains-across",
        "Grains across a wire",
        {"diameter": "mm", "grain-size": "mm"},
        {"number": "count"},
        _grains_across,
        "n = d/g",
        "definition",
        example={"diameter": 0.5, "grain-size": 0.05},
        expected={"number": 10},
    ),
)
