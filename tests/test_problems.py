"""How problems are shown, counted and ordered; how words near a slip are found."""

from __future__ import annotations

import pytest

from temperbook.problems import DataProblems, Problem, count, nearest


def test_a_problem_as_the_terminal_shows_it() -> None:
    problem = Problem("data/a.yaml", 18, "has no basis", "{value: 50}", "of: area", "look it up")
    assert str(problem) == (
        "data/a.yaml:18: has no basis\n"
        "  found   {value: 50}\n"
        "  needed  of: area\n"
        "  mend    look it up"
    )
    assert str(Problem("data", 0, "is empty")) == "data: is empty"
    assert problem.as_json()["line"] == 18


def test_all_are_sorted_and_counted_once() -> None:
    ten, two, other = (Problem(f, n, "x") for f, n in (("b", 10), ("b", 2), ("a", 3)))
    raised = DataProblems([ten, two, other, ten], "1 alloy")
    assert raised.problems == [other, two, ten]
    assert str(raised) == "a:3: x\nb:2: x\nb:10: x\n3 problems in 2 files (1 alloy read)"


@pytest.mark.parametrize(
    ("number", "text"), [(0, "0 rows"), (1, "1 row"), (2, "2 rows"), (1912, "1,912 rows")]
)
def test_count(number: int, text: str) -> None:
    assert count(number, "row") == text


@pytest.mark.parametrize(
    ("word", "allowed", "text"),
    [
        ("aneal", ["anneal", "pour"], "did you mean `anneal`?"),
        ("DEGC", ["degC", "degF"], "did you mean `degC` or `degF`?"),
        ("xyz", ["b", "a"], "one of: a, b"),
        ("xyz", [f"w{n:03}" for n in range(1200)], "one of 1,200 that are known; none is near"),
        ("xyz", [], "there is none yet"),
    ],
)
def test_nearest(word: str, allowed: list[str], text: str) -> None:
    assert nearest(word, allowed) == text
