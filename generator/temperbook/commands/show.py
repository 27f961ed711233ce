"""`temperbook show`: an alloy's limits, or a solder's heats, in the terminal."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import TYPE_CHECKING

import click

from temperbook.commands.reading import print_json, read_handbook

if TYPE_CHECKING:
    from temperbook.derive.handbook import Handbook


@click.command()
@click.argument("name", nargs=-1, required=True)
@click.option(
    "--json", "as_json", is_flag=True, help="Print everything that the alloy's page says."
)
@click.pass_obj
def command(project: Path | None, name: tuple[str, ...], as_json: bool) -> None:
    """Show the limits of the alloy, or the heats of the solder, called NAME.

    NAME is an id, a name, an alias or a fineness.

    Case, spaces and spelling do not matter; several hits are listed, near names suggested.

    \b
    Example:
      temperbook show sterling
      temperbook show 18 ct rose
    """
    from dataclasses import asdict

    from temperbook.records import names
    from temperbook.views import alloy, terminal
    from temperbook.views.not_one import not_one

    handbook = read_handbook(project)
    wanted = " ".join(name)
    found = names.find(wanted, handbook.library.alloys)
    if len(found.ids) == 1:
        shown = alloy.shown(handbook.library.alloys[found.ids[0]], handbook)
        if as_json:
            print_json(asdict(shown))
        else:
            click.echo("\n".join(terminal.alloy(shown)))
        return
    if not found.ids and _solder(wanted, handbook, as_json):
        return
    if as_json:
        print_json({"wanted": wanted, "found": list(found.ids), "near": list(found.near)})
    else:
        click.echo("\n".join(not_one(wanted, found, handbook.library.alloys)), err=not found.ids)
    sys.exit(0 if found.ids else 2)


def _solder(wanted: str, handbook: Handbook, as_json: bool) -> bool:
    """Shows the one solder that a name means, where no alloy is meant; whether there was one."""
    from dataclasses import asdict

    from temperbook.records import names
    from temperbook.views import solder, terminal

    solders = handbook.library.solders
    found = names.find(wanted, solders)
    if len(found.ids) != 1:
        return False
    shown = solder.shown(solders[found.ids[0]], handbook)
    if as_json:
        print_json(asdict(shown))
    else:
        click.echo("\n".join(terminal.solder(shown)))
    return True
