"""Gauges and ring sizes, held against their own rules and against a second table.

What the rules of checks/ hold already (each figure against its rows) is not repeated here. Lists
of exceptions are sorted, say why, and may only shrink.
"""

from __future__ import annotations

import math
from itertools import pairwise

import pytest

from temperbook import units
from temperbook.records.evidence import Evidence
from temperbook.records.figures import Figure
from temperbook.records.load import Library


def value(figure: Figure) -> float:
    assert figure.value is not None
    return figure.value


def named(library: Library, record: str, quantity: str) -> dict[str, float]:
    """Name -> value of one quantity of a subject."""
    found = library.subjects[record].figures[quantity]
    return {figure.name or "": value(figure) for figure in found}


def readings(library: Library, record: str, quantity: str, source: str) -> dict[str, Evidence]:
    """Name -> the row of one source."""
    return {
        row.name: row
        for row in library.evidence.values()
        if (row.record, row.quantity, row.source) == (record, quantity, source)
    }


def half_a_digit(row: Evidence, at_least: int = 0) -> float:
    """Half a unit in the last printed place, in mm."""
    places = max(at_least, len(row.printed_value.partition(".")[2]))
    return units.convert(0.5 * 10.0**-places, row.printed_unit, "mm") * 1.0001


def in_mm(row: Evidence) -> float:
    return units.convert(float(row.printed_value), row.printed_unit, "mm")


# -- gauges


def counted(name: str) -> int:
    """The number that the formula takes: 2/0 is -1, 0 is 0, 18 is 18."""
    return 1 - int(name[:-2]) if name.endswith("/0") else int(name)


def american(library: Library, name: str) -> float:
    """Size [mm] by the gauge's own formula, its constants as entered. Source: rayfast-awg."""
    (base,) = library.subjects["gauge/awg"].figures["gauge-base"]
    constant = named(library, "gauge/awg", "gauge-formula")
    exponent = (constant["number"] - counted(name)) / constant["steps"]
    return value(base) * constant["ratio"] ** exponent


def numbers(first: int, last: int) -> list[str]:
    """`first` noughts downwards to number `last`, as a gauge names them."""
    return [f"{n}/0" for n in range(first, 1, -1)] + [str(n) for n in range(last + 1)]


@pytest.mark.parametrize(
    ("gauge", "names"),
    [
        ("gauge/awg", numbers(6, 50)),
        ("gauge/swg", numbers(7, 50)),
        ("gauge/bwg", numbers(5, 36)),
    ],
)
def test_a_gauge_is_whole_and_falls(gauge: str, names: list[str], library: Library) -> None:
    sizes = named(library, gauge, "gauge-size")
    assert list(sizes) == names
    falling = list(sizes.values())
    assert all(thick > thin for thick, thin in pairwise(falling))


# Rows that lie further from the formula than half a unit in the last printed place, though never by
# more than one: source and number, and why.
OFF_THE_FORMULA = {
    ("brown-sharpe-weights", "10"): "cut off after the fifth place, not rounded",
    ("brown-sharpe-weights", "13"): "cut off after the sixth place, not rounded",
    ("brown-sharpe-weights", "7"): "cut off after the fifth place, not rounded",
    ("brown-sharpe-weights", "9"): "one unit high in the fifth place",
    ("oberg-wire-gauges", "38"): "cut off after the fifth place, not rounded",
}


def test_american_sizes_follow_their_formula(library: Library) -> None:
    """Every printed size of every table against the formula, to the printed digits.

    Oberg's table lost its last noughts in the copy: it prints four places of an inch, five from
    number 31 on.
    """
    off = set()
    compared = 0
    for row in library.evidence.values():
        if (row.record, row.quantity) != ("gauge/awg", "gauge-size"):
            continue
        compared += 1
        least = 4 if row.source == "oberg-wire-gauges" else 0
        distance = abs(in_mm(row) - american(library, row.name))
        if distance > half_a_digit(row, least):
            off.add((row.source, row.name))
        assert distance < 2 * half_a_digit(row, least), row.id
    assert compared > 110
    assert list(OFF_THE_FORMULA) == sorted(OFF_THE_FORMULA)
    assert off == OFF_THE_FORMULA.keys(), sorted(off ^ OFF_THE_FORMULA.keys())


def test_american_figures_follow_their_formula(library: Library) -> None:
    """What the handbook states, to three places of a millimetre down to number 40."""
    for name, size in named(library, "gauge/awg", "gauge-size").items():
        if 0 <= counted(name) <= 40:
            assert size == pytest.approx(american(library, name), abs=0.0006), name


def test_six_american_numbers_halve_the_thickness(library: Library) -> None:
    """As the record says of the gauge; 92^(6/39) = 2.005."""
    for name in ("0", "12", "24", "30"):
        later = american(library, str(int(name) + 6))
        assert american(library, name) / later == pytest.approx(2, rel=0.003)


# Numbers on which the two British tables differ: gauge and number -> sizes [in].
TABLES_DIFFER = {("gauge/swg", "28"): (0.0148, 0.0149)}


def test_two_tables_of_the_british_gauges_agree(library: Library) -> None:
    """The Board of Trade list and Holtzapffel's (building-construction-gauges) against Machinery's
    Handbook (oberg-wire-gauges).
    """
    compared, differ = 0, {}
    for gauge in ("gauge/swg", "gauge/bwg"):
        one = readings(library, gauge, "gauge-size", "building-construction-gauges")
        other = readings(library, gauge, "gauge-size", "oberg-wire-gauges")
        for name in one.keys() & other.keys():
            compared += 1
            sizes = float(one[name].printed_value), float(other[name].printed_value)
            if sizes[0] != sizes[1]:
                differ[gauge, name] = sizes
    assert compared > 80
    assert differ == TABLES_DIFFER


def test_two_tables_of_the_american_gauge_agree(library: Library) -> None:
    """A list made for Brown and Sharpe (brown-sharpe-weights) against Machinery's Handbook."""
    one = readings(library, "gauge/awg", "gauge-size", "brown-sharpe-weights")
    other = readings(library, "gauge/awg", "gauge-size", "oberg-wire-gauges")
    assert len(one.keys() & other.keys()) == 18
    for name in one.keys() & other.keys():
        assert in_mm(one[name]) == pytest.approx(in_mm(other[name]), abs=0.00006 * 25.4), name


# -- ring sizes


def rule(library: Library, system: str) -> tuple[str, float, float]:
    """What the rule of a system measures, size zero [mm] and one step [mm]."""
    first = named(library, f"ring-size/{system}", "ring-first")
    step = named(library, f"ring-size/{system}", "ring-step")
    ((measure, zero),) = first.items()
    assert step.keys() == {measure}
    assert measure in ("circumference", "diameter")
    return measure, zero, step[measure]


def diameter(library: Library, system: str, size: float) -> float:
    """Inside diameter [mm] by the rule of a system."""
    measure, zero, step = rule(library, system)
    length = zero + step * size
    return length / math.pi if measure == "circumference" else length


def test_iso_sizes_are_circumferences(library: Library) -> None:
    """The printed diameters (wikipedia-ring-size) against circumference = pi x diameter."""
    printed = named(library, "ring-size/iso", "ring-diameter")
    assert list(printed) == [str(size) for size in range(49, 73)]
    for name, across in printed.items():
        assert across == pytest.approx(int(name) / math.pi, abs=0.0501), name
        assert across == pytest.approx(diameter(library, "iso", int(name)), abs=0.0501), name


def test_continental_sizes_are_forty_less(library: Library) -> None:
    """Rowlett: 40 + n; a Swiss 10 is a German 50 (encyclopaedia-ring-chart)."""
    assert diameter(library, "continental", 10) == diameter(library, "iso", 50)


def test_american_rings_follow_their_rule(library: Library) -> None:
    """The rows of the chart (encyclopaedia-ring-chart) against its own rule, to the printed digits;
    size 7 is 17.32 mm across and 54.42 mm round.
    """
    chart = readings(library, "ring-size/us", "ring-diameter", "encyclopaedia-ring-chart")
    assert len(chart) == 12
    for name, row in chart.items():
        over, _, under = name.partition("/")
        size = float(over) / float(under or 1)
        assert in_mm(row) == pytest.approx(diameter(library, "us", size), abs=0.0055), name
    assert diameter(library, "us", 7) == pytest.approx(17.32, abs=0.005)
    assert math.pi * diameter(library, "us", 7) == pytest.approx(54.42, abs=0.01)


def test_british_rings_follow_their_rule(library: Library) -> None:
    """Rowlett: C is 40 mm round; four letters are five sizes of circumference. The older chart lies
    above the rule, by less than one letter.
    """
    _, zero, step = rule(library, "uk")
    assert zero + 3 * step == 40
    assert 4 * step == 5
    older = readings(library, "ring-size/uk", "ring-diameter", "encyclopaedia-ring-chart")
    assert list(older) == list("ABCDEFGHI")
    for place, row in enumerate(older.values(), start=1):
        over = math.pi * in_mm(row) - (zero + place * step)
        assert 0 < over < step, row.name


def test_japanese_rings_follow_their_rule(library: Library) -> None:
    """Rowlett prints the rule twice, the other time as (n + 38)/3 across; size 1 is 13 mm
    (ring-size-scales).
    """
    (row,) = readings(library, "ring-size/jp", "ring-diameter", "ring-size-scales").values()
    assert diameter(library, "jp", 1) == pytest.approx(in_mm(row), abs=0.01)
    for size in range(1, 31):
        assert diameter(library, "jp", size) == pytest.approx((size + 38) / 3, abs=0.015), size
