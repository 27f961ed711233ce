"""What a printed value says, and what is refused."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from temperbook.records.printed import Printed, parse


@pytest.mark.parametrize(
    ("text", "low", "high", "about"),
    [
        ("779.1", 779.1, 779.1, False),
        (" 50 ", 50, 50, False),
        ("600-650", 600, 650, False),
        ("600–650", 600, 650, False),
        ("600 - 650", 600, 650, False),
        ("<=0.004", None, 0.004, False),
        ("< 0.004", None, 0.004, False),
        (">=110", 110, None, False),
        (">110", 110, None, False),
        ("~760", 760, 760, True),
        ("~600-650", 600, 650, True),
        ("-40", -40, -40, False),
        ("-40-20", -40, 20, False),
        ("999.9+", 999.9, 999.9, False),
    ],
)
def test_forms(text: str, low: float | None, high: float | None, about: bool) -> None:
    found = parse(text)
    assert found == Printed(low, high, about)
    assert found is not None
    assert found.ends == (low, high)


@pytest.mark.parametrize(
    "text",
    ["", " ", "red", "600 to 650", "600/650", "1,150", "1 150", "1e3", "½", ".5", "5.", "600-", "-",
     "=5", "<=", "600 degC", "600-650-700", "≈760", "<=5<=6", "inf", "nan"],
)  # fmt: skip
def test_refused(text: str) -> None:
    assert parse(text) is None


@given(st.decimals(0, 5000, places=3), st.decimals(0, 5000, places=3))
def test_a_range_keeps_its_ends(low: object, high: object) -> None:
    assert parse(f"{low}-{high}") == Printed(float(str(low)), float(str(high)))


@given(st.text(max_size=12))
def test_any_text_is_a_number_or_none(text: str) -> None:
    found = parse(text)
    assert found is None or found.low is not None or found.high is not None
