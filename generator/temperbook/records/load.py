"""Reads a whole project: vocabulary, records, evidence, prose. Reports every bad file at once.

What only the whole needs is imported when it is read: some kinds of records alone are read by
commands that must answer at once (partial.py).
"""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import TYPE_CHECKING, TypeVar, cast

from temperbook.paths import Project
from temperbook.problems import Problem, count
from temperbook.records import building, yaml_reader
from temperbook.records.figures import Figure, address
from temperbook.records.models import (
    KINDS,
    Alloy,
    Caution,
    Chart,
    ColourTable,
    Edition,
    Element,
    Fault,
    Pack,
    Record,
    Solder,
    Source,
    Subject,
    Term,
)
from temperbook.records.vocabulary import Vocabulary
from temperbook.records.yaml_reader import Document

if TYPE_CHECKING:
    from temperbook.records.evidence import Evidence
    from temperbook.records.prose import Prose

R = TypeVar("R", bound=Record)
FIGURE_KINDS = ("alloys", "solders", "faults", "subjects", "elements", "colours", "cautions")


@dataclass
class Library:
    """All records of a project by kind and id, with the documents that they came from.

    `records`: every kind in the order of its ids. `lost_rows`: ids of evidence rows with a slip of
    their own, and of sources whose file has one.
    """

    project: Project
    vocabulary: Vocabulary
    records: dict[str, dict[str, Record]] = field(default_factory=dict)
    documents: dict[tuple[str, str], Document] = field(default_factory=dict)
    evidence: dict[str, Evidence] = field(default_factory=dict)
    prose: dict[str, Prose] = field(default_factory=dict)
    lost_rows: set[str] = field(default_factory=set)

    def of(self, kind: str, model: type[R]) -> dict[str, R]:
        """The records of one kind by id, in the order in which `records` holds them."""
        return cast(dict[str, R], self.records.get(kind, {}))

    def kind_of(self, record_id: str) -> str:
        """The kind of the record that bears figures under this id. Errors: KeyError for none."""
        for kind in FIGURE_KINDS:
            if record_id in self.records.get(kind, {}):
                return kind
        raise KeyError(record_id)

    @property
    def alloys(self) -> dict[str, Alloy]:
        """Alloys by id."""
        return self.of("alloys", Alloy)

    @property
    def solders(self) -> dict[str, Solder]:
        """Solders by id."""
        return self.of("solders", Solder)

    @property
    def faults(self) -> dict[str, Fault]:
        """Faults by id."""
        return self.of("faults", Fault)

    @property
    def mixed(self) -> dict[str, Alloy | Solder]:
        """What has a composition, alloys and solders, by id: two kinds share none."""
        return {**self.alloys, **self.solders}

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

    def unread(self, record_id: str) -> bool:
        """Whether a record that bears figures has a file, but one that hides figures by a slip."""
        for kind in FIGURE_KINDS:
            if (kind, record_id) in self.documents:
                record = self.records.get(kind, {}).get(record_id)
                figures = getattr(record, "figures", {})
                return record is None or not figures.keys() <= self.vocabulary.quantities.keys()
        return False

    def lost(self, row_id: str) -> bool:
        """Whether an evidence row, its line or its whole file has a slip of its own."""
        return row_id in self.lost_rows or row_id.rsplit(".", 1)[0] in self.lost_rows

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
    from temperbook.records import link, validate

    vocabulary, found = building.vocabulary(project)
    library = Library(project, vocabulary)
    known_words = not found  # against words that cannot be read, everything would be wrong
    found += _read_all(library)
    if known_words:
        found += validate.problems(library)
        found += _slips_in_rows(library)
    return library, [*found, *link.problems(library)]


def _slips_in_rows(library: Library) -> list[Problem]:
    from temperbook.records import validate_rows

    found: list[Problem] = []
    for row in library.evidence.values():
        wrong = [*validate_rows.problems(row, library.vocabulary)]
        found += wrong
        if wrong:
            library.lost_rows.add(row.id)
    return found


def _read_all(library: Library) -> list[Problem]:
    from temperbook.records import content, presence

    found: list[Problem] = []
    for kind, model in KINDS.items():
        found += read_kind(library, kind, model)
    found += _read_evidence(library)
    library.prose, more = content.read_folder(library.project)
    found += more
    found += presence.needed_records(library.documents)
    found += presence.stray_files(library.project)
    return found


def read_kind(library: Library, kind: str, model: type[Record], only: str = "") -> list[Problem]:
    """Reads the records of one kind, or one of them, into the library; what is wrong with them."""
    folder = library.project.data / kind
    found: list[Problem] = []
    paths = {p.relative_to(folder).with_suffix("").as_posix(): p for p in folder.rglob("*.yaml")}
    wanted = {only: paths[only]} if only else paths
    for due, path in sorted(wanted.items()):
        document = yaml_reader.read(path, library.project.shown(path))
        library.documents[(kind, due)] = document
        found += document.problems
        if document.data is None:
            continue
        if not isinstance(document.data, dict):
            found.append(document.no_mapping())
            continue
        record = building.build(model, document.data, document, (), found)
        found += _path_problem(document, due)
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
    from temperbook.records import evidence

    found: list[Problem] = []
    for path in sorted((library.project.data / "evidence").glob("*.csv")):
        rows, problems, lost = evidence.read(path, library.project.shown(path))
        found += problems
        library.lost_rows |= lost
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
