"""What a reader chooses is kept, and what is folded can be opened."""

from __future__ import annotations

import pytest
from browser.looking import Open, background, luminance

ALLOY = "alloys/silver/sterling-925/"


@pytest.mark.parametrize(("scheme", "chosen"), [("light", "soot"), ("dark", "paper")])
def test_the_scheme_is_remembered(scheme: str, chosen: str, visit: Open) -> None:
    page = visit("alloys/", scheme=scheme).page
    before = luminance(background(page, ".index-row"))
    button = page.locator("button.scheme")
    assert button.inner_text() == ("Dark" if chosen == "soot" else "Light")
    button.click()
    assert button.inner_text() == ("Light" if chosen == "soot" else "Dark")
    after = luminance(background(page, ".index-row"))
    assert (after < before) == (chosen == "soot")
    page.reload()
    assert page.evaluate("document.documentElement.dataset.scheme") == chosen
    assert luminance(background(page, ".index-row")) == after
    page.locator(".index-name").first.click()
    page.wait_for_url("**/alloys/*/*/")
    assert page.evaluate("document.documentElement.dataset.scheme") == chosen


def test_a_page_without_storage_still_works(visit: Open) -> None:
    seen = visit("alloys/")
    refuse = "() => { throw new Error('refused'); }"
    seen.context.add_init_script(
        f"Storage.prototype.getItem = {refuse}; Storage.prototype.setItem = {refuse};"
    )
    seen.page.reload()
    seen.page.locator("button.scheme").click()
    assert seen.page.evaluate("document.documentElement.dataset.scheme") == "soot"
    assert seen.complaints() == []


def test_the_readings_unfold(visit: Open) -> None:
    page = visit(ALLOY).page
    fold = page.locator("details.fold")
    rows = fold.locator("tbody tr")
    assert not rows.first.is_visible()
    fold.locator("summary").click()
    assert rows.first.is_visible()
    said = int(fold.locator("summary").inner_text().split()[0])
    assert rows.count() == said > 12
    fold.locator("summary").click()
    assert not rows.first.is_visible()


def test_few_readings_are_open_from_the_start(visit: Open) -> None:
    page = visit("cautions/noise/").page
    assert page.locator("details.fold").first.get_attribute("open") is not None
    assert page.locator("details.fold tbody tr").first.is_visible()


def test_the_contents_open_where_one_is_and_close(visit: Open) -> None:
    page = visit("cautions/").page
    page.locator(".contents-open").click()
    here = page.locator("#contents [aria-current]:focus")
    here.wait_for()
    assert here.inner_text() == "Cautions"
    page.locator(".contents-close").click()
    page.locator("#contents").wait_for(state="hidden")
    assert page.url.endswith("/cautions/")


@pytest.mark.parametrize("width", [390, 1400])
def test_a_link_to_a_figure_leads_to_its_row(width: int, visit: Open) -> None:
    page = visit("reduction/", width=width).page
    link = page.locator("main .called a").first
    target = link.get_attribute("href").split("#")[1]
    link.click()
    row = page.locator(f"[id='{target}']")
    row.wait_for()
    found = row.bounding_box()
    assert 0 <= found["y"] < 844
    assert page.locator(f"[id='{target}']:target").count() == 1
