"""Every picture as markup: well formed, told in words, nothing that the content policy refuses."""

from __future__ import annotations

import re
from xml.etree import ElementTree

import pytest

from temperbook.derive.handbook import Handbook
from temperbook.drawing import picture_facts
from temperbook.drawing.pictures import PICTURES, draw
from temperbook.drawing.shapes import Glow, Line, Picture, Text
from temperbook.outputs import svg

NS = "{http://www.w3.org/2000/svg}"
SHAPES = {
    "line",
    "path",
    "rect",
    "circle",
    "polygon",
    "polyline",
    "text",
    "defs",
    "linearGradient",
    "stop",
}


@pytest.fixture(scope="module", params=sorted(PICTURES))
def drawn(request: pytest.FixtureRequest, handbook: Handbook) -> Picture:
    return draw(request.param, picture_facts.of(handbook))


def test_a_picture_is_well_formed_and_told_in_words(drawn: Picture) -> None:
    root = ElementTree.fromstring(svg.picture(drawn, "p1"))
    assert root.tag == f"{NS}svg"
    assert root.get("role") == "img"
    assert root.get("aria-label") == drawn.alt
    assert len(drawn.alt.split()) >= 8, drawn.alt
    _, _, width, height = (float(n) for n in root.get("viewBox", "").split())
    assert (width, height) == pytest.approx((drawn.width, drawn.height), abs=0.01)
    assert [t.text for t in root.iter(f"{NS}text")] == [
        s.text for s in drawn.shapes if isinstance(s, Text)
    ]


def test_nothing_in_a_picture_is_refused_by_the_policy(drawn: Picture) -> None:
    root = ElementTree.fromstring(svg.picture(drawn, "p1"))
    for element in root.iter():
        assert element.tag.removeprefix(NS) in SHAPES | {"svg"}
        assert "style" not in element.attrib
        assert not [name for name in element.attrib if name.startswith("on") or "href" in name]


def test_colours_are_roles_of_the_palette_or_heat(drawn: Picture) -> None:
    root = ElementTree.fromstring(svg.picture(drawn, "p1"))
    roles = "ink|ash|hairline|paper|ember|verdigris"
    for element in root.iter():
        for name in ("fill", "stroke", "stop-color"):
            value = element.get(name, "none")
            allowed = rf"none|#[0-9a-f]{{6}}|var\(--({roles})\)|url\(#p1-\d+\)"
            assert re.fullmatch(allowed, value), value


def test_two_pictures_on_a_page_share_no_id(drawn: Picture) -> None:
    one, other = (set(re.findall(r' id="([^"]+)"', svg.picture(drawn, i))) for i in ("d1", "d2"))
    assert not one & other
    assert len(one) == sum(isinstance(s, Glow) for s in drawn.shapes)
    called = set(re.findall(r"url\(#([^)]+)\)", svg.picture(drawn, "d1")))
    assert called == one


def test_words_of_a_caller_stand_for_the_picture_s_own() -> None:
    picture = Picture(1, 1, (Line(0, 0, 1, 1),), "its own")
    assert 'aria-label="another"' in svg.picture(picture, "p", "another")
    assert 'aria-label="its own"' in svg.picture(picture, "p")


def test_text_is_never_markup() -> None:
    hostile = "<script>alert(1)</script> & \"x\" onload='y'"
    made = svg.picture(Picture(9, 9, (Text(1, 1, hostile, 2),), hostile))
    root = ElementTree.fromstring(made)
    assert root.get("aria-label") == hostile
    assert next(root.iter(f"{NS}text")).text == hostile
    assert not list(root.iter(f"{NS}script"))
    assert "<script" not in made
