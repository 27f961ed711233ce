"""Pages of sources: what was taken from each, where it stands in the work, and where it went."""

from __future__ import annotations

from dataclasses import dataclass

from temperbook.derive.handbook import Handbook
from temperbook.records.evidence import Evidence
from temperbook.records.models import Source
from temperbook.views import figure_rows, pages, routes
from temperbook.views.figure_rows import Reading
from temperbook.views.pages import Link, Page


@dataclass(frozen=True)
class Taken:
    """One reading, the page of what it speaks of, and the figures that rest on it."""

    reading: Reading
    about: Link
    rests: list[Link]


@dataclass(frozen=True)
class SourceShown:
    """What a source's page says."""

    title: str
    by: str
    year: str
    kind: str
    read: str
    link: str
    note: str
    taken: list[Taken]


@dataclass(frozen=True)
class SourceLine:
    """A source in the index."""

    link: Link
    kind: str
    read: str
    rows: int


def all_pages(handbook: Handbook) -> list[Page]:
    """A page for each source."""
    return [
        Page(routes.page("sources", s.id), "source", s.title, shown(s, handbook), s.by)
        for s in handbook.library.sources.values()
    ]


def shown(source: Source, handbook: Handbook) -> SourceShown:
    """What one page says."""
    words = handbook.library.vocabulary
    rows = handbook.taken.get(source.id, [])
    return SourceShown(
        title=source.title,
        by=source.by,
        year=str(source.year or ""),
        kind=words.label("source-kind", source.kind),
        read=words.label("read", source.read),
        link=source.link or "",
        note=source.note or "",
        taken=[_taken(row, handbook) for row in rows],
    )


def _taken(row: Evidence, handbook: Handbook) -> Taken:
    library = handbook.library
    about = Link(handbook.name_of(row.record), routes.bearer(row.record, library))
    rests = [_place(place, handbook) for place in handbook.rests_on.get(row.id, [])]
    return Taken(figure_rows.readings([row], handbook, row.record)[0], about, rests)


def _place(place: str, handbook: Handbook) -> Link:
    record, _, rest = place.partition("#")
    href = routes.bearer(record, handbook.library)
    if place in handbook.figures:
        quantity = handbook.library.vocabulary.quantities[handbook.figures[place].quantity]
        return Link(
            f"{handbook.name_of(record)}: {quantity.label.lower()}",
            routes.figure(place, handbook.library),
        )
    return Link(f"{handbook.name_of(record)}: {rest}" if rest else handbook.name_of(record), href)


def listed(handbook: Handbook) -> list[SourceLine]:
    """Every source with how much was taken from it, for the index."""
    words = handbook.library.vocabulary
    return [
        SourceLine(
            Link(source.title, routes.page("sources", source.id), pages.short_source(source)),
            words.label("source-kind", source.kind),
            words.label("read", source.read),
            len(handbook.taken.get(source.id, [])),
        )
        for source in sorted(handbook.library.sources.values(), key=lambda s: s.title.lower())
    ]
