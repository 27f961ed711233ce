"""Anneals at another temperature: Arrhenius' law, and where it refuses."""

from __future__ import annotations

import math
from typing import Any

import pytest
import scipy.constants
from hypothesis import given
from hypothesis import strategies as st

from temperbook.derive import computing
from temperbook.metal import annealing, register
from temperbook.records.load import Library

COPPER = {"metal": "copper", "mechanism": "recrystallisation"}


def test_gas_constant() -> None:
    """Source: SI 2019 as scipy.constants gives it."""
    assert pytest.approx(scipy.constants.R, rel=1e-15) == annealing.GAS


def test_by_hand() -> None:
    """123 kJ/mol from 160 to 150 degC: exp(123000/8.314 x 10/(423.15 x 433.15)). Arithmetic."""
    factor = math.exp(123000 / 8.31446 * 10 / (423.15 * 433.15))
    assert annealing.equivalent_time(60, 123, 160, 150) == pytest.approx(60 * factor, rel=1e-5)


@given(st.floats(50, 300), st.floats(200, 800), st.floats(-150, 150), st.floats(0.1, 1000))
def test_there_and_back(energy: float, at: float, step: float, time: float) -> None:
    other = annealing.equivalent_time(time, energy, at, at + step)
    assert annealing.equivalent_time(other, energy, at + step, at) == pytest.approx(time)
    assert (other < time) == (step > 0 and other != time)


def test_energies_of_the_records(records: Library) -> None:
    """Copper rolled 92 percent: 123 kJ/mol, an average of single grains (rx-012, grade A).

    Grain growth of alpha brass: Burke prints 60 000 cal/mol, 251 kJ/mol (gg-001).
    """
    for metal, mechanism, energy in (
        ("copper", "recrystallisation", 123),
        ("brass", "grain-growth", 251),
    ):
        given = {"metal": metal, "mechanism": mechanism, "temperature": 300, "time": 60, "to": 280}
        answer = computing.answer("anneal-equivalent", given, records)
        expected = annealing.equivalent_time(60, energy, 300, 280)
        assert answer.outputs["time"] == pytest.approx(expected, rel=1e-3)
        said = dict(register.FORMULAS["anneal-equivalent"].said(answer))
        assert f"{energy:g} kJ/mol" in said["energy"]
        assert "Approximate" in said["formula"]


@pytest.mark.parametrize(
    ("given", "said"),
    [
        ({"to": 451, "temperature": 300}, "more than 150 K away"),
        ({"alloy": "sterling", "to": 780, "temperature": 700}, "begins to melt at 779.1 degC"),
        ({"alloy": "cartridge brass", "to": 200, "temperature": 300}, "must not linger at 220"),
        ({"alloy": "18 ct yellow", "to": 500, "temperature": 380}, "linger|orders"),
        ({"metal": "unobtainium"}, "no activation energy of unobtainium.*there is copper"),
        ({"time": 0}, "time must be above zero"),
        ({"mechanism": "creep"}, "mechanism is recrystallisation or grain-growth"),
        ({"activation-energy": 100}, "needed: one of"),
    ],
)
def test_refused(given: dict[str, Any], said: str, records: Library) -> None:
    inputs = {**COPPER, "temperature": 300, "time": 60, "to": 280, **given}
    with pytest.raises(ValueError, match=said):
        computing.answer("anneal-equivalent", inputs, records)


def test_without_an_alloy_nothing_is_checked_and_that_is_said(records: Library) -> None:
    inputs = {**COPPER, "temperature": 300, "time": 60, "to": 280}
    formula = register.FORMULAS["anneal-equivalent"]
    without = computing.answer("anneal-equivalent", inputs, records)
    held = computing.answer("anneal-equivalent", {**inputs, "alloy": "tough pitch"}, records)
    assert "unchecked" in dict(formula.said(without))
    assert "unchecked" not in dict(formula.said(held))
    assert held.outputs == without.outputs


def test_a_system_orders_only_what_holds_enough_of_it(records: Library) -> None:
    """Shakudo is copper with a little gold: the ordering of half and half does not reach it."""
    inputs = {"activation-energy": 100, "temperature": 420, "time": 10, "to": 400}
    assert computing.answer("anneal-equivalent", {**inputs, "alloy": "shakudo"}, records)
    with pytest.raises(ValueError, match=r"orders or changes phase|linger"):
        computing.answer("anneal-equivalent", {**inputs, "alloy": "18 ct rose"}, records)
