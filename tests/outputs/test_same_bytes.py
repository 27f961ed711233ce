"""The same records give the same files, whatever the clock and the order of a set."""

from __future__ import annotations

import hashlib
import os
import re
import subprocess
import sys
from pathlib import Path

from outputs.building import run

from temperbook.derive.handbook import Handbook
from temperbook.paths import Project


def digests(folder: Path) -> dict[str, str]:
    return {
        path.relative_to(folder).as_posix(): hashlib.sha256(path.read_bytes()).hexdigest()
        for path in sorted(folder.rglob("*"))
        if path.is_file()
    }


def built_in(project: Path, target: Path, **changed: str) -> Path:
    """A build of a project in a process of its own, with another clock and order of sets."""
    words = [sys.executable, "-m", "temperbook", "--project", str(project), "build"]
    made = subprocess.run(
        [*words, "--out", str(target)],
        env={**os.environ, **changed},
        capture_output=True,
        text=True,
        cwd=target.parent,
    )
    assert made.returncode == 0, made.stderr
    return target


def test_two_builds_give_the_same_files(buildable: Project, tmp_path: Path) -> None:
    """Made from the small handbook, with paper; that most pages of the real one come out alike in
    two builds is seen where hostile records are built (test_markup_is_text)."""
    one = built_in(buildable.root, tmp_path / "one", PYTHONHASHSEED="1", TZ="UTC")
    changed = {"SOURCE_DATE_EPOCH": "86400", "PYTHONHASHSEED": "77", "TZ": "Asia/Tokyo"}
    other = built_in(buildable.root, tmp_path / "other", **changed)
    first, second = digests(one), digests(other)
    assert set(first) == set(second)
    assert len(first) > 100
    assert {name for name in first if first[name] != second[name]} == set()


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
