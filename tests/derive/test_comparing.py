"""What alloys are compared by: one basis for limits, densities side by side, curves of the area."""

from __future__ import annotations

import pytest

from temperbook.derive import comparing
from temperbook.derive.handbook import Handbook
from temperbook.metal import hardening
from temperbook.metal.facts import AlloyFacts, Known
from temperbook.records.figures import Figure


def limit(percent: float, of: str) -> Figure:
    return Figure(value=percent, unit="percent", of=of, how="practice")


@pytest.mark.parametrize(
    ("percent", "of", "area"),
    [
        (50, "area", 50),
        (50, "thickness", 50),  # wide sheet does not spread
        (50, "not-stated", 50),  # the safe reading of a ceiling
        (50, "diameter", 75),  # 1 - 0.5 squared
        (60, "diameter", 84),
    ],
)
def test_limits_on_one_basis(percent: float, of: str, area: float) -> None:
    assert comparing.of_area(limit(percent, of)) == pytest.approx(area)


def test_sterling_by_mixing(handbook: Handbook) -> None:
    """1/(0.925/10.5 + 0.075/8.96) = 10.37 g/cm3; two suppliers print 10.36."""
    pair = comparing.densities(handbook.library.alloys["silver/sterling-925"])
    assert pair.adopted is not None
    assert pair.mixed is not None
    assert pair.mixed.value == pytest.approx(1 / (0.925 / 10.5 + 0.075 / 8.96), abs=0.005)
    assert pair.off == pytest.approx(-0.1, abs=0.05)


def test_named_tempers_become_points_by_the_tempers_reduction() -> None:
    """Strip four and eight gauge numbers hard: 37.1 and 60.5 percent of the thickness."""
    facts = AlloyFacts(
        "copper/x",
        "x",
        {"Cu": 100.0},
        None,
        "",
        figures={
            "temper-reduction": (
                known(37.1, state="hard", of="thickness", form="strip"),
                known(60.5, state="spring", of="thickness", form="strip"),
            ),
            "tensile": (
                known(220, state="annealed"),
                known(310, state="hard", form="strip"),
                known(380, state="spring", form="strip"),
            ),
        },
    )
    curve = hardening.of_scale(facts, "tensile", "flat")
    assert curve is not None
    points = comparing.area_points(curve)
    assert [round(at, 1) for at, *_ in points] == [0.0, 37.1, 60.5]
    assert [low for _, low, _ in points] == [220, 310, 380]
    assert hardening.of_scale(facts, "tensile", "wire") is None
    assert hardening.of_scale(facts, "hardness", "flat") is None


def known(value: float, **basis: str) -> Known:
    return Known(low=value, high=value, unit="", how="quoted", sources=(), **basis)


def test_a_table_that_falls_is_no_curve() -> None:
    facts = AlloyFacts(
        "x", "x", {}, None, "",
        figures={
            "hardness": (
                known(100, state="annealed"),
                Known(low=90, high=90, unit="HV", how="quoted", of="area", reduction=50),
            )
        },
    )  # fmt: skip
    assert hardening.of_scale(facts, "hardness", "flat") is None
