"""The MkDocs plugin: puts the handbook's pages, charts and packs in the place of the files of
content/."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any, Literal

from jinja2 import Environment
from markupsafe import Markup
from mkdocs.config import config_options
from mkdocs.config.base import Config
from mkdocs.config.defaults import MkDocsConfig
from mkdocs.exceptions import PluginError
from mkdocs.plugins import BasePlugin, CombinedEvent, event_priority
from mkdocs.structure.files import File, Files, InclusionLevel
from mkdocs.structure.nav import Navigation
from mkdocs.structure.pages import Page as SitePage
from mkdocs.utils.templates import TemplateContext

from temperbook import paths
from temperbook.derive.handbook import Handbook
from temperbook.outputs import exports, paper
from temperbook.outputs.making import checked_handbook
from temperbook.outputs.site import bench_data
from temperbook.outputs.site.error_page import error_page
from temperbook.outputs.site.rendering import Renderer
from temperbook.problems import DataProblems
from temperbook.views import site
from temperbook.views.pages import Page
from temperbook.views.sections import SECTIONS

# Where the part of a page begins that the search leaves out: what each source prints.
UNSEARCHED = ('<section class="part" id="readings">', '<section class="part" id="taken">')
LICENCE = {"name": "Code MIT, text and data CC BY 4.0", "address": "how-we-choose/"}


class PluginConfig(Config):  # type: ignore[misc]
    """Options of the plugin in mkdocs.yml."""

    paper = config_options.Type(bool, default=True)


class TemperbookPlugin(BasePlugin[PluginConfig]):  # type: ignore[misc]
    """Reads the records, then gives MkDocs one generated page for each page of the handbook."""

    def __init__(self) -> None:
        self.serving = False
        self.given: Handbook | None = None  # a handbook that was read before MkDocs began
        self.pages: dict[str, Page] = {}
        self.papers = paper.Papers({}, {})
        self.tables: dict[str, bytes] = {}
        self.renderer: Renderer | None = None
        self.bench = ""
        self.whole: dict[str, str] = {}  # pages while the search index reads a part of each
        self.problems: DataProblems | None = None

    def on_startup(self, *, command: Literal["build", "gh-deploy", "serve"], dirty: bool) -> None:
        """Remembers whether the site is served: then problems become a page and not an
        exception."""
        self.serving = command == "serve"

    def on_config(self, config: MkDocsConfig) -> MkDocsConfig:
        """Reads the project; sets navigation and edition."""
        self.pages, self.renderer, self.problems = {}, None, None
        config.extra["serving"] = self.serving
        root = Path(config.config_file_path).parent
        try:
            handbook = self.given or checked_handbook(paths.project(root))
        except DataProblems as problems:
            if not self.serving:
                raise PluginError(f"\n{problems}") from problems
            self.problems = problems
            config.nav = [{"Problems": "index.md"}]
            return config
        self._prepare(handbook, config)
        return config

    def _prepare(self, handbook: Handbook, config: MkDocsConfig) -> None:
        wanted = self.config.paper and not self.serving
        self.papers = paper.all_papers(handbook) if wanted else paper.Papers({}, {})
        self.tables = exports.files(handbook)
        self.renderer = Renderer(handbook, self.papers.by_page)
        self.bench = bench_data.content(handbook)
        self.pages = {_source(p.address): p for p in site.all_pages(handbook)}
        titles = {p.address: p.title for p in self.pages.values()}
        config.nav = [
            {"Home": "index.md"},
            *({titles[f"{s}/"]: _source(f"{s}/")} for s in SECTIONS),
        ]
        edition = handbook.library.edition
        config.extra["edition"] = {"name": edition.name, "date": edition.date}
        config.extra["licence"] = LICENCE

    def on_files(self, files: Files, *, config: MkDocsConfig) -> Files:
        """Drops the raw prose and adds the pages and papers."""
        for file in list(files):
            if file.is_documentation_page() or not _shipped(file, config):
                files.remove(file)
        if self.problems:
            files.append(File.generated(config, "index.md", content="# Problems\n"))
            return files
        for source, page in self.pages.items():
            files.append(_page_file(config, source, page))
        files.append(File.generated(config, bench_data.ADDRESS, content=self.bench))
        for address, content in self.papers.files.items():
            files.append(File.generated(config, address, content=content))
        for name, content in self.tables.items():
            files.append(File.generated(config, f"data/{name}", content=content))
        return files

    def on_pre_page(self, page: SitePage, *, config: MkDocsConfig, files: Files) -> SitePage:
        """Dates every page by the edition, so that the same data give the same bytes on any day."""
        edition = config.extra.get("edition")
        if edition:
            page.update_date = edition["date"]
        return page

    def on_page_content(
        self, html: str, *, page: SitePage, config: MkDocsConfig, files: Files
    ) -> str:
        """The page's own HTML, from its template."""
        if self.problems:
            return error_page(self.problems)
        assert self.renderer is not None
        return self.renderer.body(self.pages[page.file.src_uri])

    def on_env(self, env: Environment, /, *, config: MkDocsConfig, files: Files) -> Environment:
        """Has every text in the frame of a page escaped: titles, descriptions, names of
        sections."""
        env.autoescape = True
        return env

    def _trim_for_search(
        self, context: TemplateContext, /, *, page: SitePage, config: MkDocsConfig, nav: Navigation
    ) -> TemplateContext:
        """Before the search index is filled: it gets a page without its tables of readings."""
        self.whole[page.file.src_uri] = page.content
        ends = [page.content.find(start) for start in UNSEARCHED if start in page.content]
        page.content = page.content[: min(ends)] if ends else page.content
        return context

    def _let_through(
        self, context: TemplateContext, /, *, page: SitePage, config: MkDocsConfig, nav: Navigation
    ) -> TemplateContext:
        """After it was filled: the page's own HTML, whole, goes through as markup."""
        page.content = Markup(self.whole.pop(page.file.src_uri))
        return context

    on_page_context = CombinedEvent(
        event_priority(100)(_trim_for_search), event_priority(-100)(_let_through)
    )

    def on_serve(self, server: Any, /, *, config: MkDocsConfig, builder: Any) -> Any:
        """Watches the records and the prose."""
        root = Path(config.config_file_path).parent
        server.watch(str(root / "data"))
        return server


def _shipped(file: File, config: MkDocsConfig) -> bool:
    """Whether a static file goes with the site: our own look does, the parent theme and print
    type do not."""
    own = file.src_dir is None or Path(file.src_dir) == Path(config.theme.custom_dir)
    return own and not file.src_uri.endswith(".ttf")


def _source(address: str) -> str:
    return f"{address}index.md"


def _page_file(config: MkDocsConfig, source: str, page: Page) -> File:
    meta = {"kind": page.kind, "title": page.title, "description": page.summary}
    head = "\n".join(
        f"{key}: {json.dumps(value, ensure_ascii=False)}" for key, value in meta.items()
    )
    in_nav = page.address == "" or page.address.removesuffix("/") in SECTIONS
    level = InclusionLevel.INCLUDED if in_nav else InclusionLevel.NOT_IN_NAV
    return File.generated(config, source, content=f"---\n{head}\n---\n", inclusion=level)
