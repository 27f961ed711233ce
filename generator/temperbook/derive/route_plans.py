"""The working plans of a route: one for each stretch, all of the same metal."""

from __future__ import annotations

from dataclasses import replace

from temperbook.derive import facts, planning
from temperbook.derive.handbook import Handbook
from temperbook.metal import sections
from temperbook.metal.facts import AlloyFacts
from temperbook.metal.planning import plan
from temperbook.metal.planning.asked import Request
from temperbook.metal.planning.plan import Bench, Plan
from temperbook.records.models import Route, RouteLimit, Stretch


def of_route(route: Route, handbook: Handbook) -> list[Plan]:
    """The plans of a route's stretches, in order.

    The last one ends at the route's length; the others have the mass that it needs, so that each
    pass knows its length [mm]. Errors: Impossible, which the check `route_can_be_planned` finds
    before; ValueError for a text that is no section.
    """
    known = facts.of_alloy(handbook.library.alloys[route.alloy], handbook)
    bench = planning.bench(handbook.library)
    last = of_stretch(route.stretches[-1], known, bench, length=route.length)
    before = [of_stretch(s, known, bench, mass=last.mass) for s in route.stretches[:-1]]
    return [*before, last]


def of_stretch(
    stretch: Stretch,
    known: AlloyFacts,
    bench: Bench,
    length: float | None = None,
    mass: float | None = None,
) -> Plan:
    """The plan of one stretch, for a length [mm] or mass [g] of its end.

    Errors: as `of_route`.
    """
    return plan.make(replace(request(stretch), length=length, mass=mass), known, bench)


def request(stretch: Stretch) -> Request:
    """What a stretch asks of a plan. Errors: ValueError for a text that is no section."""
    return Request(
        sections.parse(stretch.from_),
        sections.parse(stretch.to),
        state=stretch.start,
        temper=stretch.temper or "",
        last=None if stretch.last is None else stretch.last / 100,
        process=stretch.process or "",
        ceiling=_share(stretch.ceiling),
        first_ceiling=_share(stretch.first_ceiling),
        floor=_share(stretch.floor),
        first_floor=_share(stretch.first_floor),
    )


def _share(limit: RouteLimit | None) -> float | None:
    return None if limit is None else limit.percent / 100
