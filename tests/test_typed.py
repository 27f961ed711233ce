"""What people type: numbers with units and gauges, sections, lists."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from temperbook.metal import sections
from temperbook.metal.register.formula import Input
from temperbook.views import typed

GAUGES = {"awg": {"18": 1.024, "2/0": 9.266}, "swg": {"20": 0.9144}}


@pytest.mark.parametrize(
    ("text", "unit", "value"),
    [
        ("5", "mm", 5.0),
        ("-3.5", "degC", -3.5),
        (".5", "mm", 0.5),
        ("2 in", "mm", 50.8),
        ("0.04in", "mm", 1.016),
        ("25um", "mm", 0.025),
        ("1.2m", "mm", 1200.0),
        ("1400degF", "degC", 760.0),
        ("1000K", "degC", 726.85),
        ("1ozt", "g", 31.1034768),
        ("2oz", "g", 62.2069536),
        ("1dwt", "g", 1.55517384),
        ("0.5kg", "g", 500.0),
        ("10ksi", "MPa", 68.94757293168361),
        ("1000psi", "MPa", 6.894757293168361),
        ("2h", "min", 120.0),
        ("90s", "min", 1.5),
        ("60%", "percent", 60.0),
        ("15deg", "degrees", 15.0),
        ("18awg", "mm", 1.024),
        ("20 SWG", "mm", 0.9144),
        ("00awg", "mm", 9.266),
        ("2/0awg", "mm", 9.266),
        ("area", "", "area"),
        ("1.2.3", "mm", "1.2.3"),
    ],
)
def test_numbers(text: str, unit: str, value: float | str) -> None:
    """Sources: the definitions of inch, pound, troy ounce and degree."""
    found = typed.value(text, unit, GAUGES)
    assert found == (pytest.approx(value) if isinstance(value, float) else value)


@pytest.mark.parametrize(
    ("text", "section"),
    [
        ("round 1.0", "round 1"),
        ("round 0.04in", "round 1.016"),
        ("square 6 mm", "square 6"),
        ("round 18awg", "round 1.024"),
        ("flat 20x1.5", "flat 20x1.5"),
        ("flat 1in x 0.05in", "flat 25.4x1.27"),
        ("flat 1 x 0.05in", "flat 25.4x1.27"),
        ("flat 20 × 18awg", "flat 20x1.024"),
        ("round .5", "round 0.5"),
        ("hexagon 3", "hexagon 3"),
        ("round thick", "round thick"),
        ("flat 3", "flat 3"),
    ],
)
def test_sections(text: str, section: str) -> None:
    assert typed.section(text, GAUGES) == section


@given(st.floats(0.001, 500), st.sampled_from(["mm", "in", "um", "cm"]))
def test_a_typed_section_is_one(size: float, unit: str) -> None:
    text = typed.section(f"round {size:.6f}{unit}")
    factor = {"mm": 1, "in": 25.4, "um": 0.001, "cm": 10}[unit]
    assert sections.parse(text).thickness == pytest.approx(size * factor, abs=2e-6 * factor + 1e-9)


@pytest.mark.parametrize(
    ("text", "unit", "said"),
    [
        ("1furlong", "mm", "unknown unit"),
        ("1degC", "mm", "is no mm"),
        ("18awg", "degC", "`18awg` is no degC"),
        ("99awg", "mm", "no number `99`"),
        ("18bwg", "mm", "no table of bwg"),
        ("0.1mm", "", "is no plain number"),
        ("1e400", "mm", "unknown unit"),
    ],
)
def test_refused(text: str, unit: str, said: str) -> None:
    with pytest.raises(ValueError, match=said):
        typed.value(text, unit, GAUGES)


def test_gauges_are_asked_for_only_where_one_is_typed() -> None:
    asked = []

    def gauges() -> dict[str, dict[str, float]]:
        asked.append(1)
        return GAUGES

    assert typed.section("round 1.0", gauges) == "round 1"
    assert not asked
    assert typed.section("round 18awg", gauges) == "round 1.024"
    assert asked


def test_by_the_kind_of_the_input() -> None:
    assert typed.read("1.0, 18awg", Input("list", "", "mm"), GAUGES) == [1.0, 1.024]
    assert typed.read("1.0, b", Input("list", "", "mm"), GAUGES) == "1.0, b"
    assert typed.read("18", Input("name", ""), GAUGES) == "18"
    assert typed.read("18awg", Input("number", "", "mm"), GAUGES) == 1.024
    assert typed.read("round 1in", Input("section", ""), GAUGES) == "round 25.4"
    assert typed.read("Ag 100", Input("composition", ""), GAUGES) == "Ag 100"
