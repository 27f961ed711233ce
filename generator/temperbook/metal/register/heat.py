"""Registered formulas of heat judged by eye and instrument."""

from __future__ import annotations

from typing import Any

from temperbook.metal import brightness
from temperbook.metal.register.formula import Formula, Outputs, number

TRUTH = {"true": True, "false": False}


def _brightness_temperature(**given: Any) -> Outputs:
    find = given["find"] if isinstance(given["find"], bool) else TRUTH.get(str(given["find"]))
    if find is None:
        raise ValueError(f"find is true or false, not `{given['find']}`")
    numbers = [number(given, name) for name in ("temperature", "emissivity", "wavelength")]
    return {"temperature": brightness.true(*numbers) if find else brightness.apparent(*numbers)}


FORMULAS = (
    Formula(
        "brightness-temperature",
        "Why bright metal looks cooler than it is",
        {"temperature": "degC", "emissivity": "", "wavelength": "um", "find": "true | false"},
        {"temperature": "degC"},
        _brightness_temperature,
        "1/Ta = 1/T - (L/c2) ln e, in kelvin",
        "Wien's law; NPL, Tables of physical and chemical constants, 2.3.4",
        example={"temperature": 600, "emissivity": 0.1, "find": "true"},
        expected={"temperature": 687.2},
        optional={"wavelength": 0.65, "find": False},
        note="With find=true the temperature given is the apparent one, and the true one is found.",
    ),
)
