"""Flat rolling against published worked examples."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from temperbook.metal import rolling

POSITIVE = st.floats(0.01, 1000)


def test_groover_example_18_1() -> None:
    """Groover, Fundamentals of Modern Manufacturing, example 18.1.

    300 mm wide, 25 to 22 mm, rolls of 250 mm radius, K 275 MPa, n 0.15, friction 0.12. The book
    rounds on the way and prints 1 444 786 N; unrounded it is 1 443 057 N, so 0.2 percent is fair.
    """
    assert rolling.max_draft(250, 0.12) == pytest.approx(3.6)
    length = rolling.contact_length(250, 3)
    assert length == pytest.approx(27.4, abs=0.05)
    stress = rolling.mean_flow_stress(0.128, 275, 0.15)
    assert stress == pytest.approx(175.7, abs=0.05)
    assert rolling.roll_force(stress, 300, length) == pytest.approx(1_444_786, rel=0.002)


def test_the_draft_of_a_solved_question() -> None:
    """A published solved question on rolling passes: R 300 mm, friction 0.15 give 6.75 mm."""
    assert rolling.max_draft(300, 0.15) == pytest.approx(6.75)


def test_contact_length_of_copper_strip() -> None:
    """FOSSEE textbook companion, copper strip 300 to 295 mm: 38.73 mm on rolls of 300 mm radius."""
    assert rolling.contact_length(300, 5) == pytest.approx(38.73, abs=0.005)


@given(POSITIVE, st.floats(0.01, 0.5))
def test_rolls_bite_more_with_radius_and_friction(radius: float, friction: float) -> None:
    assert rolling.max_draft(2 * radius, friction) == pytest.approx(
        2 * rolling.max_draft(radius, friction)
    )
    assert rolling.max_draft(radius, 2 * friction) == pytest.approx(
        4 * rolling.max_draft(radius, friction)
    )


@pytest.mark.parametrize(
    ("call", "given_"),
    [
        (rolling.max_draft, (0, 0.1)),
        (rolling.contact_length, (100, 0)),
        (rolling.mean_flow_stress, (0, 275, 0.15)),
        (rolling.roll_force, (100, -1, 1)),
    ],
)
def test_nothing_below_zero(call: object, given_: tuple[float, ...]) -> None:
    with pytest.raises(ValueError, match="must be above zero"):
        call(*given_)  # type: ignore[operator]


def test_split_ends_of_thick_stock_on_small_rolls() -> None:
    """Documentation of an open-source rolling simulation: split ends where h0/R0 > 1.81 e/(1 - e);
    solved for 5 mm on rolls of 60 mm the limit is e = 1/(1 + 1.81 R/h) = 8.43 percent.
    """
    limit = 1 / (1 + 1.81 * 30 / 5)
    assert limit == pytest.approx(0.0843, abs=0.0001)
    assert rolling.splits_ends(5, 5 * (1 - limit + 0.001), 30, 1.81)
    assert not rolling.splits_ends(5, 5 * (1 - limit - 0.001), 30, 1.81)
