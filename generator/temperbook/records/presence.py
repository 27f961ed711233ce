"""What must be there in a project's data/, and what nothing reads."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from temperbook.paths import Project
from temperbook.problems import Problem, nearest
from temperbook.records.models import KINDS
from temperbook.records.yaml_reader import Document

# Kinds of which there must be a record, and what it holds.
NEEDED = {
    "edition": "current.yaml with id, name, date and address",
    "charts": "anneal.yaml, whose landmarks say how far two eyes differ",
}
# Folder below data/ -> the files in it that are read.
KNOWN_FILES: dict[str, tuple[str, ...]] = {
    **dict.fromkeys(KINDS, ("*.yaml",)),
    "vocabulary": ("vocabulary/quantities.yaml", "vocabulary/words.yaml"),
    "evidence": ("evidence/*.csv",),
    "observers": ("observers/*.csv",),
}


def needed_records(documents: Mapping[tuple[str, str], Document]) -> Iterator[Problem]:
    """Kinds of which a record is missing, or one too many is there."""
    for kind, needed in NEEDED.items():
        if not any(known == kind for known, _ in documents):
            yield Problem(
                f"data/{kind}",
                0,
                "holds no record",
                needed=f"data/{kind}/{needed}",
                mend="write it; no page is made without it",
            )
    known = [record_id for kind, record_id in documents if kind == "edition"]
    for second in known[1:]:
        yield documents[("edition", second)].problem(
            (),
            "is a second edition record",
            found=", ".join(known),
            needed="one edition",
            mend="delete the one that is past",
        )


def stray_files(project: Project) -> Iterator[Problem]:
    """Tables and records that nothing reads, so that a slip in a name is not a silent loss."""
    for path in sorted(project.data.rglob("*")):
        if path.suffix.lower() not in (".yaml", ".yml", ".csv") or path.is_dir():
            continue
        within = path.relative_to(project.data)
        known = KNOWN_FILES.get(within.parts[0], ())
        if not any(within.match(pattern) for pattern in known):
            yield Problem(
                project.shown(path),
                0,
                "is read by nothing",
                found=within.as_posix(),
                needed=" or ".join(known) or nearest(within.parts[0], KNOWN_FILES),
                mend="correct the name of the file or of its folder",
            )
