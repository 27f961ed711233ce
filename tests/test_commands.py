"""The commands as a person types them: what is printed where, exit codes, and that nothing built is
lost.
"""

from __future__ import annotations

import json
import os
import re
import subprocess
import sys
from pathlib import Path

import pytest
from click.testing import CliRunner, Result

from temperbook.cli import COMMANDS, main
from temperbook.paths import Project
from tests.conftest import EXAMPLES, lay_over

pytestmark = pytest.mark.usefixtures("read_once")

BAD = EXAMPLES / "bad" / "figure-differs-from-its-row"


def run(*words: str, project: Project | None = None) -> Result:
    before = ["--project", str(project.root)] if project else []
    result = CliRunner().invoke(main, [*before, *words])
    assert result.exception is None or isinstance(result.exception, SystemExit), result.exception
    return result


# -- help


@pytest.mark.parametrize("command", COMMANDS)
def test_help_shows_an_example(command: str) -> None:
    result = run(command, "--help")
    assert result.exit_code == 0
    _, _, example = result.stdout.partition("Example:\n")
    lines = [line.strip() for line in example.partition("\n\n")[0].splitlines()]
    assert lines
    assert all(line.startswith(f"temperbook {command}") for line in lines), lines


def test_the_examples_of_the_help_name_real_options() -> None:
    """Each word of an example that begins with a dash is an option of that command."""
    for command in COMMANDS:
        text = run(command, "--help").stdout
        example = text.partition("Example:\n")[2].partition("\n\n")[0]
        options = text.partition("Options:\n")[2]
        for word in example.split():
            if word.startswith("-"):
                assert f"{word} " in options or f"{word}\n" in options, (command, word)


def test_help_lists_every_command() -> None:
    result = run("--help")
    assert result.exit_code == 0
    listed = result.stdout.partition("Commands:\n")[2].split("\n")
    assert [line.split()[0] for line in listed if line.strip()] == list(COMMANDS)


def test_module_and_command_are_one() -> None:
    """`python -m temperbook --help` in a process of its own, from another folder."""
    found = subprocess.run(
        [sys.executable, "-W", "error", "-m", "temperbook", "--help"],
        capture_output=True,
        text=True,
        check=False,
        cwd="/",
        env={**os.environ, "PYTHONPATH": os.pathsep.join(p for p in sys.path if p)},
    )
    assert (found.returncode, found.stderr) == (0, "")
    assert found.stdout.startswith("Usage: python -m temperbook [OPTIONS] COMMAND")
    for command in COMMANDS:
        assert f"  {command} " in found.stdout


def test_help_imports_nothing_slow() -> None:
    """Only the command that runs is imported: help is there at once."""
    code = (
        "import sys; from temperbook.cli import main\n"
        "try: main(['--help'])\n"
        "except SystemExit: pass\n"
        "print(sorted({'pint', 'pandas', 'mkdocs', 'typst', 'pydantic'} & sys.modules.keys()))"
    )
    found = subprocess.run(
        [sys.executable, "-c", code],
        capture_output=True,
        text=True,
        check=True,
        env={**os.environ, "PYTHONPATH": os.pathsep.join(p for p in sys.path if p)},
    )
    assert found.stdout.splitlines()[-1] == "[]"


@pytest.mark.parametrize(
    "words", [["chek"], ["show"], ["check", "--jsn"], ["--project", "/nowhere", "check"], ["chart"]]
)
def test_wrong_use_exits_2(words: list[str]) -> None:
    result = run(*words)
    assert result.exit_code == 2
    assert result.stdout == ""
    assert "Error: " in result.stderr


# -- check


def test_check_counts(small: Project) -> None:
    result = run("check", "--json", project=small)
    assert result.exit_code == 0
    assert json.loads(result.stdout) == {
        "alloys": 2,
        "solders": 0,
        "figures": 35,  # 33 typed, and the density by mixing of both alloys
        "evidence_rows": 27,
        "sources": 3,
        "cautions": 2,
        "figures_by_how": {
            "quoted": 17,
            "converted": 1,
            "chosen": 1,
            "applied": 1,
            "computed": 2,
            "practice": 13,
            "memory": 0,
        },
        "figures_by_best_grade": {"A": 20, "B": 0, "C": 0, "D": 0},
    }


def test_check_says_the_same_in_words(small: Project) -> None:
    counted = json.loads(run("check", "--json", project=small).stdout)
    lines = run("check", project=small).stdout.splitlines()
    for how, number in counted["figures_by_how"].items():
        assert any(line.split()[:2] == [how, str(number)] for line in lines), how
    for grade, number in counted["figures_by_best_grade"].items():
        assert any(line.split()[:2] == [grade, str(number)] for line in lines), grade


def test_check_of_the_real_handbook(project: Project) -> None:
    counted = json.loads(run("check", "--json", project=project).stdout)
    assert counted["alloys"] >= 22
    assert counted["figures_by_how"]["memory"] == 1  # bench/reduction#delta-limit, said to be so
    assert sum(counted["figures_by_how"].values()) == counted["figures"]
    read = sum(counted["figures_by_how"][h] for h in ("quoted", "converted", "chosen", "applied"))
    assert sum(counted["figures_by_best_grade"].values()) == read


def test_the_report_tells_where_figures_stand_on_little(project: Project) -> None:
    """Every number of the report is counted again here, from the records."""
    found = json.loads(run("check", "--report", "--json", project=project).stdout)
    report = found["report"]
    crossed = report["figures_by_how_and_grade"]
    assert {how: sum(row.values()) for how, row in crossed.items()} == found["figures_by_how"]
    for grade, number in found["figures_by_best_grade"].items():
        assert sum(row[grade] for row in crossed.values()) == number
    assert "japanese/shibuichi" in report["without_published_anneal"]
    assert "silver/sterling-925" in report["without_published_limit"]
    assert "gold/22ct-yellow" not in report["without_published_limit"]
    assert (
        "copper/phosphor-bronze-6#reduction-ceiling@of=not-stated,process=any,form=any,stage=annealed"
        in (report["limits_on_one_source"])
    )
    assert 0 < len(report["worst"]) <= 20
    scores = [one["score"] for one in report["worst"]]
    assert scores == sorted(scores, reverse=True)
    text = run("check", "--report", project=project).stdout
    assert "Alloys without a published anneal" in text
    assert "Where most is missing" in text


def test_check_tells_problems_as_json(small: Project) -> None:
    lay_over(BAD, small)
    result = run("check", "--json", project=small)
    assert result.exit_code == 1
    told = json.loads(result.stdout)
    assert told == {
        "problems": [
            {
                "file": "data/alloys/copper/net-bronze.yaml",
                "line": 11,
                "text": "figures.solidus[0] differs from its row (loft-sheet-1.3)",
                "found": "850",
                "needed": "840 degC",
                "mend": "look at the source; correct the figure or the row",
            }
        ],
        "summary": "1 problem in 1 file (2 alloys, 33 figures, 27 evidence rows read)",
    }


def test_check_of_an_empty_folder(tmp_path: Path) -> None:
    """Not a handbook at all: a sentence for each thing that is missing, no traceback."""
    result = run("check", project=Project(tmp_path))
    assert result.exit_code == 1
    assert "data/vocabulary/quantities.yaml: cannot be read\n" in result.stdout
    assert "data/edition: holds no record\n" in result.stdout
    assert result.stdout.endswith("(0 alloys, 0 figures, 0 evidence rows read)\n")


# -- show


@pytest.mark.parametrize(
    "name", [["sterling"], ["Sterling", "Silver"], ["925"], ["SILVER/STERLING-925"]]
)
def test_show_by_name(name: list[str], project: Project) -> None:
    result = run("show", *name, project=project)
    assert result.exit_code == 0
    assert result.stdout.startswith("Sterling silver (silver/sterling-925): Ag 92.5, Cu 7.5\n")
    stop = re.search(r"^Do not exceed\D+(\d+)\s°C +\(starts to melt at 779", result.stdout, re.M)
    assert stop is not None
    assert 700 <= int(stop[1]) < 779  # an eye's error below the eutectic
    assert "DANGER: " in result.stdout
    assert result.stderr == ""


def test_show_says_of_what_a_reduction_is(small: Project) -> None:
    text = run("show", "net bronze", project=small).stdout
    (line,) = (line for line in text.splitlines() if line.startswith("Between anneals"))
    assert re.match(r"Between anneals +40\s% +\(of the thickness; ", line)


def test_show_as_json(project: Project) -> None:
    shown = json.loads(run("show", "sterling", "--json", project=project).stdout)
    assert shown["id"] == "silver/sterling-925"
    assert [limit["key"] for limit in shown["limits"]] == ["anneal", "between", "quench", "stop"]


def test_show_lists_several_hits(project: Project) -> None:
    result = run("show", "750", project=project)
    assert result.exit_code == 0
    first, *hits = result.stdout.splitlines()
    assert first == "`750` may be:"
    found = {hit.split()[0] for hit in hits}
    assert {"gold/18ct-green", "gold/18ct-nickel-white", "gold/18ct-yellow"} < found
    assert "gold/14ct-yellow" not in found
    told = json.loads(run("show", "750", "--json", project=project).stdout)
    assert told == {"wanted": "750", "found": [hit.split()[0] for hit in hits], "near": []}


def test_show_suggests_near_names(project: Project) -> None:
    result = run("show", "sterlnig", project=project)
    assert result.exit_code == 2
    assert result.stdout == ""
    assert result.stderr.startswith("No alloy is called `sterlnig`. Near it:\n")
    assert "silver/sterling-925" in result.stderr


def test_show_of_nothing_near(project: Project) -> None:
    result = run("show", "qqqqxxxxzzzz", project=project)
    assert result.exit_code == 2
    assert result.stderr.startswith("No alloy is called `qqqqxxxxzzzz`.")
    assert len(result.stderr.splitlines()) == 1


def test_show_of_bad_data_shows_the_problems_and_no_limit(small: Project) -> None:
    """A limit from records in which something is wrong is no limit."""
    lay_over(BAD, small)
    result = run("show", "net bronze", project=small)
    assert (result.exit_code, result.stdout) == (1, "")
    assert result.stderr == (BAD / "message.txt").read_text(encoding="utf-8")


# -- chart and pack, where they are used wrongly


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (["chart", "aneal"], "no chart is called `aneal`; did you mean `anneal`?"),
        (
            ["chart", "anneal", "--paper", "a4", "--read-at", "wall"],
            "a4 cannot be read as a wall sheet",
        ),
        (["chart", "anneal", "--paper", "a9"], "Invalid value for '--paper'"),
        (["chart", "anneal", "--alloys", "net bronze, brnze"], "No alloy is called `brnze`"),
        (["chart", "anneal", "--alloys", " , "], "No alloy was named."),
        (["pack", "lofd"], "no pack is called `lofd`; did you mean `loft`?"),
    ],
)
def test_what_cannot_be_printed(
    words: list[str], said: str, small: Project, tmp_path: Path
) -> None:
    target = tmp_path / "x.pdf"
    result = run(*words, "-o", str(target), project=small)
    assert result.exit_code == 2
    assert said in result.stderr
    assert not target.exists()


# -- build


@pytest.mark.parametrize("only", [[], ["--only", "site"], ["--only", "paper"]], ids=str)
def test_bad_data_leaves_what_was_built(
    only: list[str], buildable: Project, tmp_path: Path, caplog: pytest.LogCaptureFixture
) -> None:
    lay_over(BAD, buildable)
    out = tmp_path / "site"
    (out / "deep").mkdir(parents=True)
    (out / "deep" / "marker").write_text("built yesterday")
    result = run("build", *only, "--out", str(out), project=buildable)
    assert result.exit_code == 1
    # MkDocs tells the site's problems through its log, which a terminal shows and pytest catches.
    told = result.stderr + caplog.text
    assert (BAD / "message.txt").read_text(encoding="utf-8").strip() in told
    assert [path.relative_to(out).as_posix() for path in sorted(out.rglob("*"))] == [
        "deep",
        "deep/marker",
    ]
    assert (out / "deep" / "marker").read_text() == "built yesterday"
    # nor is a half-made folder left beside it
    assert sorted(path.name for path in tmp_path.iterdir()) == ["handbook", "site"]


def test_good_data_takes_its_place(buildable: Project, tmp_path: Path) -> None:
    out = tmp_path / "site"
    for _ in range(2):
        result = run("build", "--only", "site", "--out", str(out), project=buildable)
        assert result.exit_code == 0, result.output
        assert (out / "alloys" / "copper" / "net-bronze" / "index.html").is_file()
    assert sorted(path.name for path in tmp_path.iterdir()) == ["handbook", "site"]
