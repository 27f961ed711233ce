"""`temperbook pack`: one reading pack as a PDF."""

from __future__ import annotations

from pathlib import Path

import click

from temperbook.commands.chart import write
from temperbook.commands.reading import print_json, progress, read_handbook
from temperbook.problems import nearest


@click.command()
@click.argument("pack_id", metavar="ID")
@click.option("--paper", type=click.Choice(["a4", "letter"]), default="a4", show_default=True)
@click.option(
    "-o", "output", type=click.Path(dir_okay=False, path_type=Path), help="File to write."
)
@click.option("--json", "as_json", is_flag=True, help="Say as JSON what was written.")
@click.pass_obj
def command(
    project: Path | None, pack_id: str, paper: str, output: Path | None, as_json: bool
) -> None:
    """Print the reading pack ID as a PDF for a trainee.

    \b
    Example:
      temperbook pack first-week --paper letter -o first-week.pdf
    """
    from temperbook.outputs.paper import pack_pdf

    handbook = read_handbook(project)
    packs = handbook.library.packs
    if pack_id not in packs:
        raise click.UsageError(f"no pack is called `{pack_id}`; {nearest(pack_id, packs)}")
    target = output or Path(f"{pack_id}-{paper}.pdf")
    with progress(f"pack {pack_id}"):
        pdf = pack_pdf(handbook, pack_id, paper)
    write(target, pdf)
    if as_json:
        print_json({"file": str(target), "paper": paper, "bytes": len(pdf)})
    else:
        click.echo(f"{target}: {packs[pack_id].title}, {paper}")
