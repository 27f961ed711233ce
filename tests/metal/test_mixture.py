"""Density by mixing, fineness, mass and length."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from temperbook.derive import computing
from temperbook.derive.handbook import Handbook
from temperbook.metal import mixture
from temperbook.records.names import fineness

# g/cm3 at 20 degC. Source: CRC Handbook of Chemistry and Physics, as periodictable gives it (see
# tests/data).
DENSITIES = {"Ag": 10.5, "Cu": 8.96}


def test_sterling_by_mixing_against_its_published_density() -> None:
    """Sources:

    ESPI Metals, sterling silver data sheet, and AU Enterprises, weights and standard data: both
    10.36 g/cm3.
    """
    found = mixture.density_by_mixing({"Ag": 92.5, "Cu": 7.5}, DENSITIES)
    assert found == pytest.approx(10.36, rel=0.003)


def test_sterling_of_the_handbook_itself(handbook: Handbook) -> None:
    """The same with the densities that the element records adopt, and as the page shows it."""
    library = handbook.library
    found = computing.compute("density", {"alloy": "sterling"}, library)["density"]
    assert found == pytest.approx(10.36, rel=0.003)
    mixed = handbook.figure("silver/sterling-925#density@name=by-mixing").figure
    assert (mixed.value, mixed.how) == (found, "computed")
    assert computing.density(library.alloys["silver/sterling-925"], library) == 10.36


def test_half_and_half_by_volume() -> None:
    """Equal volumes of 10 and 5 g/cm3 mix to 7.5. Source: arithmetic."""
    shares = {"A": 100 * 10 / 15, "B": 100 * 5 / 15}
    assert mixture.density_by_mixing(shares, {"A": 10, "B": 5}) == pytest.approx(7.5)


@given(st.floats(0.1, 99.9), st.floats(1, 23), st.floats(1, 23))
def test_a_mixture_lies_between_its_parts(share: float, one: float, other: float) -> None:
    found = mixture.density_by_mixing({"A": share, "B": 100 - share}, {"A": one, "B": other})
    assert min(one, other) - 1e-9 <= found <= max(one, other) + 1e-9


def test_refused_mixtures() -> None:
    with pytest.raises(ValueError, match="shares sum to 99, not to 100"):
        mixture.density_by_mixing({"Ag": 92.5, "Cu": 6.5}, DENSITIES)
    with pytest.raises(ValueError, match="no density of Zn is known"):
        mixture.density_by_mixing({"Ag": 92.5, "Zn": 7.5}, DENSITIES)


@pytest.mark.parametrize(
    ("carat", "per_mille"), [(24, 1000), (22, 916.67), (18, 750), (14, 583.33), (12, 500), (9, 375)]
)
def test_fineness(carat: float, per_mille: float) -> None:
    """A carat is the twenty-fourth part. Source: definition.

    Law rounds: 22 ct is marked 916, 14 ct 585, which is more than fourteen parts in twenty-four.
    """
    assert mixture.fineness_from_carat(carat) == pytest.approx(per_mille, abs=0.005)


@pytest.mark.parametrize("carat", [0, -1, 24.01, 999, math.nan])
def test_refused_carats(carat: float) -> None:
    with pytest.raises(ValueError, match="carat"):
        mixture.fineness_from_carat(carat)


@pytest.mark.parametrize(
    ("carat", "alloy"), [(22, "gold/22ct-yellow"), (18, "gold/18ct-rose"), (9, "gold/9ct-yellow")]
)
def test_carats_of_the_records(carat: float, alloy: str, handbook: Handbook) -> None:
    """The records' own gold reaches the fineness of their carat, within the law's rounding."""
    shown = fineness(handbook.library.alloys[alloy])
    assert int(shown) == pytest.approx(mixture.fineness_from_carat(carat), abs=1)


@given(st.floats(0.1, 24))
def test_carat_there_and_back(carat: float) -> None:
    fineness = mixture.fineness_from_carat(carat)
    assert mixture.carat_from_fineness(fineness) == pytest.approx(carat)


@pytest.mark.parametrize(
    ("per_mille", "carat"),
    [(500, 12), (620, 14 + 28 / 32), (750, 18), (900, 21 + 19 / 32), (990, 23 + 24 / 32)],
)
def test_printed_carats(per_mille: float, carat: float) -> None:
    """Evans, Illustrated history of the United States Mint, p. 148: a table of carats and 32nds.

    It prints whole 32nds and is off by up to two thirds of one.
    """
    assert mixture.carat_from_fineness(per_mille) == pytest.approx(carat, abs=0.7 / 32)


def test_atomic_percent_of_brass() -> None:
    """Equal numbers of atoms. Source: arithmetic with the masses that stand here."""
    masses = {"Cu": 63.546, "Zn": 65.38}
    shares = {symbol: 100 * mass / sum(masses.values()) for symbol, mass in masses.items()}
    assert mixture.atomic_percent(shares, masses) == pytest.approx({"Cu": 50, "Zn": 50})
    with pytest.raises(ValueError, match="no atomic mass of Au is known"):
        mixture.atomic_percent({"Au": 100}, masses)


@given(st.floats(1, 99))
def test_atomic_percent_sums_to_a_hundred(share: float) -> None:
    found = mixture.atomic_percent({"A": share, "B": 100 - share}, {"A": 200, "B": 20})
    assert sum(found.values()) == pytest.approx(100)
    assert found["A"] < share


def test_troy_weights() -> None:
    """A troy ounce is 480 grains of 64.79891 mg, a pennyweight 24 of them. Source: definition."""
    assert pytest.approx(480 * 0.06479891, rel=1e-12) == mixture.TROY_OUNCE
    assert pytest.approx(24 * 0.06479891, rel=1e-12) == mixture.PENNYWEIGHT


@given(st.floats(0.1, 1000), st.floats(1, 22), st.floats(0.01, 400))
def test_length_from_mass_and_back(length: float, density: float, area: float) -> None:
    grams = mixture.mass(density, area, length)
    assert mixture.length_of(grams, density, area) == pytest.approx(length)


def test_mass_and_length() -> None:
    """Source: definition; volume is kept."""
    assert mixture.mass(10.36, 36, 60) == pytest.approx(22.3776)
    assert mixture.length_after(60, 36, 9) == 240


@given(st.floats(0.1, 1000), st.floats(0.01, 1000), st.floats(0.01, 1000))
def test_worked_metal_weighs_what_it_weighed(length: float, before: float, after: float) -> None:
    longer = mixture.length_after(length, before, after)
    assert mixture.mass(8.9, after, longer) == pytest.approx(mixture.mass(8.9, before, length))


@pytest.mark.parametrize("bad", [0, -1, math.nan, math.inf])
def test_refused_sizes(bad: float) -> None:
    for position in range(3):
        sizes = [8.9, 10.0, 100.0]
        sizes[position] = bad
        with pytest.raises(ValueError, match="above zero"):
            mixture.mass(*sizes)
        with pytest.raises(ValueError, match="above zero"):
            mixture.length_after(*sizes)
