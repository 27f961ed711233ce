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
    "u": "unified_atomic_mass_unit",
    "J/g": "J/g",
    "kJ/kg": "kJ/kg",
    "cal/g": "calorie/g",
    "J/g/K": "J/g/K",
    "kJ/kg/K": "kJ/kg/K",
    "J/kg/K": "J/kg/K",
    "kJ/mol": "kJ/mol",
    "J/mol": "J/mol",
    "cal/mol": "calorie/mol",
    "J/mol/K": "J/mol/K",
}

# Units of one kind by their size in the first: exact by definition, so that what people type at a
# key needs no pint. An ounce is the troy ounce, in which precious metal is dealt.
LENGTHS = {"mm": 1.0, "um": 0.001, "cm": 10.0, "m": 1000.0, "in": 25.4, "ft": 304.8}
MASSES = {"g": 1.0, "kg": 1000.0, "ozt": 31.1034768, "oz": 31.1034768, "dwt": 31.1034768 / 20}
POUND, SQUARE_INCH = 4.4482216152605, 25.4**2  # N, mm2
STRESSES = {
    "MPa": 1.0,
    "N/mm2": 1.0,
    "GPa": 1000.0,
    "kgf/mm2": 9.80665,
    "psi": POUND / SQUARE_INCH,
    "ksi": 1000 * POUND / SQUARE_INCH,
}
TIMES = {"min": 1.0, "s": 1 / 60, "h": 60.0, "d": 1440.0}
DENSITIES = {"g/cm3": 1.0, "kg/m3": 0.001}
MOLAR = {"kJ/mol": 1.0, "J/mol": 0.001, "cal/mol": 0.004184}
EXACT = (LENGTHS, MASSES, STRESSES, TIMES, DENSITIES, MOLAR)
TEMPERATURES = ("degC", "degF", "K")


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
    if unit == other or _scale(unit, other) or {unit, other} <= {*TEMPERATURES}:
        return True
    if not {unit, other} <= PINT_NAMES.keys():
        return False
    registry = _registry()
    return bool(registry.Unit(PINT_NAMES[unit]).is_compatible_with(PINT_NAMES[other]))


def convert(value: float, unit: str, to: str) -> float:
    """The value [unit] in `to`; temperatures are points on the scale, not differences.

    Errors: KeyError for a unit that records may not use; pint's DimensionalityError where the two
    differ in kind.
    """
    if unit == to:
        return value
    scale = _scale(unit, to)
    if scale:
        return value * scale[unit] / scale[to]
    if {unit, to} <= {*TEMPERATURES}:
        return _from_celsius(_celsius(value, unit), to)
    registry = _registry()
    quantity = registry.Quantity(value, PINT_NAMES[unit])
    return float(quantity.to(PINT_NAMES[to]).magnitude)


def _scale(unit: str, other: str) -> dict[str, float] | None:
    return next((scale for scale in EXACT if unit in scale and other in scale), None)


def _celsius(value: float, unit: str) -> float:
    if unit == "degF":
        return (value - 32) / 1.8
    return value - 273.15 if unit == "K" else value


def _from_celsius(value: float, unit: str) -> float:
    if unit == "degF":
        return value * 1.8 + 32
    return value + 273.15 if unit == "K" else value
