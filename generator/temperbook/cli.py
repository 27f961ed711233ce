"""Declares the commands. Each lives in its own module and is imported only when it runs."""

from __future__ import annotations

import importlib
import os
from pathlib import Path

import click

# pydantic looks for plugins in every installed package: a twentieth of a second for none.
os.environ.setdefault("PYDANTIC_DISABLE_PLUGINS", "__all__")

# command -> module in temperbook.commands that holds a click command named `command`
COMMANDS = (
    "check",
    "build",
    "serve",
    "show",
    "plan",
    "used",
    "backward",
    "compute",
    "chart",
    "pack",
    "export",
)


class _LateGroup(click.Group):
    """A group that imports a command's module when it is asked for."""

    def list_commands(self, ctx: click.Context) -> list[str]:
        """The commands in the order in which a newcomer meets them."""
        return list(COMMANDS)

    def get_command(self, ctx: click.Context, cmd_name: str) -> click.Command | None:
        """The command of that name, or None."""
        if cmd_name not in COMMANDS:
            return None
        module = importlib.import_module(f"temperbook.commands.{cmd_name}")
        command: click.Command = module.command
        return command


@click.group(cls=_LateGroup, context_settings={"help_option_names": ["-h", "--help"]})
@click.option(
    "--project",
    type=click.Path(exists=True, file_okay=False, path_type=Path),
    help="Folder that holds data/ and content/; this checkout unless said.",
)
@click.pass_context
def main(ctx: click.Context, project: Path | None) -> None:
    """Make a reference handbook, wall charts and reading packs from records of alloys.

    Begin with `temperbook build`, then open site/index.html.
    """
    ctx.obj = project
