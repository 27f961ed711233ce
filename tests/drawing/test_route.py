"""Drawn routes, the handbook's own: by the rules of every picture, to scale, true to the plan."""

from __future__ import annotations

import math

import pytest
from tests.drawing.test_pictures import ROLES, apart, crosses, shape_box, strokes, text_box, texts

from temperbook.derive.handbook import Handbook
from temperbook.drawing import lettering, route, route_sections
from temperbook.drawing.draughting import WIDE
from temperbook.drawing.shapes import Circle, Line, Picture, Polygon, Rect
from temperbook.metal import sections
from temperbook.outputs import svg
from temperbook.paths import project
from temperbook.views import route as view
from temperbook.views.route import RouteShown

ROUTES = sorted(path.stem for path in (project().data / "routes").glob("*.yaml"))
GREY = "#808080"


@pytest.fixture(params=ROUTES)
def said(request: pytest.FixtureRequest, handbook: Handbook) -> RouteShown:
    return view.shown(view.of(handbook)[request.param], handbook)


@pytest.fixture
def drawn(said: RouteShown, handbook: Handbook) -> Picture:
    return route.draw(said, handbook.glow.colour)


def test_all_shapes_lie_inside_the_picture(drawn: Picture) -> None:
    assert drawn.width == WIDE
    for shape in drawn.shapes:
        left, top, right, bottom = shape_box(shape)
        assert left >= 0, shape
        assert top >= 0, shape
        assert right <= drawn.width, shape
        assert bottom <= drawn.height, shape


def test_texts_keep_clear_of_each_other_and_of_lines(drawn: Picture) -> None:
    found = [(text, text_box(text)) for text in texts(drawn)]
    for n, (text, box) in enumerate(found):
        for other, its_box in found[n + 1 :]:
            assert apart(box, its_box), (text.text, other.text)
        core = (box[0] + 0.05, box[1] + 0.2, box[2] - 0.05, box[3] - 0.05)
        for shape in drawn.shapes:
            assert not any(crosses(line, core) for line in strokes(shape)), (text.text, shape)


def test_letters_can_be_read_on_a_phone(drawn: Picture) -> None:
    for text in texts(drawn):
        assert text.cap >= 0.0199 * WIDE, text.text
        assert not lettering.lacks(text.text, text.weight), text.text


def test_only_heat_has_heat_colours(drawn: Picture, said: RouteShown, handbook: Handbook) -> None:
    hot = [s.fill for s in drawn.shapes if isinstance(s, Circle) and s.fill.startswith("#")]
    anneals = sum(run.then == "anneal" for run in said.runs)
    assert said.anneal is not None
    if said.anneal.low is None or said.anneal.high is None:
        assert not hot
    else:
        middle = (said.anneal.low + said.anneal.high) / 2
        assert hot == [handbook.glow.colour(middle)] * anneals
    for shape in drawn.shapes:
        for name in ("role", "fill", "stroke"):
            word = getattr(shape, name, "")
            assert word in ROLES or word in hot, shape


def test_lines_are_of_one_family(drawn: Picture) -> None:
    widths = {shape.width for shape in drawn.shapes if isinstance(shape, Line | Polygon)}
    assert min(widths) >= 0.2
    assert max(widths) <= 0.8


def test_each_run_ends_at_its_work_and_below_its_ceiling(drawn: Picture, said: RouteShown) -> None:
    bars = [s for s in drawn.shapes if isinstance(s, Rect) and s.x == route.X0 and s.fill]
    ceilings = [s for s in drawn.shapes if isinstance(s, Line) and s.width == 0.8]
    assert len(bars) == len(ceilings) == len(said.runs)
    most = max(run.ceiling_strain or 0 for run in said.runs) * route.ROOM
    for bar, line, run in zip(bars, ceilings, said.runs, strict=True):
        done = math.log(run.start.area / run.end.area)
        if run.end.shape == "flat":
            done = max(done, math.log(run.start.thickness / run.end.thickness))
        assert bar.w / (route.X1 - route.X0) * most == pytest.approx(done, abs=1e-6)
        assert bar.x + bar.w <= line.x1 + 1e-9


def test_the_last_section_is_to_the_scale_of_the_first(drawn: Picture, said: RouteShown) -> None:
    times = route_sections.scale([said.runs[0].start, *(run.end for run in said.runs)])
    first, last = said.runs[0].start, said.runs[-1].end
    tall = [
        bottom - top - shape.width
        for shape in drawn.shapes
        if isinstance(shape, Rect | Polygon | Circle) and shape.fill == "hairline"
        for left, top, right, bottom in [shape_box(shape)]
        if right < route.X0 and shape.stroke
    ]
    assert tall[0] == pytest.approx(first.thickness * times)
    assert tall[-1] == pytest.approx(last.thickness * times)
    assert max(tall) <= route_sections.TALL * (1 + 1e-9)


def test_the_words_of_the_picture_tell_every_run(drawn: Picture, said: RouteShown) -> None:
    for run in said.runs:
        for words in (run.before, run.after, *run.reductions):
            assert words.replace("\u00a0", " ") in drawn.alt
    assert drawn.alt.count("then anneal") == sum(run.then == "anneal" for run in said.runs)
    assert drawn.alt.endswith(".")
    assert "  " not in drawn.alt


def test_hardness_rises_and_is_not_drawn_where_it_is_not_known(
    handbook: Handbook,
) -> None:
    said = view.shown(view.of(handbook)["sterling-sheet"], handbook)
    assert not said.runs[0].hardness  # from cast metal
    for run in said.runs[1:]:
        lows = [low for _, low, _ in run.hardness]
        assert lows == sorted(lows)
        assert len(run.hardness) == len(run.passes) + 1
    wire = route.draw(view.shown(view.of(handbook)["copper-wire"], handbook), lambda t: GREY)
    assert not [t for t in texts(wire) if "hardness" in t.text]


def test_drawing_twice_gives_the_same_bytes(said: RouteShown) -> None:
    one, two = (svg.picture(route.draw(said, lambda t: GREY)) for _ in range(2))
    assert one == two
    assert len(one) < 45_000


@pytest.mark.parametrize("text", ["flat 40x3.9", "flat 12x5", "square 6", "round 1.2"])
def test_a_section_is_as_high_as_it_is_thick(text: str) -> None:
    of = sections.parse(text)
    times = route_sections.scale([of])
    (shape,) = route_sections.shown(of, None, (50.0, 50.0), times, 35.0)
    left, top, right, bottom = shape_box(shape)
    line = shape.width  # type: ignore[union-attr]
    assert bottom - top - line == pytest.approx(of.thickness * times)
    assert right - left - line <= route_sections.ACROSS * 1.05
    whole = right - left - line == pytest.approx(of.width * times)
    assert whole == (text != "flat 40x3.9"), "a wide flat is torn off"
