"""Every character that reaches a page or a sheet is in the handbook's own type."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import fields, is_dataclass
from typing import Any

import pytest
from fontTools.ttLib import TTFont
from outputs.building import ROOT

from temperbook.derive.handbook import Handbook
from temperbook.drawing import picture_facts, pictures
from temperbook.drawing.lettering import FILES, FONTS, lacks
from temperbook.drawing.shapes import Text
from temperbook.views import anneal_chart, pack
from temperbook.views.pages import Page

WEIGHTS = sorted(FILES)
TEMPLATES = sorted(
    path
    for folder, ending in (
        ("generator/temperbook/outputs/site/templates", "*.html"),
        ("generator/temperbook/outputs/typeset", "*.typ"),
        ("site_overrides", "*.html"),
        ("site_overrides/assets/js", "*.js"),
        ("site_overrides/assets/css", "*.css"),
    )
    for path in (ROOT / folder).rglob(ending)
)


def strings(thing: Any) -> Iterator[str]:
    """Every text in a view."""
    if isinstance(thing, str):
        yield thing
    elif is_dataclass(thing):
        for field in fields(thing):
            yield from strings(getattr(thing, field.name))
    elif isinstance(thing, dict):
        for value in (*thing, *thing.values()):
            yield from strings(value)
    elif isinstance(thing, list | tuple):
        for value in thing:
            yield from strings(value)


@pytest.fixture(scope="module")
def words(said: list[Page]) -> set[str]:
    """Every text that a page says, each once."""
    return {text for page in said for text in strings(page)}


@pytest.mark.parametrize("weight", WEIGHTS)
def test_everything_that_pages_say(weight: int, words: set[str]) -> None:
    assert len(words) > 10_000
    lacking = {text: lacks(text, weight) for text in words}
    assert not {text: found for text, found in lacking.items() if found}


@pytest.mark.parametrize("weight", WEIGHTS)
def test_everything_that_paper_says(weight: int, handbook: Handbook) -> None:
    alloys = list(handbook.library.alloys.values())
    charts = [anneal_chart.shown(c, alloys, handbook) for c in handbook.library.charts.values()]
    packs = [pack.shown(p, handbook) for p in handbook.library.packs.values()]
    said = list(strings([charts, packs]))
    assert len(said) > 500
    lacking = {text: lacks(text, weight) for text in said}
    assert not {text: found for text, found in lacking.items() if found}


def test_everything_that_pictures_say(handbook: Handbook) -> None:
    facts = picture_facts.of(handbook)
    count = 0
    for name in pictures.PICTURES:
        for shape in pictures.draw(name, facts).shapes:
            if isinstance(shape, Text):
                count += 1
                assert not lacks(shape.text, shape.weight), (name, shape.text)
    assert count > 50


def test_everything_in_vocabulary_and_prose() -> None:
    files = [*(ROOT / "data/vocabulary").glob("*.yaml"), *(ROOT / "content").rglob("*.md")]
    assert len(files) > 15
    for path in files:
        text = path.read_text(encoding="utf-8").replace("\t", "")
        for weight in WEIGHTS:
            assert not lacks(text, weight), (path, weight)


@pytest.mark.parametrize("path", TEMPLATES, ids=lambda p: p.name)
def test_everything_that_templates_say(path: Any) -> None:
    text = path.read_text(encoding="utf-8")
    text = re.sub(r"\{#.*?#\}", "", text, flags=re.S)  # a comment reaches nobody
    escaped = {chr(int(code, 16)) for code in re.findall(r"\\([0-9a-f]{4})\b", text)}
    for weight in WEIGHTS:
        assert not lacks(text.replace("\t", "") + "".join(escaped), weight)


def test_slanted_type_has_what_is_emphasised(handbook: Handbook) -> None:
    slanted = sorted((ROOT / FONTS).glob("*Italic.ttf"))
    assert slanted
    prose = [i for text in handbook.library.prose.values() for i in text.inlines()]
    said = "".join(child.text for i in prose if i.kind == "emphasis" for child in i.children)
    for path in slanted:
        with TTFont(path, lazy=True) as font:
            known = font.getBestCmap()
            assert not {c for c in said if ord(c) not in known}, path.name


def test_the_check_itself_finds_a_missing_character() -> None:
    for weight in WEIGHTS:
        assert lacks("a\u2603b", weight) == {"\u2603"}
