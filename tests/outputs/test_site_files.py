"""The files of the site: as many pages as records, and each of them whole, safe and linked."""

from __future__ import annotations

import json
import re
import shutil
import subprocess
from collections import Counter
from collections.abc import Mapping
from itertools import pairwise
from pathlib import Path
from urllib.parse import urljoin, urlsplit

import pytest
from outputs.building import ROOT
from outputs.html_tree import Element, dead_links, parse

from temperbook.derive.handbook import Handbook
from temperbook.metal import register
from temperbook.records.link_prose import INNER, PAGES
from temperbook.views import plan_form, routes
from temperbook.views.pages import Page

HOST = "http://site/"
PAGES_WITH_RECORDS = (
    "alloys",
    "solders",
    "faults",
    "subjects",
    "elements",
    "colours",
    "cautions",
    "sources",
    "charts",
    "packs",
    "routes",
)
LOADING = {"script": "src", "link": "href", "img": "src", "iframe": "src", "source": "src",
           "video": "src", "audio": "src", "object": "data", "embed": "src"}  # fmt: skip
LARGEST = {"alloy": 400_000, "comparison": 400_000, "sources": 400_000, "section": 200_000}  # bytes


@pytest.fixture(scope="module")
def everything(built: Path, pages: Mapping[str, Element]) -> Mapping[str, Element]:
    """Every page and the page for addresses that lead nowhere."""
    return {**pages, "404.html": parse((built / "404.html").read_text(encoding="utf-8"))}


def kind(page: Element) -> str:
    return next(
        (e.attrs["content"] for e in page.all("meta") if e.attrs.get("name") == "page-kind"), ""
    )


def links(page: Element, address: str) -> set[str]:
    """Where a page leads, as addresses below the root with their anchors."""
    return {
        urljoin(HOST + address.lstrip("/"), a.attrs["href"]).removeprefix(HOST)
        for a in page.all("a")
    }


def every_link(pages: Mapping[str, Element], kind_of_record: str, record_id: str) -> set[str]:
    address = routes.page(kind_of_record, record_id)
    return links(pages[address].one("main"), address)


def test_a_page_for_each_record_and_section(
    pages: Mapping[str, Element], handbook: Handbook, built: Path, said: list[Page]
) -> None:
    records = sum(len(handbook.library.records.get(kind, {})) for kind in PAGES_WITH_RECORDS)
    forms = len(register.FORMULAS) + len(plan_form.QUESTIONS)
    assert len(pages) == records + forms + len((*PAGES, *INNER))
    assert {p.address or "/" for p in said} == set(pages)
    assert not [p for p in built.rglob("*.md")]


def test_each_page_says_what_it_is(
    everything: Mapping[str, Element], handbook: Handbook, said: list[Page]
) -> None:
    kinds = {p.address or "/": p.kind for p in said} | {"404.html": "page"}
    titles = Counter(page.one("title").text() for a, page in everything.items() if a != "404.html")
    for address, page in everything.items():
        assert kind(page) == kinds[address], address
        assert page.one("html").attrs["lang"] == "en", address
        assert len(page.one("title").text()) > 5, address
        assert len(page.one("main").all("h1")) == 1, address
        viewport = [m for m in page.all("meta") if m.attrs.get("name") == "viewport"]
        assert len(viewport) == 1, address
        assert "user-scalable" not in viewport[0].attrs["content"], address
    sources = {s.title for s in handbook.library.sources.values()}
    twice = [t for t, n in titles.items() if n > 1 and t.split(" · ")[0] not in sources]
    assert not twice, "titles that two pages share"


def test_headings_leave_no_level_out(everything: Mapping[str, Element]) -> None:
    for address, page in everything.items():
        levels = [int(e.tag[1]) for e in page.one("main").walk() if re.fullmatch("h[1-6]", e.tag)]
        assert levels[0] == 1, address
        assert all(b <= a + 1 for a, b in pairwise(levels)), (address, levels)


def test_nothing_runs_that_is_not_a_file_of_ours(everything: Mapping[str, Element]) -> None:
    for address, page in everything.items():
        policy = [
            m.attrs["content"]
            for m in page.all("meta")
            if m.attrs.get("http-equiv") == "Content-Security-Policy"
        ]
        assert len(policy) == 1, address
        rules = dict(rule.strip().split(" ", 1) for rule in policy[0].split(";"))
        assert rules["default-src"] == "'self'", address
        assert "unsafe" not in policy[0], address
        head = [e for e in page.one("head").walk() if e.tag in ("meta", "script", "link")]
        assert [e.attrs.get("http-equiv") for e in head].index("Content-Security-Policy") < min(
            n for n, e in enumerate(head) if e.tag != "meta"
        ), f"{address}: something is loaded before the policy holds"
        for element in page.walk():
            assert "style" not in element.attrs, (address, element)
            assert element.tag != "style", address
            handlers = [name for name in element.attrs if name.startswith("on")]
            assert not handlers, (address, handlers)
            if element.tag == "script":
                assert element.attrs.get("src"), address
                assert not element.text(), address
            for name in ("href", "src", "action", "formaction"):
                assert not element.attrs.get(name, "").lower().startswith(("javascript:", "data:"))


def test_no_file_comes_from_a_third_party(everything: Mapping[str, Element], built: Path) -> None:
    seen = 0
    for address, page in everything.items():
        for element in page.walk():
            loaded = element.attrs.get(LOADING.get(element.tag, ""), "")
            if not loaded or element.attrs.get("rel") == "canonical":
                continue
            seen += 1
            assert not urlsplit(loaded).netloc, (address, loaded)
            assert not urlsplit(loaded).scheme, (address, loaded)
            assert not element.attrs.get("srcset"), address
    assert seen > 5 * len(everything)
    for sheet in built.rglob("*.css"):
        for url in re.findall(r"url\(\s*[\"']?([^\"')]+)", sheet.read_text(encoding="utf-8")):
            assert not urlsplit(url).netloc, (sheet.name, url)
            assert (sheet.parent / url).resolve().exists() or url.startswith("#"), (sheet.name, url)
    for script in built.rglob("*.js"):
        assert not re.search(r"https?://", script.read_text(encoding="utf-8")), script.name


def test_links_out_leave_no_trace(everything: Mapping[str, Element], handbook: Handbook) -> None:
    out = 0
    for address, page in everything.items():
        for a in page.all("a"):
            if urlsplit(a.attrs["href"]).netloc:
                out += 1
                rel = set(a.attrs.get("rel", "").split())
                assert {"external", "noreferrer"} <= rel, (address, a.attrs)
                assert urlsplit(a.attrs["href"]).scheme in ("http", "https"), (address, a.attrs)
    assert out >= sum(bool(s.link) for s in handbook.library.sources.values())


def test_each_link_and_anchor_leads_somewhere(
    everything: Mapping[str, Element], built: Path
) -> None:
    wrong, followed = dead_links(everything, built)
    assert not wrong
    assert followed > 20 * len(everything)


def test_a_dead_link_is_found(pages: Mapping[str, Element], built: Path) -> None:
    page = parse('<a href="../no/">x</a><a href="../alloys/#no">y</a><img src="z.png">')
    wrong, _ = dead_links({**pages, "made-up/": page}, built)
    assert wrong == [("made-up/", "../no/"), ("made-up/", "../alloys/#no"), ("made-up/", "z.png")]


def test_ids_stand_once_and_what_calls_them_finds_them(everything: Mapping[str, Element]) -> None:
    for address, page in everything.items():
        ids = Counter(e.attrs["id"] for e in page.walk() if "id" in e.attrs)
        assert not {i: n for i, n in ids.items() if n > 1}, address
        for element in page.walk():
            for name, value in element.attrs.items():
                called = re.findall(r"url\(#([^)]+)\)", value)
                if element.tag == "use" and name == "href":
                    called.append(value.removeprefix("#"))
                if name in ("for", "popovertarget", "aria-labelledby", "aria-describedby"):
                    called += value.split()
                for wanted in called:
                    assert wanted in ids, (address, element.tag, wanted)


def test_an_alloy_leads_to_its_cautions_sources_and_charts(
    pages: Mapping[str, Element], handbook: Handbook
) -> None:
    for alloy_id, alloy in handbook.library.alloys.items():
        found = every_link(pages, "alloys", alloy_id)
        cautions = handbook.cautions_of[alloy_id]
        sources = {row.source for row in handbook.readings_for(alloy)}
        assert cautions, alloy_id
        due = {routes.page("cautions", c.id) for c in cautions}
        due |= {routes.page("sources", s) for s in sources}
        due |= {routes.page("charts", c) for c in handbook.library.charts}
        assert due <= found, alloy_id


def test_a_caution_leads_to_the_alloys_it_is_about(
    pages: Mapping[str, Element], handbook: Handbook
) -> None:
    ruled = 0
    for caution in handbook.library.cautions.values():
        found = every_link(pages, "cautions", caution.id)
        alloys = {routes.page("alloys", a.id) for a in handbook.alloys_with(caution.id)}
        if caution.applies.always:
            assert "every alloy" in pages[routes.page("cautions", caution.id)].one("main").text()
            continue
        ruled += bool(caution.applies.elements and alloys)
        assert {a for a in found if re.match(r"alloys/.", a)} == alloys, caution.id
    assert ruled >= 3


def test_a_source_says_where_each_row_went(
    pages: Mapping[str, Element], handbook: Handbook
) -> None:
    went = 0
    for source_id in handbook.library.sources:
        rows = [r for r in handbook.library.evidence.values() if r.source == source_id]
        found = every_link(pages, "sources", source_id)
        page = pages[routes.page("sources", source_id)].one("main")
        listed = page.one("tbody").all("tr") if rows else []
        assert len(listed) == len(rows), source_id
        for row in rows:
            assert routes.bearer(row.record, handbook.library) in {
                link.split("#")[0] for link in found
            }
            for place in handbook.rests_on.get(row.id, []):
                went += 1
                if place in handbook.figures:
                    assert routes.figure(place, handbook.library) in found, (row.id, place)
                else:
                    assert routes.bearer(place.split("#")[0], handbook.library) in found, row.id
    assert went > 500


def test_each_figure_of_an_alloy_has_its_row(
    pages: Mapping[str, Element], handbook: Handbook
) -> None:
    for address, called in handbook.figures.items():
        page, _, anchor = routes.figure(address, handbook.library).partition("#")
        rows = [e for e in pages[page].all("tr") if e.attrs.get("id") == anchor]
        assert len(rows) == 1, address
        assert len(rows[0].all("svg", "mark")) == 1, f"{address} has no mark of its provenance"
        quantity = handbook.library.vocabulary.quantities[called.quantity]
        assert rows[0].one("th").text() == quantity.label, address


def test_pages_stay_small(pages: Mapping[str, Element], built: Path) -> None:
    for address, page in pages.items():
        most = LARGEST.get(kind(page), LARGEST["section"])
        assert (built / address.lstrip("/") / "index.html").stat().st_size < most, address


def test_papers_and_previews_are_offered(pages: Mapping[str, Element], built: Path) -> None:
    charts, packs = pages["wall-charts/anneal/"], pages["reading-packs/first-week/"]
    for page, folder, offered in (
        (charts, "wall-charts/anneal", 2),
        (packs, "reading-packs/first-week", 2),
        (pages["routes/sterling-sheet/"], "routes/sterling-sheet", 2),
    ):
        downloads = page.all("a", "download")
        assert len(downloads) == offered
        for a in downloads:
            file = built / folder / Path(a.attrs["href"]).name
            assert file.read_bytes().startswith(b"%PDF-")
            said = int(re.search(r"(\d+) kB", a.text())[1])  # type: ignore[index]
            assert said == file.stat().st_size // 1000
    previews = charts.one("main").all("img")
    assert len(previews) >= 2
    for image in previews:
        assert image.attrs["alt"].startswith("Anneal chart, sheet ")
        assert image.attrs.get("loading") == "lazy"


def test_the_search_index_holds_every_page(pages: Mapping[str, Element], built: Path) -> None:
    index = json.loads((built / "search/search_index.json").read_text(encoding="utf-8"))
    locations = {doc["location"].split("#")[0] or "/" for doc in index["docs"]}
    assert locations == set(pages)


def test_no_source_is_hidden_from_the_repository() -> None:
    if not (ROOT / ".git").exists() or not shutil.which("git"):
        pytest.skip("no repository here")
    sources = [
        path.relative_to(ROOT).as_posix()
        for folder in ("generator/temperbook", "site_overrides", "data", "content", "tests")
        for path in (ROOT / folder).rglob("*.*")
        if path.is_file() and not re.search(r"/[._][^/]*cache", path.as_posix())
    ]
    assert len(sources) > 500
    asked = subprocess.run(
        ["git", "check-ignore", "--no-index", "--stdin"],
        cwd=ROOT,
        input="\n".join(sources),
        capture_output=True,
        text=True,
    )
    assert asked.stdout.split() == []
    assert not asked.stderr
