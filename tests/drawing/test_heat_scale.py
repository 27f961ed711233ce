from __future__ import annotations

import itertools

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from temperbook.derive import glow
from temperbook.drawing import heat, heat_scale
from temperbook.drawing.lettering import width
from temperbook.drawing.shapes import Glow, Rect, Text
from temperbook.paths import project

named = st.tuples(
    st.sampled_from(["red", "cherry red", "lowest red visible in darkness", "very dark red"]),
    st.integers(380, 1150),
    st.sampled_from([0, 60, 150]),
).map(lambda n: (n[0], float(n[1]), float(n[1] + n[2])))


def colour(temperature: float) -> str:
    return f"#{int(temperature):06d}"


@settings(max_examples=60, deadline=None)
@given(st.lists(named, max_size=10, unique_by=lambda n: n[1]))
def test_no_name_meets_another_or_the_stem_of_a_hotter_one(names: list[heat_scale.Named]) -> None:
    rows = heat_scale._rows(heat_scale._shown(names))
    placed = [(heat_scale._across(max(n[1], heat_scale.COOLEST)), n[0], row) for n, row in rows]
    for (x, text, row), (stem, _, its_row) in itertools.permutations(placed, 2):
        if x == stem:
            assert row != its_row
        elif x < stem < x + 1.0 + width(text, heat_scale.CAP):
            assert row > its_row


@settings(max_examples=60, deadline=None)
@given(st.lists(st.tuples(st.floats(0, 100), st.floats(2, 9)), max_size=8))
def test_spread_blocks_keep_their_order_and_never_overlap(
    blocks: list[tuple[float, float]],
) -> None:
    blocks = sorted(blocks)
    middles, heights = [m for m, _ in blocks], [h for _, h in blocks]
    places = heat_scale._spread(middles, heights, 0.0, 100.0)
    for n, (one, other) in enumerate(itertools.pairwise(places)):
        assert other - one >= (heights[n] + heights[n + 1]) / 2 - 1e-6


def test_names_beyond_the_scale_are_left_out_and_a_cut_range_is_kept() -> None:
    names = (("too dark", 300.0, 380.0), ("yellow", 1093.0, 1258.0), ("white", 1300.0, 1300.0))
    assert [name for name, *_ in heat_scale._shown(names)] == ["yellow"]


def test_the_bar_is_the_glow_of_its_heats_from_end_to_end() -> None:
    bar = next(s for s in heat_scale.heat_scale(colour, ()).shapes if isinstance(s, Glow))
    assert bar.stops[0] == (0.0, colour(400))
    assert bar.stops[-1] == (1.0, colour(1100))
    share = (700 - 400) / 700
    assert any(s == pytest.approx(share) and c == colour(700) for s, c in bar.stops)


@pytest.mark.parametrize("draw", [heat_scale.heat_scale, heat_scale.heat_scale_tall])
def test_every_hundred_degrees_is_numbered(draw: object) -> None:
    picture = draw(colour, ())  # type: ignore[operator]
    said = {s.text for s in picture.shapes if isinstance(s, Text)}
    assert {str(t) for t in range(400, 1101, 100)} <= said


def test_fahrenheit_stands_where_its_celsius_is() -> None:
    picture = heat_scale.heat_scale(colour, ())
    at = {s.text: s.x for s in picture.shapes if isinstance(s, Text)}
    # 2000 degF is 1093.3 degC
    share = (at["2000"] - at["400"]) / (at["1100"] - at["400"])
    assert 400 + 700 * share == pytest.approx(1093.3, abs=0.1)


def test_the_standing_scale_has_its_hottest_field_on_top_and_no_gap() -> None:
    fields = [
        s for s in heat_scale.heat_scale_tall(colour, ()).shapes if isinstance(s, Rect) and s.fill
    ]
    assert fields[0].fill == colour(1095)
    assert fields[-1].fill == colour(405)
    for upper, lower in itertools.pairwise(fields):
        assert upper.y < lower.y <= upper.y + upper.h


def test_the_alternative_text_names_where_observers_differ_most() -> None:
    tables = (
        ("One", (("cherry", 700.0, 700.0), ("red", 600.0, 600.0))),
        ("Two", (("cherry", 900.0, 900.0),)),
    )
    alt = heat_scale.heat_scale(colour, tables).alt
    assert "cherry is 700 °C for One but 900 °C for Two" in alt
    assert "red is" not in alt


def test_the_clean_strip_is_as_dim_as_bright_silver_at_the_one_heat() -> None:
    seen = glow.scale(project()).seen
    share = seen(heat.SHOWN_BY_CLEAN).luminance / seen(heat.ONE_HEAT).luminance
    assert share == pytest.approx(0.04, abs=0.01)
