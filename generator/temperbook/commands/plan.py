"""`temperbook plan`: from one section to another with the fewest anneals."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import click

from temperbook.commands import planning
from temperbook.commands.reading import answer


@click.command()
@click.option("--alloy", required=True, help="An alloy by any of its names, as in `show`.")
@click.option("--from", "from_", required=True, help='Section at the start: "flat 30x6".')
@click.option("--to", required=True, help='Section at the end: "flat 30x0.8".')
@click.option("--start", type=click.Choice(["cast", "annealed"]), help="Annealed unless said.")
@planning.temper
@planning.limits
@planning.equipment
@planning.amount
@click.option("--anneals-more", "more", type=click.IntRange(0), help="Anneals beyond the fewest.")
@click.option("--json", "as_json", is_flag=True, help="Print the plan as JSON.")
@click.pass_obj
def command(
    project: Path | None, /, alloy: str, from_: str, to: str, as_json: bool, **given: Any
) -> None:
    """Plan the runs and passes from one section to another, annealing as seldom as can be.

    Sections are written "round 1.0", "square 6", "flat 20x1.5" (width x thickness), in mm unless a
    unit is written. Limits that are typed are reductions of the area; where none is typed the
    alloy's own figures serve. Ceilings bind, floors warn.

    \b
    Example:
      temperbook plan --alloy sterling --from "flat 30x6" --to "flat 30x0.8" --start cast
      temperbook plan --alloy c26000 --from "round 6.4" --to "round 5.1" --last 21.5
    """
    from temperbook.metal.planning import plan
    from temperbook.views import plan as view
    from temperbook.views import plan_lines

    read = planning.read(project, alloy)
    try:
        request = planning.asked((from_, to), read.gauges, **given)
        bench = planning.equipped(read.bench, read.gauges, **given)
        made = plan.make(request, read.facts, bench)
    except ValueError as error:
        raise click.UsageError(str(error)) from error
    data = view.data(made, read.gauges)
    answer(data, plan_lines.lines, as_json)
