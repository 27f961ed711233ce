"""The YAML reader: the line of every place, what YAML would misread, plain data as written."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest
import yaml
from hypothesis import given
from hypothesis import strategies as st

from temperbook.records import yaml_reader
from temperbook.records.yaml_reader import Document, shown_location

NESTED = """\
# a comment stands first
id: a
names:
  - one
  - two
figures:
  solidus:
    - {value: 779.1, unit: degC}
    - value: 780
      unit: degC
"""


def read(text: str, folder: Path) -> Document:
    path = folder / "record.yaml"
    path.write_text(text, encoding="utf-8")
    return yaml_reader.read(path, "data/record.yaml")


@pytest.mark.parametrize(
    ("location", "line"),
    [
        ((), 2),
        (("id",), 2),
        (("names",), 3),
        (("names", 1), 5),
        (("figures", "solidus"), 7),
        (("figures", "solidus", 0), 8),
        (("figures", "solidus", 0, "unit"), 8),
        (("figures", "solidus", 1, "unit"), 10),
    ],
)
def test_lines_of_nested_keys(location: tuple[str | int, ...], line: int, tmp_path: Path) -> None:
    document = read(NESTED, tmp_path)
    assert not document.problems
    assert document.lines[location] == line
    assert document.line(location) == line


def test_line_of_a_missing_place_is_that_of_what_is_around_it(tmp_path: Path) -> None:
    document = read(NESTED, tmp_path)
    assert document.line(("figures", "solidus", 1, "from", 0)) == 9
    assert document.line(("nowhere",)) == 2


@pytest.mark.parametrize(
    ("written", "value"),
    [
        ('"no"', "no"),
        ("'on'", "on"),
        ('"12"', "12"),
        ('"20e-6"', "20e-6"),
        ("true", True),
        ("False", False),
        ("12", 12),
        ("-3", -3),
        ("0.004", 0.004),
        (".5", 0.5),
        ("-.5", "-.5"),
        ("10.50", 10.5),
        ("2026-11-25", "2026-11-25"),
        ("1_000", "1_000"),
        ("0x1F", "0x1F"),
        ("017", "017"),
        ("12:30", "12:30"),
        (".inf", ".inf"),
        (".nan", ".nan"),
        ("C26000", "C26000"),
        ("70/30 brass", "70/30 brass"),
        ("!!python/name:os.system x", "x"),
    ],
)
def test_what_is_read(written: str, value: Any, tmp_path: Path) -> None:
    """Numbers are decimal numbers; whatever else YAML 1.1 would take for one stays text."""
    document = read(f"key: {written}\n", tmp_path)
    assert not document.problems
    assert document.data == {"key": value}
    assert type(document.data["key"]) is type(value)


@pytest.mark.parametrize("word", ["no", "No", "yes", "on", "OFF", "y"])
def test_words_that_yaml_takes_for_truth(word: str, tmp_path: Path) -> None:
    """`y` alone is a word to PyYAML; the others are not, and are refused rather than read."""
    document = read(f"also: [good, {word}]\n", tmp_path)
    if word == "y":
        assert document.data == {"also": ["good", "y"]}
        assert not document.problems
    else:
        (problem,) = document.problems
        assert problem.text == "also[1] is a truth value to YAML, not a word"
        assert problem.found == word
        assert ("also", 1) in document.refused


@pytest.mark.parametrize(
    ("written", "out"),
    [("20e-6", "0.00002"), ("1e3", "1000"), ("1.5e+3", "1500"), ("-2E-3", "-0.002")],
)
@pytest.mark.parametrize("form", ["value: {}\n", "{{value: {}, unit: mm}}\n"])
def test_exponents_are_refused(written: str, out: str, form: str, tmp_path: Path) -> None:
    """`20e-6` is text to YAML and `1.5e+3` a number: neither is left to chance, in either style."""
    document = read(form.format(written), tmp_path)
    (problem,) = document.problems
    assert (problem.line, problem.found) == (1, written)
    assert problem.needed == f"a number written out, such as {out}"
    assert document.data["value"] == float(out)


@pytest.mark.parametrize("written", ["", "~", "null"])
def test_empty_values_are_refused(written: str, tmp_path: Path) -> None:
    document = read(f"id: a\nshort: {written}\n", tmp_path)
    (problem,) = document.problems
    assert (problem.line, problem.text) == (2, "short has no value")


def test_the_first_of_two_equal_keys_stays(tmp_path: Path) -> None:
    document = read("a: 1\nb: 2\na: 3\n", tmp_path)
    (problem,) = document.problems
    assert (problem.line, problem.found) == (3, "first in line 1")
    assert document.data == {"a": 1, "b": 2}


def test_aliases_are_refused_and_cannot_recur(tmp_path: Path) -> None:
    document = read("a: &x [1, *x]\nb: *x\n", tmp_path)
    assert [p.text for p in document.problems] == [
        "a[1] is an alias of another place",
        "b is an alias of another place",
    ]
    assert document.data == {"a": [1, None], "b": None}


def test_nesting_that_python_cannot_follow(tmp_path: Path) -> None:
    """Deep enough for Python's own limit, not for libyaml's."""
    document = read("a: " + "[" * 800 + "]" * 800, tmp_path)
    (problem,) = document.problems
    assert problem.text == "is nested too deep"
    assert document.data is None


@pytest.mark.parametrize("text", ["", "# nothing yet\n", "---\n", "\n\n"])
def test_an_empty_file(text: str, tmp_path: Path) -> None:
    document = read(text, tmp_path)
    assert document.problems
    assert document.data is None


def test_a_byte_order_mark_is_taken_off(tmp_path: Path) -> None:
    document = read("\ufeffid: a\n", tmp_path)
    assert document.data == {"id": "a"}
    assert not document.problems


def test_control_characters_are_told_with_their_line(tmp_path: Path) -> None:
    """Also behind letters that take two bytes."""
    document = read("a: ärger\nb: über\nc: x\x07y\n", tmp_path)
    (problem,) = document.problems
    assert problem.line == 3


# PyYAML writes `"0e0"` without quotes, since it is no number to it; our reader refuses it, as it
# should.
TEXTS = st.text(st.characters(exclude_categories=("Cs", "Cc", "Co", "Cn")), max_size=20).filter(
    lambda text: not yaml_reader._EXPONENT.fullmatch(text)
)
NUMBERS = st.integers(-(10**9), 10**9) | st.decimals(-10000, 10000, places=4).map(float).filter(
    lambda number: "e" not in repr(number)
)
PLAIN = st.recursive(
    st.booleans() | NUMBERS | TEXTS,
    lambda inner: st.lists(inner, max_size=4) | st.dictionaries(TEXTS, inner, max_size=4),
    max_leaves=12,
)


class NoAliases(yaml.SafeDumper):
    """PyYAML's dumper, writing equal things twice rather than pointing at the first."""

    def ignore_aliases(self, data: Any) -> bool:
        return True


@given(
    data=st.dictionaries(TEXTS, PLAIN, min_size=1, max_size=5), flow=st.sampled_from([None, True])
)
def test_plain_data_comes_back(
    data: dict[str, Any], flow: bool | None, tmp_path_factory: pytest.TempPathFactory
) -> None:
    """Whatever PyYAML writes of texts, numbers, lists and mappings is read as it was."""
    text = yaml.dump(data, Dumper=NoAliases, default_flow_style=flow, allow_unicode=True)
    document = read(text, tmp_path_factory.mktemp("yaml"))
    assert not document.problems
    assert document.data == data


@given(keys=st.lists(st.from_regex(r"[a-z]{1,8}", fullmatch=True), min_size=1, unique=True))
def test_every_key_has_its_line(keys: list[str], tmp_path_factory: pytest.TempPathFactory) -> None:
    text = "".join(f'{key}:\n  inner: "x"\n' for key in keys)
    document = read(text, tmp_path_factory.mktemp("yaml"))
    for number, key in enumerate(keys):
        assert document.line((key,)) == 2 * number + 1
        assert document.line((key, "inner")) == 2 * number + 2


def test_shown_location() -> None:
    assert shown_location(("figures", "solidus", 0, "value")) == "figures.solidus[0].value"
    assert shown_location(()) == "the record"
