"""Ring sizes against printed charts, and the strip that makes a ring."""

from __future__ import annotations

import math
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from temperbook.derive import tables
from temperbook.metal import register, rings
from temperbook.records.load import Library


@pytest.fixture(scope="module")
def systems(records: Library) -> dict[str, Any]:
    found: dict[str, Any] = tables.made(("ring-sizes",), records)
    return found


def inside(systems: dict[str, Any], system: str, size: object) -> float:
    """Inside diameter [mm] by the registered formula."""
    given = {"system": system, "size": size}
    found: float = register.compute("ring-size", given, systems).outputs["inside-diameter"]
    return found


@pytest.mark.parametrize(
    ("size", "diameter"), [(49, 15.6), (54, 17.2), (60, 19.1), (66, 21.0), (72, 22.9)]
)
def test_iso_against_an_encyclopaedia(size: int, diameter: float, systems: dict[str, Any]) -> None:
    """ISO 8653: the size is the inside circumference. An encyclopaedia's list of ring sizes."""
    assert inside(systems, "iso", size) == pytest.approx(diameter, abs=0.051)


@pytest.mark.parametrize(
    ("size", "inches"), [("1", 0.49), ("1.5", 0.506), ("2", 0.522), ("3", 0.554), ("4.5", 0.602)]
)
def test_us_against_a_printed_chart(size: str, inches: float, systems: dict[str, Any]) -> None:
    """An encyclopaedia's chart of ring sizes, inside diameters in inches (ring-035 to ring-042)."""
    assert inside(systems, "us", size) == pytest.approx(25.4 * inches, abs=0.01)


def test_us_seven(systems: dict[str, Any]) -> None:
    """0.458 in and 0.032 in a size: size 7 is 17.32 mm inside, 54.42 mm around (ring-028)."""
    given = {"system": "us", "size": 7}
    found = register.compute("ring-size", given, systems).outputs
    assert found["inside-diameter"] == pytest.approx(17.32, abs=0.01)
    assert found["circumference"] == pytest.approx(54.42, abs=0.02)


def test_british_and_japanese_rules(systems: dict[str, Any]) -> None:
    """Rowlett, dictionary of units: size C is 40 mm around; Japanese n is (n + 38)/3 mm across."""
    assert math.pi * inside(systems, "uk", "C") == pytest.approx(40)
    for size in (1, 10, 20):
        assert inside(systems, "jp", size) == pytest.approx((size + 38) / 3, abs=0.02)


@pytest.mark.parametrize(
    ("system", "same"),
    [
        ("uk", ("L 1/2", "L1/2", "L½", "l 1/2", " L  1/2 ")),
        ("us", ("7 1/4", "7.25", "7¼", 7.25)),
        ("iso", ("54", 54, "54.0", 54.0)),
    ],
)
def test_ways_to_write_a_size(
    system: str, same: tuple[object, ...], systems: dict[str, Any]
) -> None:
    found = {round(inside(systems, system, size), 9) for size in same}
    assert len(found) == 1


@pytest.mark.parametrize(
    ("system", "size", "said"),
    [
        ("iso", "big", "is no size of this system; write 54"),
        ("iso", "540", "is no size of a finger"),
        ("us", "-3", "is no size of this system; write 54 or 7"),
        ("uk", "", "write L or L 1/2"),
        ("us", "L", "is no size of this system"),
        ("uk", "12", "is no size of this system"),
        ("eu", "54", "system is iso, us, uk or jp"),
    ],
)
def test_refused(system: str, size: str, said: str, systems: dict[str, Any]) -> None:
    with pytest.raises(ValueError, match=said):
        inside(systems, system, size)


def test_a_system_with_sizes_alone() -> None:
    known = {"ring-sizes": {"us": {"sizes": {"7": 17.3}, "rule": None, "letters": False}}}
    assert inside(known, "us", "7") == 17.3
    with pytest.raises(ValueError, match="is no size of this system"):
        inside(known, "us", "8")
    with pytest.raises(ValueError, match="no ring sizes of jp"):
        inside(known, "jp", "8")


def test_blank_by_size_and_by_diameter(systems: dict[str, Any]) -> None:
    """ISO 54 of 1.5 mm: 54 mm around the inside and pi times the thickness more: geometry."""
    given = {"system": "iso", "size": "54", "thickness": 1.5}
    by_size = register.compute("ring-blank", given, systems)
    assert by_size.outputs["length"] == pytest.approx(54 + 1.5 * math.pi)
    formula = register.FORMULAS["ring-blank"]
    assert "mean diameter" in dict(formula.said(by_size))["formula"]
    thick = register.compute("ring-blank", {"inside-diameter": 16, "thickness": 5}, systems)
    assert "moves inward" in dict(formula.said(thick))["thick"]


@given(st.floats(10, 30), st.floats(0.2, 6))
def test_a_blank_lies_between_the_inner_and_the_outer_edge(size: float, thick: float) -> None:
    length = rings.blank_length(size, thick)
    assert math.pi * size < length < math.pi * (size + 2 * thick)
