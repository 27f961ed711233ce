"""Prose calls its numbers; a digit with a unit typed by hand would have no provenance."""

from __future__ import annotations

import re
from collections.abc import Iterator

from temperbook.problems import Problem
from temperbook.records.load import Library

UNITS = r"°\s?[CF]|degC|degF|K\b|kelvin|%|per ?cent|percent|mm\b|cm\b|µm|MPa|HV\b|HB\b|g\b|kg\b|min\b|minutes?|seconds?|hours?|ct\b"
TYPED = re.compile(rf"\d\s*(?:{UNITS})")
# Names of alloys and units that look like numbers.
NAMES = re.compile(r"\b\d+(?:\.\d+)?\s?ct\b")


def check(library: Library) -> Iterator[Problem]:
    """Digits with a unit that stand in running text."""
    for prose in library.prose.values():
        for inline in prose.inlines():
            if inline.kind != "text":
                continue
            found = TYPED.search(NAMES.sub("", inline.text))
            if found:
                yield Problem(
                    prose.file,
                    inline.line,
                    "a number with its unit is typed by hand",
                    found=inline.text[max(0, found.start() - 20) : found.end() + 10].strip(),
                    needed="[[record#quantity@key=value]], [[=formula ... -> output]] or [[in 6 mm]]",
                    mend="call the figure by its address, so that its source goes with it",
                )
