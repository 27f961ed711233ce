"""Reads some kinds of records alone, for commands that must answer at once."""

from __future__ import annotations

import gc
from collections.abc import Iterable, Iterator
from contextlib import contextmanager

from temperbook.paths import Project
from temperbook.problems import DataProblems
from temperbook.records import building
from temperbook.records.load import Library, read_kind
from temperbook.records.models import KINDS


def read(project: Project, kinds: Iterable[str], alloy: str = "") -> Library:
    """The records of these kinds, without evidence, prose and the checks of the whole.

    alloy: the id of the one alloy to read; all of them unless said.
    Errors: DataProblems with what is wrong in the form of these records or of the vocabulary.
    """
    with _without_collecting():
        vocabulary, found = building.vocabulary(project)
        library = Library(project, vocabulary)
        for kind in kinds:
            found += read_kind(library, kind, KINDS[kind], alloy if kind == "alloys" else "")
    if found:
        raise DataProblems(found, library.counted())
    return library


@contextmanager
def _without_collecting() -> Iterator[None]:
    """Reading makes many things and throws none away: looking for garbage is a tenth of it."""
    was = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if was:
            gc.enable()
