"""Every printed gauge size through the formula, with the tables that the handbook has.

What tests/data/test_gauges_and_rings.py holds (the tables against their own law and each other) is
not repeated: here the formula has to find each printed size by its number, and its number by the
size.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

import pytest

from temperbook import units
from temperbook.derive import tables
from temperbook.metal import register
from temperbook.records.load import Library
from tests.metal.published import half_a_digit

THIRD_PLACE = 0.0005  # mm, half a unit of what the handbook's American table rounds to
FOURTH_PLACE = 0.00005  # mm, the same of its British tables


@pytest.fixture(scope="module")
def known(records: Library) -> dict[str, Any]:
    """The handbook's gauges."""
    return tables.made(["gauges"], records)


def found(known: Mapping[str, Any], **inputs: Any) -> dict[str, Any]:
    return register.compute("gauge", inputs, known).outputs


def listed(text: str) -> list[tuple[str, str]]:
    """Number and printed size, from a list with commas."""
    pairs = [part.split() for part in text.replace("\n", " ").split(",")]
    return [(number, size) for number, size in pairs]


# Sizes [mm] of the British standard wire gauge, printed beside the inches of the legal list.
# Source: Wire gage (British and American), table of engineersedge.com.
BRITISH = """
6/0 11.7856, 5/0 10.9728, 4/0 10.16, 3/0 9.4488, 2/0 8.8392, 0 8.2296, 1 7.62, 2 7.0104, 3
6.4008, 4 5.8928, 5 5.3848, 6 4.8768, 8 4.064, 9 3.6576, 10 3.2512, 11 2.9464, 12 2.6416, 14
2.032, 15 1.8288, 16 1.6256, 17 1.4224, 18 1.2192, 20 0.9144, 21 0.8128, 22 0.7112, 24 0.5588,
25 0.508, 26 0.4572, 27 0.4166, 28 0.3759, 30 0.315, 31 0.2946, 32 0.2743, 33 0.254, 34 0.2337,
35 0.2134, 36 0.193, 37 0.1727, 38 0.1524, 39 0.1321, 40 0.1219, 41 0.1118, 42 0.1016, 43
0.0914, 44 0.0813, 45 0.0711, 46 0.061, 47 0.0508, 48 0.0406, 49 0.0305, 50 0.0254
"""

# Sizes [mm] of the Birmingham (Stubs) gauge, from inches. Source: Russ Rowlett, How Many? A
# Dictionary of Units of Measurement: American and British wire gauges, table.
BIRMINGHAM = """
4/0 11.5316, 3/0 10.795, 2/0 9.652, 0 8.636, 1 7.62, 2 7.2136, 3 6.5786, 4 6.0452, 5 5.588, 6
5.1562, 7 4.572, 8 4.191, 9 3.7592, 10 3.4036, 11 3.048, 12 2.7686, 13 2.413, 14 2.1082, 15
1.8288, 16 1.651, 17 1.4732, 18 1.2446, 19 1.0668, 20 0.889, 21 0.8128, 22 0.7112, 23 0.635, 24
0.5588, 25 0.508, 26 0.4572, 27 0.4064, 28 0.3556, 29 0.3302, 30 0.3048, 31 0.254, 32 0.2286, 33
0.2032, 34 0.1778, 35 0.127, 36 0.1016
"""


@pytest.mark.parametrize(
    ("system", "text", "count"), [("swg", BRITISH, 51), ("bwg", BIRMINGHAM, 40)]
)
def test_lists_that_the_records_do_not_hold(
    system: str, text: str, count: int, known: dict[str, Any]
) -> None:
    """Each to its last printed place, and back from the size to the number."""
    pairs = listed(text)
    assert len(pairs) == count
    for number, printed in pairs:
        size = found(known, system=system, number=number)["mm"]
        assert size == pytest.approx(float(printed), abs=half_a_digit(f"{float(printed):.4f}")), (
            number
        )
        back = found(known, system=system, mm=printed)
        assert back["nearest"] == number
        assert abs(back["difference"]) <= 0.00006


# Rows of the records that lie further from the handbook's size than rounding explains: why, and by
# how much [mm].
OTHERWISE = {
    ("oberg-wire-gauges", "swg", "28"): ("one more in the fourth place of an inch", 0.0026),
}


def test_every_row_of_the_records(library: Library, known: dict[str, Any]) -> None:
    """All readings of all gauges (brown-sharpe-weights, oberg-wire-gauges, rayfast-awg,
    cable-supplier-awg, building-construction-gauges): number to size and size to number.

    To half a printed digit and, of the American table, half of the handbook's own last place.
    """
    counted: dict[str, int] = {}
    otherwise = {}
    for row in library.evidence.values():
        if row.quantity != "gauge-size":
            continue
        system = row.record.removeprefix("gauge/")
        counted[row.source] = counted.get(row.source, 0) + 1
        printed = units.convert(float(row.printed_value), row.printed_unit, "mm")
        half = half_a_digit(row.printed_value)
        if row.source == "oberg-wire-gauges":  # noughts at the end of a size are lost in the copy
            half = min(half, 0.00005)
        allowed = units.convert(half, row.printed_unit, "mm") + THIRD_PLACE * (system == "awg")
        size = found(known, system=system, number=row.name)["mm"]
        if abs(size - printed) > allowed + FOURTH_PLACE:
            otherwise[row.source, system, row.name] = printed - size
        assert found(known, system=system, mm=printed)["nearest"] == row.name, row.id
    assert sum(counted.values()) > 280, counted
    assert otherwise.keys() == OTHERWISE.keys(), otherwise
    for key, (_, off) in OTHERWISE.items():
        assert otherwise[key] == pytest.approx(off, abs=0.0001)


# -- printed sizes that are wrong, and by how much


@pytest.mark.parametrize(
    ("system", "number", "printed", "off"),
    [
        ("awg", "36", 0.130, 0.003),  # gauge chart of a maker of chains: a misprint for 0.127
        ("bwg", "2", 0.269 * 25.4, -0.381),  # a comparison chart on the web that mixes two gauges
    ],
)
def test_misprints(
    system: str, number: str, printed: float, off: float, known: dict[str, Any]
) -> None:
    size = found(known, system=system, number=number)["mm"]
    assert printed - size == pytest.approx(off, abs=0.0005)


def test_what_a_mill_calls_number_ten(known: dict[str, Any]) -> None:
    """A page on wire gauges that quotes a wire book of 1916, p. 75, on ordinary wire: nominal
    101.9 thousandths of an inch, and drawn to between 101 and 103.
    """
    inches = found(known, system="awg", number="10")["in"]
    assert inches == pytest.approx(0.1019, abs=0.00005)
    for drawn in (0.101, 0.103):
        assert found(known, system="awg", mm=drawn * 25.4)["nearest"] == "10"
