"""`temperbook used`: the work done since the last anneal, what is left, what stands next."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import click

from temperbook.commands import planning
from temperbook.commands.reading import answer


@click.command()
@click.option("--alloy", required=True, help="An alloy by any of its names, as in `show`.")
@click.option("--from", "from_", required=True, help="Section at the last anneal, or as cast.")
@click.option("--now", required=True, help="Section now.")
@click.option("--start", type=click.Choice(["cast", "annealed"]), help="Annealed unless said.")
@planning.limits
@click.option("--json", "as_json", is_flag=True, help="Print the answer as JSON.")
@click.pass_obj
def command(
    project: Path | None, /, alloy: str, from_: str, now: str, as_json: bool, **given: Any
) -> None:
    """Say how far the metal has come since its last anneal, and whether it may go on.

    \b
    Example:
      temperbook used --alloy sterling --from "square 6" --now "square 4.8"
    """
    from temperbook.metal.planning import where
    from temperbook.views import where as view

    read = planning.read(project, alloy)
    try:
        request = planning.asked((from_, now), read.gauges, **given)
        found = where.used(request, read.facts, read.bench)
    except ValueError as error:
        raise click.UsageError(str(error)) from error
    data = view.data(found)
    answer(data, view.lines, as_json)
