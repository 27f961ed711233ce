"""Pages of faults: what one sees, why, how to tell, what to do, and how the alloy changes it."""

from __future__ import annotations

from dataclasses import dataclass

from temperbook.derive import faults
from temperbook.derive.handbook import Handbook
from temperbook.records.causes import Cause, Which
from temperbook.records.evidence import Evidence
from temperbook.records.models import Alloy, Fault
from temperbook.views import figure_rows, formatting, pages, routes, statements
from temperbook.views.comparing.tables import Cell
from temperbook.views.comparing.tables import figure as cell
from temperbook.views.figure_rows import Reading
from temperbook.views.formatting import MARKS
from temperbook.views.pages import CautionShown, Link, Page
from temperbook.views.statements import RemarkShown

NAMED = 6  # so many alloys of a rule are named; more are counted


@dataclass(frozen=True)
class CauseShown:
    """A cause, how likely, how to tell it, where it is likelier, and how it is known."""

    position: int
    text: str
    likely: str
    tell: str
    where: list[str]
    why: str
    mark: str
    how: str
    sources: list[Link]
    grade: str


@dataclass(frozen=True)
class OtherOrder:
    """Alloys in which the causes stand in another order, and that order in words."""

    alloys: list[Link]
    causes: list[str]


@dataclass(frozen=True)
class FaultShown:
    """Everything that a fault's page says."""

    id: str
    name: str
    seen: str
    when: list[str]
    picture: str
    causes: list[CauseShown]
    orders: dict[str, list[int]]
    others: list[OtherOrder]
    alloys: list[tuple[str, list[tuple[str, str]]]]
    save: str
    now: list[RemarkShown]
    prevent: list[RemarkShown]
    numbers: list[tuple[str, Cell]]
    prone: list[Link]
    see: list[Link]
    urgent: CautionShown | None
    cautions: list[CautionShown]
    readings: list[Reading]
    legend: list[tuple[str, str]]


def all_pages(handbook: Handbook) -> list[Page]:
    """A page for each fault."""
    return [
        Page(routes.page("faults", f.id), "fault", f.name, shown(f, handbook), f.seen)
        for f in handbook.library.faults.values()
    ]


def shown(fault: Fault, handbook: Handbook) -> FaultShown:
    """What one page says."""
    library = handbook.library
    words = library.vocabulary
    orders = faults.orders(fault, library.alloys)
    return FaultShown(
        id=fault.id,
        name=fault.name,
        seen=fault.seen,
        when=[words.label("work", word).lower() for word in fault.when],
        picture=fault.picture,
        causes=[_cause(n, fault.causes[n], handbook) for n in faults.ranked(fault)],
        orders=orders,
        others=_others(fault, orders, handbook),
        alloys=_choices(handbook),
        save=words.label("save", fault.save),
        now=statements.remarks(fault.now, handbook),
        prevent=statements.remarks(fault.prevent, handbook),
        numbers=[_number(call, handbook) for call in fault.numbers],
        prone=[_link(a) for a in library.alloys.values() if faults.meant(fault.prone, a)],
        see=[Link(library.faults[i].name, routes.page("faults", i)) for i in fault.see],
        urgent=_urgent(fault, handbook),
        cautions=pages.cautions(fault.cautions, handbook),
        readings=figure_rows.readings(_rows(fault, handbook), handbook, fault.id),
        legend=pages.legend(),
    )


def _urgent(fault: Fault, handbook: Handbook) -> CautionShown | None:
    """The caution that stands on top: the first that the record names of those that hurt at
    once."""
    named = (pages.caution(handbook.library.cautions[i]) for i in fault.cautions)
    return next((caution for caution in named if caution.immediate), None)


def _rows(fault: Fault, handbook: Handbook) -> list[Evidence]:
    """The rows that speak of the fault, and those of other records that it rests on."""
    own = handbook.readings.get(fault.id, [])
    said = [*fault.causes, *fault.now, *fault.prevent]
    named = dict.fromkeys(row for one in said for row in one.from_)
    known = {row.id for row in own}
    return [*own, *(handbook.library.evidence[i] for i in named if i not in known)]


def _cause(position: int, cause: Cause, handbook: Handbook) -> CauseShown:
    words = handbook.library.vocabulary
    sources = formatting.sources_of(cause.from_, handbook.library)
    where = [
        f"{label} {_which(which, handbook)}"
        for label, which in (
            ("likelier in", cause.more),
            ("less likely in", cause.less),
            ("only in", cause.only),
        )
        if which is not None
    ]
    return CauseShown(
        position,
        cause.text,
        words.label("likely", cause.likely),
        cause.tell,
        where,
        cause.why or "",
        MARKS[cause.how],
        words.label("how", cause.how),
        [pages.source_link(s, handbook) for s in sources],
        figure_rows.standing(cause.from_, handbook),
    )


def _which(which: Which, handbook: Handbook) -> str:
    """The alloys of a rule in words: `nickel white golds`, `alloys that order`."""
    library = handbook.library
    words = library.vocabulary
    said = [words.label("family", family).lower() for family in which.families]
    said += [f"metal with {library.elements[e].name.lower()}" for e in which.elements]
    structures = words.quantities["structure"].words
    said += [f"what is {structures[s].split(':')[0].lower()}" for s in which.structure]
    named = [library.alloys[i].name for i in which.alloys]
    said += named if len(named) <= NAMED else [*named[:NAMED], f"{len(named) - NAMED} more"]
    return formatting.listed(said)


def _others(fault: Fault, orders: dict[str, list[int]], handbook: Handbook) -> list[OtherOrder]:
    """Alloys that share an order, the commonest order first."""
    groups: dict[tuple[int, ...], list[Link]] = {}
    for alloy_id, order in orders.items():
        groups.setdefault(tuple(order), []).append(_link(handbook.library.alloys[alloy_id]))
    return [
        OtherOrder(links, [fault.causes[n].text for n in order])
        for order, links in sorted(groups.items(), key=lambda item: -len(item[1]))
    ]


def _link(alloy: Alloy) -> Link:
    return Link(alloy.name, routes.page("alloys", alloy.id))


def _choices(handbook: Handbook) -> list[tuple[str, list[tuple[str, str]]]]:
    """Every alloy's id and name, by family, for a choice."""
    words = handbook.library.vocabulary
    found: dict[str, list[tuple[str, str]]] = {}
    for alloy_id, alloy in handbook.library.alloys.items():
        found.setdefault(alloy.family, []).append((alloy_id, alloy.name))
    return [
        (words.label("family", family), sorted(found[family], key=lambda one: one[1]))
        for family in words.words["family"]
        if family in found
    ]


def _number(call: str, handbook: Handbook) -> tuple[str, Cell]:
    """A figure that belongs to the fault: whose and what it is, and the figure."""
    called = handbook.figure(call)
    label = handbook.library.vocabulary.quantities[called.quantity].label
    named = f"{handbook.name_of(called.record)}: {label[0].lower()}{label[1:]}"
    return named, cell(called.record, called.quantity, called.figure, handbook)


# -- the finder


@dataclass(frozen=True)
class FaultLine:
    """A fault in the finder: where it leads, what one sees, and what narrows it down."""

    link: Link
    when: list[str]
    looks: list[str]
    prone: list[str]
    usual: list[str]  # the alloys in which a usual cause can act; empty where it can in all


@dataclass(frozen=True)
class Look:
    """What a fault looks like, and the faults of one part of the work that do."""

    title: str
    lines: list[FaultLine]


@dataclass(frozen=True)
class Stage:
    """A part of the work, and what can show in it."""

    id: str
    title: str
    looks: list[Look]


@dataclass(frozen=True)
class Finder:
    """The tree of faults, and the words and alloys that the three questions offer."""

    stages: list[Stage]
    when: list[tuple[str, str]]
    looks: list[tuple[str, str]]
    alloys: list[tuple[str, list[tuple[str, str]]]]


def listed(handbook: Handbook) -> Finder:
    """The finder: by part of the work, then by look."""
    words = handbook.library.vocabulary.words
    lines = {i: _line(f, handbook) for i, f in handbook.library.faults.items()}
    stages = []
    for work, entry in words["work"].items():
        looks = []
        for look, said in words["looks"].items():
            found = [one for one in lines.values() if work in one.when and look in one.looks]
            if found:
                found.sort(key=lambda one: (one.when[0] != work, one.looks[0] != look))
                looks.append(Look(said.label, found))
        if looks:
            stages.append(Stage(work, entry.label, looks))
    used = {look for line in lines.values() for look in line.looks}
    return Finder(
        stages,
        [(stage.id, stage.title) for stage in stages],
        [(look, said.label) for look, said in words["looks"].items() if look in used],
        _choices(handbook),
    )


def _line(fault: Fault, handbook: Handbook) -> FaultLine:
    prone = [a.id for a in handbook.library.alloys.values() if faults.meant(fault.prone, a)]
    usual = faults.usual_in(fault, handbook.library.alloys)
    link = Link(fault.name, routes.page("faults", fault.id), fault.seen)
    return FaultLine(link, fault.when, fault.looks, prone, usual)


def at_work(words: tuple[str, ...], handbook: Handbook) -> list[Link]:
    """Links to the faults that mostly show in a part of the work."""
    return [
        Link(f.name, routes.page("faults", f.id))
        for f in handbook.library.faults.values()
        if f.when[0] in words
    ]


def of_alloy(alloy: Alloy, handbook: Handbook) -> list[Link]:
    """Links to the faults that an alloy is prone to, which rank their causes for it."""
    return [
        Link(f.name, f"{routes.page('faults', f.id)}?alloy={alloy.id}")
        for f in faults.prone_to(alloy, handbook.library)
    ]
