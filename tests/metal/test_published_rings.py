"""Ring sizes as printed, through `ring-size` and `ring-blank`.

No worked example of a ring blank was found in print; its length is held against the circumference
of the middle line, which ring sizes do print.
"""

from __future__ import annotations

import math
from typing import Any

import pytest

from temperbook.derive import tables
from temperbook.metal import register
from temperbook.records.load import Library
from tests.metal.published import half_a_digit, table


@pytest.fixture(scope="module")
def known(records: Library) -> dict[str, Any]:
    """The handbook's ring sizes."""
    return tables.made(["ring-sizes"], records)


def ring(known: dict[str, Any], system: str, size: str) -> dict[str, float]:
    return register.compute("ring-size", {"system": system, "size": size}, known).outputs


# Size and inside diameter [mm]. Source: wikipedia-ring-size, table of ISO 8653.
ISO = """49 15.6  50 15.9  51 16.2  53 16.9  54 17.2  55 17.5  56 17.8  57 18.1  59 18.8  60 19.1
61 19.4  62 19.7  63 20.1  64 20.4  65 20.7  66 21.0  68 21.6  69 22.0  70 22.3  71 22.6  72 22.9"""


def test_sizes_of_the_standard(known: dict[str, Any]) -> None:
    """All 21 that could be read, to the printed tenth, and the circumference is the size itself."""
    cells = ISO.split()
    pairs = list(zip(cells[::2], cells[1::2], strict=True))
    assert len(pairs) == 21
    for size, printed in pairs:
        found = ring(known, "iso", size)
        assert found["inside-diameter"] == pytest.approx(float(printed), abs=half_a_digit(printed))
        assert found["circumference"] == pytest.approx(float(size))


def test_the_stick_of_the_standard(known: dict[str, Any]) -> None:
    """BS EN ISO 8653:2014, preview, clauses 2 to 4: from 41 to 76, `RING-SIZE ISO 8653-43` for an
    inner circumference of 43 mm.
    """
    for size in ("41", "43", "76"):
        assert ring(known, "iso", size)["circumference"] == pytest.approx(float(size))


# American size | British letter that the chart puts beside it | inside diameter [in], [mm] | inside
# circumference [mm]. Source: encyclopaedia-ring-chart, chart.
CHART = table("""
1     | B | 0.490 | 12.45 | 39.1
1 1/2 | C | 0.506 | 12.85 | 40.4
2     | D | 0.522 | 13.26 | 41.7
2 1/2 | E | 0.538 | 13.67 | 42.9
3     | F | 0.554 | 14.07 | 44.2
4     | H | 0.586 | 14.88 | 46.8
4 1/2 | I | 0.602 | 15.29 | 48.0
""")


@pytest.mark.parametrize("row", CHART, ids=lambda row: f"US {row[0]}")
def test_the_chart_of_american_sizes(row: list[str], known: dict[str, Any]) -> None:
    size, _, inches, diameter, round_ = row
    found = ring(known, "us", size)
    assert found["inside-diameter"] / 25.4 == pytest.approx(float(inches), abs=0.0005)
    assert found["inside-diameter"] == pytest.approx(float(diameter), abs=half_a_digit(diameter))
    assert found["circumference"] == pytest.approx(float(round_), abs=0.06)


@pytest.mark.parametrize("row", CHART, ids=lambda row: f"UK {row[1]}")
def test_its_british_letters_are_not_those_of_the_rule(
    row: list[str], known: dict[str, Any]
) -> None:
    """The chart lies 0.3 to 0.6 mm of circumference above the rule of rowlett-ring-size, 36.25 mm
    and 1.25 mm a letter: the handbook keeps the rule.
    """
    _, letter, _, _, round_ = row
    over = float(round_) - ring(known, "uk", letter)["circumference"]
    assert 0.3 < over < 0.6


# system | size | what | printed [mm] | source. The American circumference is printed as a rule of
# its own and grows by 0.05 mm a size more than the diameter's.
RULES = table("""
us | 0  | inside-diameter | 11.63 | encyclopaedia-ring-chart, size 0 is 0.458 in
us | 7  | inside-diameter | 17.32 | encyclopaedia-ring-chart
us | 7  | circumference   | 54.42 | encyclopaedia-ring-chart
uk | A  | circumference   | 37.50 | rowlett-ring-size, 36.25 + 1.25 n
uk | C  | circumference   | 40.00 | rowlett-ring-size, size C is 40 mm
uk | Z  | circumference   | 68.75 | rowlett-ring-size, 36.25 + 1.25 n
jp | 1  | inside-diameter | 13.00 | rowlett-ring-size, (n + 38)/3
jp | 10 | inside-diameter | 16.00 | rowlett-ring-size, (n + 38)/3
jp | 16 | inside-diameter | 18.00 | rowlett-ring-size, (n + 38)/3
""")


@pytest.mark.parametrize("row", RULES, ids=lambda row: f"{row[0]} {row[1]} {row[2]}")
def test_sizes_that_rules_print(row: list[str], known: dict[str, Any]) -> None:
    system, size, what, printed, _ = row
    allowed = 0.012 if system == "jp" else 0.0055
    assert ring(known, system, size)[what] == pytest.approx(float(printed), abs=allowed)


@pytest.mark.parametrize("size", range(14))
def test_two_rules_of_american_sizes(size: int, known: dict[str, Any]) -> None:
    """rowlett-ring-size prints a circumference of about 36.3 + 2.60 n mm, the chart 0.458 + 0.032 n
    inches across: the two cross between sizes 5 and 6 and lie 0.36 mm apart at 13.
    """
    rowlett = 36.3 + 2.60 * size
    over = rowlett - ring(known, "us", str(size))["circumference"]
    assert over == pytest.approx(-0.247 + 0.0465 * size, abs=0.01)
    assert abs(over) < 0.4


def test_a_blank_is_as_long_as_the_ring_round_its_middle(known: dict[str, Any]) -> None:
    """Geometry: a ring of size n whose strip is t thick is a circle of n + pi t; so a blank for iso
    54 of 1.5 mm is as long as the inside of iso 54 + 4.71 is round.
    """
    for size, thickness in (("49", 1.0), ("54", 1.5), ("66", 2.0)):
        inputs = {"system": "iso", "size": size, "thickness": thickness}
        length = register.compute("ring-blank", inputs, known).outputs["length"]
        assert length == pytest.approx(float(size) + math.pi * thickness)
        wider = ring(known, "iso", f"{length:.6f}")
        assert wider["inside-diameter"] == pytest.approx(
            ring(known, "iso", size)["inside-diameter"] + thickness, abs=1e-5
        )
