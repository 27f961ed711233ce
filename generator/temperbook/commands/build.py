"""`temperbook build`: the site with its charts and packs, or one of the two."""

from __future__ import annotations

import logging
import sys
from pathlib import Path

import click

from temperbook import paths
from temperbook.commands.reading import progress, read_handbook


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

    with replacing(out) as fresh:
        if only == "paper":
            made = _paper(project, fresh)
        else:
            made = _site(project, fresh, paper=only is None)
    click.echo(f"{made} in {out}{'' if only == 'paper' else '; open ' + str(out / 'index.html')}")


def _paper(project: Path | None, folder: Path) -> str:
    from temperbook.outputs.paper import all_papers

    handbook = read_handbook(project)
    with progress("charts and packs"):
        papers = all_papers(handbook)
    for address, content in papers.files.items():
        path = folder / address
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_bytes(content)
    return f"{len(papers.files)} files"


def _site(project: Path | None, folder: Path, *, paper: bool) -> str:
    from mkdocs.commands.build import build
    from mkdocs.exceptions import Abort, PluginError

    from temperbook.outputs.site.configuring import configuration

    root = paths.project(project).root
    logging.basicConfig(level=logging.WARNING, format="%(levelname)s %(message)s")
    config = configuration(root, folder, paper=paper)
    try:
        with progress("the handbook"):
            build(config)
    except PluginError as error:
        click.echo(str(error).strip(), err=True)
        sys.exit(1)
    except Abort as error:
        click.echo(f"The site was not made: {error}", err=True)
        sys.exit(1)
    return f"{sum(1 for _ in folder.rglob('index.html'))} pages"
