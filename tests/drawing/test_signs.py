"""The signs: a frame that tells the kind, a symbol inside the sign, no colour that must be seen."""

from __future__ import annotations

import pytest
from tests.drawing.test_pictures import shape_box

from temperbook.drawing.pen import capsule, drawn, filled, outline, placed
from temperbook.drawing.shapes import Circle, Line, Picture, Polygon, Rect, Shape, Text
from temperbook.drawing.signs import SIGNS
from temperbook.outputs import svg
from temperbook.records.load import Library

SIDE = 40.0
ROLES = {"", "ink", "paper"}
# Kind of an id -> what its alternative text must say of the frame (ISO 3864-1 and GHS: the shape
# tells the kind).
KINDS = {
    "iso-w": "triangle",
    "iso-m": "disc",
    "iso-p": "bar across",
    "iso-e": "square",
    "ghs": "point",
}


def kind(name: str) -> str:
    return next(start for start in KINDS if name.startswith(start))


def frame(picture: Picture) -> Shape:
    return picture.shapes[0]


@pytest.mark.parametrize("name", SIGNS)
def test_a_sign_is_inside_its_square_and_of_two_tones(name: str) -> None:
    picture = SIGNS[name]()
    assert (picture.width, picture.height) == (SIDE, SIDE)
    for shape in picture.shapes:
        left, top, right, bottom = shape_box(shape)
        assert min(left, top) >= 0, shape
        assert max(right, bottom) <= SIDE, shape
        assert not isinstance(shape, Text)
        for attribute in ("role", "fill", "stroke"):
            assert getattr(shape, attribute, "") in ROLES, shape


@pytest.mark.parametrize("name", SIGNS)
def test_the_alternative_text_names_number_kind_and_drawing(name: str) -> None:
    alt = SIGNS[name]().alt
    number = name.removeprefix("iso-").upper()
    assert f"({number})" in alt
    assert KINDS[kind(name)] in alt
    assert alt.endswith(".")
    assert len(alt.split()) >= 12


@pytest.mark.parametrize("name", SIGNS)
def test_the_frame_has_the_shape_of_its_kind(name: str) -> None:
    picture = SIGNS[name]()
    first = frame(picture)
    if kind(name) == "iso-w":
        assert isinstance(first, Polygon)
        wide = [x for x, y in first.points if y > 30]
        narrow = [x for x, y in first.points if y < 6]
        assert max(wide) - min(wide) > 5 * (max(narrow) - min(narrow))
    elif kind(name) == "iso-m":
        assert isinstance(first, Circle)
        assert first.fill == "ink"
        assert first.r > 18
    elif kind(name) == "iso-p":
        ring = [s for s in picture.shapes if isinstance(s, Circle) and s.stroke == "ink"]
        bars = [s for s in picture.shapes if isinstance(s, Line) and s.width > 3]
        assert any(s.r > 16 and s.width > 2 for s in ring)
        assert bars
        assert all(bar.x1 < bar.x2 and bar.y1 < bar.y2 for bar in bars)
    elif kind(name) == "iso-e":
        assert isinstance(first, Rect)
        assert first.fill == "ink"
        assert first.w == first.h > 36
    else:
        assert isinstance(first, Polygon)
        assert len(first.points) == 4
        assert sorted(x for x, _ in first.points)[1:3] == [20, 20]


def test_no_two_signs_are_drawn_alike() -> None:
    drawings = {name: svg.picture(make(), alt="x") for name, make in SIGNS.items()}
    assert len(set(drawings.values())) == len(drawings)
    assert all(len(text) < 20_000 for text in drawings.values())


def test_a_curve_of_the_pen_passes_where_bezier_says() -> None:
    # de Casteljau by hand: the middle of a cubic is (p0 + 3 p1 + 3 p2 + p3) / 8
    points = outline("M 0 0 C 0 8 8 8 8 0")
    assert points[0] == (0, 0)
    assert points[-1] == pytest.approx((8, 0))
    assert points[5] == pytest.approx((4, 6))
    assert outline("M 0 0 Q 4 8 8 0")[5] == pytest.approx((4, 4))


@pytest.mark.parametrize("written", ["M 0", "A 1 2", "M 0 0 C 1 1 2 2"])
def test_the_pen_refuses_what_it_cannot_draw(written: str) -> None:
    with pytest.raises(ValueError, match="no stroke"):
        outline(written)


def test_a_shape_is_scaled_turned_mirrored_and_moved() -> None:
    bar = filled("M 1 0 L 2 0 L 2 1")
    (moved,) = placed([bar], 10, 20, 2.0, turn=90)
    assert isinstance(moved, Polygon)
    assert moved.points[0] == pytest.approx((10, 22))
    (mirrored,) = placed([bar], 0, 0, mirror=True)
    assert isinstance(mirrored, Polygon)
    assert mirrored.points[0] == pytest.approx((-1, 0))
    (line,) = placed([drawn("M 0 0 L 1 0", 0.4)], 0, 0, 2.0)
    assert isinstance(line, Polygon)
    assert line.width == pytest.approx(0.8)
    with pytest.raises(ValueError, match="cannot be turned"):
        placed([Text(0, 0, "a", 2.0)], 0, 0)


def test_a_capsule_reaches_its_radius_past_both_ends() -> None:
    xs = [x for x, _ in capsule(0, 0, 10, 0, 2).points]
    assert min(xs) == pytest.approx(-2)
    assert max(xs) == pytest.approx(12)


def test_every_sign_of_the_vocabulary_is_drawn(library: Library) -> None:
    assert set(library.vocabulary.words["sign"]) <= set(SIGNS)
