"""What many tests begin with: the real handbook, read once a worker, and a small made-up one."""

from __future__ import annotations

import shutil
from pathlib import Path

import pytest
from hypothesis import settings

from temperbook import checks, paths
from temperbook.commands import reading
from temperbook.derive.handbook import Handbook, derive
from temperbook.paths import Project
from temperbook.records.load import Library, load

ROOT = Path(__file__).resolve().parents[1]
EXAMPLES = Path(__file__).parent / "examples"
NOTES = ("message.txt", "removed.txt")

# No deadline: two workers share the machine with whatever else runs on it. The same examples each
# time, so that a change is to blame where a test fails; `--hypothesis-profile=search` looks for new
# ones.
settings.register_profile("temperbook", deadline=None, max_examples=60, derandomize=True)
settings.register_profile("search", deadline=None, max_examples=2000, print_blob=True)
settings.load_profile("temperbook")


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Browser tests last: all of them wait for the built site, which one worker makes meanwhile."""
    items.sort(key=lambda item: "browser" in item.path.parts)


def copy_small(target: Path) -> Project:
    """The small made-up handbook in a new folder, with the real words and the real observer."""
    shutil.copytree(EXAMPLES / "small", target)
    for folder in ("vocabulary", "observers"):
        shutil.copytree(ROOT / "data" / folder, target / "data" / folder)
    return paths.project(target)


def lay_over(case: Path, project: Project) -> None:
    """The files of a bad example, put over those of a project."""
    for path in case.rglob("*"):
        if path.is_file() and path.name not in NOTES:
            target = project.root / path.relative_to(case)
            target.parent.mkdir(parents=True, exist_ok=True)
            shutil.copy(path, target)
    removed = case / "removed.txt"
    if removed.exists():
        for name in removed.read_text(encoding="utf-8").split():
            (project.root / name).unlink()


def bad_cases() -> list[Path]:
    """Every bad example."""
    return sorted(path.parent for path in (EXAMPLES / "bad").glob("*/message.txt"))


@pytest.fixture(scope="session")
def project() -> Project:
    """The real project."""
    return paths.project()


@pytest.fixture(scope="session")
def library(project: Project) -> Library:
    """The real records."""
    library, found = load(project)
    assert not found, "\n".join(map(str, sorted(found)[:5]))
    return library


@pytest.fixture(scope="session")
def handbook(library: Library) -> Handbook:
    """The real handbook, which every rule has passed."""
    found = checks.run(library)
    assert not found, "\n".join(map(str, sorted(found)[:5]))
    return derive(library)


@pytest.fixture
def read_once(handbook: Handbook, monkeypatch: pytest.MonkeyPatch) -> None:
    """Commands on the real project take the handbook that is read already, not once more each."""
    real = reading.read_handbook

    def known(root: Path | None) -> Handbook:
        return handbook if root in (None, ROOT) else real(root)

    for module in ("pack", "chart", "show", "export"):
        monkeypatch.setattr(f"temperbook.commands.{module}.read_handbook", known)


@pytest.fixture
def small(tmp_path: Path) -> Project:
    """A copy of the small made-up handbook that a test may change."""
    return copy_small(tmp_path / "handbook")


@pytest.fixture
def buildable(small: Project) -> Project:
    """The small handbook with what MkDocs needs to make a site of it."""
    shutil.copy(ROOT / "mkdocs.yml", small.root)
    (small.root / "site_overrides").symlink_to(ROOT / "site_overrides")
    return small
