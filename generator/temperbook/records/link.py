"""References between records: every id that is named must exist, and be of the right kind."""

from __future__ import annotations

import re
from collections import defaultdict
from collections.abc import Iterator
from typing import TYPE_CHECKING, get_args

from temperbook.problems import Problem, nearest
from temperbook.records import fault_links, link_prose
from temperbook.records.figures import Figure, address
from temperbook.records.models import ChartGroup, Record
from temperbook.records.names import normal
from temperbook.records.yaml_reader import Document, Location, shown_location

if TYPE_CHECKING:
    from temperbook.records.load import Library

# kind of record, key that names others, kind named
REFERENCES = (
    ("alloys", "subjects", "subjects"),
    ("alloys", "cautions", "cautions"),
    ("solders", "subjects", "subjects"),
    ("solders", "cautions", "cautions"),
    ("solders", "joins", "alloys"),
    ("faults", "see", "faults"),
    ("faults", "cautions", "cautions"),
    ("charts", "cautions", "cautions"),
    ("packs", "cautions", "cautions"),
    ("packs", "glossary", "glossary"),
    ("routes", "alloy", "alloys"),
    ("routes", "cautions", "cautions"),
    ("glossary", "see", "glossary"),
)
# Figures by which a chart groups its alloys.
LANDMARKS = ("first-glow", "dull-red", "eye-error")
MEND = "correct the id, or write the record"


def problems(library: Library) -> list[Problem]:
    """Every reference that leads nowhere, and every name that belongs to two."""
    return [
        *_record_references(library),
        *_composition(library),
        *fault_links.problems(library),
        *_evidence_rows(library),
        *_from_references(library),
        *_same_address(library),
        *_same_record_id(library),
        *_same_name(library),
        *_landmarks(library),
        *link_prose.problems(library),
    ]


def _dangling(document: Document, at: Location, named: str, kind: str, known: set[str]) -> Problem:
    return document.problem(
        at,
        f"{shown_location(at)} names no record of data/{kind}",
        found=named,
        needed=nearest(named, known),
        mend=MEND,
    )


def _record_references(library: Library) -> Iterator[Problem]:
    for kind, key, target in REFERENCES:
        known = {i for k, i in library.documents if k == target}
        for record_id, record in library.records.get(kind, {}).items():
            for at, named in _named(record, key):
                if named not in known:
                    document = library.document(record_id, kind)
                    yield _dangling(document, at, named, target, known)


def _named(record: Record, key: str) -> Iterator[tuple[Location, str]]:
    """What a key names, one id or a list of them, each with its place."""
    given = getattr(record, key)
    if isinstance(given, str):
        yield (key,), given
    else:
        yield from (((key, position), named) for position, named in enumerate(given))


def _composition(library: Library) -> Iterator[Problem]:
    known = {i for k, i in library.documents if k == "elements"}
    for alloy_id, alloy in library.alloys.items():
        for symbol in alloy.composition:
            if symbol not in known:
                document = library.document(alloy_id, "alloys")
                yield _dangling(document, ("composition", symbol), symbol, "elements", known)


def _evidence_rows(library: Library) -> Iterator[Problem]:
    bearing = _bearing(library)
    sources = {i for k, i in library.documents if k == "sources"}
    for row in library.evidence.values():
        stem = row.file.rsplit("/", 1)[-1].removesuffix(".csv")
        if not re.fullmatch(rf"{re.escape(stem)}\.[1-9]\d*", row.id):
            yield Problem(
                row.file,
                row.line,
                f"{row.id or 'the row'}: is no id of this file",
                found=row.id or "no id",
                needed=f"{stem}.<number>",
                mend="correct the id; it begins with the name of the file",
            )
        elif row.source not in sources:
            yield Problem(
                row.file,
                row.line,
                f"{row.id}: no record of this source",
                found=row.source,
                needed=nearest(row.source, sources),
                mend=f"write data/sources/{row.source}.yaml",
            )
        if row.record not in bearing:
            yield Problem(
                row.file,
                row.line,
                f"{row.id}: names no record",
                found=row.record,
                needed=nearest(row.record, bearing),
                mend=MEND,
            )


def _bearing(library: Library) -> set[str]:
    from temperbook.records.load import FIGURE_KINDS

    return {record_id for kind, record_id in library.documents if kind in FIGURE_KINDS}


def _from_references(library: Library) -> Iterator[Problem]:
    for kind, records in library.records.items():
        for record_id, record in records.items():
            document = library.document(record_id, kind)
            for location, named in _named_rows(record.model_dump(by_alias=True)):
                if named not in library.evidence and not library.lost(named):
                    yield document.problem(
                        location,
                        f"{shown_location(location)} names no evidence row",
                        found=named,
                        needed=nearest(named, library.evidence)
                        if library.evidence
                        else "an id from data/evidence",
                        mend="correct the id, or type the row in data/evidence/<source>.csv",
                    )


def _named_rows(data: object, at: Location = ()) -> Iterator[tuple[Location, str]]:
    if isinstance(data, dict):
        for key, value in data.items():
            if key == "from" and isinstance(value, list):
                yield from (((*at, key, i), named) for i, named in enumerate(value))
            else:
                yield from _named_rows(value, (*at, key))
    elif isinstance(data, list):
        for position, value in enumerate(data):
            yield from _named_rows(value, (*at, position))


def _same_address(library: Library) -> Iterator[Problem]:
    seen: dict[str, Figure] = {}
    for record_id, quantity, position, figure in library.placed_figures():
        name = address(record_id, quantity, figure.basis())
        if name in seen:
            document = library.document(record_id)
            yield document.problem(
                ("figures", quantity, position),
                f"{name} stands twice",
                found=", ".join(f"{k}: {v}" for k, v in figure.basis().items()) or "no basis key",
                needed="figures of one quantity that differ in a basis key",
                mend="adopt one of them, or give the key in which they differ",
            )
        seen[name] = figure


def _same_record_id(library: Library) -> Iterator[Problem]:
    """Rows and calls name a record by its id alone, so that no two kinds may share one."""
    from temperbook.records.load import FIGURE_KINDS

    kinds: dict[str, list[str]] = defaultdict(list)
    for kind, record_id in library.documents:
        if kind in FIGURE_KINDS:
            kinds[record_id].append(kind)
    for record_id, found in kinds.items():
        for kind in found[1:]:
            yield library.document(record_id, kind).problem(
                ("id",),
                f"the id `{record_id}` belongs to two records",
                found=", ".join(f"data/{k}" for k in found),
                needed="an id that no other record with figures has",
                mend="rename one of the two files and its id",
            )


def _same_name(library: Library) -> Iterator[Problem]:
    owners: dict[str, set[str]] = defaultdict(set)
    for alloy_id, alloy in library.alloys.items():
        for name in (alloy_id, alloy_id.split("/")[-1], alloy.name, *alloy.also):
            owners[normal(name)].add(alloy_id)
    for alloy_id, alloy in library.alloys.items():
        places = [(("name",), alloy.name), *((("also", i), n) for i, n in enumerate(alloy.also))]
        for at, name in places:
            others = owners[normal(name)] - {alloy_id}
            if others:
                yield library.document(alloy_id, "alloys").problem(
                    at,
                    f"the name `{name}` belongs to two alloys",
                    found=", ".join(sorted(others | {alloy_id})),
                    needed="each name once",
                    mend="leave it to the alloy that people mean by it",
                )


def _landmarks(library: Library) -> Iterator[Problem]:
    known = library.figures()
    for chart_id, chart in library.charts.items():
        document = library.document(chart_id, "charts")
        for key in LANDMARKS:
            if key not in chart.landmarks:
                yield document.problem(
                    ("landmarks",),
                    f"landmarks lacks the key `{key}`",
                    needed=f"{key}: address of a figure",
                    mend="add it; the rows of the chart are grouped by it",
                )
        for when in get_args(ChartGroup.model_fields["when"].annotation):
            if when not in [group.when for group in chart.groups]:
                yield document.problem(
                    ("groups",),
                    f"no group of the chart is for `{when}`",
                    found=", ".join(group.when for group in chart.groups),
                    needed=f"{{id: ..., title: ..., short: ..., when: {when}}}",
                    mend="add it; an alloy whose anneal lies there would stand nowhere",
                )
        for key, call in chart.landmarks.items():
            fault = link_prose.fault(call, known, library)
            if fault:
                yield document.problem(
                    ("landmarks", key),
                    f"landmarks.{key} {fault.text}",
                    found=call,
                    needed=fault.needed,
                    mend=fault.mend,
                )
