"""Computed numbers in prose and packs can be computed: the formula is known and its inputs fit."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Any

from temperbook.derive import computing
from temperbook.metal import register
from temperbook.problems import Problem, nearest
from temperbook.records import prose
from temperbook.records.load import Library


def check(library: Library) -> Iterator[Problem]:
    """Calls of formulas that give no number."""
    for text in library.prose.values():
        for inline in text.inlines():
            if inline.kind != "compute":
                continue
            call = prose.computation(inline.target)
            said = f"[[={inline.target}]]"
            if call is None:
                yield _problem(text.file, inline.line, said, "[[=formula key=value -> output]]")
                continue
            wrong = fault(call.formula, call.inputs, [call.output], library)
            if wrong:
                yield _problem(text.file, inline.line, said, wrong)
    for pack_id, pack in library.packs.items():
        document = library.document(pack_id, "packs")
        for position, exercise in enumerate(pack.exercises):
            wrong = fault(exercise.formula, exercise.inputs, exercise.answers, library)
            if wrong:
                at = ("exercises", position)
                yield _problem(document.file, document.line(at), f"exercise {exercise.id}", wrong)


def fault(formula: str, inputs: Mapping[str, Any], outputs: list[str], library: Library) -> str:
    """What is needed for the computation to give its outputs; empty where it does."""
    try:
        given = computing.compute(formula, inputs, library)
    except KeyError as error:
        missing = str(error.args[0])
        return (
            nearest(missing, register.FORMULAS) if missing == formula else f"a density of {missing}"
        )
    except (ValueError, TypeError) as error:
        return str(error)
    absent = [name for name in outputs if name not in given]
    return f"an output among {', '.join(given)}" if absent else ""


def _problem(file: str, line: int, found: str, needed: str) -> Problem:
    return Problem(
        file,
        line,
        "a computed number cannot be computed",
        found=found,
        needed=needed,
        mend="correct the formula, its inputs or the output",
    )
