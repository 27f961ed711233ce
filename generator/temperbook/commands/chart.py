"""`temperbook chart`: one chart for a workshop's own alloys and paper."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import TYPE_CHECKING

import click

from temperbook.commands.reading import print_json, progress, read_handbook
from temperbook.problems import count, nearest

if TYPE_CHECKING:
    from temperbook.derive.handbook import Handbook
    from temperbook.records.models import Alloy

PAPERS = ("a4", "a3", "a2", "letter", "tabloid")


@click.command()
@click.argument("chart_id", metavar="ID")
@click.option("--paper", type=click.Choice(PAPERS), default="a3", show_default=True)
@click.option(
    "--read-at",
    type=click.Choice(["wall", "bench"]),
    help="Wall: read at 2 m; bench: at 1 m. Wall where the paper is large enough, unless said.",
)
@click.option("--alloys", help="Names with commas between them; all alloys unless said.")
@click.option(
    "-o", "output", type=click.Path(dir_okay=False, path_type=Path), help="File to write."
)
@click.option("--json", "as_json", is_flag=True, help="Say as JSON what was written.")
@click.pass_obj
def command(
    project: Path | None,
    chart_id: str,
    paper: str,
    read_at: str | None,
    alloys: str | None,
    output: Path | None,
    as_json: bool,
) -> None:
    """Print the chart ID as a PDF, on as many sheets as its alloys need.

    \b
    Example:
      temperbook chart anneal --paper a3 --alloys sterling,18ct-yellow -o wall.pdf
    """
    from temperbook.drawing import paper as papers
    from temperbook.outputs import paper as printing

    handbook = read_handbook(project)
    charts = handbook.library.charts
    if chart_id not in charts:
        raise click.UsageError(f"no chart is called `{chart_id}`; {nearest(chart_id, charts)}")
    reading = read_at or papers.usual_reading(paper)
    if not papers.allowed(paper, reading):
        fitting = ", ".join(papers.READ_AT[reading])
        raise click.UsageError(f"{paper} cannot be read as a {reading} sheet; it needs {fitting}")
    chosen = _alloys(alloys, handbook)
    target = output or Path(f"{chart_id}-{paper}-{reading}.pdf")
    with progress(f"chart {chart_id}"):
        sheets = printing.chart_sheets(handbook, chart_id, paper, reading, chosen)
        pdf = printing.chart_pdf(handbook, sheets, charts[chart_id].title)
    write(target, pdf)
    if as_json:
        print_json(
            {
                "file": str(target),
                "sheets": len(sheets),
                "alloys": [a.id for a in chosen],
                "paper": paper,
                "read_at": reading,
            }
        )
    else:
        counted = f"{count(len(chosen), 'alloy')} on {count(len(sheets), 'sheet')}"
        click.echo(f"{target}: {counted}, {paper}, {reading}")


def write(target: Path, content: bytes) -> None:
    """Writes a file whole; exits 2 with a sentence where that cannot be done."""
    try:
        target.parent.mkdir(parents=True, exist_ok=True)
        target.write_bytes(content)
    except OSError as error:
        raise click.UsageError(f"cannot write {target}: {error.strerror}") from error


def _alloys(given: str | None, handbook: Handbook) -> list[Alloy]:
    from temperbook.records import names
    from temperbook.views.not_one import not_one

    known = handbook.library.alloys
    if given is None:
        return list(known.values())
    chosen: dict[str, Alloy] = {}
    wrong: list[str] = []
    for wanted in (name.strip() for name in given.split(",") if name.strip()):
        found = names.find(wanted, known)
        if len(found.ids) == 1:
            chosen[found.ids[0]] = known[found.ids[0]]
        else:
            wrong += not_one(wanted, found, known)
    if wrong or not chosen:
        click.echo("\n".join(wrong or ["No alloy was named."]), err=True)
        sys.exit(2)
    return list(chosen.values())
