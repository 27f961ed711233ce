"""Pydantic's errors as problems: the line, what was found, the nearest allowed, how to mend it."""

from __future__ import annotations

from pathlib import Path

import pytest

from temperbook.problems import Problem
from temperbook.records import building, model_errors, yaml_reader
from temperbook.records.models import Alloy, Caution, Chart, Pack, Record, Source

ALLOY = """\
id: a/b
name: B
short: B
about: "x"
composition: {Cu: 100}
composition_source: {how: practice}
figures:
  solidus:
    - {value: 840, unit: degC, how: practice}
"""


def problems(text: str, model: type[Record], folder: Path) -> list[Problem]:
    path = folder / "record.yaml"
    path.write_text(text, encoding="utf-8")
    document = yaml_reader.read(path, "record.yaml")
    found: list[Problem] = []
    built = building.build(model, document.data, document, (), found)
    assert (built is None) == bool(found) or document.refused
    return found


def test_a_good_record_has_none(tmp_path: Path) -> None:
    assert problems(ALLOY, Alloy, tmp_path) == []


@pytest.mark.parametrize(
    ("old", "new", "line", "text", "needed"),
    [
        ("name: B", "nam: B", 2, "unknown key `nam`", "did you mean `name`?"),
        ("name: B", "Name: B", 2, "unknown key `Name`", "did you mean `name`?"),
        (
            "unit: degC",
            "unt: degC",
            9,
            "unknown key `figures.solidus[0].unt`",
            "did you mean `unit`?",
        ),
        ("name: B\n", "", 1, "the record lacks the key `name`", "name: ..."),
        (
            "{how: practice}",
            "practice",
            6,
            "composition_source is not what is needed there",
            "`key: value` lines",
        ),
        ("Cu: 100", 'Cu: "100"', 5, "composition.Cu is not what is needed there", "a number"),
        ("Cu: 100", "Cu: true", 5, "composition.Cu is not what is needed there", "a number"),
        (
            "value: 840",
            "value: [840]",
            9,
            "figures.solidus[0].value is not what is needed there",
            "a number",
        ),
        (
            "short: B",
            "short: B and much more text",
            3,
            "short is not what is needed there",
            "at most 14 characters",
        ),
        (
            "how: practice}\nfigures",
            "how: practise}\nfigures",
            6,
            "composition_source.how is no known word",
            "did you mean `practice`?",
        ),
    ],
)
def test_alloys(old: str, new: str, line: int, text: str, needed: str, tmp_path: Path) -> None:
    assert ALLOY.count(old) == 1
    found = problems(ALLOY.replace(old, new), Alloy, tmp_path)
    assert (line, text, needed) in [(p.line, p.text, p.needed) for p in found]


def test_every_error_is_told(tmp_path: Path) -> None:
    text = ALLOY.replace("name: B", "nam: B").replace("Cu: 100", 'Cu: "100"')
    assert len(problems(text, Alloy, tmp_path)) == 3  # unknown, missing, no number


def test_what_the_reader_refused_is_not_told_again(tmp_path: Path) -> None:
    assert problems(ALLOY.replace("short: B", "short:"), Alloy, tmp_path) == []


def test_the_line_of_a_missing_key_is_that_of_its_item(tmp_path: Path) -> None:
    (problem,) = problems(ALLOY.replace("unit: degC, ", ""), Alloy, tmp_path)
    assert (problem.line, problem.text) == (9, "figures.solidus[0] lacks the key `unit`")


@pytest.mark.parametrize(
    ("found", "shown"),
    [
        ("840", '"840"'),
        (840, "840"),
        (True, "true"),
        ([1], "a list"),
        ({"a": 1}, "`key: value` lines"),
        ("x" * 100, '"' + "x" * 77 + '..."'),
    ],
)
def test_what_was_found_is_shown_as_it_stands_in_the_file(found: object, shown: str) -> None:
    assert model_errors._short(found) == shown


@pytest.mark.parametrize(
    ("model", "location", "key"),
    [
        (Alloy, (), "composition_source"),
        (Alloy, (), "quench"),
        (Alloy, ("figures", "solidus", 0), "from"),
        (Alloy, ("quench",), "rule"),
        (Alloy, ("remarks", 0), "text"),
        (Alloy, ("composition_source",), "why"),
        (Caution, ("applies",), "families"),
        (Caution, ("figures", "x", 3), "unit"),
        (Chart, ("groups", 1), "when"),
        (Pack, ("exercises", 0), "formula"),
        (Source, (), "link"),
    ],
)
def test_allowed_keys(model: type[Record], location: tuple[str | int, ...], key: str) -> None:
    """Keys are named as they stand in a file: `from`, not `from_`."""
    allowed = model_errors.allowed_keys(model, location)
    assert key in allowed
    assert "from_" not in allowed


def test_no_keys_are_allowed_inside_a_text() -> None:
    assert model_errors.allowed_keys(Alloy, ("name",)) == []
