"""Brightness temperature against the printed corrections for optical pyrometers."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from temperbook.metal import brightness, register


@pytest.mark.parametrize(
    ("apparent", "emissivity", "added"), [(600, 0.1, 87), (600, 0.4, 33), (800, 0.1, 135)]
)
def test_the_printed_corrections(apparent: float, emissivity: float, added: float) -> None:
    """National Physical Laboratory, Tables of physical and chemical constants, 2.3.4 (0.65 um)."""
    found = brightness.true(apparent, emissivity) - apparent
    assert found == pytest.approx(added, abs=0.8)


@given(st.floats(300, 1500), st.floats(0.02, 1))
def test_there_and_back(temperature: float, emissivity: float) -> None:
    seen = brightness.apparent(temperature, emissivity)
    assert seen <= temperature + 1e-9
    assert brightness.true(seen, emissivity) == pytest.approx(temperature)


def test_a_black_body_looks_as_hot_as_it_is() -> None:
    assert brightness.apparent(700, 1) == pytest.approx(700)


@pytest.mark.parametrize(("emissivity", "wavelength"), [(0, 0.65), (1.2, 0.65), (0.5, 10)])
def test_what_no_surface_or_pyrometer_has(emissivity: float, wavelength: float) -> None:
    with pytest.raises(ValueError, match="lies"):
        brightness.apparent(700, emissivity, wavelength)


def test_it_refuses_what_no_metal_has() -> None:
    with pytest.raises(ValueError, match=r"above -273\.15"):
        brightness.apparent(-300, 0.5)
    with pytest.raises(ValueError, match="can look so hot"):
        brightness.true(20000, 0.01)


def test_beyond_wiens_law_it_is_told() -> None:
    """Wien's approximation serves below 3000 um K: 0.65 um at 4615 K."""
    formula = register.FORMULAS["brightness-temperature"]
    for temperature, told in ((4200, False), (4500, True)):
        inputs = {"temperature": temperature, "emissivity": 0.9}
        found = dict(formula.said(register.compute(formula.id, inputs)))
        assert ("beyond-wien" in found) is told
