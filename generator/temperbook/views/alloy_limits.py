"""The large figures of an alloy's first screen: anneal, how far between anneals, cooling, where to
stop."""

from __future__ import annotations

from dataclasses import dataclass, field

from temperbook.derive import limits
from temperbook.derive.handbook import Handbook
from temperbook.metal.planning.asked import NEVER_HEATED
from temperbook.records.figures import Figure, Rule
from temperbook.records.models import Alloy
from temperbook.views import formatting, pages
from temperbook.views.formatting import MARKS, SPACE, number
from temperbook.views.pages import Link

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
    if alloy.heating and alloy.heating.rule == NEVER_HEATED:
        return _never_annealed(alloy.heating, handbook)
    figure = limits.anneal(alloy)
    if figure is None:
        practice = "common practice: first hint of dull red" if _by_eye(alloy) else ""
        return _none("anneal", "Anneal", [practice] if practice else [])
    words = handbook.library.vocabulary
    said = [anneal_words(alloy, handbook), words.label("heat", figure.heat or "any")]
    held = limits.hold(alloy, figure.heat or "any")
    said.append(f"hold {formatting.duration(held)}" if held else "hold: none published")
    return _limit("anneal", "Anneal", figure, "anneal", said, handbook)


def _never_annealed(rule: Rule, handbook: Handbook) -> Limit:
    return Limit(
        "anneal",
        "Anneal",
        "none",
        ["it needs no anneal"],
        MARKS[rule.how],
        handbook.library.vocabulary.label("how", rule.how),
        [
            pages.source_link(s, handbook)
            for s in formatting.sources_of(rule.from_, handbook.library)
        ],
    )


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
        return _none("stop", "Do not exceed, by eye", ["try an offcut first"])
    quantity, figure = found
    words = handbook.library.vocabulary
    known = words.quantities[quantity]
    state = words.label("state", figure.state) if figure.state else ""
    melts = f"{known.label.lower()} at {formatting.value(figure, known)}"
    margin = formatting.with_unit(number(limits.eye_error(handbook), 0), "K")
    unseen = limits.melts_unseen(alloy, handbook)
    return Limit(
        key="stop",
        label="Do not exceed" if unseen else "Do not exceed, by eye",
        figure=formatting.with_unit(number(stop, 0), figure.unit),
        said=[
            ", ".join(word for word in (melts, figure.name or "", state) if word),
            *(["no glow warns of it: never by eye"] if unseen else []),
        ],
        mark=MARKS["computed"],
        how=f"computed: {melts}, less {margin}"
        if unseen
        else f"computed: {melts}, less the {margin} by which two eyes differ",
        sources=[
            pages.source_link(s, handbook)
            for s in formatting.sources_of(figure.from_, handbook.library)
        ],
    )
