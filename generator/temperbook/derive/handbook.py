"""The finished handbook: linked records, computed figures, cautions by rule, readings, uses of
sources."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable
from dataclasses import dataclass, replace
from functools import cached_property

from temperbook.derive import cautions, computing, glow
from temperbook.records import addresses
from temperbook.records.evidence import Evidence
from temperbook.records.figures import Figure, Provenance
from temperbook.records.load import FIGURE_KINDS, Library
from temperbook.records.models import (
    Alloy,
    Caution,
    Chart,
    ColourTable,
    Element,
    Fault,
    Pack,
    Record,
    Solder,
    Subject,
)
from temperbook.records.stated import stated


@dataclass(frozen=True)
class Called:
    """A figure with its address, record and quantity."""

    address: str
    record: str
    quantity: str
    figure: Figure


class Handbook:
    """Everything that views may say. Built once, never changed."""

    def __init__(self, library: Library) -> None:
        self.library = library

    @cached_property
    def figures(self) -> dict[str, Called]:
        """Every figure by full address."""
        return {a: Called(a, *found) for a, found in self.library.figures().items()}

    @cached_property
    def _addresses(self) -> dict[str, list[str]]:
        """Full addresses by their stem, the record with the quantity."""
        found: dict[str, list[str]] = defaultdict(list)
        for address in self.figures:
            found[addresses.split(address)[0]].append(address)
        return dict(found)

    def figure(self, call: str) -> Called:
        """The one figure that a call fits. Errors: KeyError where it is none or several."""
        stem, _ = addresses.split(call)
        fitting = addresses.matching(call, self._addresses.get(stem, ()))
        if len(fitting) != 1:
            raise KeyError(call)
        return self.figures[fitting[0]]

    def name_of(self, record_id: str) -> str:
        """What the record that bears figures is called."""
        kind = self.library.kind_of(record_id)
        record = self.library.records[kind][record_id]
        assert isinstance(record, (Alloy, Solder, Fault, Subject, Element, ColourTable, Caution))
        return record.name

    @cached_property
    def cautions_of(self) -> dict[str, list[Caution]]:
        """Cautions by the id of an alloy or solder, gravest first."""
        return {i: cautions.of_alloy(one, self.library) for i, one in self.library.mixed.items()}

    def cautions_on(self, chart: Chart, alloys: Iterable[Alloy]) -> list[Caution]:
        """The cautions of a chart of these alloys, gravest first."""
        return cautions.of_chart(chart, alloys, self.cautions_of, self.library)

    def cautions_in(self, pack: Pack) -> list[Caution]:
        """The cautions of a pack, those that it names first."""
        return cautions.of_pack(pack, self.cautions_of, self.library)

    def charts_with(self, caution_id: str) -> list[Chart]:
        """The charts that carry a caution when every alloy is on them."""
        return [c for c in self.library.charts.values() if caution_id in self._on_charts[c.id]]

    def packs_with(self, caution_id: str) -> list[Pack]:
        """The packs that carry a caution."""
        return [p for p in self.library.packs.values() if caution_id in self._in_packs[p.id]]

    @cached_property
    def _on_charts(self) -> dict[str, set[str]]:
        alloys = self.library.alloys.values()
        charts = self.library.charts
        return {i: {c.id for c in self.cautions_on(chart, alloys)} for i, chart in charts.items()}

    @cached_property
    def _in_packs(self) -> dict[str, set[str]]:
        packs = self.library.packs
        return {i: {c.id for c in self.cautions_in(pack)} for i, pack in packs.items()}

    def alloys_with(self, caution_id: str) -> list[Alloy]:
        """The alloys that carry a caution."""
        return [a for a in self.library.alloys.values() if self._carries(a.id, caution_id)]

    def solders_with(self, caution_id: str) -> list[Solder]:
        """The solders that carry a caution."""
        return [s for s in self.library.solders.values() if self._carries(s.id, caution_id)]

    def _carries(self, record_id: str, caution_id: str) -> bool:
        return any(c.id == caution_id for c in self.cautions_of[record_id])

    @cached_property
    def readings(self) -> dict[str, list[Evidence]]:
        """Evidence rows by the record that they speak of."""
        found: dict[str, list[Evidence]] = defaultdict(list)
        for row in self.library.evidence.values():
            found[row.record].append(row)
        return dict(found)

    @cached_property
    def taken(self) -> dict[str, list[Evidence]]:
        """Evidence rows by the source that they were read in."""
        found: dict[str, list[Evidence]] = defaultdict(list)
        for row in self.library.evidence.values():
            found[row.source].append(row)
        return dict(found)

    def readings_for(self, alloy: Alloy | Solder) -> list[Evidence]:
        """Rows that speak of the alloy, then those of its systems and families."""
        records = (alloy.id, *alloy.subjects)
        return [row for record in records for row in self.readings.get(record, [])]

    @cached_property
    def rests_on(self) -> dict[str, list[str]]:
        """Where each evidence row went: row id -> addresses and places that rest on it."""
        found: dict[str, list[str]] = defaultdict(list)
        for called in self.figures.values():
            for row in called.figure.from_:
                found[row].append(called.address)
        for kind in ("alloys", "solders", "subjects", "faults"):
            for record_id, record in self.library.records.get(kind, {}).items():
                for place, said in statements(record):
                    for row in said.from_:
                        found[row].append(f"{record_id}#{place}")
        for caution in self.library.cautions.values():
            for row in caution.from_:
                found[row].append(caution.id)
        return dict(found)

    @cached_property
    def glow(self) -> glow.GlowScale:
        """The colours of heat as the chart and the pages show them."""
        return glow.scale(self.library.project)


def statements(record: Record) -> list[tuple[str, Provenance]]:
    """A record's statements that are no figures, by the key that they stand under."""
    return [(str(at[0]).removesuffix("_source"), said) for at, said in stated(record)]


def derive(library: Library) -> Handbook:
    """The handbook of a library that has no problems, its computed figures filled in."""
    records = {
        kind: {i: computing.completed(record, library) for i, record in found.items()}
        if kind in FIGURE_KINDS
        else found
        for kind, found in library.records.items()
    }
    return Handbook(replace(library, records=records))
