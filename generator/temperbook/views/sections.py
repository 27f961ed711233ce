"""The section pages: their own prose from content/pages/, and what each lists below it."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Any

from temperbook.derive import colour_names, limits
from temperbook.derive.handbook import Handbook
from temperbook.records import prose
from temperbook.records.link_prose import INNER, PAGES
from temperbook.records.models import Alloy
from temperbook.records.names import PRECIOUS, fineness
from temperbook.views import (
    caution,
    fault,
    formatting,
    formula_page,
    formulas,
    pages,
    plan_form,
    route,
    routes,
    solder,
    source,
    step,
    tables,
)
from temperbook.views import prose as spoken
from temperbook.views.comparing.pages import TOPICS
from temperbook.views.formatting import MARKS
from temperbook.views.pages import Link, Page
from temperbook.views.prose import Passage

# Sections of the site, in the order of its navigation: stems in content/pages/.
SECTIONS = PAGES[1:]


@dataclass(frozen=True)
class SectionShown:
    """A section's prose and its list; the list's shape is the section's own."""

    title: str
    passages: list[Passage]
    listed: Any = None
    legend: list[tuple[str, str]] = field(default_factory=list)


@dataclass(frozen=True)
class AlloyLine:
    """An alloy in the index: its names for the filter, and the limits that fit in a line."""

    id: str
    name: str
    href: str
    also: str
    fineness: str
    anneal: str
    anneal_mark: str
    between: str
    between_mark: str
    quench: str


@dataclass(frozen=True)
class Family:
    """The alloys of one family."""

    name: str
    lines: list[AlloyLine]


@dataclass(frozen=True)
class ColourLane:
    """An observer's names with the temperatures that they stand for."""

    table: Link
    observer: str
    names: list[tuple[str, str]]


@dataclass(frozen=True)
class NameApart:
    """A name that several observers use: its heats, how far they lie apart, and their tables."""

    name: str
    heats: str
    by: str
    tables: list[Link]


@dataclass(frozen=True)
class Lanes:
    """The page of heat colours: names that several observers use, then each observer's table."""

    apart: list[NameApart]
    lanes: list[ColourLane]


@dataclass(frozen=True)
class TermShown:
    """A term of the glossary."""

    anchor: str
    term: str
    meaning: str
    see: list[Link]


def all_pages(handbook: Handbook) -> list[Page]:
    """Every section page and the home page."""
    return [_page(stem, handbook) for stem in (*PAGES, *INNER)]


def _page(stem: str, handbook: Handbook) -> Page:
    text = handbook.library.prose[f"pages/{stem}"]
    says = SectionShown(
        text.title,
        spoken.passages(text, handbook),
        LISTS[stem](handbook) if stem in LISTS else None,
        pages.legend(),
    )
    address = "" if stem == "home" else f"{stem}/"
    kind = "comparison" if stem in TOPICS else "step" if stem in step.LISTS else stem
    return Page(address, kind, text.title, says)


def _cards(handbook: Handbook) -> list[Link]:
    """The home page's list: each item's strong words are a card's title, its first link where it
    leads."""
    text = handbook.library.prose["pages/home"]
    items = [b for b in prose.walk(text.blocks) if b.kind == "item"]
    return [_card(item.children[0].inlines, handbook) for item in items]


def _card(inlines: tuple[prose.Inline, ...], handbook: Handbook) -> Link:
    title = next((prose.plain(i.children) for i in inlines if i.kind == "strong"), "")
    target = next((i.target for i in inlines if i.kind == "link"), "page:alloys")
    said = prose.plain(tuple(i for i in inlines if i.kind == "text")).strip(" :.")
    return Link(title.rstrip("."), routes.linked(target, handbook.library), f"{said}.")


def _families(handbook: Handbook) -> list[Family]:
    found: dict[str, list[AlloyLine]] = {}
    for alloy in handbook.library.alloys.values():
        found.setdefault(alloy.family, []).append(_line(alloy, handbook))
    words = handbook.library.vocabulary
    for family, lines in found.items():
        lines.sort(key=lambda line: (-_share(line.id, family, handbook), line.name))
    return [
        Family(words.label("family", family), found[family])
        for family in words.words["family"]
        if family in found
    ]


def _share(alloy_id: str, family: str, handbook: Handbook) -> float:
    """Percent of the metal that gives a precious family its name; none for other families."""
    metal = PRECIOUS.get(family, "")
    return handbook.library.alloys[alloy_id].composition.get(metal, 0.0)


def _line(alloy: Alloy, handbook: Handbook) -> AlloyLine:
    words = handbook.library.vocabulary
    anneal, between = limits.anneal(alloy), limits.ceiling(alloy)
    cooling = words.quantities["cooling"].words
    return AlloyLine(
        id=alloy.id,
        name=alloy.name,
        href=routes.page("alloys", alloy.id),
        also=" ".join([alloy.id, alloy.short, *alloy.also]),
        fineness=fineness(alloy),
        anneal=formatting.value(anneal, words.quantities["anneal"]) if anneal else "",
        anneal_mark=MARKS[anneal.how] if anneal else "",
        between=_between(between, handbook),
        between_mark=MARKS[between.how] if between else "",
        quench=cooling[alloy.quench.rule] if alloy.quench else "",
    )


def _between(figure: Any, handbook: Handbook) -> str:
    if figure is None:
        return ""
    words = handbook.library.vocabulary
    text = formatting.value(figure, words.quantities["reduction-ceiling"])
    return f"{text} {words.label('of', figure.of)}"


def _colours(handbook: Handbook) -> Lanes:
    library = handbook.library
    shared = [
        NameApart(
            one.name,
            formatting.with_unit(formatting.ends((one.low, one.high), 0), "degC"),
            formatting.with_unit(formatting.number(one.by, 0), "K"),
            [Link(library.colours[t].name, routes.page("colours", t)) for t in one.tables],
        )
        for one in colour_names.apart(library)
    ]
    return Lanes(shared, _lanes(handbook))


def _lanes(handbook: Handbook) -> list[ColourLane]:
    words = handbook.library.vocabulary.quantities["heat-colour"]
    return [
        ColourLane(
            Link(table.name, routes.page("colours", table_id)),
            table.observer,
            [
                (figure.name or "", formatting.value(figure, words))
                for figure in table.figures.get("heat-colour", [])
            ],
        )
        for table_id, table in handbook.library.colours.items()
    ]


def _charts(handbook: Handbook) -> list[Link]:
    return [
        Link(chart.title, routes.page("charts", chart_id), chart.about)
        for chart_id, chart in handbook.library.charts.items()
    ]


def _packs(handbook: Handbook) -> list[Link]:
    return [
        Link(pack.title, routes.page("packs", pack_id), pack.subtitle)
        for pack_id, pack in handbook.library.packs.items()
    ]


def terms(handbook: Handbook, only: list[str] | None = None) -> list[TermShown]:
    """The glossary by term; with `only`, the terms of these ids."""
    glossary = handbook.library.glossary
    chosen = [glossary[i] for i in (only if only is not None else glossary)]
    return [
        TermShown(
            t.id,
            t.term,
            t.meaning,
            [Link(glossary[s].term, routes.page("glossary", s)) for s in t.see],
        )
        for t in sorted(chosen, key=lambda t: t.term.lower())
    ]


def _work_it_out(handbook: Handbook) -> list[tuple[str, str, list[Link]]]:
    """What can be worked out, by subject; planning first, where plans can be made."""
    planning = plan_form.listed(handbook)
    first = [("Planning", "planning", planning)] if planning else []
    return [*first, *formula_page.listed(handbook)]


LISTS = {
    "home": _cards,
    "alloys": _families,
    **TOPICS,
    **step.LISTS,
    "steps": step.listed,
    "when-it-cracks": fault.listed,
    "solders": solder.listed,
    "tables": tables.listed,
    "heat-colours": _colours,
    "work-it-out": _work_it_out,
    "routes": route.listed,
    "cautions": caution.listed,
    "wall-charts": _charts,
    "reading-packs": _packs,
    "formulas": formulas.listed,
    "glossary": terms,
    "sources": source.listed,
}
