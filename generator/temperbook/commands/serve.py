"""`temperbook serve`: the site on this machine, made again at every change."""

from __future__ import annotations

from pathlib import Path

import click

from temperbook import paths


@click.command()
@click.option("--port", type=click.IntRange(1, 65535), default=8000, show_default=True)
@click.pass_obj
def command(project: Path | None, port: int) -> None:
    """Show the site at http://127.0.0.1:PORT and make it again when a file is saved.

    Problems in the records appear as a page. Charts and packs are left out, to be quick.

    \b
    Example:
      temperbook serve --port 8123
    """
    from mkdocs.commands.serve import serve

    from temperbook.outputs.site.configuring import keep_parent_quiet

    keep_parent_quiet()
    root = paths.project(project).root
    serve(config_file=str(root / "mkdocs.yml"), dev_addr=f"127.0.0.1:{port}", open_in_browser=False)
