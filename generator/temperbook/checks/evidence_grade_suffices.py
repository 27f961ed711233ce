"""A workshop page (grade D) stands behind a figure only with a reason, and never behind a
caution; what keeps people safe rests on those who may say so."""

from __future__ import annotations

from collections.abc import Iterator

from temperbook.checks.statements import Placed, all_statements, figures
from temperbook.problems import Problem
from temperbook.records.figures import Figure
from temperbook.records.load import Library
from temperbook.records.yaml_reader import shown_location

# Kinds of sources that a limit for people may rest on, and the group of its quantities.
SAFE = ("agency", "law", "standard", "paper", "book", "association")
PEOPLE = "safety"


def check(library: Library) -> Iterator[Problem]:
    """Statements that rest on grade D alone say why; cautions rest on better."""
    for placed in all_statements(library):
        rows = placed.rows(library)
        complete = rows and len(rows) == len(placed.stated.from_)
        if complete and all(row.grade == "D" for row in rows) and not placed.stated.why:
            yield placed.document.problem(
                placed.at,
                f"{shown_location(placed.at)} rests on workshop pages alone",
                found=", ".join(row.id for row in rows),
                needed="a row of grade A to C, or `why:`",
                mend="look for a better source; if there is none, say so in `why`",
            )
    for caution_id, caution in library.cautions.items():
        for position, row_id in enumerate(caution.from_):
            row = library.evidence.get(row_id)
            if row and row.grade in ("B", "D"):
                yield library.document(caution_id, "cautions").problem(
                    ("from", position),
                    "a caution rests on a maker's or workshop page",
                    found=f"{row_id}, grade {row.grade}",
                    needed="an agency, standard, law, paper or book",
                    mend="find the agency's text, or leave the row out",
                )
    for placed, quantity, figure in figures(library):
        known = library.vocabulary.quantities.get(quantity)
        if known and known.group == PEOPLE:
            yield from _limit_for_people(placed, figure, library)


def _limit_for_people(placed: Placed, figure: Figure, library: Library) -> Iterator[Problem]:
    rows = placed.rows(library)
    kinds = {
        row.id: library.sources[row.source].kind for row in rows if row.source in library.sources
    }
    wrong = [f"{row}, {kind}" for row, kind in kinds.items() if kind not in SAFE]
    if wrong or not figure.from_:
        yield placed.document.problem(
            placed.at,
            f"{shown_location(placed.at)} is a limit for people that rests on less",
            found=", ".join(wrong) or f"how: {figure.how}",
            needed="rows of an " + ", ".join(SAFE),
            mend="find the agency's or the law's text, or leave the figure out",
        )
