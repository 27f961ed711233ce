"""Prose calls its numbers; a digit with a unit typed by hand would have no provenance."""

from __future__ import annotations

import re
from collections.abc import Iterator

from temperbook.problems import Problem
from temperbook.records.load import Library
from temperbook.records.prose import Prose, walk

UNITS = (
    r"°|degrees?\b|degC|degF|K\b|kelvin|%|‰|per ?cent|percent|mm\b|cm\b|µm|inch(?:es)?\b"
    r"|MPa|HV\b|HB\b|g\b|kg\b|min\b|minutes?|seconds?|hours?"
)
TYPED = re.compile(rf"\d\s*(?:{UNITS})")
NEEDED = "[[record#quantity@key=value]], [[=formula ... -> output]] or [[in 6 mm]]"


def check(library: Library) -> Iterator[Problem]:
    """Digits with a unit that stand in running text."""
    for prose in library.prose.values():
        for line, text in _texts(prose):
            for found in TYPED.finditer(text):
                yield Problem(
                    prose.file,
                    line,
                    "a number with its unit is typed by hand",
                    found=_excerpt(text, found.start(), found.end()),
                    needed=NEEDED,
                    mend="call the figure by its address, so that its source goes with it",
                )


def _excerpt(text: str, start: int, end: int) -> str:
    """The number with a few whole words around it."""
    before, after = text[max(0, start - 20) : start], text[end : end + 10]
    if start > 20:
        before = before.partition(" ")[2]
    if end + 10 < len(text):
        after = after.rpartition(" ")[0]
    return f"{before}{text[start:end]}{after}".strip()


def _texts(prose: Prose) -> Iterator[tuple[int, str]]:
    """The title, running text, and what stands with pictures."""
    yield 1, prose.title
    for inline in prose.inlines():
        if inline.kind in ("text", "code"):
            yield inline.line, inline.text
    for block in walk(prose.blocks):
        yield block.line, block.alt
        yield block.line, block.caption
