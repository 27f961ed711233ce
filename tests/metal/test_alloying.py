"""Alloying against printed problems of old handbooks."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from temperbook.metal import alloying, compositions, register

GRAINS_IN_AN_OUNCE = 480


def parts(**carats: Fraction | float) -> dict[str, float]:
    """Carat parts of 24 as percent."""
    return {element: float(part) / 24 * 100 for element, part in carats.items()}


@pytest.mark.parametrize(
    ("silver", "grains", "exact"),
    [(80, 120, True), (75, 160, True), (62.5, 288, True), (90, 54, False), (70, 204, False)],
)
def test_silver_let_down_with_copper(silver: float, grains: float, exact: bool) -> None:
    """Gee, The Silversmith's Handbook, 5th ed., pp. 64-67: copper for an ounce of fine silver.

    Nos. 2, 3 and 7 are exact; Nos. 1 and 4 are printed in round dwt, so 1.5 percent is fair.
    """
    target = {"Ag": silver, "Cu": 100 - silver}
    found = alloying.least_addition({"Ag": 100}, target, GRAINS_IN_AN_OUNCE)
    assert found.add["Cu"] == pytest.approx(grains, rel=1e-9 if exact else 0.015)
    assert found.add["Ag"] == 0


@pytest.mark.parametrize(
    ("stock", "target", "add", "slack"),
    [
        (parts(Au=16, Ag=3, Cu=5), parts(Au=14, Ag=6, Cu=4), {"Au": 1.5, "Ag": 4.5}, 1e-6),
        (parts(Au=15, Ag=8, Cu=1), parts(Au=14, Ag=6, Cu=4), {"Au": 3.6875, "Cu": 4.3125}, 0.025),
        (
            parts(Au=21 + 9 / 16, Ag=1 + 7 / 16, Cu=1),
            parts(Au=13.5, Ag=6, Cu=4.5),
            {"Ag": 8.125, "Cu": 6.1875},
            0.025,
        ),
        (
            parts(Au=21 + 19 / 32, Ag=1 + 10 / 32, Cu=1 + 3 / 32),
            parts(Au=13.5, Ag=4, Cu=6.5),
            {"Ag": 5.0625, "Cu": 9.28125},
            0.025,
        ),
    ],
)
def test_three_metals(
    stock: dict[str, float], target: dict[str, float], add: dict[str, float], slack: float
) -> None:
    """Oechsle, Pforzheim, in Dingler's Polytechnisches Journal, pp. 339-342: what 24 parts take.

    The first is exact; the others are printed in sixteenths and thirty-seconds.
    """
    found = alloying.least_addition(stock, target, 24)
    for element, printed in add.items():
        assert found.add[element] == pytest.approx(printed, abs=max(slack, 1e-9))


shares = st.lists(st.floats(1, 100), min_size=3, max_size=3).map(
    lambda given_: {
        e: 100 * g / sum(given_) for e, g in zip(("Au", "Ag", "Cu"), given_, strict=True)
    }
)


@given(shares, shares, st.floats(0.1, 1000))
def test_mass_is_kept_and_the_target_reached(
    stock: dict[str, float], target: dict[str, float], mass: float
) -> None:
    found = alloying.least_addition(stock, target, mass)
    assert mass + sum(found.add.values()) == pytest.approx(found.new_mass)
    assert min(found.add.values()) >= 0
    assert min(found.add.values()) == pytest.approx(0, abs=1e-6 * found.new_mass)
    for element, part in target.items():
        held = mass * stock[element] / 100 + found.add[element]
        assert 100 * held / found.new_mass == pytest.approx(part)


def test_only_refining_takes_an_element_out() -> None:
    with pytest.raises(ValueError, match="holds Zn, which the target does not"):
        alloying.least_addition({"Ag": 90, "Zn": 10}, {"Ag": 92.5, "Cu": 7.5}, 10)


def test_a_charge_covers_its_losses() -> None:
    """Arithmetic: each step keeps its share."""
    charge = alloying.charge(100, 0.1, 0.05, 0.01)
    assert charge * 0.9 * 0.95 * 0.99 == pytest.approx(100)
    with pytest.raises(ValueError, match="crop lies between"):
        alloying.charge(100, 1, 0, 0)


@given(st.floats(1, 999), st.floats(1, 999), st.floats(0.1, 1000))
def test_a_fineness_is_reached(fineness: float, target: float, mass: float) -> None:
    add, fine = alloying.fineness_addition(mass, fineness, target)
    held = mass * fineness / 1000 + (add if fine else 0)
    assert 1000 * held / (mass + add) == pytest.approx(target)
    assert fine == (target > fineness)


@pytest.mark.parametrize(
    ("text", "said"),
    [("Ag 90", "sum to 90"), ("silver 90, Cu 10", "is no share"), ("Ag 50, Ag 50", "named twice")],
)
def test_compositions_that_are_none(text: str, said: str) -> None:
    with pytest.raises(ValueError, match=said):
        compositions.parse(text)


def test_a_composition_as_typed() -> None:
    assert compositions.parse("Au 75, Ag 12.5,Cu12.5") == {"Au": 75, "Ag": 12.5, "Cu": 12.5}


@pytest.mark.parametrize("element", ["As", "Be", "Cd", "Pb"])
def test_no_charge_with_what_poisons(element: str) -> None:
    text = f"Ag 80, {element} 20"
    with pytest.raises(ValueError, match=f"a charge with {element} is never melted"):
        register.compute(
            "melt-charge", {"composition": text, "mass": 10, "crop": 0, "scalp": 0, "loss": 0}
        )
    with pytest.raises(ValueError, match="never melted at a bench"):
        register.compute("alloying", {"stock": "Ag 100", "target": text, "mass": 10})
