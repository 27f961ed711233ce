"""`temperbook check`: is every number in its place, and where does each come from?"""

from __future__ import annotations

import sys
from pathlib import Path

import click

from temperbook import paths
from temperbook.commands.reading import print_json
from temperbook.problems import DataProblems


@click.command()
@click.option("--json", "as_json", is_flag=True, help="Print the counts or problems as JSON.")
@click.option("--report", is_flag=True, help="Tell where the figures stand on little.")
@click.pass_obj
def command(project: Path | None, /, as_json: bool, report: bool) -> None:
    """Read all records, hold each figure against its evidence, and count what there is.

    All problems are printed at once; exit 1 if there is one.

    \b
    Example:
      temperbook check
      temperbook check --report
    """
    from temperbook.outputs.making import checked_handbook
    from temperbook.views import report as reports
    from temperbook.views import tally

    try:
        handbook = checked_handbook(paths.project(project))
    except DataProblems as problems:
        if as_json:
            print_json(
                {
                    "problems": [p.as_json() for p in problems.problems],
                    "summary": problems.summary(),
                }
            )
        else:
            click.echo(str(problems))
        sys.exit(1)
    if as_json:
        counted = tally.counts(handbook)
        print_json({**counted, "report": reports.data(handbook)} if report else counted)
        return
    click.echo("\n".join(tally.lines(handbook)))
    if report:
        click.echo("\n".join(["", *reports.lines(handbook)]))
