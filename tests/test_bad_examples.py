"""Bad data of every kind: the exact text that `temperbook check` prints, and that nothing escapes.

The rules of the machinery that are not reached by any bad example could be deleted without a test
failing; the last tests see from which lines problems are made and hold that none is left.
"""

from __future__ import annotations

import ast
import sys
from collections import defaultdict
from collections.abc import Callable
from pathlib import Path
from types import FrameType, ModuleType
from typing import Any

import pytest
from click.testing import CliRunner, Result

from temperbook import checks
from temperbook.cli import main
from temperbook.paths import Project
from temperbook.problems import Problem
from temperbook.records.link_prose import Fault
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
        "No problems: 2 alloys, 35 figures, 27 evidence rows, 3 sources, 2 cautions.\n"
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


def traced_run(folder: Path) -> tuple[dict[str, list[Problem]], list[str]]:
    """What each rule finds in all bad examples, and the lines that make a problem but never ran."""
    found: dict[str, list[Problem]] = defaultdict(list)
    waiting = {str(path): makers(path) for path in TRACED}

    def seen(frame: FrameType | None) -> None:
        """Every line that a problem is being made from, the innermost first."""
        while frame is not None:
            waiting.get(frame.f_code.co_filename, set()).discard(frame.f_lineno)
            frame = frame.f_back

    with pytest.MonkeyPatch.context() as patched:
        for made in (Problem, Fault):
            patched.setattr(made, "__init__", _watched(made.__init__, seen))
        for case in CASES:
            project = copy_small(folder / case.name)
            lay_over(case, project)
            library, _ = load(project)
            for rule in checks.RULES:
                found[short(rule)] += rule.check(library)
    return found, [f"{file}:{line}" for file, lines in waiting.items() for line in sorted(lines)]


def _watched(make: Callable[..., None], seen: Callable[[FrameType | None], None]) -> Any:
    def watched(self: Any, *args: Any, **more: Any) -> None:
        seen(sys._getframe(1))
        make(self, *args, **more)

    return watched


def short(rule: ModuleType) -> str:
    return rule.__name__.rsplit(".", 1)[1]


def test_every_rule_and_every_problem_has_a_bad_example(tmp_path: Path) -> None:
    """Each rule breaks in some case and its headlines stand in the messages; each line that makes a
    problem runs.
    """
    by_rule, silent = traced_run(tmp_path)
    messages = "\n".join((case / "message.txt").read_text(encoding="utf-8") for case in CASES)
    for rule in checks.RULES:
        headlines = {problem.text for problem in by_rule[short(rule)]}
        assert headlines, f"no bad example breaks {short(rule)}"
        for headline in headlines:
            assert f": {headline}\n" in messages
    assert not silent, "no bad example reaches these problems"


def test_every_rule_is_registered() -> None:
    """A module of checks/ that has a `check` and does not stand in RULES would never run."""
    with_check = {
        path.stem for path in PACKAGE.glob("checks/*.py") if "\ndef check(" in path.read_text()
    }
    assert with_check == {short(rule) for rule in checks.RULES}


# What the code calls to make a problem.
MAKERS = ("Problem", "problem", "_problem", "Fault", "refuse", "refuse_file", "_dangling")
# Problems that no file in a folder can make: module and function.
ELSEWHERE = {
    ("text_file.py", "read"),  # an unreadable file; see records/test_text_file.py
    ("yaml_reader.py", "_too_deep"),  # see records/test_yaml_reader.py
    ("building.py", "_unknown_unit"),  # needs the whole vocabulary; see records/test_building.py
}


def makers(path: Path) -> set[int]:
    """The lines that make a problem."""
    tree = ast.parse(path.read_text(encoding="utf-8"))
    return {
        call.lineno
        for function in ast.walk(tree)
        if isinstance(function, ast.FunctionDef) and (path.name, function.name) not in ELSEWHERE
        for call in ast.walk(function)
        if isinstance(call, ast.Call) and _name(call) in MAKERS
    }


def _name(call: ast.Call) -> str:
    target = call.func
    return target.attr if isinstance(target, ast.Attribute) else getattr(target, "id", "")
