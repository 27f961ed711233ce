"""What alloys are called, read from the heads of their files alone."""

from __future__ import annotations

from dataclasses import dataclass

import yaml

from temperbook.paths import Project

BODY = "\nfigures:"  # where the head of a record ends


@dataclass(frozen=True)
class Head:
    """An alloy's names and composition [percent by element]."""

    id: str
    name: str
    short: str
    also: list[str]
    composition: dict[str, float]

    @property
    def family(self) -> str:
        """The folder that the record stands in."""
        return self.id.split("/")[0]


def read(project: Project) -> dict[str, Head]:
    """The heads of all alloys by id; empty where one cannot be read, which the whole tells of."""
    folder = project.data / "alloys"
    paths = {p.relative_to(folder).with_suffix("").as_posix(): p for p in folder.rglob("*.yaml")}
    try:
        return {due: _head(path.read_text(encoding="utf-8")) for due, path in sorted(paths.items())}
    except (OSError, UnicodeError, yaml.YAMLError, KeyError, TypeError, AttributeError):
        return {}


def _head(text: str) -> Head:
    given = yaml.load(text.split(BODY, 1)[0], Loader=yaml.CSafeLoader)
    also = [str(name) for name in given.get("also", [])]
    shares = {str(symbol): float(share) for symbol, share in given["composition"].items()}
    return Head(str(given["id"]), str(given["name"]), str(given["short"]), also, shares)
