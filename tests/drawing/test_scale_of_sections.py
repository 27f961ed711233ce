"""Sections and strips are to scale, and their percentages follow from what is drawn."""

from __future__ import annotations

import math

import pytest

from temperbook.drawing import rolls, sections
from temperbook.drawing.shapes import Circle, Picture, Polygon, Rect, Text


def said(picture: Picture) -> list[str]:
    return [shape.text for shape in picture.shapes if isinstance(shape, Text)]


def metal(picture: Picture) -> list[Rect | Circle]:
    return [s for s in picture.shapes if isinstance(s, Rect | Circle) and s.fill == "hairline"]


def area(shape: Rect | Circle) -> float:
    return shape.w * shape.h if isinstance(shape, Rect) else math.pi * shape.r**2


def test_the_sheet_keeps_its_width_and_volume_and_halves_its_thickness() -> None:
    end, side, end_after, side_after = metal(sections.reduction_sheet())
    assert isinstance(end, Rect)
    assert isinstance(side, Rect)
    assert isinstance(end_after, Rect)
    assert isinstance(side_after, Rect)
    assert end_after.w == end.w
    assert end_after.h == side_after.h == pytest.approx(end.h / 2)
    assert end.h == side.h
    assert end_after.w * end_after.h * side_after.w == pytest.approx(end.w * end.h * side.w)
    assert "50 % of the thickness gone = 50 % of the area gone" in said(sections.reduction_sheet())


def test_the_wires_are_to_scale_and_bars_and_words_agree_with_them() -> None:
    picture = sections.reduction_wire()
    thick, thin = (s for s in metal(picture) if isinstance(s, Circle))
    assert thin.r / thick.r == pytest.approx(0.4 / 1.0)
    by_diameter, by_area = (s for s in metal(picture) if isinstance(s, Rect))
    whole = (
        max(x for s in picture.shapes if isinstance(s, Polygon) for x, _ in s.points) - by_area.x
    )
    assert by_diameter.w / whole == pytest.approx(thin.r / thick.r)
    assert by_area.w / whole == pytest.approx((thin.r / thick.r) ** 2)
    assert "60 % of the diameter is gone" in said(picture)
    assert "84 % of the area is gone" in said(picture)


def test_the_first_lesson_of_the_handbook_is_what_the_wire_shows() -> None:
    assert "fit into it 6.2 times" in sections.reduction_wire().alt


def test_half_of_something_leaves_what_the_picture_says() -> None:
    picture = sections.same_percent()
    before = metal(picture)[0::2]
    after = metal(picture)[1::2]
    for shape in before:
        assert area(shape) == pytest.approx(area(before[0]))
    left = [f"{100 * area(b) / area(a):.0f} % is left" for a, b in zip(before, after, strict=True)]
    assert left == ["50 % is left", "25 % is left", "50 % is left"]
    assert [text for text in said(picture) if text.endswith("left")] == left


def test_floor_stands_before_ceiling_and_nothing_is_hatched_before_it() -> None:
    picture = sections.floor_and_ceiling()
    at = {s.text: s.x for s in picture.shapes if isinstance(s, Text)}
    assert at["too little"] < at["floor"] < at["sound"] < at["ceiling"] < at["cracks"]
    assert all(not text.strip("0") or not any(c.isdigit() for c in text) for text in at)


def test_the_firm_pass_reaches_the_middle_and_the_light_one_does_not() -> None:
    light, firm = rolls.Pass(0, 0, 6.4, False), rolls.Pass(0, 0, 4.6, True)
    # work reaches the middle where the arc of contact is longer than the mean thickness
    assert firm.contact > rolls.BEFORE + firm.half
    assert light.contact < rolls.BEFORE + light.half
    assert firm.contact / light.contact == pytest.approx(2, abs=0.1)
    assert light.surface(-light.contact) == pytest.approx(rolls.BEFORE)
    assert light.surface(0) == 6.4
    assert light.lag(0.0) > light.lag(1.0) == 0.0
