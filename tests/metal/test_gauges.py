"""Gauge numbers against printed tables and the formula of the American gauge."""

from __future__ import annotations

from typing import Any

import pytest

from temperbook.derive import tables
from temperbook.metal import gauges, register
from temperbook.records.load import Library


@pytest.fixture(scope="module")
def sizes(records: Library) -> dict[str, dict[str, float]]:
    found: dict[str, dict[str, float]] = tables.made(("gauges",), records)["gauges"]
    return found


def gauge(sizes: dict[str, Any], **given: Any) -> dict[str, Any]:
    """Outputs of the registered formula."""
    return register.compute("gauge", given, {"gauges": sizes}).outputs


@pytest.mark.parametrize("number", range(0, 37, 4))
def test_american_by_its_formula(number: int, sizes: dict[str, dict[str, float]]) -> None:
    """d = 0.127 x 92^((36-n)/39) mm, the gauge's own definition."""
    found = gauge(sizes, system="awg", number=number)
    assert found["mm"] == pytest.approx(0.127 * 92 ** ((36 - number) / 39), abs=0.0015)


@pytest.mark.parametrize(
    ("system", "number", "inches"),
    [
        ("awg", "0000", 0.46),
        ("swg", "7/0", 0.5),
        ("swg", "1", 0.3),
        ("swg", "18", 0.048),
        ("swg", "50", 0.001),
        ("bwg", "10", 0.134),
        ("bwg", "36", 0.004),
    ],
)
def test_printed_inches(
    system: str, number: str, inches: float, sizes: dict[str, dict[str, float]]
) -> None:
    """Oberg and others' list of wire gauges: Brown and Sharpe, Board of Trade, Holtzapffel."""
    found = gauge(sizes, system=system, number=number)
    assert found["in"] == pytest.approx(inches, abs=6e-5)
    assert found["mm"] == pytest.approx(25.4 * inches, abs=0.0015)


@pytest.mark.parametrize(
    ("typed", "written"),
    [("0000", "4/0"), ("00", "2/0"), ("1/0", "0"), ("0", "0"), ("07", "7"), ("7/0", "7/0")],
)
def test_how_numbers_are_written(typed: str, written: str) -> None:
    assert gauges.normal(typed) == written


def test_there_and_back(sizes: dict[str, dict[str, float]]) -> None:
    for system, table in sizes.items():
        for number, size in table.items():
            found = gauge(sizes, system=system, mm=size)
            assert found == {"nearest": number, "difference": 0.0}


def test_thicker_is_above_zero(sizes: dict[str, dict[str, float]]) -> None:
    found = gauge(sizes, system="awg", mm=1.03)
    assert found == {"nearest": "18", "difference": pytest.approx(0.006, abs=1e-9)}


def test_beyond_the_table_it_is_told(sizes: dict[str, dict[str, float]]) -> None:
    formula = register.FORMULAS["gauge"]
    answer = register.compute("gauge", {"system": "bwg", "mm": 50}, {"gauges": sizes})
    assert answer.outputs["nearest"] == max(sizes["bwg"], key=sizes["bwg"].__getitem__)
    assert "ends at number" in dict(formula.said(answer))["beyond"]


@pytest.mark.parametrize(
    ("given", "said"),
    [
        ({"system": "awg", "number": "99"}, "no number `99`; it goes from"),
        ({"system": "cwg", "number": "18"}, "system is awg, swg or bwg"),
        ({"system": "awg", "mm": 0}, "mm must be above zero"),
        ({"system": "awg"}, r"needed: one of \(number \| mm\)"),
    ],
)
def test_refused(given: dict[str, Any], said: str, sizes: dict[str, dict[str, float]]) -> None:
    with pytest.raises(ValueError, match=said):
        gauge(sizes, **given)


def test_records_without_the_table() -> None:
    with pytest.raises(ValueError, match="the records have no table of swg"):
        gauge({"awg": {"18": 1.024}}, system="swg", number="18")
