"""Computed numbers in prose and packs can be computed: the formula is known and its inputs fit."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from typing import Any

from temperbook.derive import computing
from temperbook.metal import register
from temperbook.problems import Problem, nearest
from temperbook.records import prose
from temperbook.records.load import Library
from temperbook.records.models import Exercise


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
            line = document.line(("exercises", position))
            wrong = fault(exercise.formula, exercise.inputs, exercise.answers, library)
            if wrong:
                yield _problem(document.file, line, f"exercise {exercise.id}", wrong)
            else:
                yield from _placeholders(exercise, document.file, line)


def _placeholders(exercise: Exercise, file: str, line: int) -> Iterator[Problem]:
    """`{name}` in a question stands for an input, in its explanation for an output as well."""
    outputs = register.FORMULAS[exercise.formula].outputs
    for key, text, known in (
        ("ask", exercise.ask, [*exercise.inputs]),
        ("why", exercise.why, [*exercise.inputs, *outputs]),
    ):
        for name in re.findall(r"\{([a-z0-9-]+)\}", text):
            if name not in known:
                yield Problem(
                    file,
                    line,
                    f"exercise {exercise.id} fills in what it does not have",
                    found=f"{key}: ... {{{name}}} ...",
                    needed=nearest(name, known),
                    mend="correct the name in the braces, or the inputs",
                )


def fault(formula: str, inputs: Mapping[str, Any], outputs: list[str], library: Library) -> str:
    """What is needed for the computation to give its outputs; empty where it does."""
    if "alloy" in inputs and any(library.unread(i) for k, i in library.documents if k == "alloys"):
        return ""  # a slip in an alloy's own file is told there
    try:
        given = computing.compute(formula, inputs, library)
    except KeyError as error:
        missing = str(error.args[0])
        return nearest(missing, register.FORMULAS)
    except (ValueError, TypeError) as error:
        return str(error)
    numbers = [name for name, value in given.items() if _is_number(value)]
    absent = [name for name in outputs if name not in numbers]
    return f"an output among {', '.join(numbers)}" if absent else ""


def _is_number(value: Any) -> bool:
    return isinstance(value, int | float) and not isinstance(value, bool)


def _problem(file: str, line: int, found: str, needed: str) -> Problem:
    return Problem(
        file,
        line,
        "a computed number cannot be computed",
        found=found,
        needed=needed,
        mend="correct the formula, its inputs or the output",
    )
