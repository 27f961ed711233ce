"""The same records give the same files, whatever the clock and the order of a set."""

from __future__ import annotations

import hashlib
import os
import re
import subprocess
import sys
from pathlib import Path

import pytest
from outputs.building import ROOT, once, run, shared

from temperbook.derive.handbook import Handbook
from temperbook.paths import Project


def digests(folder: Path) -> dict[str, str]:
    return {
        path.relative_to(folder).as_posix(): hashlib.sha256(path.read_bytes()).hexdigest()
        for path in sorted(folder.rglob("*"))
        if path.is_file()
    }


@pytest.fixture(scope="module")
def again(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A second build, in a process with another clock, another order of sets and another folder."""

    def make(target: Path) -> None:
        changed = {"SOURCE_DATE_EPOCH": "86400", "PYTHONHASHSEED": "77", "TZ": "Asia/Tokyo"}
        words = [
            sys.executable,
            "-m",
            "temperbook",
            "--project",
            str(ROOT),
            "build",
            "--out",
            str(target),
        ]
        made = subprocess.run(
            words, env={**os.environ, **changed}, capture_output=True, text=True, cwd=target.parent
        )
        assert made.returncode == 0, made.stderr

    return once(shared(tmp_path_factory), "site-again", make)


def test_two_builds_give_the_same_files(built: Path, again: Path) -> None:
    one, other = digests(built), digests(again)
    assert set(one) == set(other)
    assert len(one) > 400
    assert {name for name in one if one[name] != other[name]} == set()


def test_the_sitemap_is_dated_by_the_edition(built: Path, handbook: Handbook) -> None:
    text = (built / "sitemap.xml").read_text(encoding="utf-8")
    dates = re.findall("<lastmod>([^<]*)</lastmod>", text)
    assert set(dates) == {handbook.library.edition.date}
    assert len(dates) == text.count("<loc>") == len(list(built.rglob("index.html")))


def test_papers_alone_are_those_of_the_whole_build(buildable: Project, tmp_path: Path) -> None:
    build = ("--project", str(buildable.root), "build")
    run(*build, "--out", str(tmp_path / "whole"))
    run(*build, "--only", "paper", "--out", str(tmp_path / "paper"))
    alone, whole = digests(tmp_path / "paper"), digests(tmp_path / "whole")
    assert len(alone) >= 4
    assert {name: whole[name] for name in alone} == alone
    assert not [name for name in whole if name.endswith(".pdf") and name not in alone]


def test_a_site_without_paper_is_whole_and_says_so(buildable: Project, tmp_path: Path) -> None:
    build = ("--project", str(buildable.root), "build", "--only", "site")
    run(*build, "--out", str(tmp_path / "site"))
    assert not list((tmp_path / "site").rglob("*.pdf"))
    text = (tmp_path / "site/wall-charts/anneal/index.html").read_text(encoding="utf-8")
    assert "This build left paper out." in text
    assert "<img" not in text
