"""Units that people type, converted. Pint is imported when first needed: it costs half a second."""

from __future__ import annotations

from functools import cache
from typing import Any

# How a unit is written in the records, and what pint calls it.
PINT_NAMES = {
    "degC": "degC",
    "degF": "degF",
    "K": "kelvin",
    "degC-difference": "delta_degC",
    "percent": "percent",
    "per-mille": "permille",
    "ppm": "ppm",
    "fraction": "dimensionless",
    "g/cm3": "g/cm**3",
    "kg/m3": "kg/m**3",
    "lb/in3": "lb/inch**3",
    "MPa": "MPa",
    "ksi": "ksi",
    "psi": "psi",
    "kgf/mm2": "kgf/mm**2",
    "N/mm2": "N/mm**2",
    "Zollpfund/mm2": "zollpfund/mm**2",
    "GPa": "GPa",
    "HV": "HV",
    "HB": "HB",
    "kgf/mm2-hardness": "kgf/mm**2",
    "s": "s",
    "min": "min",
    "h": "hour",
    "d": "day",
    "mm": "mm",
    "in": "inch",
    "um": "um",
    "m": "m",
    "g": "g",
    "kg": "kg",
    "mg/m3": "mg/m**3",
    "ug/m3": "ug/m**3",
    "ug/cm2/week": "ug/cm**2/week",
    "deg": "degree",
    "bar": "bar",
    "L/kg": "liter/kg",
    "volumes": "dimensionless",
    "count": "dimensionless",
    "cd/m2": "cd/m**2",
    "nm": "nm",
}


@cache
def _registry() -> Any:
    import pint

    registry = pint.UnitRegistry(autoconvert_offset_to_baseunit=True)
    for definition in (
        "zollpfund = 0.5 * kilogram_force",
        "HV = [vickers_number]",
        "HB = [brinell_number]",
    ):
        registry.define(definition)
    return registry


def known() -> list[str]:
    """The unit names that records may use."""
    return sorted(PINT_NAMES)


@cache
def same_kind(unit: str, other: str) -> bool:
    """Whether a value in `unit` can be given in `other`."""
    if unit == other:
        return True
    registry = _registry()
    return bool(registry.Unit(PINT_NAMES[unit]).is_compatible_with(PINT_NAMES[other]))


def convert(value: float, unit: str, to: str) -> float:
    """The value [unit] in `to`; temperatures are points on the scale, not differences.

    Errors: KeyError for a unit that records may not use; pint's DimensionalityError where the two
    differ in kind.
    """
    if unit == to:
        return value
    registry = _registry()
    quantity = registry.Quantity(value, PINT_NAMES[unit])
    return float(quantity.to(PINT_NAMES[to]).magnitude)
