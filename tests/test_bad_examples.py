"""Bad data of every kind: the exact text that `temperbook check` prints, and that nothing escapes.

The rules of the machinery that are not reached by any bad example could be deleted without a test failing;
the last tests trace which lines run and hold that none is left.
"""

from __future__ import annotations

import ast
import sys
from collections import defaultdict
from collections.abc import Iterator
from pathlib import Path
from types import FrameType
from typing import Any

import pytest
from click.testing import CliRunner, Result

from temperbook import checks
from temperbook.cli import main
from temperbook.paths import Project
from temperbook.problems import Problem
from temperbook.records.load import load
from tests.conftest import bad_cases, copy_small, lay_over

CASES = bad_cases()
PACKAGE = Path(checks.__file__).parents[1]
# Modules whose every problem must be seen in a bad example.
TRACED = sorted([*PACKAGE.glob("checks/*.py"), *PACKAGE.glob("records/*.py")])


def run_check(project: Project) -> Result:
    return CliRunner().invoke(main, ["--project", str(project.root), "check"])


def test_the_small_handbook_is_good(small: Project) -> None:
    result = run_check(small)
    assert result.exit_code == 0, result.output
    assert result.output.startswith(
        "No problems: 2 alloys, 23 figures, 27 evidence rows, 3 sources, 2 cautions.\n"
    )


@pytest.mark.parametrize("case", CASES, ids=lambda case: case.name)
def test_message(case: Path, small: Project) -> None:
    lay_over(case, small)
    result = run_check(small)
    assert result.output == (case / "message.txt").read_text(encoding="utf-8")
    assert result.exit_code == 1
    assert isinstance(result.exception, SystemExit)


@pytest.mark.parametrize("case", CASES, ids=lambda case: case.name)
def test_message_says_all_that_one_needs(case: Path) -> None:
    """Where, what is needed and how to mend it; the line wherever a file is there to have one."""
    *lines, summary = (case / "message.txt").read_text(encoding="utf-8").splitlines()
    heads = [line for line in lines if not line.startswith("  ")]
    assert heads
    for label in ("needed", "mend"):
        assert sum(line.startswith(f"  {label:<7} ") for line in lines) == len(heads), label
    for head in heads:
        file, _, rest = head.partition(":")
        if (case / file).is_file() and "is read by nothing" not in head:
            assert rest.split(":")[0].isdigit(), f"no line: {head}"
    number = summary.partition(" ")[0]
    assert int(number) == len(heads)
    assert heads == sorted(heads, key=_place)


def _place(head: str) -> tuple[str, int]:
    file, _, rest = head.partition(":")
    line = rest.split(":")[0]
    return file, int(line) if line.isdigit() else 0


def test_all_problems_are_told_at_once(small: Project) -> None:
    """Slips that do not hide one another are told together, each exactly as it is told alone."""
    together = [
        "chosen-without-why",
        "file-empty",
        "landmark-dangling",
        "prose-link-page-unknown",
        "source-unused",
        "evidence-grade-unknown",
    ]
    told = []
    for name in together:
        case = next(case for case in CASES if case.name == name)
        lay_over(case, small)
        told += (case / "message.txt").read_text(encoding="utf-8").splitlines()[:-1]
    lines = run_check(small).output.splitlines()
    assert sorted(lines[:-1]) == sorted(told)
    assert lines[-1].startswith("6 problems in 6 files (")


@pytest.fixture(scope="module")
def problems_by_rule(
    tmp_path_factory: pytest.TempPathFactory,
) -> tuple[dict[str, list[Problem]], dict[Path, set[int]]]:
    """What each rule finds in all bad examples, and the lines of the machinery that ran."""
    found: dict[str, list[Problem]] = defaultdict(list)
    ran: dict[Path, set[int]] = defaultdict(set)
    files = {str(path): path for path in TRACED}

    def trace_lines(frame: FrameType, event: str, arg: Any) -> Any:
        if event == "line":
            ran[files[frame.f_code.co_filename]].add(frame.f_lineno)
        return trace_lines

    def trace(frame: FrameType, event: str, arg: Any) -> Any:
        return trace_lines if frame.f_code.co_filename in files else None

    before = sys.gettrace()
    for case in CASES:
        project = copy_small(tmp_path_factory.mktemp("bad") / "handbook")
        lay_over(case, project)
        sys.settrace(trace)
        try:
            library, _ = load(project)
            for rule in checks.RULES:
                found[rule.__name__.rsplit(".", 1)[1]] += rule.check(library)
        finally:
            sys.settrace(before)
    return found, ran


@pytest.mark.xdist_group("traced")
def test_every_rule_has_a_bad_example(
    problems_by_rule: tuple[dict[str, list[Problem]], dict[Path, set[int]]],
) -> None:
    """Each rule's headlines stand in the messages; a rule without one would be untested."""
    messages = "\n".join((case / "message.txt").read_text(encoding="utf-8") for case in CASES)
    for rule in checks.RULES:
        name = rule.__name__.rsplit(".", 1)[1]
        headlines = {problem.text for problem in problems_by_rule[0][name]}
        assert headlines, f"no bad example breaks {name}"
        for headline in headlines:
            assert f": {headline}\n" in messages


def test_every_rule_is_registered() -> None:
    """A module of checks/ that has a `check` and does not stand in RULES would never run."""
    with_check = {
        path.stem for path in PACKAGE.glob("checks/*.py") if "\ndef check(" in path.read_text()
    }
    assert with_check == {rule.__name__.rsplit(".", 1)[1] for rule in checks.RULES}


# What the code calls to make a problem.
MAKERS = ("Problem", "problem", "_problem", "Fault", "refuse", "refuse_file", "_dangling")
# Problems that no file in a folder can make: module and function.
ELSEWHERE = {
    ("text_file.py", "read"),  # an unreadable file; see records/test_text_file.py
    ("yaml_reader.py", "_too_deep"),  # see records/test_yaml_reader.py
    ("building.py", "_unknown_unit"),  # needs the whole vocabulary; see records/test_building.py
}


@pytest.mark.xdist_group("traced")
@pytest.mark.parametrize("path", TRACED, ids=lambda path: f"{path.parent.name}/{path.name}")
def test_every_problem_has_a_bad_example(
    path: Path, problems_by_rule: tuple[dict[str, list[Problem]], dict[Path, set[int]]]
) -> None:
    """Each place in the code that makes a problem runs in some bad example."""
    ran = problems_by_rule[1][path]
    for function, line in _makes_problems(path):
        if (path.name, function) not in ELSEWHERE:
            assert line in ran, f"{path.name}:{line}: no bad example reaches this problem"


def _makes_problems(path: Path) -> Iterator[tuple[str, int]]:
    tree = ast.parse(path.read_text(encoding="utf-8"))
    for function in ast.walk(tree):
        if isinstance(function, ast.FunctionDef):
            for call in ast.walk(function):
                if isinstance(call, ast.Call) and _name(call) in MAKERS:
                    yield function.name, call.lineno


def _name(call: ast.Call) -> str:
    target = call.func
    return target.attr if isinstance(target, ast.Attribute) else getattr(target, "id", "")
