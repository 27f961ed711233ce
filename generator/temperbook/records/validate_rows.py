"""Holds evidence rows against the vocabulary: quantity, grade, words, and a printed number in a
unit."""

from __future__ import annotations

from collections.abc import Iterator

from temperbook import units
from temperbook.problems import Problem, nearest
from temperbook.records import printed
from temperbook.records.evidence import Evidence
from temperbook.records.figures import BASIS_KEYS, WORDED
from temperbook.records.vocabulary import Quantity, Vocabulary


def problems(row: Evidence, words: Vocabulary) -> Iterator[Problem]:
    """What the vocabulary does not allow in one row."""
    known = words.quantities.get(row.quantity)
    if known is None:
        yield _problem(
            row,
            "unknown quantity",
            row.quantity or "no quantity",
            nearest(row.quantity, words.quantities),
            "correct the name, or declare it in data/vocabulary/quantities.yaml",
        )
        return
    yield from _grade(row, words)
    yield from _basis(row, known, words)
    if known.words and row.word not in known.words:
        yield _problem(
            row,
            "`word` is no known word",
            row.word or "no word",
            nearest(row.word, known.words),
            "choose one of the words; what the source says stands in `printed_value`",
        )
    if known.numeric:
        yield from _number(row, known)


def _problem(row: Evidence, text: str, found: str, needed: str, mend: str) -> Problem:
    return Problem(row.file, row.line, f"{row.id}: {text}", found, needed, mend)


def _grade(row: Evidence, words: Vocabulary) -> Iterator[Problem]:
    grades = words.words.get("grade", {})
    if row.grade not in grades:
        yield _problem(
            row,
            "unknown grade",
            row.grade or "no grade",
            ", ".join(grades),
            "say how the number reached you; grades are explained in DEVELOPERS.md",
        )
    if not row.locator and row.grade in ("A", "B"):
        yield _problem(
            row,
            "does not say where in the work it stands",
            "no locator",
            "a page, table or section",
            "look it up again",
        )


def _basis(row: Evidence, known: Quantity, words: Vocabulary) -> Iterator[Problem]:
    for key in BASIS_KEYS:
        value, allowed = getattr(row, key), words.words.get(key, {})
        if not value:
            if key in known.needs:
                yield _problem(
                    row,
                    f"does not say `{key}`",
                    "nothing",
                    " | ".join(allowed) or "...",
                    f"fill the column; {known.label.lower()} means nothing without it",
                )
        elif key not in (*known.needs, *known.allows):
            yield _problem(
                row,
                f"`{key}` means nothing for {known.label.lower()}",
                value,
                ", ".join((*known.needs, *known.allows)) or "none",
                "empty the column; what the source adds belongs into `conditions`",
            )
        elif key in WORDED and value not in allowed:
            yield _problem(
                row,
                f"`{key}` is no known word",
                value,
                nearest(value, allowed),
                "choose one of the words",
            )


def _number(row: Evidence, known: Quantity) -> Iterator[Problem]:
    if printed.parse(row.printed_value) is None:
        yield _problem(
            row,
            "printed_value is no number",
            row.printed_value or "nothing",
            "779.1, 600-650, <=0.004, >=110 or ~760",
            "write the number as printed",
        )
    if row.printed_unit not in units.PINT_NAMES:
        yield _problem(
            row,
            "unknown printed_unit",
            row.printed_unit or "no unit",
            nearest(row.printed_unit, units.known()),
            "choose one of the units",
        )
    elif known.unit in units.PINT_NAMES and not units.same_kind(row.printed_unit, known.unit):
        yield _problem(
            row,
            f"the unit is no unit of {known.label.lower()}",
            row.printed_unit,
            f"a unit that converts to {known.unit}",
            "look at the source again, or choose the right quantity",
        )
