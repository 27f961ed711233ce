"""The runs of a route in words, each limit with its provenance."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any

from temperbook.derive.handbook import Handbook
from temperbook.metal import hardening
from temperbook.metal.planning import texts
from temperbook.metal.planning.bounds import GIVEN, Bound
from temperbook.metal.planning.plan import Plan, Run
from temperbook.metal.sections import Section
from temperbook.records.models import RouteLimit, Stretch
from temperbook.views import formatting, pages, route_words
from temperbook.views.formatting import MARKS
from temperbook.views.pages import Link


@dataclass(frozen=True)
class Part:
    """A limit, or a part of the anneal: what it says and how it is known."""

    label: str
    text: str
    mark: str
    how: str
    sources: list[Link]
    note: str = ""


@dataclass(frozen=True)
class PassShown:
    """One pass: size, what it takes and what is gone since the anneal, length, nearest gauges.

    strain: work [1] since the anneal.
    """

    number: int
    section: str
    size: str
    takes: list[str]
    since: list[str]
    length: str
    gauges: str
    strain: float


@dataclass(frozen=True)
class RunShown:
    """A run between two anneals.

    start, end, strain, ceiling_strain, floor_strain: for the drawing, sections and work [1].
    hardness: work [1] with the lowest and highest hardness there; none where it is not known.
    """

    number: int
    working: str
    start: Section
    end: Section
    state: str
    before: str
    after: str
    count: str
    passes: list[PassShown]
    reductions: list[str]
    ceiling: Part | None
    floor: Part | None
    strain: float
    ceiling_strain: float | None
    floor_strain: float | None
    then: str
    hardness: list[tuple[float, float, float]]
    hardness_unit: str
    hardness_text: str


def run(
    plan: Plan, number: int, data: dict[str, Any], stretch: Stretch, first: int, handbook: Handbook
) -> RunShown:
    """One run of a plan. number: its place in the plan from 0. first: number of the plan's first
    run in the route. data: the run's plain data."""
    made = plan.runs[number]
    curve = _hardness(plan, made)
    return RunShown(
        number=first + number,
        working=route_words.WORKING[made.process][0],
        start=made.start,
        end=made.end,
        state=plan.request.state if number == 0 else "annealed",
        before=route_words.section(made.start),
        after=route_words.section(made.end),
        count=route_words.passes(len(made.passes), made.process) if made.passes else "",
        passes=[_pass(made, data["passes"][n], n) for n in range(len(made.passes))],
        reductions=route_words.reductions(data, made.end),
        ceiling=_limit("at most", made.ceiling, _ceiling_set(stretch, plan, number), handbook),
        floor=_limit("at least", made.floor, _floor_set(stretch, number), handbook),
        strain=made.strain,
        ceiling_strain=made.ceiling.strain if made.ceiling else None,
        floor_strain=made.floor.strain if made.floor else None,
        then=made.then,
        hardness=curve,
        hardness_unit=plan.curve.unit if plan.curve else "",
        hardness_text=_hardness_text(plan, made),
    )


def _ceiling_set(stretch: Stretch, plan: Plan, number: int) -> RouteLimit | None:
    if number == 0 and (stretch.first_ceiling or plan.request.state == "cast"):
        return stretch.first_ceiling or stretch.ceiling
    return stretch.ceiling


def _floor_set(stretch: Stretch, number: int) -> RouteLimit | None:
    return (stretch.first_floor if number == 0 else None) or stretch.floor


def _pass(made: Run, data: dict[str, Any], number: int) -> PassShown:
    one = made.passes[number]
    return PassShown(
        number=number + 1,
        section=route_words.section(one.section),
        size=route_words.size(one.section),
        takes=route_words.reductions(data, one.section),
        since=route_words.reductions(data, one.section, "since_anneal_"),
        length=route_words.length(data["length_mm"]),
        gauges=route_words.gauges(data["gauges"]),
        strain=one.strain,
    )


def _limit(
    label: str, bound: Bound | None, set_here: RouteLimit | None, handbook: Handbook
) -> Part | None:
    if bound is None:
        return None
    note = route_words.limit_note(bound, set_here)
    if bound.how == GIVEN and set_here:
        how: str = set_here.how
        sources = list(formatting.sources_of(set_here.from_, handbook.library))
    else:
        how, sources = bound.how, list(bound.sources)
    return _part(label, route_words.limit(bound), how, sources, handbook, note)


def _part(
    label: str, text: str, how: str, sources: list[str], handbook: Handbook, note: str = ""
) -> Part:
    return Part(label, text, *known_by(how, sources, handbook), note)


def known_by(how: str, sources: Iterable[str], handbook: Handbook) -> tuple[str, str, list[Link]]:
    """How a statement is known: its mark, the words for it, and links to its sources."""
    links = [pages.source_link(source, handbook) for source in sources]
    return MARKS[how], handbook.library.vocabulary.label("how", how), links


def _hardness(plan: Plan, made: Run) -> list[tuple[float, float, float]]:
    if plan.curve is None or made.hardness_why == "from-cast":
        return []
    strains = [0.0, *(one.strain for one in made.passes)]
    found = [(strain, hardening.at(plan.curve, strain)) for strain in strains]
    return [(strain, h.low, h.high) for strain, h in found if h]


def _hardness_text(plan: Plan, made: Run) -> str:
    if made.hardness is None:
        return texts.HARDNESS_WHY[made.hardness_why] if made.hardness_why else ""
    values = formatting.ends((made.hardness.low, made.hardness.high), 0)
    return formatting.with_unit(values, made.hardness.unit)
