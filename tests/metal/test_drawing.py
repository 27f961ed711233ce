"""Drawing against published worked examples, and schedules that keep their limits."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from temperbook.metal import drawing, rolling


def test_groover_example_18_4() -> None:
    """Groover, Fundamentals of Modern Manufacturing, example 18.4.

    2.5 to 2.0 mm, half-angle 15, friction 0.07, K 205 MPa, n 0.20. Printed: 0.446, 145.4 MPa,
    94.1 MPa, 295.5 N; the last two do not follow from the printed inputs (94.9, 298.1), so 1
    percent is fair.
    """
    strain = 2 * math.log(2.5 / 2.0)
    assert strain == pytest.approx(0.446, abs=0.0005)
    flow = rolling.mean_flow_stress(strain, 205, 0.20)
    assert flow == pytest.approx(145.4, abs=0.05)
    stress = drawing.draw_stress(2.5, 2.0, 15, 0.07, flow)
    assert stress == pytest.approx(94.1, rel=0.01)
    assert drawing.draw_force(stress, 2.0) == pytest.approx(295.5, rel=0.01)


def test_the_limit_of_one_draw() -> None:
    """FOSSEE textbook companion, example 3.7: half-angle 6, friction 0.1 give 0.5047 of the area.

    Without friction the limit is 1 - 1/e = 63 percent (Groover, section 18.5).
    """
    assert drawing.limit_reduction(6, 0.1) == pytest.approx(0.5047, abs=0.0001)
    assert drawing.limit_reduction(6, 0) == pytest.approx(0.632, abs=0.0005)


@pytest.mark.parametrize(
    ("half_angle", "area", "delta"),
    [
        (2, 0.05, 2.73),
        (2, 0.20, 0.63),
        (4, 0.10, 2.66),
        (6, 0.20, 1.88),
        (6, 0.35, 0.98),
        (8, 0.15, 3.45),
        (10, 0.05, 13.65),
        (12, 0.20, 3.75),
        (14, 0.10, 9.27),
        (16, 0.35, 2.60),
    ],
)
def test_the_delta_chart(half_angle: float, area: float, delta: float) -> None:
    """A wire-die supplier's delta factor chart, ten of its cells, within 1 percent."""
    assert drawing.delta_factor(half_angle, area) == pytest.approx(delta, rel=0.011)


@given(st.floats(0.2, 5), st.floats(0.1, 0.95), st.floats(0.05, 0.6))
def test_an_even_schedule_keeps_its_limit_with_the_fewest_draws(
    start: float, share: float, per_draw: float
) -> None:
    end = start * share
    sizes = drawing.even_schedule(start, end, per_draw)
    assert sizes[-1] == end
    each = [1 - (b / a) ** 2 for a, b in zip([start, *sizes], sizes, strict=False)]
    assert max(each) <= per_draw + 1e-6
    fewer = len(sizes) - 1
    assert fewer == 0 or 1 - (end / start) ** (2 / fewer) > per_draw - 1e-6


def test_dust_costs_no_draw() -> None:
    """0.5 of the area twice is exactly half the diameter."""
    assert drawing.even_schedule(1.0, 0.5, 0.5) == pytest.approx([math.sqrt(0.5), 0.5])


def test_holes_of_a_plate_are_skipped_where_the_limit_allows() -> None:
    plate = [1.0, 0.95, 0.9, 0.85, 0.8, 0.75, 0.7]
    assert drawing.schedule_by_holes(1.0, 0.7, 0.2, plate) == [0.9, 0.85, 0.8, 0.75, 0.7]
    assert drawing.schedule_by_holes(1.0, 0.7, 0.5, plate) == [0.75, 0.7]


@pytest.mark.parametrize(
    ("end", "plate", "said"),
    [(0.7, [0.9, 0.8], "no hole of 0.7"), (0.5, [0.9, 0.5], "within the limit of one draw")],
)
def test_a_plate_that_cannot_reach(end: float, plate: list[float], said: str) -> None:
    with pytest.raises(ValueError, match=said):
        drawing.schedule_by_holes(1.0, end, 0.2, plate)


def test_a_draw_takes_less_than_everything() -> None:
    for per_draw in (1.0, 1.5):
        with pytest.raises(ValueError, match="per-draw lies between 0 and 100"):
            drawing.schedule_by_holes(1.0, 0.7, per_draw, [0.7])
        with pytest.raises(ValueError, match="per-draw lies between 0 and 100"):
            drawing.even_schedule(1.0, 0.7, per_draw)
