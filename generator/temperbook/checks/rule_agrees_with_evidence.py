"""A rule in a closed word (how to cool, which pickle) says what its rows say, of this metal."""

from __future__ import annotations

from collections.abc import Iterator

from temperbook.checks.statements import Placed, all_statements
from temperbook.problems import Problem
from temperbook.records.evidence import Evidence
from temperbook.records.figures import Rule
from temperbook.records.load import Library
from temperbook.records.models import RULES
from temperbook.records.yaml_reader import shown_location

QUANTITY = {**RULES, "cooling": "cooling"}
# What may be chosen where the rows contradict each other, although none of them says it.
UNDECIDED = "either"


def check(library: Library) -> Iterator[Problem]:
    """Each rule that was read against the rows that it names."""
    known = library.vocabulary.quantities
    for placed in all_statements(library):
        rows = placed.rows(library)
        if isinstance(placed.stated, Rule) and rows and len(rows) == len(placed.stated.from_):
            astray = list(_subjects(placed, rows, library))
            yield from astray
            quantity = known.get(QUANTITY[str(placed.at[0])])
            if not astray and quantity and placed.stated.rule in quantity.words:
                yield from _words(placed, placed.stated, rows)


def _subjects(placed: Placed, rows: list[Evidence], library: Library) -> Iterator[Problem]:
    key = str(placed.at[0])
    alloy = library.alloys.get(placed.record)
    groups = alloy.subjects if alloy and placed.stated.how in ("chosen", "applied") else []
    for row in rows:
        if row.quantity != QUANTITY[key] or row.record not in (placed.record, *groups):
            yield placed.document.problem(
                placed.at,
                f"{shown_location(placed.at)} rests on a row of something else ({row.id})",
                found=f"{row.quantity} of {row.record}",
                needed=f"{QUANTITY[key]} of {placed.record}"
                + (f", or applied from {', '.join(alloy.subjects)}" if alloy else ""),
                mend="name the right row; a rule of a system or family is `how: applied`",
            )


def _words(placed: Placed, rule: Rule, rows: list[Evidence]) -> Iterator[Problem]:
    said = [row.word for row in rows]
    differ = len(set(said)) > 1
    if rule.how in ("quoted", "converted"):
        right = set(said) == {rule.rule}
    else:
        right = rule.rule in said or (rule.rule == UNDECIDED and differ)
    if not right:
        yield placed.document.problem(
            (*placed.at, "rule"),
            f"{shown_location(placed.at)}.rule differs from its rows",
            found=rule.rule,
            needed=" or ".join(sorted(set(said))),
            mend="look at the source; correct the rule or the row, or write `how: chosen`",
        )
