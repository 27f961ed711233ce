"""Where the project's folders are. Knows nothing of what is in them."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path


@dataclass(frozen=True)
class Project:
    """The folders of one handbook project, all below `root`."""

    root: Path

    @property
    def data(self) -> Path:
        """Folder of the records."""
        return self.root / "data"

    @property
    def content(self) -> Path:
        """Folder of the prose."""
        return self.root / "content"

    @property
    def fonts(self) -> Path:
        """Folder of the TTF fonts that print uses."""
        return installed_root() / "site_overrides" / "assets" / "fonts"

    def shown(self, path: Path) -> str:
        """The path as messages print it: relative to the project where possible."""
        try:
            return path.relative_to(self.root).as_posix()
        except ValueError:
            return str(path)


def installed_root() -> Path:
    """The checkout that this code runs from (an editable install never copies data)."""
    return Path(__file__).resolve().parents[2]


def project(root: Path | None = None) -> Project:
    """The project at `root`, or the one that this code belongs to."""
    return Project(root.resolve() if root else installed_root())
