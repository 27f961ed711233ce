"""An alloy's page: its limits in large figures first, then why, every figure and every reading."""

from __future__ import annotations

from dataclasses import dataclass, field

from temperbook.derive import colour_names, limits
from temperbook.derive.handbook import Handbook
from temperbook.records.figures import Figure, Provenance
from temperbook.records.models import Alloy
from temperbook.records.names import fineness
from temperbook.views import figure_rows, formatting, pages, routes
from temperbook.views.figure_rows import Group, Reading, SpreadRow
from temperbook.views.formatting import MARKS, SPACE, number
from temperbook.views.pages import CautionShown, Link, Page

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
NONE_FOUND = "no published figure found"


@dataclass(frozen=True)
class Limit:
    """One of the large figures: label, figure, what is said with it, mark of its provenance."""

    key: str
    label: str
    figure: str
    said: list[str]
    mark: str
    how: str
    sources: list[Link] = field(default_factory=list)

    @property
    def parts(self) -> tuple[str, str]:
        """The figure without its unit, and the unit, which is drawn smaller."""
        number_, _, unit = self.figure.rpartition(SPACE)
        return (number_, unit) if number_ else (self.figure, "")


@dataclass(frozen=True)
class RuleShown:
    """How to cool or pickle, in words."""

    label: str
    text: str
    mark: str
    how: str
    why: str
    sources: list[Link]


@dataclass(frozen=True)
class RemarkShown:
    """A sentence with its provenance."""

    text: str
    mark: str
    how: str
    sources: list[Link]


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
    figures = {k: list(v) for k, v in alloy.figures.items()}
    if alloy.id in handbook.density_by_mixing:
        figures.setdefault("density", []).append(handbook.density_by_mixing[alloy.id])
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
        composition_source=_rule("Composition", "", alloy.composition_source, handbook),
        limits=large(alloy, handbook),
        urgent=urgent(alloy, handbook),
        cautions=cautions,
        rules=rules(alloy, handbook),
        remarks=[_remark(r.text, r, handbook) for r in alloy.remarks],
        groups=figure_rows.groups(alloy.id, figures, handbook),
        missing=missing(alloy),
        practice=[r.text for r in alloy.remarks if r.how == "practice"],
        spreads=figure_rows.spreads(handbook.readings.get(alloy.id, []), handbook),
        readings=readings,
        colours=colours(alloy, handbook),
        subjects=[
            Link(library.subjects[s].name, routes.page("subjects", s)) for s in alloy.subjects
        ],
        charts=[Link(c.title, routes.page("charts", i)) for i, c in library.charts.items()],
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


def large(alloy: Alloy, handbook: Handbook) -> list[Limit]:
    """The large figures of the first screen, in the order in which a bench asks."""
    return [
        _anneal(alloy, handbook),
        _between(alloy, handbook),
        _quench(alloy, handbook),
        _stop(alloy, handbook),
    ]


def _limit(
    key: str, label: str, figure: Figure, quantity: str, said: list[str], handbook: Handbook
) -> Limit:
    shown_figure = formatting.shown(figure, quantity, handbook.library)
    return Limit(
        key,
        label,
        shown_figure.text,
        [s for s in said if s],
        shown_figure.mark,
        shown_figure.how,
        [pages.source_link(s, handbook) for s in shown_figure.sources],
    )


def _none(key: str, label: str, said: list[str]) -> Limit:
    return Limit(key, label, "—", [NONE_FOUND, *said], "", "")


def _anneal(alloy: Alloy, handbook: Handbook) -> Limit:
    figure = limits.anneal(alloy)
    if figure is None:
        practice = "common practice: first hint of dull red" if _by_eye(alloy) else ""
        return _none("anneal", "Anneal", [practice] if practice else [])
    words = handbook.library.vocabulary
    said = [anneal_words(alloy, handbook), words.label("heat", figure.heat or "any")]
    held = limits.hold(alloy, figure.heat or "any")
    said.append(f"hold {formatting.duration(held)}" if held else "hold: none published")
    return _limit("anneal", "Anneal", figure, "anneal", said, handbook)


def _by_eye(alloy: Alloy) -> bool:
    return any(r.how == "practice" and "red" in r.text for r in alloy.remarks)


def anneal_words(alloy: Alloy, handbook: Handbook) -> str:
    """The colour of the anneal in words: the chart's rule for it, and one observer's name with his
    table."""
    chart = next(iter(handbook.library.charts.values()), None)
    group = limits.glow_group(alloy, chart, handbook) if chart else None
    return group.short if group else ""


def _between(alloy: Alloy, handbook: Handbook) -> Limit:
    figure = limits.ceiling(alloy)
    if figure is None:
        return _none("between", "Between anneals", [])
    words = handbook.library.vocabulary
    said = [words.label("of", figure.of or "not-stated"), on_wire_words(figure)]
    start = limits.first(alloy, "reduction-ceiling", stage="cast")
    if start and start.stage == "cast":
        first = formatting.shown(start, "reduction-ceiling", handbook.library)
        said.append(f"first run from the ingot: {first.text}, {words.label('of', start.of or '')}")
    return _limit("between", "Between anneals", figure, "reduction-ceiling", said, handbook)


def on_wire_words(figure: Figure) -> str:
    """The limit on both bases of wire, in words; for a limit on thickness, that wire is not
    covered."""
    wire = limits.on_wire(figure)
    if wire is None:
        return "wide sheet: as much of the area" if figure.of == "thickness" else ""
    area, diameter = number(wire.area, 0), number(wire.diameter, 0)
    both = f"{area}{SPACE}% of the area, {diameter}{SPACE}% of the diameter"
    return f"wire, safe reading: {both}" if wire.safe else f"wire: {both}"


def _quench(alloy: Alloy, handbook: Handbook) -> Limit:
    if alloy.quench is None:
        return _none("quench", "Cooling", ["common practice: let the glow go, then water"])
    words = handbook.library.vocabulary
    text = words.quantities["cooling"].words[alloy.quench.rule]
    sources = formatting.sources_of(alloy.quench.from_, handbook.library)
    return Limit(
        "quench",
        "Cooling",
        text,
        [],
        MARKS[alloy.quench.how],
        words.label("how", alloy.quench.how),
        [pages.source_link(s, handbook) for s in sources],
    )


def _stop(alloy: Alloy, handbook: Handbook) -> Limit:
    found, stop = limits.stop(alloy), limits.hard_stop(alloy, handbook)
    if found is None or stop is None:
        return _none("stop", "Do not exceed, by eye", [])
    quantity, figure = found
    words = handbook.library.vocabulary
    known = words.quantities[quantity]
    state = words.label("state", figure.state) if figure.state else ""
    melts = f"{known.label.lower()} at {formatting.value(figure, known)}"
    margin = formatting.with_unit(number(limits.eye_error(handbook), 0), "K")
    return Limit(
        key="stop",
        label="Do not exceed, by eye",
        figure=formatting.with_unit(number(stop, 0), figure.unit),
        said=[", ".join(word for word in (melts, state) if word)],
        mark=MARKS["computed"],
        how=f"computed: {melts}, less the {margin} by which two eyes differ",
        sources=[
            pages.source_link(s, handbook)
            for s in formatting.sources_of(figure.from_, handbook.library)
        ],
    )


def rules(alloy: Alloy, handbook: Handbook) -> list[RuleShown]:
    """How to cool and pickle, with the reason."""
    words = handbook.library.vocabulary
    found = []
    for key, quantity, label in (("quench", "cooling", "Cooling"), ("pickle", "pickle", "Pickle")):
        rule = getattr(alloy, key)
        if rule:
            text = words.quantities[quantity].words[rule.rule]
            found.append(_rule(label, text, rule, handbook))
    return found


def _rule(label: str, text: str, stated: Provenance, handbook: Handbook) -> RuleShown:
    sources = formatting.sources_of(stated.from_, handbook.library)
    return RuleShown(
        label,
        text,
        MARKS[stated.how],
        handbook.library.vocabulary.label("how", stated.how),
        stated.why or "",
        [pages.source_link(s, handbook) for s in sources],
    )


def _remark(text: str, stated: Provenance, handbook: Handbook) -> RemarkShown:
    sources = formatting.sources_of(stated.from_, handbook.library)
    return RemarkShown(
        text,
        MARKS[stated.how],
        handbook.library.vocabulary.label("how", stated.how),
        [pages.source_link(s, handbook) for s in sources],
    )


def missing(alloy: Alloy) -> list[str]:
    """What a bench looks for and nobody has published where we could read it."""
    found = [
        label
        for quantity, label in EXPECTED
        if not any(f.how in limits.READ for f in alloy.figures.get(quantity, []))
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
