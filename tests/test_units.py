"""Exact factors of the units that people type, against pint."""

from __future__ import annotations

import subprocess
import sys
from functools import cache
from typing import Any

import pytest

from temperbook import units

# How pint calls units that records do not use.
PINT = {"ozt": "troy_ounce", "oz": "troy_ounce", "dwt": "pennyweight", "cm": "cm", "ft": "foot"}
SCALES = {next(iter(scale)): scale for scale in units.EXACT}
EACH = [(unit, base) for base, scale in SCALES.items() for unit in scale]


@cache
def registry() -> Any:
    import pint

    return pint.UnitRegistry(autoconvert_offset_to_baseunit=True)


def by_pint(value: float, unit: str, to: str) -> float:
    quantity = registry().Quantity(value, PINT.get(unit) or units.PINT_NAMES[unit])
    return float(quantity.to(PINT.get(to) or units.PINT_NAMES[to]).magnitude)


@pytest.mark.parametrize(("unit", "base"), EACH)
def test_factors(unit: str, base: str) -> None:
    """Source: pint's own definitions."""
    assert units.convert(3.7, unit, base) == pytest.approx(by_pint(3.7, unit, base), rel=1e-12)
    assert units.convert(units.convert(3.7, unit, base), base, unit) == pytest.approx(3.7)
    assert units.same_kind(unit, base)


@pytest.mark.parametrize("unit", units.TEMPERATURES)
@pytest.mark.parametrize("to", units.TEMPERATURES)
def test_temperatures(unit: str, to: str) -> None:
    """Source: pint's own definitions."""
    for value in (32.0, 300.0, 1400.0):
        assert units.convert(value, unit, to) == pytest.approx(by_pint(value, unit, to))
    assert units.same_kind(unit, to)


@pytest.mark.parametrize(
    ("unit", "other"), [("mm", "g"), ("degC", "mm"), ("ozt", "MPa"), ("min", "in"), ("oz", "HV")]
)
def test_other_kinds(unit: str, other: str) -> None:
    assert not units.same_kind(unit, other)


def test_what_a_key_types_needs_no_pint() -> None:
    """Importing it costs half a second. The units that are typed convert without it."""
    code = (
        "import sys; from temperbook.views import typed;"
        "typed.value('1400degF', 'degC'); typed.section('flat 1in x 2um');"
        "typed.value('2dwt', 'g');"
        "sys.exit('pint' in sys.modules)"
    )
    assert subprocess.run([sys.executable, "-c", code], check=False).returncode == 0
