"""Rules for every picture: all inside, texts free of each other and of lines, told in words."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from functools import cache

import pytest

from temperbook.derive import glow
from temperbook.derive.handbook import derive
from temperbook.drawing import lettering, picture_facts
from temperbook.drawing.faults import FAULTS
from temperbook.drawing.pictures import PICTURES, PictureFacts, draw
from temperbook.drawing.shapes import Circle, Glow, Line, Picture, Polygon, Rect, Shape, Text
from temperbook.drawing.steps import STEPS
from temperbook.outputs import svg
from temperbook.paths import project
from temperbook.records.load import Library, load

NAMES = (
    *STEPS,
    "grain-cast", "grain-worked", "grain-annealed", "grain-overheated", "grain-row",
    "anneal-time-temperature", "reduction-sheet", "reduction-wire", "same-percent", "heat-scale",
    "heat-scale-tall", "bright-and-black", "ingot-section", "roll-gap", "forging-order",
    "drawplate-section", "quench-choices", "floor-and-ceiling", *FAULTS,
)  # fmt: skip
ROLES = {"", "ink", "ash", "hairline", "paper", "ember", "verdigris"}
HOT = {"heat-scale", "heat-scale-tall", "bright-and-black", "quench-choices"}
HATCHED = {"floor-and-ceiling", "anneal-time-temperature"}

# Made up, as awkward as real tables: long names close together, open ends, both ends of the scale.
OBSERVERS = (
    ("First, by ranges", (("black red", 426.0, 593.0), ("very dark red", 594.0, 704.0),
     ("cherry red", 815.0, 870.0), ("light cherry red", 871.0, 981.0), ("orange", 982.0, 1092.0),
     ("yellow", 1093.0, 1258.0), ("white", 1315.0, 1315.0))),
    ("Second, by single heats", (("lowest red visible in darkness", 470.0, 470.0),
     ("lowest red visible in daylight", 475.0, 475.0), ("cherry red", 700.0, 700.0))),
    ("Third", (("red heat visible in the dark", 400.0, 400.0),
     ("red heat visible in the twilight", 474.0, 474.0),
     ("red heat visible in sunlight", 581.0, 581.0), ("deep orange", 1100.0, 1100.0))),
)  # fmt: skip

Box = tuple[float, float, float, float]


@cache
def facts() -> PictureFacts:
    return PictureFacts(glow.scale(project()).colour, OBSERVERS)


@cache
def real_facts() -> PictureFacts:
    library, _ = load(project())
    return picture_facts.of(derive(library))


@cache
def drawn(name: str) -> Picture:
    return draw(name, facts())


# The pictures that data lay out are held to the rules with the handbook's own tables as well.
CASES = [pytest.param(drawn, name, id=name) for name in NAMES] + [
    pytest.param(lambda name: draw(name, real_facts()), name, id=f"{name}-real")
    for name in ("heat-scale", "heat-scale-tall")
]


def texts(picture: Picture) -> list[Text]:
    return [shape for shape in picture.shapes if isinstance(shape, Text)]


def text_box(text: Text) -> Box:
    """Left, top, right and bottom [mm], with what rises above capitals and hangs below the line."""
    wide = lettering.width(text.text, text.cap, text.weight)
    left = text.x - {"start": 0.0, "middle": wide / 2, "end": wide}[text.anchor]
    hangs = 0.3 if set(text.text) & set("gjpqy,;()") else 0.0
    return left, text.y - 1.07 * text.cap, left + wide, text.y + hangs * text.cap


def shape_box(shape: Shape) -> Box:
    if isinstance(shape, Text):
        return text_box(shape)
    if isinstance(shape, Line):
        half = shape.width / 2
        xs, ys = (shape.x1, shape.x2), (shape.y1, shape.y2)
    elif isinstance(shape, Polygon):
        half = shape.width / 2 if shape.stroke else 0.0
        xs, ys = tuple(x for x, _ in shape.points), tuple(y for _, y in shape.points)  # type: ignore[assignment]
    elif isinstance(shape, Circle):
        half = shape.r + (shape.width / 2 if shape.stroke else 0.0)
        xs, ys = (shape.x, shape.x), (shape.y, shape.y)
    else:
        half = shape.width / 2 if shape.stroke else 0.0
        xs, ys = (shape.x, shape.x + shape.w), (shape.y, shape.y + shape.h)
    return min(xs) - half, min(ys) - half, max(xs) + half, max(ys) + half


def strokes(shape: Shape) -> Iterator[tuple[float, float, float, float]]:
    """The straight pieces that a shape's outline draws [mm]."""
    if isinstance(shape, Line):
        yield shape.x1, shape.y1, shape.x2, shape.y2
        return
    if isinstance(shape, Polygon):
        points, closed = shape.points, shape.closed
    elif isinstance(shape, Rect | Glow):
        x, y, w, h = shape.x, shape.y, shape.w, shape.h
        points, closed = ((x, y), (x + w, y), (x + w, y + h), (x, y + h)), True
    else:
        return
    if shape.stroke:
        for (x1, y1), (x2, y2) in zip(points, points[1:] + points[:1] * closed, strict=False):
            yield x1, y1, x2, y2


def crosses(line: tuple[float, float, float, float], box: Box) -> bool:
    """Whether a straight piece enters a box (Liang and Barsky)."""
    x1, y1, x2, y2 = line
    first, last = 0.0, 1.0
    for step, low, high in (
        (x2 - x1, box[0] - x1, box[2] - x1),
        (y2 - y1, box[1] - y1, box[3] - y1),
    ):
        if abs(step) < 1e-12:
            if low > 0 or high < 0:
                return False
            continue
        ends = sorted((low / step, high / step))
        first, last = max(first, ends[0]), min(last, ends[1])
    return first < last


def apart(one: Box, other: Box) -> bool:
    return one[2] <= other[0] or other[2] <= one[0] or one[3] <= other[1] or other[3] <= one[1]


def test_the_rules_below_see_what_they_are_for() -> None:
    box = text_box(Text(10, 10, "cold", 2.0))
    assert not apart(box, text_box(Text(12, 11, "warm", 2.0)))
    assert apart(box, text_box(Text(10, 14, "warm", 2.0)))
    assert any(crosses(line, box) for line in strokes(Line(0, 0, 20, 18)))
    assert any(crosses(line, box) for line in strokes(Rect(11, 0, 90, 20, "", "ink")))
    assert not any(crosses(line, box) for line in strokes(Line(0, 11, 20, 11)))


def test_the_registry_holds_exactly_the_named_pictures() -> None:
    assert tuple(sorted(PICTURES)) == tuple(sorted(NAMES))
    with pytest.raises(KeyError):
        draw("grain-melted", facts())


@pytest.mark.parametrize(("make", "name"), CASES)
def test_all_shapes_lie_inside_the_picture(make: Callable[[str], Picture], name: str) -> None:
    picture = make(name)
    for shape in picture.shapes:
        left, top, right, bottom = shape_box(shape)
        assert left >= 0, shape
        assert top >= 0, shape
        assert right <= picture.width, shape
        assert bottom <= picture.height, shape


@pytest.mark.parametrize(("make", "name"), CASES)
def test_no_two_texts_overlap(make: Callable[[str], Picture], name: str) -> None:
    found = [(text, text_box(text)) for text in texts(make(name))]
    for n, (text, box) in enumerate(found):
        for other, its_box in found[n + 1 :]:
            assert apart(box, its_box), (text.text, other.text)


@pytest.mark.parametrize(("make", "name"), CASES)
def test_no_line_runs_through_a_text(make: Callable[[str], Picture], name: str) -> None:
    picture = make(name)
    for text in texts(picture):
        left, top, right, bottom = text_box(text)
        core = (left + 0.05, top + 0.2, right - 0.05, bottom - 0.05)
        for shape in picture.shapes:
            assert not any(crosses(line, core) for line in strokes(shape)), (text.text, shape)


@pytest.mark.parametrize(("make", "name"), CASES)
def test_every_text_is_readable_on_paper_and_on_a_phone(
    make: Callable[[str], Picture], name: str
) -> None:
    picture = make(name)
    least = 2.2 if name == "heat-scale" else max(2.0, 0.0199 * picture.width)
    for text in texts(picture):
        assert text.cap >= least, text.text
        assert not lettering.lacks(text.text, text.weight)


@pytest.mark.parametrize("name", NAMES)
def test_the_alternative_text_tells_the_picture_in_sentences(name: str) -> None:
    alt = drawn(name).alt
    assert alt.endswith(".")
    assert len(alt.split()) >= 25
    assert "  " not in alt
    assert "hatched" in alt or name not in HATCHED


@pytest.mark.parametrize("name", NAMES)
def test_only_heat_has_heat_colours_and_only_roles_colour_the_rest(name: str) -> None:
    used = set()
    for shape in drawn(name).shapes:
        if isinstance(shape, Glow):
            used |= {colour for _, colour in shape.stops}
        for attribute in ("role", "fill", "stroke"):
            used.add(getattr(shape, attribute, ""))
    hot = {colour for colour in used if colour.startswith("#")}
    assert used - hot <= ROLES
    assert bool(hot) == (name in HOT)


@pytest.mark.parametrize("name", NAMES)
def test_lines_are_of_one_family(name: str) -> None:
    widths = {shape.width for shape in drawn(name).shapes if isinstance(shape, Line | Polygon)}
    assert min(widths) >= 0.2
    assert max(widths) <= 0.8


@pytest.mark.parametrize("name", NAMES)
def test_drawing_twice_gives_the_same_bytes(name: str) -> None:
    assert svg.picture(draw(name, facts())) == svg.picture(draw(name, facts()))


@pytest.mark.parametrize("name", NAMES)
def test_a_picture_stays_light_enough_for_a_page(name: str) -> None:
    assert len(svg.picture(drawn(name))) < 45_000


def test_pictures_without_observers_still_stand() -> None:
    for name in ("heat-scale", "heat-scale-tall"):
        picture = draw(name, PictureFacts(facts().glow_colour, ()))
        assert any(text.text == "1100" for text in texts(picture))


def test_the_words_of_the_vocabulary_are_the_pictures_that_are_drawn(library: Library) -> None:
    assert set(library.vocabulary.words["picture"]) == set(PICTURES)
