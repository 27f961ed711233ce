"""The MkDocs configuration of a project, for a build into a folder of our choice."""

from __future__ import annotations

import os
from pathlib import Path

from mkdocs.config import load_config
from mkdocs.config.defaults import MkDocsConfig

from temperbook.derive.handbook import Handbook
from temperbook.outputs.site.plugin import TemperbookPlugin


def configuration(handbook: Handbook, folder: Path, *, paper: bool) -> MkDocsConfig:
    """mkdocs.yml of a handbook's project, strict, building into `folder`, with or without paper."""
    keep_parent_quiet()
    root = handbook.library.project.root
    config = load_config(config_file=str(root / "mkdocs.yml"), site_dir=str(folder), strict=True)
    plugin = config.plugins["temperbook"]
    assert isinstance(plugin, TemperbookPlugin)
    plugin.config.paper = paper
    plugin.given = handbook
    return config


def keep_parent_quiet() -> None:
    """Silences the parent theme's notice about its own future; has to be called before MkDocs
    loads it."""
    os.environ.setdefault("NO_MKDOCS_2_WARNING", "1")
