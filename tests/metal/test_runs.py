"""Runs between anneals: never past a ceiling, never more anneals than needed."""

from __future__ import annotations

import math

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from temperbook.metal.runs import Limits, reduction_of, split, strain_of


def wire(before: float, after: float) -> float:
    return 2 * math.log(before / after)


def under(percent: float, floor: float = 0) -> Limits:
    return Limits(strain_of(percent / 100), strain_of(floor / 100))


def test_two_stage_drawing_of_brass() -> None:
    """Callister, design example on cold working brass: 6.4 to 5.1 mm with a last reduction of 21.5
    percent of the area needs 5.76 mm before the anneal.
    """
    runs = split(wire(6.4, 5.1), under(65), under(65), last=strain_of(0.215))
    assert len(runs) == 2
    assert 6.4 * math.exp(-runs[0].strain / 2) == pytest.approx(5.76, abs=0.005)
    assert reduction_of(sum(run.strain for run in runs)) == pytest.approx(0.365, abs=0.0005)


def test_dust_costs_no_anneal() -> None:
    """1.0 to 0.35 mm under 65 percent a run is two runs, without reserve."""
    runs = split(wire(1.0, 0.35), under(65), under(65))
    assert len(runs) == 2
    assert all(run.without_reserve for run in runs)


def test_a_square_ingot_to_ring_stock_needs_one_anneal() -> None:
    """Common practice, no source: from a 5 to 6 mm square ingot to a ring billet one anneal, two at
    the very most (here 6 to 3.1 mm under 50 percent of the area).
    """
    runs = split(2 * math.log(6 / 3.1), under(50), under(50))
    assert len(runs) - 1 == 1


def test_fine_wire_without_an_anneal() -> None:
    """Common practice, no source: 1.0 mm to 0.4 mm in one run is 84 percent of the area, so a
    ceiling of 50 percent of the area asks for two anneals where benches make none.
    """
    assert len(split(wire(1.0, 0.4), under(50), under(50))) == 3
    assert len(split(wire(1.0, 0.4), under(85), under(85))) == 1


def test_the_first_run_has_its_own_ceiling() -> None:
    """18 ct rose as its maker says: 30 to 40 percent from cast, 60 to 70 after an anneal."""
    runs = split(strain_of(0.75), under(35), under(65))
    assert len(runs) == 2
    assert reduction_of(runs[0].strain) <= 0.35 + 1e-9
    assert reduction_of(runs[1].strain) <= 0.65 + 1e-9


def test_the_first_run_has_its_own_floor() -> None:
    """Nickel white as a supplier says: no less than 40 percent before the first anneal."""
    runs = split(strain_of(0.6), under(50, floor=40), under(50))
    assert not runs[0].under_floor


def test_annealing_too_often_is_told() -> None:
    """Two anneals more than needed: equal runs, and every one of them falls under the floor."""
    few = split(strain_of(0.75), under(60, 30), under(60, 30))
    many = split(strain_of(0.75), under(60, 30), under(60, 30), more=2)
    assert [len(few), len(many)] == [2, 4]
    assert not any(run.under_floor for run in few)
    assert [run.under_floor for run in many] == [True, True, True, True]


strains = st.floats(0.01, 6)
ceilings = st.floats(0.05, 2)


@given(strains, ceilings, ceilings)
def test_ceilings_bind_and_one_anneal_fewer_would_pass_them(
    total: float, first: float, later: float
) -> None:
    runs = split(total, Limits(first), Limits(later))
    assert sum(run.strain for run in runs) == pytest.approx(total)
    assert all(run.strain <= run.limits.ceiling + 1e-6 for run in runs)
    fewer = len(runs) - 2
    assert len(runs) == 1 or first + fewer * later < total + 1e-6


@given(strains, ceilings, st.floats(0.01, 2))
def test_a_last_run_is_kept_whole(total: float, ceiling: float, last: float) -> None:
    assume(last <= min(total, ceiling))
    runs = split(total, Limits(ceiling), Limits(ceiling), last=last)
    assert runs[-1].strain == last
    assert sum(run.strain for run in runs) == pytest.approx(total)


@pytest.mark.parametrize(
    ("total", "last", "said"),
    [
        (-0.1, None, "must not be larger"),
        (0.5, 0.6, "the whole work"),
        (3.0, 1.5, "passes its ceiling"),
    ],
)
def test_what_cannot_be(total: float, last: float | None, said: str) -> None:
    with pytest.raises(ValueError, match=said):
        split(total, Limits(1.0), Limits(1.0), last=last)
