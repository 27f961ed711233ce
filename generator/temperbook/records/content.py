"""Reads the prose of a project: every Markdown file below content/."""

from __future__ import annotations

from temperbook.paths import Project
from temperbook.problems import Problem
from temperbook.records import text_file
from temperbook.records.prose import Prose, parse


def read_folder(project: Project) -> tuple[dict[str, Prose], list[Problem]]:
    """All prose by its path in content/ without `.md`, and what is wrong with it."""
    found: dict[str, Prose] = {}
    problems: list[Problem] = []
    for path in sorted(project.content.rglob("*.md")):
        shown = project.shown(path)
        stem = path.relative_to(project.content).with_suffix("").as_posix()
        text, unreadable = text_file.read(path, shown)
        if unreadable:
            # It keeps its place, so that nothing else complains that it is missing.
            found[stem] = Prose(shown, "", ())
            problems.append(unreadable)
            continue
        found[stem], more = parse(text, shown)
        problems += more
    return found, problems
