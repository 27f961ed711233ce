"""The records that formulas take their tables from, read without the checks of the whole."""

from __future__ import annotations

import pytest

from temperbook.paths import Project
from temperbook.records import partial
from temperbook.records.load import Library
from temperbook.records.models import KINDS


@pytest.fixture(scope="session")
def records(project: Project) -> Library:
    """Every record of the real project."""
    return partial.read(project, KINDS)
