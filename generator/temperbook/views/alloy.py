"""An alloy's page: its limits in large figures first, then why, every figure and every reading."""

from __future__ import annotations

from dataclasses import dataclass

from temperbook.derive import colour_names, limits
from temperbook.derive.handbook import Handbook
from temperbook.metal.planning.asked import NEVER_HEATED
from temperbook.records.models import RULES, Alloy
from temperbook.records.names import fineness
from temperbook.views import (
    alloy_limits,
    fault,
    figure_rows,
    formatting,
    pages,
    plan_form,
    route,
    routes,
    statements,
)
from temperbook.views.alloy_limits import Limit
from temperbook.views.figure_rows import Group, Reading, SpreadRow
from temperbook.views.formatting import number
from temperbook.views.pages import CautionShown, Link, Page
from temperbook.views.statements import RemarkShown, RuleShown

# What a bench looks for on every alloy's page: quantity and how its absence is named.
EXPECTED = (
    ("anneal", "annealing temperature"),
    ("anneal-time", "time at heat"),
    ("reduction-ceiling", "how far between anneals"),
    ("reduction-floor", "least work before an anneal"),
    ("solidus", "where it starts to melt"),
    ("hot-work", "hot working"),
    ("hardness", "hardness"),
)


@dataclass(frozen=True)
class AlloyShown:
    """Everything that an alloy's page says."""

    id: str
    name: str
    also: list[str]
    about: str
    fineness: str
    composition: list[tuple[str, str, str]]
    composition_source: RuleShown
    limits: list[Limit]
    urgent: CautionShown | None
    cautions: list[CautionShown]
    rules: list[RuleShown]
    remarks: list[RemarkShown]
    groups: list[Group]
    missing: list[str]
    practice: list[str]
    spreads: list[SpreadRow]
    readings: list[Reading]
    colours: list[tuple[Link, str]]
    subjects: list[Link]
    charts: list[Link]
    worked: list[Link]
    plans: list[Link]
    faults: list[Link]
    siblings: list[Link]
    sources: list[Link]
    legend: list[tuple[str, str]]


def all_pages(handbook: Handbook) -> list[Page]:
    """A page for each alloy."""
    return [page(alloy, handbook) for alloy in handbook.library.alloys.values()]


def page(alloy: Alloy, handbook: Handbook) -> Page:
    """One alloy's page."""
    return Page(
        routes.page("alloys", alloy.id), "alloy", alloy.name, shown(alloy, handbook), alloy.about
    )


def shown(alloy: Alloy, handbook: Handbook) -> AlloyShown:
    """What the page says."""
    library = handbook.library
    cautions = [pages.caution(c) for c in handbook.cautions_of[alloy.id]]
    readings = figure_rows.readings(handbook.readings_for(alloy), handbook, alloy.id)
    sources = {r.source.href: r.source for r in readings}
    return AlloyShown(
        id=alloy.id,
        name=alloy.name,
        also=alloy.also,
        about=alloy.about,
        fineness=fineness(alloy),
        composition=[
            (symbol, library.elements[symbol].name, number(share, 2))
            for symbol, share in sorted(alloy.composition.items(), key=lambda item: -item[1])
        ],
        composition_source=statements.rule("Composition", "", alloy.composition_source, handbook),
        limits=alloy_limits.large(alloy, handbook),
        urgent=urgent(alloy, handbook),
        cautions=cautions,
        rules=rules(alloy, handbook),
        remarks=statements.remarks(alloy.remarks, handbook),
        groups=figure_rows.groups(alloy.id, alloy.figures, handbook),
        missing=missing(alloy),
        practice=[r.text for r in alloy.remarks if r.how == "practice"],
        spreads=figure_rows.spreads(handbook.readings.get(alloy.id, []), handbook),
        readings=readings,
        colours=colours(alloy, handbook),
        subjects=[
            Link(library.subjects[s].name, routes.page("subjects", s)) for s in alloy.subjects
        ],
        charts=[Link(c.title, routes.page("charts", i)) for i, c in library.charts.items()],
        worked=route.of_alloy(alloy.id, handbook),
        faults=fault.of_alloy(alloy, handbook),
        plans=plan_form.for_alloy(alloy.id, handbook),
        siblings=[
            Link(other.name, routes.page("alloys", i))
            for i, other in library.alloys.items()
            if other.family == alloy.family and i != alloy.id
        ],
        sources=list(sources.values()),
        legend=pages.legend(),
    )


def urgent(alloy: Alloy, handbook: Handbook) -> CautionShown | None:
    """The caution that can hurt at once: one of this metal's own, else the first of the wall
    chart."""
    own = [c for c in handbook.cautions_of[alloy.id] if c.immediate and not c.applies.always]
    chart = next(iter(handbook.library.charts.values()), None)
    charted = [handbook.library.cautions[i] for i in chart.cautions] if chart else []
    first = next(iter(own or charted), None)
    return pages.caution(first) if first else None


def rules(alloy: Alloy, handbook: Handbook) -> list[RuleShown]:
    """What it is inside, how to heat, cool and pickle it, with the reasons."""
    words = handbook.library.vocabulary
    found = []
    for key, quantity in RULES.items():
        rule = getattr(alloy, key)
        if rule:
            known = words.quantities[quantity]
            found.append(statements.rule(known.label, known.words[rule.rule], rule, handbook))
    return found


def missing(alloy: Alloy) -> list[str]:
    """What a bench looks for and nobody has published where we could read it."""
    never = alloy.heating is not None and alloy.heating.rule == NEVER_HEATED
    found = [
        label
        for quantity, label in EXPECTED
        if not (never and quantity in ("anneal", "anneal-time"))
        and not any(f.how in limits.READ for f in alloy.figures.get(quantity, []))
    ]
    if alloy.quench is None or alloy.quench.how not in limits.READ:
        found.append("how to cool")
    if alloy.pickle is None or alloy.pickle.how not in limits.READ:
        found.append("pickle")
    return found


def colours(alloy: Alloy, handbook: Handbook) -> list[tuple[Link, str]]:
    """What each observer calls the colour of the anneal."""
    figure = limits.anneal(alloy)
    if figure is None:
        return []
    low, high = limits.lowest(figure), limits.highest(figure)
    found = []
    for table_id, table in handbook.library.colours.items():
        names = [n.text for n in colour_names.between(table, low, high)]
        link = Link(table.name, routes.page("colours", table_id))
        found.append((link, formatting.listed(names, "or")))
    return found
