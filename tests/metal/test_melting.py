"""Heat to melt, against published means, arithmetic, and the balance of its parts."""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from temperbook.derive import computing, tables
from temperbook.metal import melting, register
from temperbook.records.load import Library

THERMAL = {
    "Ag": {"specific-heat": 0.24, "latent-heat": 100.0, "melting-point": 960.0},
    "Cu": {"specific-heat": 0.38, "specific-heat-hot": 0.48, "latent-heat": 200.0},
}


def melted(
    settings: dict[str, Any] | None = None, **given: Any
) -> tuple[dict[str, Any], dict[str, str]]:
    """Outputs and notes of the registered formula with made-up elements."""
    formula = register.FORMULAS["heat-to-melt"]
    known = {"thermal": THERMAL, "settings": settings or {}, "alloys": {}}
    answer = register.compute(formula.id, given, known)
    return answer.outputs, dict(formula.said(answer))


def test_mixed_by_mass() -> None:
    """Kopp and Neumann: three parts of 0.2 and one of 0.4 J/(g K) are 0.25. Source: arithmetic."""
    assert melting.mixed({"A": 75, "B": 25}, {"A": 0.2, "B": 0.4}, "heat") == pytest.approx(0.25)
    with pytest.raises(ValueError, match="no heat of C is known"):
        melting.mixed({"C": 100}, {}, "heat")


def test_mean_of_cold_and_hot_copper(records: Library) -> None:
    """Habashi (ed.), encyclopaedia, copper: mean specific heat from 0 to 1000 degC 0.437 J/(g K).

    Our own mean of the record's values near room temperature and at 1200 K comes within 1.5 %.
    """
    copper = tables.made(("thermal",), records)["thermal"]["Cu"]
    found = melting.mean_specific(copper["specific-heat"], copper["specific-heat-hot"])
    assert found == pytest.approx(0.437, rel=0.015)


def test_mixing_sterling_near_room_temperature(records: Library) -> None:
    """A metal supplier's sheet prints 0.245 J/(g K) for sterling at room temperature (th-015)."""
    known = tables.made(("thermal",), records)["thermal"]
    cold = {symbol: known[symbol]["specific-heat"] for symbol in ("Ag", "Cu")}
    found = melting.mixed({"Ag": 92.5, "Cu": 7.5}, cold, "specific heat")
    assert found == pytest.approx(0.245, rel=0.01)


def test_latent_heat_of_cartridge_brass(records: Library) -> None:
    """A data sheet prints 180 J/g and 390 J/(kg K) for C26000 (th-006, th-016); mixing comes near.

    Mixing leaves out what copper and zinc do to each other.
    """
    known = tables.made(("thermal",), records)["thermal"]
    shares = {"Cu": 70.0, "Zn": 30.0}
    for key, printed, near in (("latent-heat", 180, 0.05), ("specific-heat", 0.39, 0.03)):
        values = {symbol: known[symbol][key] for symbol in shares}
        assert melting.mixed(shares, values, key) == pytest.approx(printed, rel=near)


def test_the_parts_of_one_metal() -> None:
    """100 g of a metal of 0.24 J/(g K) and 100 J/g from 20 to 1060 degC. Source: arithmetic."""
    outputs, notes = melted(elements="Ag 100", mass=100, temperature=1060)
    expected = {"to-solidus": 22.56, "melting": 10.0, "superheat": 2.4, "heat": 34.96}
    assert outputs == pytest.approx(expected)
    assert notes.keys() == {"formula"}


def test_a_mixture_without_record_says_that_its_range_is_not_known() -> None:
    outputs, notes = melted(elements="Ag 50, Cu 50", mass=10, temperature=1000)
    assert outputs.keys() == {"melting", "heat"}
    assert outputs["melting"] == pytest.approx(1.5)
    assert outputs["heat"] == pytest.approx(10 * ((0.24 + 0.43) / 2 * 980 + 150) / 1000)
    assert "range-unknown" in notes


def test_metal_that_stays_solid() -> None:
    outputs, notes = melted(elements="Ag 100", mass=100, temperature=520)
    assert outputs == pytest.approx({"to-solidus": 12, "melting": 0, "superheat": 0, "heat": 12})
    assert "still solid" in notes["solid"]


def test_what_a_torch_must_give() -> None:
    """A tenth reaches the metal: ten times the heat. Its provenance is said."""
    share = [{"low": 10.0, "high": 20.0, "said": "common practice, no source"}]
    outputs, notes = melted({"torch-share": share}, elements="Ag 100", mass=100, temperature=1060)
    heat = outputs["heat"]
    assert f"{5 * heat:.0f} to {10 * heat:.0f} kJ" in notes["torch"]
    assert "common practice, no source" in notes["torch"]


@pytest.mark.parametrize("alloy", ["sterling", "cartridge brass", "fine gold"])
def test_an_alloy_of_the_handbook(alloy: str, records: Library) -> None:
    answer = computing.answer(
        "heat-to-melt", {"alloy": alloy, "mass": 100, "temperature": 1200}, records
    )
    found = answer.outputs
    parts = found["to-solidus"] + found["melting"] + found["superheat"]
    assert parts == pytest.approx(found["heat"])
    assert min(found.values()) > 0


def test_between_solid_and_liquid_it_refuses(records: Library) -> None:
    inputs = {"alloy": "sterling", "mass": 100, "temperature": 850}
    with pytest.raises(ValueError, match=r"neither solid nor wholly liquid.*below 779"):
        computing.answer("heat-to-melt", inputs, records)


@pytest.mark.parametrize(
    ("given", "said"),
    [
        ({"elements": "Ag 100", "mass": 100, "temperature": 20}, "above the 20 degC of the room"),
        ({"elements": "Ag 100", "mass": 0, "temperature": 1000}, "mass must be above zero"),
        ({"elements": "Zn 100", "mass": 1, "temperature": 1000}, "no specific heat of Zn is known"),
        ({"elements": "Ag 90", "mass": 1, "temperature": 1000}, "shares sum to 90"),
    ],
)
def test_refused(given: dict[str, Any], said: str) -> None:
    with pytest.raises(ValueError, match=said):
        melted(**given)


@given(st.floats(0.1, 1e4), st.floats(961, 2500))
def test_twice_the_metal_takes_twice_the_heat(mass: float, temperature: float) -> None:
    one = melting.heat_to_liquid(mass, 0.24, 100, temperature, (900, 960))
    two = melting.heat_to_liquid(2 * mass, 0.24, 100, temperature, (900, 960))
    assert two.whole == pytest.approx(2 * one.whole)
    assert one.to_solidus is not None
    assert one.superheat is not None
    assert one.to_solidus + one.melting + one.superheat == pytest.approx(one.whole)
