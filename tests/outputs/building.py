"""Builds what tests of the output look at, once for all workers of a run."""

from __future__ import annotations

import os
import shutil
import time
import traceback
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

import pytest
import yaml
from click.testing import CliRunner

from temperbook.cli import main
from temperbook.derive.handbook import derive
from temperbook.outputs import paper
from temperbook.paths import project
from temperbook.records.load import load

ROOT = project().root
REQUIRED = os.environ.get("TEMPERBOOK_REQUIRE_BROWSER") == "1"
PATIENCE = 180  # s that a worker waits for what another one makes
ALLOYS = sorted(
    path.relative_to(ROOT / "data/alloys").with_suffix("").as_posix()
    for path in (ROOT / "data/alloys").rglob("*.yaml")
)

# Texts that would be markup, a template or a script if anything took them for more than text.
HOSTILE = {
    "name": """Britannia <script>alert(1)</script> & "x" {{ 7*7 }}""",
    "short": "<b>*{{7}}[[x]]",
    "also": """"><img src=x onerror=alert(1)>""",
    "about": """#import "x" <script>alert(1)</script> {{ 7*7 }} {% raw %} [[x]] *a* & "q" on='y'""",
    "remark": """*a* _b_ `c` $d$ #panic("e") [[x]] <svg onload=alert(1)> {{ 7*7 }} &lt; \\u{41}""",
    "quick": """<img src=x onerror=alert(1)> #panic("q") {{ 7*7 }} [[x]] *a*""",
    "hazard": """#panic("h") <script>alert(1)</script> [[x]] *a* {{ 7*7 }} $x^2$ @y""",
    "meaning": """#include "y" <b>m</b> [[x]] *a* {{ 7*7 }} = b + c / d""",
    "signed": """#panic("s") *a* <b>s</b> {{ 7*7 }}""",
    "ask": """#panic("k") *a* <b>k</b> {{ 7*7 }} [[x]]""",
}


def missing(what: str) -> None:
    """Skips for want of a program; fails instead where the programs are required."""
    if REQUIRED:
        pytest.fail(f"{what} is missing and TEMPERBOOK_REQUIRE_BROWSER=1")
    pytest.skip(f"{what} is missing")


def shared(factory: pytest.TempPathFactory) -> Path:
    """The temporary folder that all workers of this run share."""
    own = factory.getbasetemp()
    return own.parent if "PYTEST_XDIST_WORKER" in os.environ else own


def once(folder: Path, name: str, make: Callable[[Path], None]) -> Path:
    """`folder/name`, made by the worker that comes first; the others wait until it is whole."""
    target, lock = folder / name, folder / f"{name}.lock"
    done, failed = folder / f"{name}.done", folder / f"{name}.failed"
    try:
        os.close(os.open(lock, os.O_CREAT | os.O_EXCL | os.O_WRONLY))
    except FileExistsError:
        end = time.monotonic() + PATIENCE
        while not done.exists():
            assert not failed.exists(), f"another worker could not make {name}:\n{_read(failed)}"
            assert time.monotonic() < end, f"no worker made {name} in {PATIENCE} s"
            time.sleep(0.1)
        return target
    try:
        make(target)
    except BaseException:
        failed.write_text(traceback.format_exc(), encoding="utf-8")
        raise
    done.touch()
    return target


def _read(path: Path) -> str:
    return path.read_text(encoding="utf-8")


def run(*words: str) -> None:
    """A command of the handbook in this process; its output is the message where it fails."""
    result = CliRunner().invoke(main, list(words))
    assert result.exit_code == 0, f"{result.output}\n{result.exception!r}"


def build_site(root: Path, target: Path) -> None:
    """The whole site of a project, with its paper, through the command."""
    run("--project", str(root), "build", "--out", str(target))


def copied_project(target: Path) -> None:
    """A project of its own with this handbook's records and prose, for a test to change."""
    target.mkdir()
    for name in ("data", "content"):
        shutil.copytree(ROOT / name, target / name)
    shutil.copy(ROOT / "mkdocs.yml", target)
    (target / "site_overrides").symlink_to(ROOT / "site_overrides")


def small_site(target: Path) -> None:
    """`target/site`, made from the small made-up handbook with the real words and observers."""
    shutil.copytree(ROOT / "tests/examples/small", target)
    for folder in ("vocabulary", "observers"):
        shutil.copytree(ROOT / "data" / folder, target / "data" / folder)
    shutil.copy(ROOT / "mkdocs.yml", target)
    (target / "site_overrides").symlink_to(ROOT / "site_overrides")
    build_site(target, target / "site")


def hostile_project(target: Path) -> None:
    """A project with records in which people typed what HOSTILE holds; its pages in `site`, and
    beside it a chart of two alloys, a pack and a job sheet."""
    copied_project(target)
    with changed(target / "data/alloys/silver/britannia-958.yaml") as alloy:
        alloy["name"], alloy["short"], alloy["about"] = (
            HOSTILE[k] for k in ("name", "short", "about")
        )
        alloy["also"].append(HOSTILE["also"])
        alloy["remarks"].append({"text": HOSTILE["remark"], "how": "practice"})
    with changed(target / "data/cautions/hot-into-pickle.yaml") as caution:
        caution["quick"], caution["hazard"] = HOSTILE["quick"], HOSTILE["hazard"]
    with changed(target / "data/glossary/pickle.yaml") as term:
        term["meaning"] = HOSTILE["meaning"]
    with changed(target / "data/packs/first-week.yaml") as pack:
        pack["signed"].append(HOSTILE["signed"])
        pack["exercises"][0]["ask"] = HOSTILE["ask"]
    with changed(target / "data/routes/sterling-sheet.yaml") as route:
        route["about"], route["before"][0] = HOSTILE["about"], HOSTILE["remark"]
        route["stretches"][0]["why"][0] = HOSTILE["hazard"]
    run("--project", str(target), "build", "--only", "site", "--out", str(target / "site"))
    handbook = derive(load(project(target))[0])
    two = [handbook.library.alloys[i] for i in ("silver/britannia-958", "silver/sterling-925")]
    sheets = paper.chart_sheets(handbook, "anneal", "a4", "bench", two)
    (target / "chart.pdf").write_bytes(paper.chart_pdf(handbook, sheets, "Anneal"))
    (target / "pack.pdf").write_bytes(paper.pack_pdf(handbook, "first-week", "a4"))
    (target / "job.pdf").write_bytes(paper.sheet_pdf(handbook, "sterling-sheet", "a4"))


@contextmanager
def changed(path: Path) -> Iterator[dict[str, Any]]:
    """A record to change, written back at the end."""
    record = yaml.safe_load(path.read_text(encoding="utf-8"))
    yield record
    path.write_text(yaml.safe_dump(record, allow_unicode=True, sort_keys=False), encoding="utf-8")
