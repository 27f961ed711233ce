"""Reads a whole project: vocabulary, records, evidence, prose. Reports every bad file at once."""

from __future__ import annotations

from dataclasses import dataclass, field
from pathlib import Path
from typing import Any, TypeVar

from pydantic import BaseModel, ValidationError

from temperbook.paths import Project
from temperbook.problems import Problem, count
from temperbook.records import evidence, link, model_errors, prose, validate, yaml_reader
from temperbook.records.figures import Figure, address
from temperbook.records.models import (
    KINDS,
    Alloy,
    Caution,
    Chart,
    ColourTable,
    Edition,
    Element,
    Pack,
    Record,
    Source,
    Subject,
    Term,
)
from temperbook.records.vocabulary import Quantity, Vocabulary, Word
from temperbook.records.yaml_reader import Document

R = TypeVar("R", bound=Record)
FIGURE_KINDS = ("alloys", "subjects", "elements", "colours", "cautions")


@dataclass
class Library:
    """All records of a project by kind and id, with the documents that they came from."""

    project: Project
    vocabulary: Vocabulary
    records: dict[str, dict[str, Record]] = field(default_factory=dict)
    documents: dict[tuple[str, str], Document] = field(default_factory=dict)
    evidence: dict[str, evidence.Evidence] = field(default_factory=dict)
    prose: dict[str, prose.Prose] = field(default_factory=dict)

    def of(self, kind: str, model: type[R]) -> dict[str, R]:
        """The records of one kind, by id, in the order of their ids."""
        found = self.records.get(kind, {})
        return {i: r for i, r in sorted(found.items()) if isinstance(r, model)}

    @property
    def alloys(self) -> dict[str, Alloy]:
        """Alloys by id."""
        return self.of("alloys", Alloy)

    @property
    def subjects(self) -> dict[str, Subject]:
        """Systems, families and bench rules by id."""
        return self.of("subjects", Subject)

    @property
    def elements(self) -> dict[str, Element]:
        """Elements by symbol."""
        return self.of("elements", Element)

    @property
    def colours(self) -> dict[str, ColourTable]:
        """Observers' tables of heat colours by id."""
        return self.of("colours", ColourTable)

    @property
    def cautions(self) -> dict[str, Caution]:
        """Cautions by id."""
        return self.of("cautions", Caution)

    @property
    def sources(self) -> dict[str, Source]:
        """Sources by id."""
        return self.of("sources", Source)

    @property
    def glossary(self) -> dict[str, Term]:
        """Terms by id."""
        return self.of("glossary", Term)

    @property
    def charts(self) -> dict[str, Chart]:
        """Charts by id."""
        return self.of("charts", Chart)

    @property
    def packs(self) -> dict[str, Pack]:
        """Reading packs by id."""
        return self.of("packs", Pack)

    @property
    def edition(self) -> Edition:
        """The one edition record."""
        return next(iter(self.of("edition", Edition).values()))

    def figures(self) -> dict[str, tuple[str, str, Figure]]:
        """Every figure by address, with its record and quantity."""
        found = {}
        for record_id, quantity, _, figure in self.placed_figures():
            found[address(record_id, quantity, figure.basis())] = (record_id, quantity, figure)
        return found

    def placed_figures(self) -> list[tuple[str, str, int, Figure]]:
        """Record id, quantity, position and figure, for every figure."""
        return [
            (record_id, quantity, position, figure)
            for kind in FIGURE_KINDS
            for record_id, record in sorted(self.records.get(kind, {}).items())
            for quantity, figures in getattr(record, "figures", {}).items()
            for position, figure in enumerate(figures)
        ]

    def document(self, record_id: str, kind: str = "") -> Document:
        """The document of a record; without a kind, of the record that bears figures."""
        for candidate in (kind,) if kind else FIGURE_KINDS:
            if (candidate, record_id) in self.documents:
                return self.documents[(candidate, record_id)]
        raise KeyError(record_id)

    def counted(self) -> str:
        """What was read, in numbers."""
        figures = len(self.placed_figures())
        return ", ".join(
            (
                count(len(self.records.get("alloys", {})), "alloy"),
                count(figures, "figure"),
                count(len(self.evidence), "evidence row"),
            )
        )


def load(project: Project) -> tuple[Library, list[Problem]]:
    """Whatever can be read of a project, and everything wrong in its form, words and references."""
    library, found = read_all(project)
    return library, [*found, *validate.problems(library), *link.problems(library)]


def read_all(project: Project) -> tuple[Library, list[Problem]]:
    """Whatever can be read of a project, and what is wrong with the form of the rest."""
    vocabulary, found = _vocabulary(project)
    library = Library(project, vocabulary)
    for kind, model in KINDS.items():
        found += _read_kind(library, kind, model)
    found += _read_evidence(library)
    library.prose, more = prose.read_folder(project)
    found += more + _needed_records(library)
    return library, found


def _needed_records(library: Library) -> list[Problem]:
    if library.records.get("edition"):
        return []
    return [
        Problem(
            "data/edition",
            0,
            "no edition record could be read",
            needed="data/edition/current.yaml with id, name, date and address",
            mend="write it; nothing is printed without an edition",
        )
    ]


def _vocabulary(project: Project) -> tuple[Vocabulary, list[Problem]]:
    quantities, found = _map_of(project, "quantities", Quantity)
    words: dict[str, dict[str, Word]] = {}
    path = project.data / "vocabulary" / "words.yaml"
    document = yaml_reader.read(path, project.shown(path))
    found += document.problems
    for name, entries in (document.data or {}).items():
        words[name] = {}
        for word, data in entries.items():
            built = _build(Word, data, document, (name, word), found)
            if built:
                words[name][word] = built
    return Vocabulary(quantities, words), found


M = TypeVar("M", bound=BaseModel)


def _map_of(project: Project, stem: str, model: type[M]) -> tuple[dict[str, M], list[Problem]]:
    path = project.data / "vocabulary" / f"{stem}.yaml"
    document = yaml_reader.read(path, project.shown(path))
    found = list(document.problems)
    built = {}
    for key, data in (document.data or {}).items():
        one = _build(model, data, document, (key,), found)
        if one:
            built[key] = one
    return built, found


def _build(
    model: type[M], data: Any, document: Document, at: tuple[str, ...], found: list[Problem]
) -> M | None:
    try:
        return model.model_validate(data)
    except ValidationError as error:
        moved = Document(document.file, data, _below(document, at))
        found += model_errors.problems(error, moved, model)
        return None


def _below(document: Document, at: tuple[str, ...]) -> dict[yaml_reader.Location, int]:
    depth = len(at)
    return {loc[depth:]: line for loc, line in document.lines.items() if loc[:depth] == at}


def _read_kind(library: Library, kind: str, model: type[Record]) -> list[Problem]:
    folder = library.project.data / kind
    found: list[Problem] = []
    for path in sorted(folder.rglob("*.yaml")):
        document = yaml_reader.read(path, library.project.shown(path))
        found += document.problems
        if document.data is None:
            continue
        if not isinstance(document.data, dict):
            found.append(
                document.problem(
                    (),
                    "is not a record",
                    found=type(document.data).__name__,
                    needed="`key: value` lines",
                    mend="begin with `id: ...`",
                )
            )
            continue
        record = _build(model, document.data, document, (), found)
        due = path.relative_to(folder).with_suffix("").as_posix()
        found += _path_problem(document, due)
        library.documents[(kind, due)] = document
        if record:
            library.records.setdefault(kind, {})[due] = record
    return found


def _path_problem(document: Document, due: str) -> list[Problem]:
    given = document.data.get("id")
    if given in (None, due):
        return []
    return [
        document.problem(
            ("id",),
            "id and file name differ",
            found=str(given),
            needed=due,
            mend="rename the one or the other",
        )
    ]


def _read_evidence(library: Library) -> list[Problem]:
    found: list[Problem] = []
    for path in sorted((library.project.data / "evidence").glob("*.csv")):
        rows, problems = evidence.read(path, library.project.shown(path))
        found += problems
        for row in rows:
            if row.id in library.evidence:
                other = library.evidence[row.id]
                found.append(
                    Problem(
                        row.file,
                        row.line,
                        f"evidence id `{row.id}` stands twice",
                        found=f"first in {other.file}:{other.line}",
                        needed="each id once",
                        mend="number the new row on; ids are never reused",
                    )
                )
                continue
            library.evidence[row.id] = row
    return found


def evidence_path(project: Project, source: str) -> Path:
    """Where a source's rows stand."""
    return project.data / "evidence" / f"{source}.csv"
