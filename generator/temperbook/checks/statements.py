"""Everything in the records that carries a provenance, with its place: shared by several rules."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from temperbook.records.evidence import Evidence
from temperbook.records.figures import Figure, Provenance
from temperbook.records.load import Library
from temperbook.records.models import Record, Route
from temperbook.records.stated import stated
from temperbook.records.yaml_reader import Document, Location


@dataclass(frozen=True)
class Placed:
    """A statement, the record and the line that it stands in."""

    record: str
    document: Document
    at: Location
    stated: Provenance

    def rows(self, library: Library) -> list[Evidence]:
        """The evidence rows that the statement names, without those that have a slip themselves."""
        named = self.stated.from_
        return [library.evidence[i] for i in named if i in library.evidence and not library.lost(i)]


def figures(library: Library) -> Iterator[tuple[Placed, str, Figure]]:
    """Every figure with its place and quantity."""
    for record_id, quantity, position, figure in library.placed_figures():
        at = ("figures", quantity, position)
        yield Placed(record_id, library.document(record_id), at, figure), quantity, figure


def all_statements(library: Library) -> Iterator[Placed]:
    """Figures, compositions, rules, remarks, and limits that a route sets."""
    for placed, _, _ in figures(library):
        yield placed
    records: list[tuple[str, str, Record]] = [
        *(("alloys", i, alloy) for i, alloy in library.alloys.items()),
        *(("solders", i, solder) for i, solder in library.solders.items()),
        *(("faults", i, fault) for i, fault in library.faults.items()),
        *(("subjects", i, subject) for i, subject in library.subjects.items()),
        *(("routes", i, route) for i, route in library.of("routes", Route).items()),
    ]
    for kind, record_id, record in records:
        document = library.document(record_id, kind)
        for at, said in _others(record):
            yield Placed(record_id, document, at, said)


def _others(record: Record) -> Iterator[tuple[Location, Provenance]]:
    yield from stated(record)
    if isinstance(record, Route):
        yield from _route_limits(record)


def _route_limits(route: Route) -> Iterator[tuple[Location, Provenance]]:
    for position, stretch in enumerate(route.stretches):
        for key in ("ceiling", "first_ceiling", "floor", "first_floor"):
            limit = getattr(stretch, key)
            if limit:
                yield ("stretches", position, key), limit
