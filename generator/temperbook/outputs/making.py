"""From a project's folder to a checked handbook: what every output and command begins with."""

from __future__ import annotations

from temperbook import checks
from temperbook.derive.handbook import Handbook, derive
from temperbook.paths import Project
from temperbook.problems import DataProblems
from temperbook.records.load import load


def checked_handbook(project: Project) -> Handbook:
    """The finished handbook of a project.

    Errors: DataProblems with all that is wrong in records, evidence and prose, sorted by file and
    line.
    """
    library, found = load(project)
    found += checks.run(library)
    if found:
        raise DataProblems(found, library.counted())
    return derive(library)
