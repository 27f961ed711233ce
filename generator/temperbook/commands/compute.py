"""`temperbook compute`: one formula of the register, answered in words or as JSON."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from pathlib import Path
from typing import TYPE_CHECKING, Any

import click

from temperbook.commands.reading import print_json, print_problems

if TYPE_CHECKING:
    from temperbook.metal.register.formula import Answer
    from temperbook.records.load import Library


@click.command()
@click.argument("formula_id", metavar="[ID]", required=False)
@click.argument("given", metavar="[KEY=VALUE]...", nargs=-1)
@click.option("--json", "as_json", is_flag=True, help="Print inputs and outputs as JSON.")
@click.pass_obj
def command(
    project: Path | None, formula_id: str | None, given: tuple[str, ...], as_json: bool
) -> None:
    """Answer a formula of the register; without an ID, list them.

    Lengths are mm, temperatures degC, masses g, stresses MPa, times min, shares percent, unless a
    unit is written behind the number: 0.04in, 18awg, 1400degF, 2ozt (oz is the troy ounce too).
    Sections are written "round 1.0", "square 6", "flat 20x1.5", compositions "Ag 92.5, Cu 7.5".
    Where a formula takes an alloy, alloy=NAME is any of its names.

    \b
    Example:
      temperbook compute reduction from="round 1.0" to="round 0.4"
      temperbook compute mass alloy=sterling section="round 18awg" length=100
      temperbook compute draw-schedule from=1.0 to=0.5 per-draw=20 --json
    """
    from temperbook.metal import register
    from temperbook.problems import DataProblems, nearest
    from temperbook.views import answers

    if formula_id is None:
        if as_json:
            print_json(answers.listed())
        else:
            click.echo("\n".join(answers.lines_of_all()))
        return
    if formula_id not in register.FORMULAS:
        raise click.UsageError(
            f"no formula is called `{formula_id}`; {nearest(formula_id, register.FORMULAS)}"
        )
    try:
        inputs, answer = _answered(formula_id, _pairs(given), project)
    except ValueError as error:
        raise click.UsageError(str(error)) from error
    except DataProblems as problems:
        print_problems(problems)
    if as_json:
        print_json(answers.data(formula_id, inputs, answer))
    else:
        click.echo("\n".join(answers.lines(formula_id, inputs, answer)))


def _pairs(given: tuple[str, ...]) -> dict[str, str]:
    pairs: dict[str, str] = {}
    for word in given:
        name, equals, value = word.partition("=")
        if not equals or not value.strip():
            raise ValueError(f"`{word}` is not key=value")
        if name in pairs:
            raise ValueError(f"{name} is given twice")
        pairs[name] = value
    return pairs


def _answered(
    formula_id: str, pairs: Mapping[str, str], project: Path | None
) -> tuple[dict[str, Any], Answer]:
    """The inputs as they were read, and the answer.

    Of the records only those kinds are read that this formula's tables are made from.
    """
    from temperbook.metal import register
    from temperbook.views import typed

    formula, records = register.FORMULAS[formula_id], _Records(project)
    inputs = {
        name: typed.read(text, formula.inputs[name], records.gauges)
        if name in formula.inputs
        else text
        for name, text in pairs.items()
    }
    if not formula.tables or (formula.tables == ("alloys",) and "alloy" not in inputs):
        return inputs, register.compute(formula_id, inputs)
    from temperbook.derive import computing, tables

    if "mixing-errors" not in formula.tables:  # which is made from all alloys
        records.alloy = _one_alloy(str(inputs.get("alloy", "")), project)
    library = records.of(tables.kinds(formula.tables, "alloy" in inputs))
    named = computing.named(inputs, library) if "alloy" in formula.inputs else inputs
    return named, computing.answer(formula_id, named, library)


def _one_alloy(name: str, project: Path | None) -> str:
    """The id of the one alloy of a name; empty where there is none or several."""
    from temperbook import paths
    from temperbook.records import heads, names

    found = names.find(name, heads.read(paths.project(project))) if name else None
    return found.ids[0] if found and len(found.ids) == 1 else ""


class _Records:
    """Kinds of records, each read once and only when it is asked for."""

    def __init__(self, project: Path | None) -> None:
        self.project = project
        self.library: Library | None = None
        self.alloy = ""  # the only one to read, where one alone is asked for

    def of(self, kinds: Iterable[str]) -> Library:
        """A library that holds at least these kinds. Errors: DataProblems."""
        from dataclasses import replace

        from temperbook import paths
        from temperbook.records import partial

        held = self.library.records if self.library else {}
        found = partial.read(
            paths.project(self.project), [k for k in kinds if k not in held], self.alloy
        )
        self.library = replace(found, records={**held, **found.records})
        return self.library

    def gauges(self) -> dict[str, dict[str, float]]:
        """Sizes [mm] of gauge numbers by system."""
        from temperbook.derive import tables

        gauges: dict[str, dict[str, float]] = tables.made(("gauges",), self.of(["subjects"]))[
            "gauges"
        ]
        return gauges
