"""What a wire bears."""

from __future__ import annotations

import math

import pytest

from temperbook.metal import wire


def test_breaking_load() -> None:
    """A wire of 1 mm2 breaks at as many newtons as its strength has megapascals: definition."""
    assert wire.breaking_load(2 / math.sqrt(math.pi), 300) == pytest.approx(300)


def test_half_the_diameter_bears_a_quarter() -> None:
    assert wire.breaking_load(1, 300) == pytest.approx(4 * wire.breaking_load(0.5, 300))


def test_grains_across() -> None:
    assert wire.grains_across(0.5, 0.05) == pytest.approx(10)


@pytest.mark.parametrize("given", [(0, 300), (1, -5)])
def test_nothing_below_zero(given: tuple[float, float]) -> None:
    with pytest.raises(ValueError, match="above zero"):
        wire.breaking_load(*given)
    with pytest.raises(ValueError, match="above zero"):
        wire.grains_across(*given)
