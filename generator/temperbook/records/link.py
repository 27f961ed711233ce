"""References between records: every id that is named must exist, and be of the right kind."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator
from typing import TYPE_CHECKING

from temperbook.problems import Problem, nearest
from temperbook.records import addresses
from temperbook.records.figures import Figure, address
from temperbook.records.names import normal
from temperbook.records.yaml_reader import Document, Location, shown_location

if TYPE_CHECKING:
    from temperbook.records.load import Library

# kind of record, key that names others, kind named
REFERENCES = (
    ("alloys", "subjects", "subjects"),
    ("alloys", "cautions", "cautions"),
    ("charts", "cautions", "cautions"),
    ("packs", "cautions", "cautions"),
    ("packs", "glossary", "glossary"),
    ("glossary", "see", "glossary"),
)
MEND = "correct the id, or write the record"


def problems(library: Library) -> list[Problem]:
    """Every reference that leads nowhere, and every name that belongs to two."""
    return [
        *_record_references(library),
        *_composition(library),
        *_evidence_rows(library),
        *_from_references(library),
        *_same_address(library),
        *_same_name(library),
        *_chapters(library),
        *_prose_calls(library),
    ]


def _dangling(document: Document, at: Location, named: str, kind: str, known: object) -> Problem:
    return document.problem(
        at,
        f"{shown_location(at)} names no record of data/{kind}",
        found=named,
        needed=nearest(named, known),
        mend=MEND,  # type: ignore[arg-type]
    )


def _record_references(library: Library) -> Iterator[Problem]:
    for kind, key, target in REFERENCES:
        known = {i for k, i in library.documents if k == target}
        for record_id, record in library.records.get(kind, {}).items():
            for position, named in enumerate(getattr(record, key)):
                if named not in known:
                    document = library.document(record_id, kind)
                    yield _dangling(document, (key, position), named, target, known)


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
        if row.source != stem:
            yield Problem(
                row.file,
                row.line,
                f"{row.id}: the id names another source than the file",
                found=row.id,
                needed=f"{stem}.<number>",
                mend="correct the id",
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
                if named not in library.evidence:
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


def _same_name(library: Library) -> Iterator[Problem]:
    owners: dict[str, set[str]] = defaultdict(set)
    for alloy_id, alloy in library.alloys.items():
        for name in (alloy_id, alloy_id.split("/")[-1], alloy.name, *alloy.also):
            owners[normal(name)].add(alloy_id)
    for alloy_id, alloy in library.alloys.items():
        for position, name in enumerate(alloy.also):
            others = owners[normal(name)] - {alloy_id}
            if others:
                yield library.document(alloy_id, "alloys").problem(
                    ("also", position),
                    f"the name `{name}` belongs to two alloys",
                    found=", ".join(sorted(others | {alloy_id})),
                    needed="each name once",
                    mend="leave it to the alloy that people mean by it",
                )


def _chapters(library: Library) -> Iterator[Problem]:
    for pack_id, pack in library.packs.items():
        for position, chapter in enumerate(pack.chapters):
            if chapter not in library.prose:
                yield library.document(pack_id, "packs").problem(
                    ("chapters", position),
                    "names no file below content/",
                    found=chapter,
                    needed=nearest(chapter, library.prose),
                    mend="correct the path, without .md",
                )


def _prose_calls(library: Library) -> Iterator[Problem]:
    known = library.figures()
    for prose in library.prose.values():
        for call in prose.figure_calls():
            fitting = addresses.matching(call.target, known)
            if not fitting:
                yield Problem(
                    prose.file,
                    call.line,
                    "calls a figure that does not exist",
                    found=f"[[{call.target}]]",
                    needed=nearest(call.target, known),
                    mend="correct the address, or enter the figure",
                )
            elif len(fitting) > 1:
                yield Problem(
                    prose.file,
                    call.line,
                    "calls several figures at once",
                    found=f"[[{call.target}]]",
                    needed="one of: " + " ".join(sorted(fitting)),
                    mend="add the basis key that tells them apart",
                )
        for link in prose.links():
            kind, _, target = link.target.partition(":")
            targets = _link_targets(library, kind)
            if targets is not None and target not in targets:
                yield Problem(
                    prose.file,
                    link.line,
                    "links to a page that does not exist",
                    found=link.target,
                    needed=nearest(target, targets),
                    mend=MEND,
                )


def _link_targets(library: Library, kind: str) -> set[str] | None:
    kinds = {
        "alloy": "alloys",
        "caution": "cautions",
        "term": "glossary",
        "chart": "charts",
        "pack": "packs",
        "source": "sources",
    }
    if kind == "page":
        return {stem.removeprefix("pages/") for stem in library.prose if stem.startswith("pages/")}
    if kind in kinds:
        return {i for k, i in library.documents if k == kinds[kind]}
    return None
