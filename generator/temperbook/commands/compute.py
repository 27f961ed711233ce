"""`temperbook compute`: one formula of the register, answered in words or as JSON."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import click

from temperbook.commands.reading import print_json, read_handbook


@click.command()
@click.argument("formula_id", metavar="[ID]", required=False)
@click.argument("given", metavar="[KEY=VALUE]...", nargs=-1)
@click.option("--json", "as_json", is_flag=True, help="Print inputs and outputs as JSON.")
@click.pass_obj
def command(
    project: Path | None, formula_id: str | None, given: tuple[str, ...], as_json: bool
) -> None:
    """Answer a formula of the register; without an ID, list them.

    Lengths are mm, temperatures degC, stresses MPa, shares percent, unless a unit is written
    behind the number (0.04in, 1400degF). Sections are written "round 1.0", "square 6", "flat
    20x1.5". Where a formula takes a density, alloy=NAME serves as well.

    \b
    Example:
      temperbook compute reduction from="round 1.0" to="round 0.4"
      temperbook compute draw-schedule from=1.0 to=0.5 per-draw=20 --json
    """
    from temperbook.metal import register
    from temperbook.problems import nearest
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
        inputs = _inputs(formula_id, given)
        outputs = _outputs(formula_id, inputs, project)
    except ValueError as error:
        raise click.UsageError(str(error)) from error
    if as_json:
        print_json(answers.data(formula_id, inputs, outputs))
    else:
        click.echo("\n".join(answers.lines(formula_id, inputs, outputs)))


def _inputs(formula_id: str, given: tuple[str, ...]) -> dict[str, Any]:
    from temperbook.metal import register
    from temperbook.views import typed

    inputs: dict[str, Any] = {}
    for word in given:
        name, equals, value = word.partition("=")
        if not equals or not value:
            raise ValueError(f"`{word}` is not key=value")
        if name in inputs:
            raise ValueError(f"{name} is given twice")
        inputs[name] = typed.value(value, register.FORMULAS[formula_id].inputs.get(name, ""))
    return inputs


def _outputs(formula_id: str, inputs: dict[str, Any], project: Path | None) -> dict[str, float]:
    """The register alone answers what needs no record: the records take a second to read."""
    from temperbook.metal import register

    takes_records = "alloy" in inputs or "densities" in register.FORMULAS[formula_id].inputs
    if not takes_records:
        return register.compute(formula_id, inputs)
    from temperbook.derive import computing

    try:
        return computing.compute(formula_id, inputs, read_handbook(project).library)
    except KeyError as error:
        raise ValueError(f"the element records have no density of {error.args[0]}") from error
