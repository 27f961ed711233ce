"""Fixtures of the output tests: the built site, and its pages as trees."""

from __future__ import annotations

import sys
from collections.abc import Mapping
from pathlib import Path

import pytest

sys.path.insert(0, str(Path(__file__).parents[1]))  # so that helpers are imported as `outputs.…`

from outputs.building import ROOT, build_site, once, shared
from outputs.html_tree import Element, Pages

from temperbook.derive.handbook import Handbook
from temperbook.views import site
from temperbook.views.pages import Page


@pytest.fixture(scope="session")
def built(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The whole site with its paper."""
    return once(shared(tmp_path_factory), "site", lambda target: build_site(ROOT, target))


@pytest.fixture(scope="session")
def said(handbook: Handbook) -> list[Page]:
    """What every page says, before it is drawn."""
    return site.all_pages(handbook)


@pytest.fixture(scope="session")
def pages(built: Path) -> Mapping[str, Element]:
    """Every page by its address below the root: `alloys/silver/sterling-925/`."""
    return Pages(built)
