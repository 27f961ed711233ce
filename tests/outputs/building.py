"""Builds what tests of the output look at, once for all workers of a run."""

from __future__ import annotations

import os
import time
import traceback
from collections.abc import Callable
from pathlib import Path

import pytest
from click.testing import CliRunner

from temperbook.cli import main
from temperbook.paths import project

ROOT = project().root
REQUIRED = os.environ.get("TEMPERBOOK_REQUIRE_BROWSER") == "1"
PATIENCE = 180  # s that a worker waits for what another one makes
ALLOYS = sorted(
    path.relative_to(ROOT / "data/alloys").with_suffix("").as_posix()
    for path in (ROOT / "data/alloys").rglob("*.yaml")
)


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
    import shutil

    target.mkdir()
    for name in ("data", "content"):
        shutil.copytree(ROOT / name, target / name)
    shutil.copy(ROOT / "mkdocs.yml", target)
    (target / "site_overrides").symlink_to(ROOT / "site_overrides")
