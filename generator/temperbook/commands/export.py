"""`temperbook export`: figures, evidence, sources and alloys as files for others."""

from __future__ import annotations

from pathlib import Path

import click

from temperbook.commands.reading import progress, read_handbook


@click.command()
@click.option(
    "--out",
    type=click.Path(file_okay=False, path_type=Path),
    default=Path("export"),
    show_default=True,
    help="Folder to leave it in; replaced as a whole once everything is made.",
)
@click.pass_obj
def command(project: Path | None, /, out: Path) -> None:
    """Write the handbook's data as CSV and JSON with a description of every column.

    figures.csv, evidence.csv, sources.csv, quantities.csv and words.csv open in a spreadsheet;
    alloys.json holds each alloy with all provenance; datapackage.json describes them.

    \b
    Example:
      temperbook export --out /tmp/tables
    """
    from temperbook.commands.build import MARK, hold_own
    from temperbook.outputs import exports
    from temperbook.outputs.exchange import replacing

    handbook = read_handbook(project)
    hold_own(out)
    with progress("the tables"):
        files = exports.files(handbook)
    with replacing(out) as fresh:
        for name, content in files.items():
            (fresh / name).write_bytes(content)
        (fresh / MARK).write_text(f"{handbook.library.edition.name}\n", encoding="utf-8")
    click.echo(f"{len(files)} files in {out}: {', '.join(files)}")
