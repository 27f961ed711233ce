"""Reads some kinds of records alone, for commands that must answer at once."""

from __future__ import annotations

from collections.abc import Iterable

from temperbook.paths import Project
from temperbook.problems import DataProblems
from temperbook.records import building
from temperbook.records.load import Library, read_kind
from temperbook.records.models import KINDS


def read(project: Project, kinds: Iterable[str]) -> Library:
    """The records of these kinds, without evidence, prose and the checks of the whole.

    Errors: DataProblems with what is wrong in the form of these records or of the vocabulary.
    """
    vocabulary, found = building.vocabulary(project)
    library = Library(project, vocabulary)
    for kind in kinds:
        found += read_kind(library, kind, KINDS[kind])
    if found:
        raise DataProblems(found, library.counted())
    return library
