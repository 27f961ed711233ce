"""What `plan`, `used` and `backward` share: their options, and how what is typed is read."""

from __future__ import annotations

import sys
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING, Any

import click

from temperbook.commands.reading import print_problems

if TYPE_CHECKING:
    from temperbook.metal.facts import AlloyFacts
    from temperbook.metal.planning.asked import Request
    from temperbook.metal.planning.plan import Bench
    from temperbook.metal.sections import Section

Command = Callable[..., Any]
PERCENT = click.FloatRange(0, 100, min_open=True, max_open=True)
PROCESS = click.Choice(["forge", "groove", "flat", "draw"])


@dataclass(frozen=True)
class Read:
    """What every one of these commands needs: the alloy, bench and gauges."""

    facts: AlloyFacts
    bench: Bench
    gauges: dict[str, dict[str, float]]


def limits(command: Command) -> Command:
    """The options that stand in the place of an alloy's own limits."""
    for name, text in reversed(
        (
            ("--ceiling", "Most area taken between anneals, in percent."),
            ("--first-ceiling", "The same for the first run."),
            ("--floor", "Least area taken before an anneal, in percent."),
            ("--first-floor", "The same for the first run."),
        )
    ):
        command = click.option(name, type=PERCENT, help=text)(command)
    return click.option("--process", type=PROCESS, help="Follows from the sections unless said.")(
        command
    )


def equipment(command: Command) -> Command:
    """The options of mill and plate."""
    for name, kind, text in reversed(
        (
            ("--per-pass", PERCENT, "Most area taken in one pass, in percent."),
            ("--roll-diameter", str, "Diameter of the rolls in mm."),
            ("--friction", click.FloatRange(0, min_open=True), "Friction in the rolls, 0.1 say."),
            ("--holes", str, "Sizes of the plate's holes in mm, with commas between them."),
        )
    ):
        command = click.option(name, type=kind, help=text)(command)
    return command


def amount(command: Command) -> Command:
    """The options that say how much is wanted of the end."""
    command = click.option("--mass", help="Mass of the end in g; length or mass.")(command)
    return click.option("--length", help="Length of the end in mm.")(command)


def temper(command: Command) -> Command:
    """The options that say what the end shall be like; one of the two."""
    command = click.option(
        "--last", type=PERCENT, help="Area taken in the last run, in percent, instead of a temper."
    )(command)
    return click.option("--temper", help="soft, quarter-hard, half-hard, hard, spring ...")(command)


def read(project: Path | None, alloy: str) -> Read:
    """The records that a plan needs, and no more of them, so that it answers at once.

    Errors: prints the problems and exits 1; exits 2 where no single alloy has this name.
    """
    from temperbook import paths
    from temperbook.derive import facts, planning, tables
    from temperbook.derive.handbook import Handbook
    from temperbook.problems import DataProblems
    from temperbook.records import heads, names, partial
    from temperbook.views.not_one import not_one

    try:
        place = paths.project(project)
        known = heads.read(place)
        found = names.find(alloy, known)
        one = found.ids[0] if len(found.ids) == 1 else ""
        library = partial.read(place, facts.KINDS, one)
        handbook = Handbook(library)
        if not one:
            found = names.find(alloy, library.alloys)
        if len(found.ids) != 1:
            click.echo("\n".join(not_one(alloy, found, library.alloys)), err=True)
            sys.exit(2)
        bench = planning.bench(library)
    except DataProblems as problems:
        print_problems(problems)
    return Read(
        planning.alloy_facts(found.ids[0], handbook),
        bench,
        tables.made(("gauges",), library)["gauges"],
    )


def asked(sections: tuple[str, str], gauges: Any, **given: Any) -> Request:
    """The request of what was typed. Errors: ValueError with a sentence."""
    from temperbook.metal.planning.asked import Impossible, Request

    start, end = (section(text, gauges) for text in sections)
    if given.get("temper") and given.get("last") is not None:
        raise Impossible("temper-or-last")
    if given.get("length") and given.get("mass"):
        raise Impossible("mass-or-length")
    share = {
        name: given[name] / 100
        for name in ("last", "ceiling", "first_ceiling", "floor", "first_floor")
        if given.get(name) is not None
    }
    size = {
        name: quantity(given[name], unit, name, gauges)
        for name, unit in (("length", "mm"), ("mass", "g"))
        if given.get(name)
    }
    return Request(
        start,
        end,
        state=given.get("start") or "annealed",
        temper="-".join((given.get("temper") or "").lower().split()),
        process=given.get("process") or "",
        more=given.get("more") or 0,
        **share,
        **size,
    )


def equipped(bench: Bench, gauges: Any, **given: Any) -> Bench:
    """The bench with the mill and plate that were typed. Errors: ValueError with a sentence."""
    from temperbook.derive import planning

    roll, holes, per_pass = (given.get(name) for name in ("roll_diameter", "holes", "per_pass"))
    return planning.with_given(
        bench,
        roll_diameter=quantity(roll, "mm", "roll-diameter", gauges) if roll else None,
        friction=given.get("friction"),
        per_pass=per_pass / 100 if per_pass else None,
        holes=tuple(quantity(h, "mm", "holes", gauges) for h in holes.split(","))
        if holes
        else None,
    )


def section(text: str, gauges: Any) -> Section:
    """A section as people type it, units and gauge numbers allowed."""
    from temperbook.metal import sections
    from temperbook.views import typed

    return sections.parse(typed.section(text, gauges))


def quantity(text: str, unit: str, name: str, gauges: Any) -> float:
    """A number above zero as people type it, in a unit. Errors: ValueError that names it."""
    from temperbook.views import typed

    value = typed.value(text, unit, gauges)
    if not isinstance(value, float) or value <= 0:
        raise ValueError(f"{name} is a number above zero, not `{text}`")
    return value
