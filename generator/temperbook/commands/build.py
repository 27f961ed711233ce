"""`temperbook build`: the site with its charts and packs, or one of the two."""

from __future__ import annotations

import logging
from pathlib import Path
from typing import TYPE_CHECKING

import click

from temperbook.commands.reading import progress, read_handbook

if TYPE_CHECKING:
    from temperbook.derive.handbook import Handbook

# The file that says that a folder was left by a build and may be replaced by the next.
MARK = ".temperbook-build"


@click.command()
@click.option(
    "--only", type=click.Choice(["site", "paper"]), help="Make the site or the paper alone."
)
@click.option(
    "--out",
    type=click.Path(file_okay=False, path_type=Path),
    default=Path("site"),
    show_default=True,
    help="Folder to leave it in; replaced as a whole once everything is made.",
)
@click.pass_obj
def command(project: Path | None, only: str | None, out: Path) -> None:
    """Make the handbook: pages, wall charts (A4 and A3) and reading packs.

    What was built before stays untouched until the new one is whole.

    \b
    Example:
      temperbook build
      temperbook build --only paper --out /tmp/print
    """
    from temperbook.outputs.exchange import replacing
    from temperbook.outputs.typeset.compile import TypesetError

    handbook = read_handbook(project)
    hold_own(out)
    try:
        with replacing(out) as fresh:
            if only == "paper":
                made = _paper(handbook, fresh)
            else:
                made = _site(handbook, fresh, paper=only is None)
            (fresh / MARK).write_text(f"{handbook.library.edition.name}\n", encoding="utf-8")
    except TypesetError as error:
        raise click.ClickException(f"a sheet could not be set: {error}") from error
    click.echo(f"{made} in {out}{'' if only == 'paper' else '; open ' + str(out / 'index.html')}")


def hold_own(out: Path) -> None:
    """Refuses to replace a folder that holds something and was not left by a build."""
    if out.exists() and any(out.iterdir()) and not (out / MARK).exists():
        raise click.UsageError(
            f"{out} holds files that no build left there, and a build replaces its folder as a "
            "whole; name another folder, or empty this one"
        )


def _paper(handbook: Handbook, folder: Path) -> str:
    from temperbook.outputs.paper import all_papers

    with progress("charts and packs"):
        papers = all_papers(handbook)
    for address, content in papers.files.items():
        path = folder / address
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_bytes(content)
    return f"{len(papers.files)} files"


def _site(handbook: Handbook, folder: Path, *, paper: bool) -> str:
    from mkdocs.commands.build import build
    from mkdocs.exceptions import Abort

    from temperbook.outputs.site.configuring import configuration

    logging.basicConfig(level=logging.WARNING, format="%(levelname)s %(message)s")
    config = configuration(handbook, folder, paper=paper)
    try:
        with progress("the handbook"):
            build(config)
    except Abort as error:
        raise click.ClickException(f"the site was not made: {error}") from error
    return f"{sum(1 for _ in folder.rglob('index.html'))} pages"
