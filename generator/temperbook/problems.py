"""What is wrong with the input, where, and how to mend it. Collected first, reported once."""

from __future__ import annotations

import difflib
from collections.abc import Iterable
from dataclasses import dataclass

MOST_LISTED = 45


@dataclass(frozen=True, order=True)
class Problem:
    """One thing to mend, in one place of one file."""

    file: str
    line: int
    text: str
    found: str = ""
    needed: str = ""
    mend: str = ""

    def __str__(self) -> str:
        """The problem as the terminal shows it: a headline and up to three indented lines."""
        where = f"{self.file}:{self.line}: " if self.line else f"{self.file}: "
        lines = [where + self.text]
        for label in ("found", "needed", "mend"):
            said = getattr(self, label)
            if said:
                lines.append(f"  {label:<7} {said}")
        return "\n".join(lines)

    def as_json(self) -> dict[str, str | int]:
        """The same as plain keys, for a machine."""
        return {
            key: getattr(self, key) for key in ("file", "line", "text", "found", "needed", "mend")
        }


class DataProblems(Exception):
    """Raised once, with everything that was found wrong."""

    def __init__(self, problems: Iterable[Problem], read: str = "") -> None:
        self.problems = sorted(set(problems))
        self.read = read
        super().__init__(self.summary())

    def summary(self) -> str:
        """How many problems in how many files, and what was read."""
        files = len({problem.file for problem in self.problems})
        counted = f"{count(len(self.problems), 'problem')} in {count(files, 'file')}"
        return f"{counted} ({self.read} read)" if self.read else counted

    def __str__(self) -> str:
        """All problems and the summary, as printed."""
        return "\n".join([*(str(problem) for problem in self.problems), self.summary()])


def count(number: int, noun: str) -> str:
    """`1 problem`, `1,912 problems`."""
    return f"{number:,} {noun}" + ("" if number == 1 else "s")


def nearest(word: str, allowed: Iterable[str]) -> str:
    """What is allowed, the likeliest first; all of it where nothing is near and it is not much."""
    words = sorted(allowed)
    plain: dict[str, list[str]] = {}
    for candidate in words:
        plain.setdefault(candidate.lower(), []).append(candidate)
    near = difflib.get_close_matches(word.lower(), plain, n=3, cutoff=0.6)
    if near:
        likely = [candidate for key in near for candidate in plain[key]]
        return "did you mean " + " or ".join(f"`{candidate}`" for candidate in likely) + "?"
    if len(words) > MOST_LISTED:
        return f"one of {len(words):,} that are known; none is near"
    return "one of: " + ", ".join(words) if words else "there is none yet"
