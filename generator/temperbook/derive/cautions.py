"""Which cautions an alloy carries: by composition and family, as the caution records say, and by
name. A chart and a pack carry those of the metals that they speak of."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import TypeAlias

from temperbook.derive import composed
from temperbook.records.load import Library
from temperbook.records.models import Alloy, Caution, Chart, Pack, Solder

Borne: TypeAlias = Mapping[str, list[Caution]]
SIGNALS = ("danger", "warning", "caution")


def of_alloy(alloy: Alloy | Solder, library: Library) -> list[Caution]:
    """The cautions of an alloy or solder: those that hurt at once first, then the gravest."""
    found = [c for c in library.cautions.values() if c.id in alloy.cautions or applies(c, alloy)]
    return sorted(found, key=rank)


def applies(caution: Caution, alloy: Alloy | Solder) -> bool:
    """Whether a caution's own rule covers the alloy."""
    rule = caution.applies
    if rule.record_only:
        return False
    return rule.always or composed.any_of(rule, alloy)


def of_chart(
    chart: Chart, alloys: Iterable[Alloy], borne: Borne, library: Library
) -> list[Caution]:
    """The cautions of a chart: those that its record names, and those that come with what is in
    the alloys on it and concern its work. What holds for every metal stands on their own pages.

    borne: cautions by the id of an alloy.
    """
    brought = [c for a in alloys for c in borne[a.id] if not c.applies.always]
    found = {c.id: c for c in brought if set(c.tasks) & set(chart.tasks)}
    found |= {i: library.cautions[i] for i in chart.cautions}
    return sorted(found.values(), key=rank)


def of_pack(pack: Pack, borne: Borne, library: Library) -> list[Caution]:
    """The cautions of a pack: those that its record names, then all that the metals bring of
    which its chapters and exercises speak. borne: cautions by the id of an alloy or solder."""
    named = [library.cautions[i] for i in pack.cautions]
    brought = {c.id: c for m in metals_of(pack, library) for c in borne[m.id]}
    rest = [c for c in brought.values() if c.id not in pack.cautions]
    return [*named, *sorted(rest, key=rank)]


def metals_of(pack: Pack, library: Library) -> list[Alloy | Solder]:
    """The alloys and solders that a pack calls figures of, links to or reckons with."""
    texts = [library.prose[chapter] for chapter in pack.chapters]
    called = [call.target.split("#")[0] for text in texts for call in text.figure_calls()]
    linked = [link.target.partition(":")[2] for text in texts for link in text.links()]
    reckoned = [str(e.inputs["alloy"]) for e in pack.exercises if "alloy" in e.inputs]
    named = dict.fromkeys([*called, *linked, *reckoned])
    return [library.mixed[i] for i in named if i in library.mixed]


def rank(caution: Caution) -> tuple[bool, int, str]:
    """Sorts cautions: at once before later, danger before warning before caution."""
    return not caution.immediate, SIGNALS.index(caution.signal), caution.id
