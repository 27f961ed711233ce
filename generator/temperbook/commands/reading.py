"""What every command does first: read the project, and say what is wrong with it."""

from __future__ import annotations

import json
import sys
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import TYPE_CHECKING, NoReturn, TypeVar

import click

from temperbook import paths
from temperbook.problems import DataProblems

if TYPE_CHECKING:
    from temperbook.derive.handbook import Handbook


D = TypeVar("D")


def read_handbook(root: Path | None) -> Handbook:
    """The finished handbook of a project, checked by every rule.

    Errors: prints all problems and exits 1.
    """
    from temperbook.outputs.making import checked_handbook

    try:
        with progress("reading the records"):
            return checked_handbook(paths.project(root))
    except DataProblems as problems:
        print_problems(problems)


def print_problems(problems: DataProblems) -> NoReturn:
    """Prints all that is wrong with the data, and exits 1."""
    click.echo(str(problems), err=True)
    sys.exit(1)


def print_json(data: object) -> None:
    """Data for a machine, on standard output."""
    click.echo(json.dumps(data, indent=2, ensure_ascii=False))


def answer(data: D, lines: Callable[[D], list[str]], as_json: bool) -> None:
    """An answer for a machine, or in words."""
    if as_json:
        print_json(data)
    else:
        click.echo("\n".join(lines(data)))


@contextmanager
def progress(text: str) -> Iterator[None]:
    """A line on the terminal while something takes its time; silent where nobody watches."""
    if not sys.stderr.isatty():
        yield
        return
    from rich.console import Console

    with Console(stderr=True).status(text):
        yield
