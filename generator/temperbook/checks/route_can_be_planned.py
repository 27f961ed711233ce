"""A route can be planned: each stretch has a plan, and begins where the one before ends, soft."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from temperbook.derive import facts, planning, route_plans
from temperbook.derive.handbook import Handbook
from temperbook.metal import sections
from temperbook.metal.facts import AlloyFacts
from temperbook.metal.planning.asked import SOFT, Impossible
from temperbook.metal.planning.plan import Bench
from temperbook.problems import DataProblems, Problem
from temperbook.records.load import Library
from temperbook.records.models import Route, Stretch
from temperbook.records.yaml_reader import Document

BENCH = (planning.SETTINGS, planning.REDUCTION, planning.GRAIN, planning.SPREAD)


def check(library: Library) -> Iterator[Problem]:
    """Stretches without a plan, and those that do not follow the one before.

    What a plan needs and what cannot be read is told where it stands; without it nothing is planned
    here.
    """
    routes = library.of("routes", Route)
    for route_id, route in routes.items():
        yield from _joints(route.stretches, library.document(route_id, "routes"))
    if not routes or not library.vocabulary.quantities or any(map(library.unread, BENCH)):
        return
    try:
        bench = planning.bench(library)
    except DataProblems as lacking:
        yield from lacking.problems
        return
    for route_id, route in routes.items():
        known = _facts(route.alloy, library)
        if known:
            yield from _plans(route, known, bench, library.document(route_id, "routes"))


def _facts(alloy_id: str, library: Library) -> AlloyFacts | None:
    """The alloy's facts; None where it has a slip, which is told at the alloy."""
    alloy = library.alloys.get(alloy_id)
    if alloy is None or library.unread(alloy_id):
        return None
    try:
        return facts.of_alloy(alloy, Handbook(library), words=False)
    except (KeyError, ValueError):
        return None


def _plans(route: Route, known: AlloyFacts, bench: Bench, document: Document) -> Iterator[Problem]:
    for position, stretch in enumerate(route.stretches):
        wrong = _fault(stretch, known, bench)
        if wrong:
            yield document.problem(
                ("stretches", position),
                f"stretches[{position}] cannot be planned",
                found=f"{stretch.from_} ({stretch.start}) to {stretch.to}",
                needed=wrong,
                mend="change its sizes, temper or limits; try them with `temperbook plan`",
            )


def _fault(stretch: Stretch, known: AlloyFacts, bench: Bench) -> str:
    """Why a stretch has no plan; empty where it has one, or where a figure that it needs has a slip
    of its own."""
    try:
        route_plans.request(stretch)
    except ValueError as error:
        return str(error)
    try:
        route_plans.of_stretch(stretch, known, bench)
    except Impossible as refused:
        return str(refused)
    except ValueError:
        return ""
    return ""


def _joints(stretches: list[Stretch], document: Document) -> Iterator[Problem]:
    for position, (before, after) in enumerate(pairwise(stretches), 1):
        at = ("stretches", position)
        if _section(before.to) != _section(after.from_):
            yield document.problem(
                (*at, "from"),
                f"stretches[{position}] does not start where the one before ends",
                found=f"from: {after.from_}",
                needed=f"from: {before.to}",
                mend="correct the one or the other; what is cut in between is no work",
            )
        if after.start != "annealed" or before.temper != SOFT:
            yield document.problem(
                (*at, "start"),
                f"stretches[{position}] does not start from annealed metal",
                found=f"start: {after.start}, after temper: {before.temper or 'none'}",
                needed=f"start: annealed, and temper: {SOFT} in the stretch before",
                mend="a plan counts work from an anneal: close the stretch before with one",
            )


def _section(text: str) -> sections.Section | str:
    """The section that a text names; the text where it names none, which is told elsewhere."""
    try:
        return sections.parse(text)
    except ValueError:
        return text
