"""`temperbook backward`: from the finished piece to ingot, mould and charge."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import click

from temperbook.commands import planning
from temperbook.commands.reading import answer


@click.command()
@click.option("--alloy", required=True, help="An alloy by any of its names, as in `show`.")
@click.option("--to", required=True, help="Section of the finished piece.")
@click.option("--mould", help="Section of the mould; the one for --anneals unless said.")
@click.option(
    "--anneals", type=click.IntRange(0, 3), default=1, show_default=True, help="Anneals on the way."
)
@planning.temper
@planning.limits
@planning.equipment
@planning.amount
@click.option("--json", "as_json", is_flag=True, help="Print the answer as JSON.")
@click.pass_obj
def command(
    project: Path | None,
    /,
    alloy: str,
    to: str,
    mould: str | None,
    anneals: int,
    as_json: bool,
    **given: Any,
) -> None:
    """Reckon back from a finished piece to the ingot, its mould, and what to melt.

    Give the length or the mass of the finished piece. The ingot is planned from the cast state.

    \b
    Example:
      temperbook backward --alloy sterling --to "flat 30x0.8" --length 200
      temperbook backward --alloy "18ct yellow" --to "square 3" --length 60 --anneals 1
    """
    from temperbook.metal.planning import backwards
    from temperbook.views import backward as view

    read = planning.read(project, alloy)
    try:
        if not (given["length"] or given["mass"]):
            raise ValueError("Give the length or the mass of the finished piece.")
        request = planning.asked((to, to), read.gauges, **given)
        bench = planning.equipped(read.bench, read.gauges, **given)
        cast = planning.section(mould, read.gauges) if mould else None
        found = backwards.backwards(request, read.facts, bench, cast, anneals)
    except ValueError as error:
        raise click.UsageError(str(error)) from error
    data = view.data(found, read.gauges)
    answer(data, view.lines, as_json)
