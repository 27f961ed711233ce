"""What people type into records is text: it never becomes markup, a template or a script."""

from __future__ import annotations

import json
import re
from collections import Counter
from pathlib import Path

import pytest
from outputs.building import HOSTILE, hostile_project, once, shared
from outputs.html_tree import Element, parse
from outputs.pdf_reading import read, squeezed

PRINTED = ("wall-charts/", "reading-packs/")
ALLOY = "alloys/silver/britannia-958/index.html"


@pytest.fixture(scope="session")
def printed(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The folder of a chart, a pack and a job sheet from records that are full of markup."""
    return once(shared(tmp_path_factory), "hostile", hostile_project)


@pytest.fixture(scope="session")
def hostile(printed: Path) -> Path:
    """The pages made from the same records."""
    return printed / "site"


@pytest.fixture(scope="session")
def page(hostile: Path) -> Element:
    return parse((hostile / ALLOY).read_text(encoding="utf-8"))


def texts(element: Element) -> str:
    return squeezed(element.text())


def test_the_words_are_all_there_as_words() -> None:
    for piece in ("<script>", "#import", "{{", "[[", "*", '"', "&", "#panic"):
        assert piece in HOSTILE["name"] + HOSTILE["about"] + HOSTILE["remark"], piece


@pytest.mark.parametrize("part", ["name", "about", "remark"])
def test_an_alloy_s_page_shows_them_as_typed(part: str, page: Element) -> None:
    assert squeezed(HOSTILE[part]) in texts(page.one("main"))


def test_the_head_of_the_page_holds_them_as_text(page: Element) -> None:
    assert squeezed(page.one("title").text()) == squeezed(f"{HOSTILE['name']} · Temperbook")
    said = [m.attrs for m in page.all("meta") if m.attrs.get("name") == "description"]
    assert len(said) == 1
    assert set(said[0]) == {"name", "content"}
    assert squeezed(said[0]["content"]) == squeezed(HOSTILE["about"])


def test_no_page_has_an_element_more_than_before(hostile: Path, built: Path) -> None:
    changed = 0
    for path in hostile.rglob("index.html"):
        address = path.parent.relative_to(hostile).as_posix()
        before, after = (p.read_bytes() for p in (built / path.relative_to(hostile), path))
        if after == before or address.startswith(PRINTED):
            continue  # nothing that was typed reaches it, or it shows paper that was left out
        changed += 1
        tags, due = (
            Counter(re.findall(r"<([a-z0-9]+)[\s/>]", t.decode())) for t in (after, before)
        )
        for tag in ("script", "img", "iframe", "style", "b", "meta", "link", "base", "form"):
            assert tags[tag] == due[tag], (address, tag)
        if b"on=" in after:  # as text, or as an attribute that would run
            for element in parse(after.decode()).walk():
                assert not [a for a in element.attrs if a.startswith("on")], (address, element)
    assert changed > 20


@pytest.mark.parametrize(
    "where", ["alloys/index.html", "glossary/index.html", "cautions/index.html"]
)
def test_indexes_show_them_as_typed(where: str, hostile: Path) -> None:
    main = parse((hostile / where).read_text(encoding="utf-8")).one("main")
    due = {
        "alloys/index.html": "name",
        "glossary/index.html": "meaning",
        "cautions/index.html": "quick",
    }
    assert squeezed(HOSTILE[due[where]]) in texts(main)


def test_the_other_names_of_an_alloy_stay_inside_their_attribute(hostile: Path) -> None:
    main = parse((hostile / "alloys/index.html").read_text(encoding="utf-8")).one("main")
    row = next(r for r in main.all("li", "alloy-row") if squeezed(HOSTILE["name"]) in texts(r))
    assert HOSTILE["also"] in row.attrs["data-words"]
    assert set(row.attrs) == {"class", "data-words"}


def test_the_search_index_holds_text(hostile: Path) -> None:
    index = json.loads((hostile / "search/search_index.json").read_text(encoding="utf-8"))
    entry = next(d for d in index["docs"] if d["location"] == ALLOY.removesuffix("index.html"))
    assert squeezed(HOSTILE["name"]) == squeezed(entry["title"])


def test_a_chart_prints_them_as_typed(printed: Path) -> None:
    said = "".join(r.text for p in read(printed / "chart.pdf") for r in p.runs)
    assert squeezed(said).count(squeezed(HOSTILE["short"])) == 1
    assert squeezed(HOSTILE["quick"]) in squeezed(said)


def test_a_pack_prints_them_as_typed(printed: Path) -> None:
    pages = read(printed / "pack.pdf")
    said = squeezed("".join(r.text for page in pages for r in page.runs))
    for part in ("meaning", "hazard", "signed", "ask"):
        assert squeezed(HOSTILE[part]) in said, part


def test_a_route_shows_and_prints_them_as_typed(hostile: Path, printed: Path) -> None:
    folder = hostile / "routes/sterling-sheet"
    main = texts(parse((folder / "index.html").read_text(encoding="utf-8")).one("main"))
    for part in ("about", "remark", "hazard"):
        assert squeezed(HOSTILE[part]) in main, part
    pages = read(printed / "job.pdf")
    said = squeezed("".join(r.text for page in pages for r in page.runs))
    assert squeezed(HOSTILE["remark"]) in said


def test_nothing_was_computed(hostile: Path) -> None:
    text = re.sub(r"<[^>]+>", " ", (hostile / ALLOY).read_text(encoding="utf-8"))
    assert "{{ 7*7 }}" in text
    assert " 49 " not in text
