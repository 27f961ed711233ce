"""Pages of solders: where each flows, what it joins and with what margin, and their index."""

from __future__ import annotations

from dataclasses import dataclass

from temperbook.derive import limits
from temperbook.derive.handbook import Handbook
from temperbook.records.figures import Figure
from temperbook.records.models import Alloy, Solder
from temperbook.records.names import fineness
from temperbook.views import figure_rows, formatting, pages, routes, statements
from temperbook.views.comparing.plots import Bar, Ladder
from temperbook.views.comparing.tables import NOTHING, Cell, Part, Row
from temperbook.views.comparing.tables import figure as cell
from temperbook.views.figure_rows import Group, Reading
from temperbook.views.formatting import MARKS
from temperbook.views.pages import CautionShown, Link, Page
from temperbook.views.statements import RemarkShown, RuleShown

HEADS = ["Solder", "Starts to melt", "Wholly liquid", "Composition, percent of the mass"]
KEY = [
    "Bar: from where it starts to melt to where it is wholly liquid; it flows near the upper end."
]
STEP = 50.0


@dataclass(frozen=True)
class Joint:
    """An alloy that a solder joins: how far below its first melting the solder is liquid."""

    alloy: Link
    text: str
    close: bool


@dataclass(frozen=True)
class SolderShown:
    """Everything that a solder's page says."""

    id: str
    name: str
    also: list[str]
    about: str
    fineness: str
    composition: list[tuple[str, str, str]]
    composition_source: RuleShown
    flows: Cell
    urgent: CautionShown | None
    never: bool
    joints: list[Joint]
    eye: str
    remarks: list[RemarkShown]
    cautions: list[CautionShown]
    groups: list[Group]
    readings: list[Reading]
    sources: list[Link]
    legend: list[tuple[str, str]]


def all_pages(handbook: Handbook) -> list[Page]:
    """A page for each solder."""
    return [
        Page(routes.page("solders", s.id), "solder", s.name, shown(s, handbook), s.about)
        for s in handbook.library.solders.values()
    ]


def shown(solder: Solder, handbook: Handbook) -> SolderShown:
    """What one page says."""
    library = handbook.library
    carried = handbook.cautions_of[solder.id]
    readings = figure_rows.readings(handbook.readings_for(solder), handbook, solder.id)
    sources = {r.source.href: r.source for r in readings}
    return SolderShown(
        id=solder.id,
        name=solder.name,
        also=solder.also,
        about=solder.about,
        fineness=fineness(solder),
        composition=[
            (symbol, library.elements[symbol].name, formatting.number(share, 2))
            for symbol, share in sorted(solder.composition.items(), key=lambda item: -item[1])
        ],
        composition_source=statements.rule("Composition", "", solder.composition_source, handbook),
        flows=_flow_cell(solder, handbook),
        urgent=next((pages.caution(c) for c in carried if not c.applies.always), None),
        never=solder.melt == "never",
        joints=[j for i in solder.joins if (j := _joint(solder, library.alloys[i], handbook))],
        eye=formatting.with_unit(formatting.number(limits.eye_error(handbook), 0), "K"),
        remarks=statements.remarks(solder.remarks, handbook),
        cautions=[pages.caution(c) for c in carried],
        groups=figure_rows.groups(solder.id, solder.figures, handbook),
        readings=readings,
        sources=list(sources.values()),
        legend=pages.legend(),
    )


def _first(solder: Solder, quantity: str) -> Figure | None:
    return next(iter(solder.figures.get(quantity, [])), None)


def _liquid(solder: Solder) -> tuple[str, Figure] | None:
    """Where it is wholly liquid, with the quantity: of some only one heat of melting is known."""
    for quantity in ("liquidus", "melting-point"):
        figure = _first(solder, quantity)
        if figure:
            return quantity, figure
    return None


def _flow_cell(solder: Solder, handbook: Handbook) -> Cell:
    found = _liquid(solder)
    return cell(solder.id, *found, handbook) if found else NOTHING


def _joint(solder: Solder, alloy: Alloy, handbook: Handbook) -> Joint:
    liquid, melts = _liquid(solder), limits.stop(alloy)
    link = Link(alloy.name, routes.page("alloys", alloy.id))
    if liquid is None or melts is None:
        return Joint(link, "", close=False)
    margin = limits.lowest(melts[1]) - limits.highest(liquid[1])
    text = formatting.with_unit(formatting.number(margin, 0), "K")
    return Joint(link, text, close=margin < limits.eye_error(handbook))


def listed(handbook: Handbook) -> list[Part]:
    """The solders of each family, from the one that flows first."""
    words = handbook.library.vocabulary
    found = []
    for family in words.words["family"]:
        solders = [s for s in handbook.library.solders.values() if s.family == family]
        if solders:
            ranked = sorted(solders, key=_flow)
            rows = [_row(solder, handbook) for solder in ranked]
            name = f"{words.label('family', family)} solders"
            found.append(Part(name, family, HEADS, rows, _ladder(name, ranked, handbook), KEY))
    return found


def _flow(solder: Solder) -> float:
    liquid = _liquid(solder)
    return limits.highest(liquid[1]) if liquid else float("inf")


def _row(solder: Solder, handbook: Handbook) -> Row:
    parts = sorted(solder.composition.items(), key=lambda item: -item[1])
    mixed = ", ".join(f"{symbol} {formatting.number(share, 2)}" for symbol, share in parts)
    source = solder.composition_source
    return Row(
        Link(solder.name, routes.page("solders", solder.id)),
        [
            cell(solder.id, "solidus", _first(solder, "solidus"), handbook),
            _flow_cell(solder, handbook),
            Cell(mixed, mark=MARKS[source.how], how=source.how),
        ],
    )


def _ladder(name: str, solders: list[Solder], handbook: Handbook) -> Ladder | None:
    bars = tuple(bar for solder in solders if (bar := _bar(solder, handbook)))
    if not bars:
        return None
    low = min(b.low for b in bars if b.low is not None) // STEP * STEP
    high = -(-max(b.high for b in bars if b.high is not None) // STEP) * STEP
    step = STEP if high - low <= 8 * STEP else 2 * STEP
    alt = f"{name} by the heat at which they flow: " + "; ".join(
        f"{b.label} {b.text}" for b in bars
    )
    return Ladder(low, high, step, "°C", bars, f"{alt}.", glow=True)


def _bar(solder: Solder, handbook: Handbook) -> Bar | None:
    solid, found = _first(solder, "solidus"), _liquid(solder)
    if found is None:
        return None
    liquid = found[1]
    low, high = limits.lowest(solid or liquid), limits.highest(liquid)
    quantity = handbook.library.vocabulary.quantities["liquidus"]
    text = formatting.with_unit(formatting.ends((low, high), quantity.decimals), "degC")
    return Bar(solder.name, low, high, text, MARKS[liquid.how])
