"""Each statement says how it is known, with what that way of knowing needs."""

from __future__ import annotations

from collections.abc import Iterator

from temperbook.checks.statements import all_statements
from temperbook.problems import Problem
from temperbook.records.load import Library
from temperbook.records.yaml_reader import shown_location

READ = ("quoted", "converted", "chosen", "applied")
REASONED = ("chosen", "applied")


def check(library: Library) -> Iterator[Problem]:
    """Statements that were read name their rows; choices give their reason; the others name no
    row."""
    for placed in all_statements(library):
        stated, place = placed.stated, shown_location(placed.at)
        if stated.how in READ and not stated.from_:
            yield placed.document.problem(
                placed.at,
                f"{place} says that it was read, but not where",
                found=f"how: {stated.how}",
                needed="from: [evidence ids]",
                mend="name the rows, or write `how: practice`",
            )
        if stated.how not in READ and stated.from_:
            yield placed.document.problem(
                placed.at,
                f"{place} names evidence that `how: {stated.how}` does not rest on",
                found=", ".join(stated.from_),
                needed="no `from`, or another `how`",
                mend="quoted, converted, chosen or applied figures rest on rows",
            )
        if stated.how in REASONED and not stated.why:
            yield placed.document.problem(
                placed.at,
                f"{place} gives no reason",
                found=f"how: {stated.how}",
                needed="why: ...",
                mend="say in a sentence why this reading, or why it holds for this alloy",
            )
