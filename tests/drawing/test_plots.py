"""Ladders and curves: everything inside the picture, no name upon another, places true to scale."""

from __future__ import annotations

from itertools import combinations

import pytest

from temperbook.derive.handbook import Handbook
from temperbook.drawing import curves, ladder, lettering
from temperbook.drawing.shapes import Circle, Glow, Line, Picture, Rect, Text
from temperbook.views import solder
from temperbook.views.comparing.pages import TOPICS
from temperbook.views.comparing.plots import Bar, Curves, Ladder, Plot, Tick
from temperbook.views.comparing.plots import Line as Curve


def drawn(plot: Plot) -> Picture:
    if isinstance(plot, Ladder):
        return ladder.draw(plot, lambda heat: "#101010")
    return curves.draw(plot)


def extent(text: Text) -> tuple[float, float]:
    wide = lettering.width(text.text, text.cap, text.weight)
    left = {"start": text.x, "middle": text.x - wide / 2, "end": text.x - wide}[text.anchor]
    return left, left + wide


def all_plots(handbook: Handbook) -> list[tuple[str, Plot]]:
    parts = [(stem, part) for stem, made in TOPICS.items() for part in made(handbook)]
    parts += [("solders", part) for part in solder.listed(handbook)]
    return [(f"{stem} {part.title}", part.plot) for stem, part in parts if part.plot]


def test_nothing_leaves_the_picture_or_covers_other_words(handbook: Handbook) -> None:
    plots = all_plots(handbook)
    assert len(plots) > 20
    for name, plot in plots:
        picture = drawn(plot)
        texts = [shape for shape in picture.shapes if isinstance(shape, Text)]
        for text in texts:
            left, right = extent(text)
            assert left > -0.6, (name, text.text)
            assert right < picture.width + 0.6, (name, text.text)
            assert text.cap <= text.y <= picture.height, (name, text.text)
        for one, other in combinations(sorted(texts, key=extent), 2):
            if abs(one.y - other.y) < one.cap:
                assert extent(one)[1] < extent(other)[0] + 0.3, (name, one.text, other.text)


def test_a_bar_lies_where_its_numbers_lie() -> None:
    bar = Bar("one", 20.0, 60.0, "20–60 %", ticks=(Tick(40.0, "ring"),))
    picture = ladder.draw(Ladder(0.0, 100.0, 20.0, "%", (bar,), "one"), lambda heat: "#000000")
    wide = picture.width - 2 * ladder.SIDE
    rect = next(s for s in picture.shapes if isinstance(s, Rect))
    assert rect.x == pytest.approx(ladder.SIDE + 0.2 * wide)
    assert rect.w == pytest.approx(0.4 * wide)
    ring = next(s for s in picture.shapes if isinstance(s, Circle))
    assert ring.x == pytest.approx(ladder.SIDE + 0.4 * wide)


def test_heat_glows_and_what_is_open_is_hollow() -> None:
    hot = Bar("hot", 600.0, 700.0, "600–700 °C")
    picture = ladder.draw(
        Ladder(500.0, 900.0, 100.0, "°C", (hot,), "heat", glow=True), lambda heat: f"#{int(heat)}"
    )
    glow = next(s for s in picture.shapes if isinstance(s, Glow))
    assert [glow.stops[0], glow.stops[-1]] == [(0.0, "#600"), (1.0, "#700")]
    for hollow, fill in ((True, "paper"), (False, "ink")):
        bar = Bar("limit", 0.0, 50.0, "50 %", hollow=hollow)
        picture = ladder.draw(Ladder(0.0, 100.0, 20.0, "%", (bar,), "x"), lambda heat: "#000000")
        assert next(s for s in picture.shapes if isinstance(s, Rect)).fill == fill


def test_curves_are_told_apart_in_grey() -> None:
    """Each of six curves has a sign of its own shape or filling, at its points and at its name."""
    lines = tuple(Curve(f"c{n}", ((0, n, n), (50, n + 9, n + 9)), thin=True) for n in range(6))
    picture = curves.draw(Curves(100.0, 0.0, 20.0, (20.0, 5.0), "HV", lines, "curves"))
    shapes = {repr(curves.sign(n, 0, 0)) for n in range(6)}
    assert len(shapes) == 6
    named = [s.text for s in picture.shapes if isinstance(s, Text) and s.text.startswith("c")]
    assert sorted(named) == [line.label for line in lines]
    assert not [s for s in picture.shapes if isinstance(s, Line) and s.x2 > picture.width]
