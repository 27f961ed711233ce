"""Everything but finding and filtering works in a browser that runs no script."""

from __future__ import annotations

import pytest
from browser.looking import Open, background, box, luminance

ALLOY = "alloys/silver/sterling-925/"


@pytest.mark.parametrize("width", [390, 1400])
def test_the_limits_are_there(width: int, visit: Open) -> None:
    page = visit(ALLOY, width=width, script=False).page
    assert page.locator("h1").inner_text() == "Sterling silver"
    figures = page.locator(".limits .limit-figure").all_inner_texts()
    assert len(figures) == 4
    assert all(text.strip() for text in figures)
    assert page.locator(".limits .caution-now").is_visible()


@pytest.mark.parametrize("width", [390, 1400])
def test_the_contents_can_be_reached(width: int, visit: Open) -> None:
    page = visit(ALLOY, width=width, script=False).page
    page.locator(".contents-open").click()
    link = page.locator("#contents a", has_text="Cautions")
    link.wait_for(state="visible")
    link.click()
    assert page.url.endswith("/cautions/")
    assert page.locator("h1").is_visible()


def test_buttons_that_need_a_script_are_not_offered(visit: Open) -> None:
    page = visit("alloys/", script=False).page
    for selector in ("button.scheme", ".find-open", ".finder", "#find"):
        assert page.locator(selector).count() == 1
        assert not page.locator(selector).is_visible(), selector


def test_the_index_is_whole(visit: Open) -> None:
    page = visit("alloys/", script=False).page
    rows = page.locator(".index-row")
    assert rows.count() > 20
    assert all(rows.nth(n).is_visible() for n in range(rows.count()))
    rows.nth(3).locator("a").click()
    assert page.locator(".limits h1").is_visible()


def test_readings_can_be_unfolded(visit: Open) -> None:
    page = visit(ALLOY, script=False).page
    assert not page.locator(".fold tbody tr").first.is_visible()
    page.locator(".fold > summary").click()
    assert page.locator(".fold tbody tr").first.is_visible()


def test_a_dark_system_gets_a_dark_page(visit: Open) -> None:
    page = visit(ALLOY, scheme="dark", script=False).page
    assert luminance(background(page, "#about p")) < 0.05
    assert box(page, ".bar").bottom == 844
