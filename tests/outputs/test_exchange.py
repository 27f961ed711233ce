"""A build takes the old one's place in one step, or leaves it alone."""

from __future__ import annotations

import os
from pathlib import Path

import pytest

from temperbook.outputs import exchange
from temperbook.outputs.exchange import replacing


@pytest.fixture
def old(tmp_path: Path) -> Path:
    """A folder that an earlier build made."""
    target = tmp_path / "site"
    (target / "deep").mkdir(parents=True)
    (target / "index.html").write_text("old")
    (target / "deep" / "only-old").write_text("old")
    return target


@pytest.fixture(params=["at once", "by two renames"])
def way(request: pytest.FixtureRequest, monkeypatch: pytest.MonkeyPatch) -> str:
    """Both ways of exchanging: Linux's own, and the one for all other systems."""
    if request.param == "by two renames":
        monkeypatch.setattr(exchange, "_exchanged", lambda one, other: False)
    return str(request.param)


def names(folder: Path) -> list[str]:
    return sorted(path.name for path in folder.iterdir())


def test_the_new_folder_takes_the_place_of_the_old_one(old: Path, way: str) -> None:
    with replacing(old) as fresh:
        assert fresh.parent == old.parent
        assert names(fresh) == []
        (fresh / "index.html").write_text("new")
        assert (old / "index.html").read_text() == "old"
    assert names(old) == ["index.html"]
    assert (old / "index.html").read_text() == "new"
    assert names(old.parent) == ["site"]
    assert old.stat().st_mode & 0o777 == 0o755


def test_a_first_build_needs_no_old_folder(tmp_path: Path, way: str) -> None:
    target = tmp_path / "far" / "down" / "site"
    with replacing(target) as fresh:
        (fresh / "index.html").write_text("new")
    assert (target / "index.html").read_text() == "new"
    assert names(target.parent) == ["site"]


@pytest.mark.parametrize("error", [ValueError, SystemExit, KeyboardInterrupt])
def test_what_was_built_stays_where_building_fails(
    old: Path, error: type[BaseException], way: str
) -> None:
    def build() -> None:
        with replacing(old) as fresh:
            (fresh / "index.html").write_text("half")
            raise error(1)

    with pytest.raises(error):
        build()
    assert (old / "index.html").read_text() == "old"
    assert (old / "deep" / "only-old").read_text() == "old"
    assert names(old.parent) == ["site"]


def test_a_failed_first_build_leaves_nothing(tmp_path: Path) -> None:
    with pytest.raises(ValueError, match="stop"), replacing(tmp_path / "site"):
        raise ValueError("stop")
    assert names(tmp_path) == []


def test_a_stop_between_two_renames_is_mended_at_the_next_start(tmp_path: Path) -> None:
    # Stopped after the old folder was put aside and before the new one came.
    aside = tmp_path / ".site-old"
    aside.mkdir()
    (aside / "index.html").write_text("old")

    def build() -> None:
        with replacing(tmp_path / "site"):
            assert (tmp_path / "site" / "index.html").read_text() == "old"
            raise ValueError("stop")

    with pytest.raises(ValueError, match="stop"):
        build()
    assert (tmp_path / "site" / "index.html").read_text() == "old"
    assert names(tmp_path) == ["site"]


def test_a_stop_after_both_renames_leaves_nothing_aside(old: Path) -> None:
    # Stopped before what was put aside could be removed.
    aside = old.parent / ".site-old"
    aside.mkdir()
    (aside / "index.html").write_text("older")
    with replacing(old) as fresh:
        assert (old / "index.html").read_text() == "old"
        (fresh / "index.html").write_text("new")
    assert (old / "index.html").read_text() == "new"
    assert names(old.parent) == ["site"]


def test_the_old_folder_comes_back_where_the_second_rename_fails(
    old: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(exchange, "_exchanged", lambda one, other: False)
    rename = Path.rename

    def refused(self: Path, target: Path) -> Path:
        if "-new-" in self.name:
            raise OSError("disk is gone")
        return rename(self, target)

    monkeypatch.setattr(Path, "rename", refused)
    with pytest.raises(OSError, match="disk is gone"), replacing(old) as fresh:
        (fresh / "index.html").write_text("new")
    assert (old / "index.html").read_text() == "old"
    assert names(old.parent) == ["site"]


def test_linux_exchanges_two_folders_in_one_step(old: Path) -> None:
    other = old.with_name("other")
    other.mkdir()
    if not hasattr(os, "uname") or os.uname().sysname != "Linux":
        pytest.skip("only Linux exchanges two names at once")
    if not exchange._exchanged(other, old):
        pytest.skip("this file system cannot exchange two names at once")
    assert names(old) == []
    assert names(other) == ["deep", "index.html"]


def test_a_folder_that_is_where_one_stands_is_replaced(
    old: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(old.parent)
    with replacing(Path("site")) as fresh:
        (fresh / "index.html").write_text("new")
    assert (old / "index.html").read_text() == "new"
