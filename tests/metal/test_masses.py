"""Mass, length and charges as the register answers them, with their notes."""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from temperbook.derive import computing
from temperbook.metal import register
from temperbook.records.load import Library


def answered(formula: str, **given: Any) -> tuple[dict[str, Any], dict[str, str]]:
    """Outputs and notes of a registered formula without records."""
    inputs = {name.rstrip("_").replace("_", "-"): value for name, value in given.items()}
    answer = register.compute(formula, inputs, {"alloys": {}, "finenesses": STANDARDS})
    return answer.outputs, dict(register.FORMULAS[formula].said(answer))


STANDARDS = [
    {"element": "Au", "fineness": 750.0, "where": "Loftland", "name": ""},
    {"element": "Au", "fineness": 585.0, "where": "Loftland", "name": ""},
    {"element": "Au", "fineness": 585.0, "where": "Netland", "name": ""},
    {"element": "Ag", "fineness": 600.0, "where": "Netland", "name": ""},
]


def test_troy_weight_of_a_sovereign() -> None:
    """Brande, Dingler's Journal, p. 78: 934.5 sovereigns from 20 troy pounds, 123.27 grains each.

    A grain is 64.79891 mg and a pennyweight 24 of them.
    """
    grams = 20 * 12 * 31.1034768 / 934.5
    section = "flat 10x10"
    found, _ = answered("mass", density=10, section=section, length=grams)
    assert found["mass"] == pytest.approx(grams)
    assert found["pennyweights"] == pytest.approx(123.27 / 24, rel=1e-4)
    assert found["troy-ounces"] == pytest.approx(20 * 12 / 934.5)


def test_brass_wire_of_ten_gauge() -> None:
    """Brown and Sharpe No. 10, 0.10189 in: brass wire 0.029687 lb/ft (standards, R2T-860).

    At 8.36 to 8.57 g/cm3, as brass is. A pound is 453.59237 g.
    """
    found, _ = answered("mass", density=8.5, section=f"round {0.10189 * 25.4:.6f}", length=304.8)
    assert found["mass"] / 453.59237 == pytest.approx(0.029687, rel=0.02)


def test_length_by_mass_or_by_length() -> None:
    """36 g of 10 g/cm3, 6 mm square, are 100 mm long: volume. At 3 mm square four times that."""
    by_mass, _ = answered("rolled-length", from_="square 6", to="square 3", mass=36, density=10)
    by_length, _ = answered(
        "rolled-length", from_="square 6", to="square 3", length=100, density=10
    )
    assert by_mass == by_length == pytest.approx({"length": 400, "mass": 36})
    alone, _ = answered("rolled-length", from_="square 6", to="square 3", length=100)
    assert alone == {"length": 400}


@pytest.mark.parametrize(
    "given",
    [{}, {"mass": 1}, {"length": 1, "mass": 1}, {"length": 1, "alloy": "x", "density": 1}],
)
def test_what_gives_no_length(given: dict[str, Any]) -> None:
    with pytest.raises(ValueError, match="needed: one of"):
        answered("rolled-length", from_="square 6", to="square 3", **given)


@given(st.floats(0.1, 1e4), st.floats(1, 22), st.floats(2, 20), st.floats(0.5, 1.9))
def test_working_keeps_the_mass(mass: float, density: float, before: float, after: float) -> None:
    start, end = f"square {before:.6f}", f"round {after:.6f}"
    found, _ = answered("rolled-length", from_=start, to=end, mass=mass, density=density)
    worked, _ = answered("mass", density=density, section=end, length=found["length"])
    assert worked["mass"] == pytest.approx(mass)


def test_a_charge_of_an_alloy(records: Library) -> None:
    given = {"alloy": "sterling", "mass": 100, "crop": 10, "scalp": 5, "loss": 1}
    found = computing.compute("melt-charge", given, records)
    assert found["charge"] == pytest.approx(100 / (0.9 * 0.95 * 0.99))
    assert found["Ag"] + found["Cu"] == pytest.approx(found["charge"])
    assert found["Ag"] / found["charge"] == pytest.approx(0.925)


@pytest.mark.parametrize(
    ("melt", "said"),
    [
        ("buy-stock", "buy it as stock"),
        ("licensed", "licensed refiners"),
        ("never", "never melted"),
    ],
)
def test_no_charge_of_what_no_bench_melts(melt: str, said: str) -> None:
    plain = {"name": "Netmetal", "composition": {"Ag": 100.0}, "melt": melt}
    given = {"alloy": "x", "mass": 1, "crop": 0, "scalp": 0, "loss": 0}
    with pytest.raises(ValueError, match=f"Netmetal is .*{said}"):
        register.compute("melt-charge", given, {"alloys": {"x": plain}})


def test_what_limits_an_alloying() -> None:
    """Oechsle, Dingler's Journal, p. 341: 24 parts of 16 Au 3 Ag 5 Cu to 14 Au 6 Ag 4 Cu.

    Printed: 1 1/2 of gold and 4 1/2 of silver, none of copper.
    """
    stock = {"Au": 16 / 0.24, "Ag": 3 / 0.24, "Cu": 5 / 0.24}
    target = {"Au": 14 / 0.24, "Ag": 6 / 0.24, "Cu": 4 / 0.24}
    found, notes = answered("alloying", stock=stock, target=target, mass=24)
    assert (found["Au"], found["Ag"], found["Cu"]) == pytest.approx((1.5, 4.5, 0), abs=1e-9)
    assert "most of Cu" in notes["limits"]
    assert found["new-mass"] == pytest.approx(30)
    _, same = answered("alloying", stock=stock, target=stock, mass=24)
    assert "already" in same["same"]


def test_what_to_add_for_a_fineness() -> None:
    """Warren, Manual of mechanical dentistry, p. 206: 3 oz of alloy to 6 of fine gold is 16 ct."""
    down, notes = answered("change-fineness", mass=6, fineness=1000, target=1000 * 16 / 24)
    assert down == pytest.approx({"add": 3, "new-mass": 9})
    assert "alloying metal" in notes["alloying"]
    _, up = answered("change-fineness", mass=6, fineness=500, target=750)
    assert "fine metal of 1000" in up["fine"]
    _, same = answered("change-fineness", mass=6, fineness=500, target=500)
    assert "already" in same["same"]


@pytest.mark.parametrize(
    ("given", "reached", "above"),
    [
        ({"carat": 18}, "750 (Loftland)", None),
        ({"carat": 14}, None, "585 (Loftland and Netland)"),
        ({"fineness": 600}, "585 (Loftland and Netland)", "750 (Loftland)"),
    ],
)
def test_legal_standards(given: dict[str, float], reached: str | None, above: str | None) -> None:
    """14 ct is 583.3 and does not reach 585; another metal's standard is not named."""
    found, notes = answered("fineness", **given)
    assert found["fineness"] == pytest.approx(1000 * found["carat"] / 24)
    for note, said in (("standard-reached", reached), ("standard-above", above)):
        assert (note in notes) == (said is not None)
        if said:
            assert said in notes[note]


def test_a_list_of_holes() -> None:
    """Each hole in turn without a limit; with one, the fewest: 1 to 0.5 mm by 60 percent each."""
    plate = "0.5, 0.9, 0.8, 0.65, 1.1"
    every, _ = answered("draw-schedule", from_=1, to=0.5, holes=plate)
    assert every == {"draws": 4, "sizes": [0.9, 0.8, 0.65, 0.5]}
    few, _ = answered("draw-schedule", from_=1, to=0.5, holes=plate, per_draw=60)
    assert few == {"draws": 2, "sizes": [0.65, 0.5]}
    assert all(1 - (b / a) ** 2 <= 0.6 for a, b in ((1, 0.65), (0.65, 0.5)))
    with pytest.raises(ValueError, match=r"no hole of 0\.4 mm"):
        answered("draw-schedule", from_=1, to=0.4, holes=plate)
    with pytest.raises(ValueError, match="more than 500 draws"):
        answered("draw-schedule", from_=10, to=0.01, per_draw=0.001)
