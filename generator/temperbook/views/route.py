"""Pages of worked routes: the plan with its reasons, and what a job sheet says of it."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

from temperbook.derive import route_plans, tables
from temperbook.derive.handbook import Handbook
from temperbook.metal.planning import texts
from temperbook.metal.planning.asked import SOFT
from temperbook.metal.planning.plan import Plan
from temperbook.metal.register.formula import Said
from temperbook.records.models import Route, Stretch
from temperbook.views import filling, formatting, pages, route_anneal, route_runs, routes
from temperbook.views import plan as plan_view
from temperbook.views import route_words as words
from temperbook.views.formatting import SPACE
from temperbook.views.pages import CautionShown, Link, Page
from temperbook.views.route_anneal import AnnealShown
from temperbook.views.route_runs import Part, RunShown

SETTINGS = "charge-settings"  # the note that says which shares a charge allows for
# Limits that a route may set in the place of its alloy's own, as a page calls them.
OWN = {
    "first_ceiling": "At most, first run",
    "ceiling": "At most, between anneals",
    "first_floor": "At least, first run",
    "floor": "At least, before an anneal",
}


@dataclass(frozen=True)
class StretchShown:
    """One working of a route: its ends, its runs, why it goes so, and what must be said of it."""

    title: str
    runs: list[RunShown]
    why: list[str]
    limits: list[Part]
    warnings: list[str]
    notes: list[str]
    command: str


@dataclass(frozen=True)
class Amounts:
    """Mass and length of the metal, what to melt by element, and which settings that rests on."""

    mass: str
    finished: str
    begins: str
    charge: str
    parts: list[tuple[str, str, str]]
    settings: str


@dataclass(frozen=True)
class RouteShown:
    """What a route's page and its job sheet say."""

    id: str
    name: str
    about: str
    alloy: Link
    start: str
    state: str
    end: str
    temper: str
    anneals: str
    work: str
    stretches: list[StretchShown]
    anneal: AnnealShown | None
    amounts: Amounts | None
    before: list[str]
    after: list[str]
    cautions: list[CautionShown]
    legend: list[tuple[str, str]]
    edition: str
    address: str

    @property
    def runs(self) -> list[RunShown]:
        """All runs in order."""
        return [run for stretch in self.stretches for run in stretch.runs]

    @property
    def warnings(self) -> list[str]:
        """What can spoil the metal, each once."""
        return [*dict.fromkeys(text for one in self.stretches for text in one.warnings)]

    @property
    def notes(self) -> list[str]:
        """How it was reckoned, each note once."""
        return [*dict.fromkeys(text for one in self.stretches for text in one.notes)]


def all_pages(handbook: Handbook) -> list[Page]:
    """A page for each route."""
    found = []
    for route in of(handbook).values():
        said = shown(route, handbook)
        found.append(Page(routes.page("routes", route.id), "route", said.name, said, said.about))
    return found


def of(handbook: Handbook) -> dict[str, Route]:
    """The routes of a handbook by id."""
    return handbook.library.of("routes", Route)


def listed(handbook: Handbook) -> list[Link]:
    """Every route for their index: what it makes of what."""
    return [_link(route, handbook) for route in of(handbook).values()]


def of_alloy(alloy_id: str, handbook: Handbook) -> list[Link]:
    """The routes of an alloy."""
    return [_link(route, handbook) for route in of(handbook).values() if route.alloy == alloy_id]


def _link(route: Route, handbook: Handbook) -> Link:
    alloy = handbook.library.alloys[route.alloy]
    first, last = (route_plans.request(route.stretches[end]) for end in (0, -1))
    said = f"{alloy.name}: {words.section(first.start)} to {words.section(last.end)}"
    return Link(route.name, routes.page("routes", route.id), said)


def shown(route: Route, handbook: Handbook) -> RouteShown:
    """What is said of one route."""
    library = handbook.library
    alloy = library.alloys[route.alloy]
    plans = route_plans.of_route(route, handbook)
    count = sum(plan.anneals for plan in plans)
    return RouteShown(
        id=route.id,
        name=route.name,
        about=route.about,
        alloy=Link(alloy.name, routes.page("alloys", alloy.id)),
        start=words.section(plans[0].request.start),
        state=route.stretches[0].start,
        end=words.section(plans[-1].request.end),
        temper=_temper(route.stretches[-1], plans[-1].process, handbook),
        anneals=words.anneals(count),
        work=words.percent(100 * (1 - plans[-1].request.end.area / plans[0].request.start.area)),
        stretches=[*_stretches(route, plans, handbook)],
        anneal=route_anneal.shown(alloy, handbook) if count else None,
        amounts=_amounts(plans, handbook),
        before=route.before,
        after=route.after,
        cautions=_cautions(route, plans, handbook),
        legend=pages.legend(),
        edition=f"{library.edition.name}, {library.edition.date}",
        address=f"{library.edition.address}{routes.page('routes', route.id)}",
    )


def _temper(last: Stretch, process: str, handbook: Handbook) -> str:
    if last.temper is None:
        return words.AS[process]
    if last.temper == SOFT:
        return SOFT
    return handbook.library.vocabulary.label("state", last.temper)


def _stretches(route: Route, plans: list[Plan], handbook: Handbook) -> Iterator[StretchShown]:
    gauges = tables.made(("gauges",), handbook.library)["gauges"]
    first = 1
    for stretch, plan in zip(route.stretches, plans, strict=True):
        data = plan_view.data(plan, gauges)
        runs = [
            route_runs.run(plan, n, data["runs"][n], stretch, first, handbook)
            for n in range(len(plan.runs))
        ]
        warnings, notes = (
            [one["text"] for one in filling.said(_renumbered(found, first), templates)]
            for found, templates in ((plan.warnings, texts.WARNINGS), (_notes(plan), texts.NOTES))
        )
        ends = (words.section(end) for end in (plan.request.start, plan.request.end))
        title = f"{words.WORKING[plan.process][0]}: {' to '.join(ends)}"
        own = [*_own_limits(stretch, handbook)]
        yield StretchShown(title, runs, stretch.why, own, warnings, notes, _command(route, stretch))
        first += len(runs)


def _own_limits(stretch: Stretch, handbook: Handbook) -> Iterator[Part]:
    """The limits that a stretch sets itself, each with its reason."""
    for key, label in OWN.items():
        limit = getattr(stretch, key)
        if limit:
            sources = formatting.sources_of(limit.from_, handbook.library)
            known = route_runs.known_by(limit.how, sources, handbook)
            text = f"{words.percent(limit.percent)} of the area"
            yield Part(label, text, *known, limit.why)


def _notes(plan: Plan) -> list[Said]:
    return [note for note in plan.notes if note.id != SETTINGS]


def _renumbered(found: tuple[Said, ...] | list[Said], first: int) -> list[Said]:
    """Sentences of a plan with the number that a run has in the whole route."""
    return [
        replace(one, values={**one.values, "run": int(one.values["run"]) + first - 1})
        if "run" in one.values
        else one
        for one in found
    ]


def _amounts(plans: list[Plan], handbook: Handbook) -> Amounts | None:
    plan = plans[-1]
    if plan.mass is None or plan.charge is None:
        return None
    elements = handbook.library.elements
    settings = next(note for note in plan.notes if note.id == SETTINGS)
    length = plan.request.length
    begins = plans[0].request.start
    known = length is not None
    start = length * plan.request.end.area / begins.area if known and length else None
    return Amounts(
        mass=_grams(plan.mass),
        finished=words.length(length),
        begins=words.length(start),
        charge=_grams(plan.charge),
        parts=[
            (symbol, elements[symbol].name, _grams(mass))
            for symbol, mass in sorted(plan.parts.items(), key=lambda part: -part[1])
        ],
        settings=filling.said([settings], texts.NOTES)[0]["text"],
    )


def _grams(mass: float) -> str:
    return f"{mass:.2f}{SPACE}g"


def _cautions(route: Route, plans: list[Plan], handbook: Handbook) -> list[CautionShown]:
    """The alloy's cautions for the work of this route, and those that the route names."""
    tasks = {words.WORKING[plan.process][1] for plan in plans}
    if plans[0].request.state == "cast":
        tasks |= {"melt", "pour"}
    if any(plan.anneals for plan in plans):
        tasks |= {"anneal", "quench", "pickle"}
    found = [
        caution.id
        for caution in handbook.cautions_of[route.alloy]
        if not caution.tasks or tasks & set(caution.tasks)
    ]
    return pages.cautions(list(dict.fromkeys([*found, *route.cautions])), handbook)


def _command(route: Route, stretch: Stretch) -> str:
    """The command line that makes the plan of a stretch."""
    said = [
        f"temperbook plan --alloy {route.alloy}",
        f'--from "{stretch.from_}" --to "{stretch.to}" --start {stretch.start}',
    ]
    for name in ("process", "temper", "last"):
        given = getattr(stretch, name)
        if given is not None:
            said.append(f"--{name} {formatting.number(given, 2) if name == 'last' else given}")
    for name in OWN:
        given = getattr(stretch, name)
        if given is not None:
            said.append(f"--{name.replace('_', '-')} {formatting.number(given.percent, 2)}")
    if stretch is route.stretches[-1] and route.length is not None:
        said.append(f"--length {formatting.number(route.length, 2)}")
    return " ".join(said)
