"""Finding: the sheet that searches all pages, and the filter of an index."""

from __future__ import annotations

from typing import Any

import pytest
from browser.looking import Open

STERLING = "/alloys/silver/sterling-925/"


def ask(page: Any, words: str) -> None:
    if not page.locator("#find").is_visible():
        page.locator(".find-open").click()
    page.locator("#find-words").fill(words)
    page.locator(".find-count:not(:empty)").wait_for()


def addresses(page: Any) -> list[str]:
    found: list[str] = page.locator(".find-result").evaluate_all(
        "(all) => all.map((a) => a.pathname)"
    )
    return found


@pytest.mark.parametrize(
    ("words", "address"),
    [
        ("sterling", STERLING),
        ("Sterling silver", STERLING),
        ("925", STERLING),
        ("STERLING", STERLING),
        ("18 ct rose", "/alloys/gold/18ct-rose/"),
        ("18ct rose", "/alloys/gold/18ct-rose/"),
        ("fine gold", "/alloys/gold/fine-999/"),
        ("zinc fume", "/cautions/zinc-fume/"),
        ("reduction", "/reduction/"),
        ("shibuichi", "/alloys/japanese/shibuichi/"),
    ],
)
def test_the_right_page_comes_first(words: str, address: str, visit: Open) -> None:
    page = visit("").page
    ask(page, words)
    found = addresses(page)
    assert found, page.locator(".find-count").inner_text()
    assert found[0] == address, found[:5]


def test_a_sentence_finds_the_pages_that_have_most_of_its_words(visit: Open) -> None:
    page = visit("").page
    ask(page, "white gold wire wont soften")
    assert page.locator(".find-count").inner_text().startswith("No page has all these words. With")
    assert any("white" in address for address in addresses(page)[:6]), addresses(page)[:6]
    ask(page, "white gold")
    page.locator(".find-count", has_text="pages").wait_for()
    assert "most" not in page.locator(".find-count").inner_text()


def test_a_slip_of_the_keys_brings_the_right_word(visit: Open) -> None:
    page = visit("").page
    ask(page, "sterlng")
    first = page.locator(".find-results > li").first
    if first.locator(".find-result").count():
        assert addresses(page)[0] == STERLING
        return
    near = page.locator(".find-near").first
    assert near.inner_text() == "sterling"
    near.click()
    page.locator(".find-result").first.wait_for()
    assert addresses(page)[0] == STERLING


def test_enter_opens_the_first(visit: Open) -> None:
    page = visit("cautions/pickle-acid/").page
    page.keyboard.press("/")
    ask(page, "sterling")
    page.keyboard.press("Enter")
    page.wait_for_url(f"**{STERLING}")
    assert page.locator("h1").inner_text() == "Sterling silver"


def test_each_result_leads_to_a_page_that_is_there(visit: Open) -> None:
    seen = visit("alloys/gold/18ct-rose/")
    ask(seen.page, "anneal")
    found = addresses(seen.page)
    assert len(found) >= 10
    assert len(found) == len(set(found))
    for address in found[:6]:
        answer = seen.context.request.get(f"{seen.page.url.split('/alloys')[0]}{address}")
        assert answer.status == 200, address


def test_nothing_found_is_said(visit: Open) -> None:
    page = visit("").page
    ask(page, "qqqqqqqq")
    assert page.locator(".find-count").inner_text().startswith("No page has")
    assert page.locator(".find-count").get_attribute("role") == "status"
    assert addresses(page) == []


def test_the_number_of_pages_is_said(visit: Open) -> None:
    page = visit("").page
    ask(page, "shibuichi")
    said = page.locator(".find-count").inner_text()
    assert said.endswith(("page", "pages"))
    assert int(said.split()[0]) >= 1


def filtered(page: Any) -> list[str]:
    rows: list[str] = page.locator(".index-row:visible .index-name").all_inner_texts()
    return rows


def test_the_index_narrows_and_counts(visit: Open) -> None:
    page = visit("alloys/").page
    every = len(filtered(page))
    count = page.locator(".finder-count")
    assert count.inner_text() == f"{every} of {every}"
    page.locator("#finder").fill("sterling")
    some = filtered(page)
    assert "Sterling silver" in some
    assert 0 < len(some) < every
    assert count.inner_text() == f"{len(some)} of {every}"
    headings = page.locator(".index-group:visible h2").all_inner_texts()
    assert len(headings) == 1
    page.locator("#finder").fill("")
    assert len(filtered(page)) == every


@pytest.mark.parametrize(
    ("words", "name"),
    [
        ("925", "Sterling silver"),
        ("C26000", "Cartridge brass"),
        ("SILVER ster", "Sterling silver"),
        ("18 ct rose", "18 ct rose gold"),
    ],
)
def test_the_index_knows_other_names(words: str, name: str, visit: Open) -> None:
    page = visit("alloys/").page
    page.locator("#finder").fill(words)
    assert name in [text.strip() for text in filtered(page)]


def test_an_index_without_a_match_says_none(visit: Open) -> None:
    page = visit("alloys/").page
    every = len(filtered(page))
    page.locator("#finder").fill("unobtainium")
    assert filtered(page) == []
    assert page.locator(".finder-count").inner_text() == f"0 of {every}"
    assert page.locator(".index-group:visible").count() == 0


def test_sources_can_be_narrowed_too(visit: Open) -> None:
    page = visit("sources/").page
    every = len(filtered(page))
    page.locator("#finder").fill("hallmarking act")
    assert 0 < len(filtered(page)) < every
