"""Sections: the text in which they are typed, their area, and what is refused."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from temperbook.metal.sections import Section, parse


@pytest.mark.parametrize(
    ("text", "section", "area"),
    [
        ("round 1.0", Section("round", 1, 1), math.pi / 4),
        ("round 2", Section("round", 2, 2), math.pi),
        ("square 6", Section("square", 6, 6), 36),
        ("flat 20x1.5", Section("flat", 20, 1.5), 30),
        (" flat 20 x 1.5 ", Section("flat", 20, 1.5), 30),
    ],
)
def test_area(text: str, section: Section, area: float) -> None:
    """Areas of a circle, a square and a rectangle. Source: geometry."""
    assert parse(text) == section
    assert parse(text).area == pytest.approx(area, rel=1e-12)


@pytest.mark.parametrize(
    "text",
    ["", "round", "6", "round -1", "round 0", "square 0.0", "flat 20", "flat 20x0", "flat 0x3",
     "flat 20x1.5x3", "oval 3", "round 1,5", "round 1 mm", "ROUND 1", "round 1e3", "round nan"],
)  # fmt: skip
def test_refused(text: str) -> None:
    with pytest.raises(ValueError, match=r"is no section|has a size of zero"):
        parse(text)


@given(
    shape=st.sampled_from(["round", "square", "flat"]),
    width=st.decimals("0.001", 900, places=3).map(float),
    thickness=st.decimals("0.001", 900, places=3).map(float),
)
def test_text_comes_back(shape: str, width: float, thickness: float) -> None:
    """A section printed and typed again is the same section."""
    section = (
        Section("flat", width, thickness) if shape == "flat" else parse(f"{shape} {width:.3f}")
    )
    assert parse(section.text) == section
    assert section.area > 0
