from __future__ import annotations

import math
from statistics import mean, pstdev

import pytest

from temperbook.drawing import grains
from temperbook.drawing.grains import Grain
from temperbook.drawing.tessellation import area, centre


def span(grain: Grain) -> tuple[float, float]:
    """Width and height of a grain [mm]."""
    xs, ys = [x for x, _ in grain.cell], [y for _, y in grain.cell]
    return max(xs) - min(xs), max(ys) - min(ys)


def whole(found: tuple[Grain, ...]) -> list[Grain]:
    """The grains that no end of the piece cuts."""
    right = max(x for grain in found for x, _ in grain.cell)
    return [g for g in found if all(0.001 < x < right - 0.001 for x, _ in g.cell)]


def columns() -> list[Grain]:
    """The cast grains between the chilled ones and the middle."""
    high = grains.CAST[3]
    return [
        grain
        for grain in whole(grains.cast())
        if span(grain)[1] > 3 * grains.CHILL and abs(centre(grain.cell)[1] - high / 2) > high / 6
    ]


def test_the_worked_grains_are_the_cast_ones_with_their_areas() -> None:
    assert len(grains.worked()) == len(grains.cast())
    for before, after in zip(grains.cast(), grains.worked(), strict=True):
        assert area(after.cell) == pytest.approx(area(before.cell))
        assert after.toned == before.toned


def test_the_piece_keeps_its_volume_through_all_states() -> None:
    cast = grains.CAST[2] * grains.CAST[3]
    for state in (grains.cast, grains.worked, grains.annealed, grains.overheated):
        assert sum(area(grain.cell) for grain in state()) == pytest.approx(cast, rel=1e-3)


def test_working_makes_grains_longer_in_the_rolling_direction_and_thinner() -> None:
    for before, after in zip(grains.cast(), grains.worked(), strict=True):
        assert span(after)[0] == pytest.approx(span(before)[0] * grains.STRETCH)
        assert span(after)[1] == pytest.approx(span(before)[1] / grains.STRETCH)
    columns_after = [g for g in whole(grains.worked()) if area(g.cell) > 20]
    assert mean(span(g)[0] / span(g)[1] for g in columns_after) > 2


def test_overheated_grains_are_fewer_than_cast_and_these_fewer_than_annealed() -> None:
    assert len(grains.overheated()) < len(grains.cast()) < len(grains.annealed())


def test_cast_columns_stand_on_the_walls_and_are_longer_than_wide() -> None:
    assert len(columns()) >= 8
    for grain in columns():
        across = area(grain.cell) / span(grain)[1]
        assert span(grain)[1] > 1.5 * across
        nearest = min(min(y, grains.CAST[3] - y) for _, y in grain.cell)
        assert nearest < 2 * grains.CHILL


def test_chilled_grains_line_both_walls() -> None:
    small = [g for g in grains.cast() if span(g)[1] < 2 * grains.CHILL]
    top = sum(1 for g in small if centre(g.cell)[1] < grains.CHILL)
    bottom = sum(1 for g in small if centre(g.cell)[1] > grains.CAST[3] - grains.CHILL)
    assert top > len(columns()) / 2
    assert bottom > len(columns()) / 2
    assert max(area(g.cell) for g in small) < min(area(g.cell) for g in columns())


@pytest.mark.parametrize("state", [grains.annealed, grains.overheated])
def test_annealed_and_overheated_grains_have_no_direction(state: object) -> None:
    found = whole(state())  # type: ignore[operator]
    assert 0.7 < mean(span(g)[0] for g in found) / mean(span(g)[1] for g in found) < 1.4


def test_annealed_grains_are_even() -> None:
    sizes = [math.sqrt(area(g.cell)) for g in whole(grains.annealed())]
    assert pstdev(sizes) / mean(sizes) < 0.15


def test_a_few_annealed_grains_are_twinned_by_parallel_lines() -> None:
    lines = grains.twin_lines(grains.annealed(), 0, 0)
    assert 20 < len(lines) < len(grains.annealed())
    assert not grains.twin_lines(grains.cast()[:0], 0, 0)


def test_slip_lines_lie_inside_the_worked_piece() -> None:
    lines = grains.slip_lines(grains.worked(), 0, 0)
    assert len(lines) > 50
    for line in lines:
        assert 0 <= line.x1 <= grains.WORKED[2]  # type: ignore[union-attr]
        assert 0 <= line.y1 <= grains.WORKED[3]  # type: ignore[union-attr]


def test_seams_are_drawn_once_and_leave_the_faces_free() -> None:
    found = grains.seams(grains.overheated(), grains.WORKED)
    assert len(found) == len(set(found))
    for (_, y1), (_, y2) in found:
        assert not (y1 == y2 == 0.0)
        assert not (y1 == y2 == grains.WORKED[3])


def test_a_window_shows_the_part_of_the_piece_that_it_covers() -> None:
    part = grains.window(grains.annealed(), (30.0, 2.0, 50.0, 12.0))
    assert sum(area(g.cell) for g in part) == pytest.approx(200, rel=1e-3)
    assert min(x for g in part for x, _ in g.cell) == pytest.approx(0)
