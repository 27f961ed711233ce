"""The anneal between the runs of a route, as the alloy's own page states it."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from temperbook.derive import limits
from temperbook.derive.handbook import Handbook
from temperbook.records.figures import Figure, Rule
from temperbook.records.models import Alloy
from temperbook.views import alloy_limits, formatting, pages
from temperbook.views.alloy_limits import NONE_FOUND
from temperbook.views.route_runs import Part, known_by

USUAL = ("water-after-glow", "Let the glow go, then water")  # where no source says how to cool

# Quantities that stand with the anneal of an alloy that orders or ages, and their labels.
BANDS = {"no-dwell": "do not linger at", "quench-from": "quench from"}


@dataclass(frozen=True)
class AnnealShown:
    """The anneal: its heat [degC] for the colour, the rule of cooling for the sign, its parts in
    words. `by_eye` is what benches do where no heat is published."""

    low: float | None
    high: float | None
    rule: str
    heating: Part | None
    heat: Part
    colour: str
    hold: Part | None
    avoid: list[Part]
    quench: Part
    pickle: Part | None
    by_eye: list[Part]

    @property
    def parts(self) -> list[Part]:
        """Its parts in the order of the work."""
        found = (
            self.heating,
            self.heat,
            *self.by_eye,
            self.hold,
            *self.avoid,
            self.quench,
            self.pickle,
        )
        return [part for part in found if part]


def shown(alloy: Alloy, handbook: Handbook) -> AnnealShown:
    """The anneal of an alloy."""
    figure = limits.anneal(alloy)
    hold = limits.hold(alloy, figure.heat or "any") if figure else None
    heating, cooling, pickle = (
        _rule(label, rule, quantity, handbook)
        for label, rule, quantity in (
            ("heat up", alloy.heating, "heating"),
            ("cool", alloy.quench, "cooling"),
            ("pickle", alloy.pickle, "pickle"),
        )
    )
    usual = Part("cool", USUAL[1], *known_by("practice", (), handbook))
    return AnnealShown(
        low=limits.lowest(figure) if figure else None,
        high=limits.highest(figure) if figure else None,
        rule=alloy.quench.rule if alloy.quench else USUAL[0],
        heating=heating,
        heat=_heat(figure, handbook),
        colour=alloy_limits.anneal_words(alloy, handbook),
        hold=_figure("hold", hold, "anneal-time", handbook) if hold else None,
        avoid=[
            _figure(label, figure, quantity, handbook)
            for quantity, label in BANDS.items()
            for figure in alloy.figures.get(quantity, [])
        ],
        quench=cooling or usual,
        pickle=pickle,
        by_eye=[] if figure else [*_habits(alloy, handbook)],
    )


def _heat(figure: Figure | None, handbook: Handbook) -> Part:
    if figure is None:
        return Part("heat", NONE_FOUND, "", "", [])
    return _figure("heat", figure, "anneal", handbook)


def _figure(label: str, figure: Figure, quantity: str, handbook: Handbook) -> Part:
    said = formatting.shown(figure, quantity, handbook.library)
    sources = [pages.source_link(source, handbook) for source in said.sources]
    return Part(label, said.text, said.mark, said.how, sources, said.basis)


def _rule(label: str, rule: Rule | None, quantity: str, handbook: Handbook) -> Part | None:
    if rule is None:
        return None
    text = handbook.library.vocabulary.quantities[quantity].words[rule.rule]
    sources = formatting.sources_of(rule.from_, handbook.library)
    return Part(label, text, *known_by(rule.how, sources, handbook))


def _habits(alloy: Alloy, handbook: Handbook) -> Iterator[Part]:
    """What benches say of the anneal of an alloy of which nothing is published."""
    for remark in alloy.remarks:
        if remark.how == "practice" and "anneal" in remark.text.lower():
            yield Part("by eye", remark.text, *known_by("practice", (), handbook))
