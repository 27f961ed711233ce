"""The limits that a bench asks for first, on the made-up figures of the small handbook."""

from __future__ import annotations

import pytest

from temperbook.derive import limits
from temperbook.derive.handbook import Handbook, derive
from temperbook.paths import Project
from temperbook.records.figures import Figure
from temperbook.records.load import load


@pytest.fixture
def made_up(small: Project) -> Handbook:
    return derive(load(small)[0])


def ceiling(of: str, **value: float) -> Figure:
    return Figure(unit="percent", of=of, how="practice", **(value or {"value": 50}))  # type: ignore[arg-type]


@pytest.mark.parametrize(
    ("of", "area", "diameter", "safe"),
    [
        ("area", 50, 29.289, False),
        ("diameter", 75, 50, False),
        ("not-stated", 50, 29.289, True),
    ],
)
def test_on_wire(of: str, area: float, diameter: float, safe: bool) -> None:
    """Half, on each basis.

    Where nobody said of what, the reading that allows least work: it is the area's.
    """
    found = limits.on_wire(ceiling(of))
    assert found is not None
    assert (found.area, found.diameter) == pytest.approx((area, diameter), abs=1e-3)
    assert found.safe is safe


def test_on_wire_takes_the_lower_end() -> None:
    found = limits.on_wire(ceiling("area", low=60, high=65))
    assert found is not None
    assert found.area == pytest.approx(60)


@pytest.mark.parametrize("of", ["thickness", "area"])
def test_no_wire_has_a_thickness_nor_loses_all(of: str) -> None:
    value = 50 if of == "thickness" else 100
    assert limits.on_wire(ceiling(of, value=value)) is None


def test_published_comes_before_practice(made_up: Handbook) -> None:
    alloy = made_up.library.alloys["copper/net-bronze"]
    annealed, cast = limits.ceiling(alloy), limits.ceiling(alloy, "cast")
    assert annealed is not None
    assert (annealed.value, annealed.how) == (40, "quoted")
    assert cast is not None
    assert (cast.value, cast.how) == (30, "practice")


def test_ends_of_bounds() -> None:
    at_least = Figure(low=15, unit="min", how="practice")
    at_most = Figure(high=80, unit="HV", how="practice")
    assert (limits.lowest(at_least), limits.highest(at_least)) == (15, 15)
    assert (limits.lowest(at_most), limits.highest(at_most)) == (80, 80)


def test_the_stop_is_the_lowest_heat_at_which_anything_melts(made_up: Handbook) -> None:
    found = limits.stop(made_up.library.alloys["copper/net-bronze"])
    assert found is not None
    assert (found[0], found[1].value) == ("solidus", 840)


def test_an_eyes_error_is_kept_below_the_stop(made_up: Handbook) -> None:
    """840 less the 40 K by which two people in the loft differ."""
    assert limits.eye_error(made_up) == 40
    assert limits.hard_stop(made_up.library.alloys["copper/net-bronze"], made_up) == 800


@pytest.mark.parametrize(
    ("low", "high", "group"),
    [
        (450, 509, "below-glow"),
        (450, 510, "first-red"),
        (580, 650, "first-red"),
        (581, 650, "hotter"),
    ],
)
def test_groups_of_the_chart(low: float, high: float, group: str, made_up: Handbook) -> None:
    """First glow at 510, dull red up to 580: below the one, above the other, or meeting what lies
    between.
    """
    alloy = made_up.library.alloys["copper/net-bronze"]
    figure = Figure(low=low, high=high, unit="degC", heat="torch", how="practice")
    changed = alloy.model_copy(update={"figures": {"anneal": [figure]}})
    found = limits.glow_group(changed, made_up.library.charts["anneal"], made_up)
    assert found is not None
    assert found.id == group


def test_no_anneal_no_group(made_up: Handbook) -> None:
    alloy = made_up.library.alloys["copper/net-bronze"].model_copy(update={"figures": {}})
    assert limits.glow_group(alloy, made_up.library.charts["anneal"], made_up) is None
    assert limits.stop(alloy) is None
    assert limits.hard_stop(alloy, made_up) is None
