from __future__ import annotations

import math
import random

import pytest

from temperbook.drawing.tessellation import area, centre, chord, cut, evened, inside, tessellation

BOX = (0.0, 0.0, 40.0, 30.0)


def scattered(seed: int, count: int = 30) -> list[tuple[float, float]]:
    chance = random.Random(seed)
    return [(chance.uniform(0, 40), chance.uniform(0, 30)) for _ in range(count)]


@pytest.mark.parametrize("seed", range(5))
def test_cells_fill_the_box_once(seed: int) -> None:
    cells = tessellation(scattered(seed), BOX)
    assert sum(area(cell) for cell in cells) == pytest.approx(1200)


@pytest.mark.parametrize("seed", range(5))
def test_weighted_cells_fill_the_box_once(seed: int) -> None:
    chance = random.Random(seed)
    weights = [chance.uniform(0, 40) for _ in range(30)]
    cells = tessellation(scattered(seed), BOX, weights)
    assert sum(area(cell) for cell in cells if cell) == pytest.approx(1200)


def test_each_point_lies_in_the_cell_of_its_nearest_seed() -> None:
    seeds = scattered(3)
    cells = tessellation(seeds, BOX)
    for seed, cell in zip(seeds, cells, strict=True):
        x, y = centre(cell)
        assert min(seeds, key=lambda other: math.dist(other, (x, y))) == seed


def test_a_weight_moves_the_boundary_away_from_its_seed() -> None:
    even = tessellation([(10.0, 15.0), (30.0, 15.0)], BOX)
    heavy = tessellation([(10.0, 15.0), (30.0, 15.0)], BOX, [200.0, 0.0])
    assert area(even[0]) == pytest.approx(600)
    # 2 (x - 20) 20 = 200: the boundary moves by 5 mm
    assert area(heavy[0]) == pytest.approx(25 * 30)


def test_evening_makes_cells_more_alike() -> None:
    seeds = scattered(1)

    def spread(places: list[tuple[float, float]]) -> float:
        sizes = [area(cell) for cell in tessellation(places, BOX)]
        return max(sizes) / min(sizes)

    assert spread(list(evened(seeds, BOX))) < spread(seeds)


def test_cutting_and_boxing_keep_what_is_left() -> None:
    square = ((0.0, 0.0), (4.0, 0.0), (4.0, 4.0), (0.0, 4.0))
    assert area(cut(square, 1.0, 1.0, 4.0)) == pytest.approx(8)
    assert cut(square, 1.0, 0.0, -1.0) == ()
    assert area(inside(square, (1.0, 1.0, 9.0, 3.0))) == pytest.approx(6)
    assert inside(square, (5.0, 5.0, 9.0, 9.0)) == ()


def test_a_chord_ends_on_the_outline() -> None:
    square = ((0.0, 0.0), (4.0, 0.0), (4.0, 4.0), (0.0, 4.0))
    ends = chord(square, (2.0, 1.0), 0.0)
    assert ends is not None
    assert sorted(ends) == [(0.0, 1.0), (4.0, 1.0)]
    assert chord(square, (2.0, 9.0), 0.0) is None
