"""Weights of wire and plate by gauge, troy weights, gold by volume: as printed, and `mass`."""

from __future__ import annotations

import statistics
from collections.abc import Iterator
from typing import Any

import pytest

from temperbook.derive import tables
from temperbook.metal import mixture, register
from temperbook.records.load import Library
from tests.metal.published import half_a_digit, percent_off, table

POUND = 453.59237  # g
FOOT = 304.8  # mm
INCH = 25.4  # mm
GRAIN = 0.06479891  # g

# number | size [in] | pounds a foot of copper wire, of brass wire | pounds a square foot of copper
# plate, of brass plate. Source: brown-sharpe-weights, table.
WEIGHTS = table("""
0000 | 0.46000  | 0.640513 | 0.605176 | 20.838  | 19.688
000  | 0.40964  | 0.507946 | 0.479908 | 18.5567 | 17.5326
00   | 0.36480  | 0.402830 | 0.380666 | 16.5264 | 15.6134
0    | 0.32486  | 0.319451 | 0.301816 | 14.7162 | 13.904
1    | 0.28930  | 0.253342 | 0.239353 | 13.1053 | 12.382
2    | 0.25763  | 0.200911 | 0.189818 | 11.6706 | 11.0266
3    | 0.22942  | 0.159323 | 0.150522 | 10.3927 | 9.8192
4    | 0.20431  | 0.126353 | 0.119376 | 9.2552  | 8.7445
5    | 0.18194  | 0.100200 | 0.094666 | 8.2419  | 7.787
6    | 0.16202  | 0.079462 | 0.075075 | 7.3395  | 6.9345
7    | 0.14428  | 0.063013 | 0.059545 | 6.5359  | 6.1752
8    | 0.12849  | 0.049976 | 0.047219 | 5.8206  | 5.4994
9    | 0.11443  | 0.039636 | 0.037437 | 6.1837  | 4.8976
10   | 0.10189  | 0.031426 | 0.029687 | 4.6156  | 4.3609
11   | 0.090742 | 0.024924 | 0.023549 | 4.1106  | 3.8838
12   | 0.080808 | 0.019766 | 0.018676 | 3.6606  | 3.4586
13   | 0.071961 | 0.015674 | 0.014809 | 3.2598  | 3.0799
14   | 0.064084 | 0.012435 | 0.011746 | 2.9030  | 2.7428
""")
# Column of the table -> density [g/cm3] that the whole of it was worked out with.
COLUMNS = {"copper wire": 8.890, "brass wire": 8.399, "copper plate": 8.7076, "brass plate": 8.2271}
MISPRINT = ("9", "copper plate", 19.3)  # printed 6.1837 for 5.1837: percent too high

# number | pounds a foot | feet a pound, of copper wire. Source: American School of Correspondence,
# Cyclopedia of Telephony and Telegraphy, vol. 1, copper wire table.
FEET = table("""
0000 | 0.6405 | 1.561
000  | 0.5080 | 1.969
00   | 0.4028 | 2.482
0    | 0.3195 | 3.130
1    | 0.2533 | 3.947
2    | 0.2009 | 4.977
3    | 0.1593 | 6.276
4    | 0.1264 | 7.914
5    | -      | 9.980
""")


def pounds(density: float, size: float, what: str, feet: float = 1) -> float:
    """Weight of so many feet of wire, or of a square foot of plate, of a size [in]."""
    mm = size * INCH
    section = f"round {mm:.9f}" if "wire" in what else f"flat {FOOT}x{mm:.9f}"
    inputs = {"density": density, "section": section, "length": feet * FOOT}
    return float(register.compute("mass", inputs, {"alloys": {}}).outputs["mass"]) / POUND


def printed_weights() -> Iterator[tuple[str, str, float, str]]:
    """Number, column, size [in] and printed weight of every cell."""
    for number, size, *cells in WEIGHTS:
        for what, printed in zip(COLUMNS, cells, strict=True):
            yield number, what, float(size), printed


def test_every_weight_of_wire_and_plate() -> None:
    """One density a column gives all 72 weights within 0.05 percent, but one, a misprint."""
    off = {
        (number, what): percent_off(float(printed), pounds(COLUMNS[what], size, what))
        for number, what, size, printed in printed_weights()
    }
    number, what, by = MISPRINT
    assert off.pop((number, what)) == pytest.approx(by, abs=0.05)
    assert len(off) == 71
    assert max(map(abs, off.values())) < 0.05
    assert abs(statistics.mean(off.values())) < 0.005


def test_the_misprint_is_one_figure() -> None:
    assert pounds(COLUMNS["copper plate"], 0.11443, "copper plate") == pytest.approx(
        5.1837, abs=0.0005
    )


@pytest.mark.parametrize("row", FEET, ids=lambda row: row[0])
def test_feet_of_wire_in_a_pound(row: list[str]) -> None:
    """With copper of 8.89 g/cm3, to the printed digits (one unit in the last place is allowed)."""
    number, weight, feet = row
    size = float(next(line[1] for line in WEIGHTS if line[0] == number))
    here = pounds(8.89, size, "wire")
    assert 1 / here == pytest.approx(float(feet), abs=2 * half_a_digit(feet))
    if weight != "-":
        assert here == pytest.approx(float(weight), abs=2 * half_a_digit(weight))


def test_a_gauge_number_and_its_weight(records: Library) -> None:
    """The same from the number alone, by way of the handbook's gauge: within 0.15 percent, since
    its sizes have three places of a millimetre.
    """
    known = tables.made(["gauges"], records)
    for number, _, printed, *_ in WEIGHTS:
        size = register.compute("gauge", {"system": "awg", "number": number}, known).outputs["in"]
        assert pounds(8.89, size, "wire") == pytest.approx(float(printed), rel=0.0015), number


# -- troy

# what | grams as printed | of the ounce
TROY = table("""
troy ounce, an encyclopaedia article (statemaster.com)       | 31.1034768 | 1
troy ounce, a list of troy units (auminer.com)               | 31.1034768 | 1
troy ounce, au-enterprises-weights                           | 31.1035    | 1
pennyweight, a chart of weights for gold (keegold.com)       | 1.5552     | 0.05
grain, an encyclopaedia article (statemaster.com)            | 0.06479891 | 0.00208333333333
grain, US Army, basic mathematics, subcourse MD0900, 4-32    | 0.0648     | 0.00208333333333
""")


@pytest.mark.parametrize("row", TROY, ids=lambda row: row[0])
def test_troy_weights_as_printed(row: list[str]) -> None:
    """A bar that weighs as much comes out as one ounce, one pennyweight, one grain."""
    _, printed, ounces = row
    inputs = {"density": printed, "section": "square 10", "length": 10}
    found = register.compute("mass", inputs, {"alloys": {}}).outputs
    within = half_a_digit(printed) / mixture.TROY_OUNCE
    assert found["troy-ounces"] == pytest.approx(float(ounces), abs=within + 1e-14)
    assert found["pennyweights"] == pytest.approx(20 * float(ounces), abs=20 * within + 1e-12)


def test_a_pennyweight_that_is_printed_one_too_high() -> None:
    """au-enterprises-weights: 1.55518 g; the twentieth of an ounce is 1.555174, which rounds to
    1.55517.
    """
    assert round(mixture.PENNYWEIGHT, 5) == 1.55517
    assert pytest.approx(0.0000062, abs=0.0000001) == 1.55518 - mixture.PENNYWEIGHT


def test_a_troy_ounce_in_the_grocers_ounces() -> None:
    """au-enterprises-weights: 1.09714 ounces avoirdupois, of which sixteen are a pound."""
    assert pytest.approx(1.09714, abs=0.000005) == mixture.TROY_OUNCE / (POUND / 16)


# -- a cubic inch, and the same piece in another metal


def known_densities(records: Library) -> dict[str, Any]:
    return {**tables.made(["densities", "mixing-errors"], records), "alloys": {}}


def test_a_cubic_inch_of_gold(records: Library) -> None:
    """A table of specific gravities of gold (reference.com): 10.18 troy ounces, and 8.375 of 18 ct
    green, which is gold and silver alone.
    """
    for composition, printed in (("Au 100", 10.18), ("Au 75, Ag 25", 8.375)):
        known = known_densities(records)
        density = register.compute("density", {"composition": composition}, known)
        inputs = {**density.outputs, "section": f"square {INCH}", "length": INCH}
        found = register.compute("mass", inputs, {"alloys": {}}).outputs
        assert found["troy-ounces"] == pytest.approx(printed, rel=0.006), composition


# from | to | printed factor for the same volume. Sources: S, a studio's weight conversion table
# (sierradesignstudios.com); E, a weight comparison chart for jewellers (esslinger.com).
FACTORS = table("""
S | Ag 92.5, Cu 7.5 | Pt 100 | 2.046
E | Ag 92.5, Cu 7.5 | Pt 100 | 2.07
S | Ag 100          | Ag 92.5, Cu 7.5 | 0.984
E | Ag 92.5, Cu 7.5 | Ag 100 | 1.01
S | Ag 90, Cu 10    | Ag 92.5, Cu 7.5 | 1.004
E | Ag 92.5, Cu 7.5 | Au 100 | 1.87
""")


@pytest.mark.parametrize("row", FACTORS, ids=lambda row: f"{row[0]} {row[1]} to {row[2]}")
def test_the_same_piece_in_another_metal(row: list[str], records: Library) -> None:
    """By densities of mixing, within 1.2 percent. Eleven more factors of the two charts name carats
    without saying what else is in the gold, or brass; what they mean cannot be computed.
    """
    _, before, after, printed = row
    known = known_densities(records)
    one, other = (
        register.compute("density", {"composition": c}, known).outputs["density"]
        for c in (before, after)
    )
    assert other / one == pytest.approx(float(printed), rel=0.012)


def test_a_grain_is_the_two_hundred_and_fortieth_of_ten_pennyweights() -> None:
    assert pytest.approx(24 * GRAIN, rel=1e-12) == mixture.PENNYWEIGHT
