"""Reads the prose of a project: every Markdown file below content/."""

from __future__ import annotations

from temperbook.paths import Project
from temperbook.problems import Problem
from temperbook.records.prose import Prose, parse


def read_folder(project: Project) -> tuple[dict[str, Prose], list[Problem]]:
    """All prose by its path in content/ without `.md`, and what is wrong with it."""
    found: dict[str, Prose] = {}
    problems: list[Problem] = []
    for path in sorted(project.content.rglob("*.md")):
        shown = project.shown(path)
        try:
            text = path.read_text(encoding="utf-8")
        except (OSError, UnicodeDecodeError) as error:
            problems.append(
                Problem(
                    shown,
                    0,
                    "cannot be read",
                    found=str(error),
                    needed="text in UTF-8",
                    mend="save it again as UTF-8",
                )
            )
            continue
        prose, more = parse(text, shown)
        problems += more
        found[path.relative_to(project.content).with_suffix("").as_posix()] = prose
    return found, problems
