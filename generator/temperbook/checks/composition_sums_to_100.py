"""A nominal composition is whole: its shares sum to 100 percent of the mass."""

from __future__ import annotations

from collections.abc import Iterator

from temperbook.problems import Problem
from temperbook.records.load import Library

SLACK = 0.05


def check(library: Library) -> Iterator[Problem]:
    """Alloys and solders whose shares do not sum to 100, or hold a share that is none."""
    for record_id, alloy in library.mixed.items():
        total = sum(alloy.composition.values())
        if abs(total - 100) > SLACK or min(alloy.composition.values(), default=0) <= 0:
            yield library.document(record_id).problem(
                ("composition",),
                "composition does not sum to 100",
                found=" + ".join(f"{e} {w:g}" for e, w in alloy.composition.items())
                + f" = {total:g}",
                needed="shares above zero, in percent of the mass, that sum to 100",
                mend="look at the source for the missing element or the slip",
            )
