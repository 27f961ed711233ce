"""No page scrolls sideways, nothing on it is cut off, and none asks anyone else for anything."""

from __future__ import annotations

from typing import Any
from urllib.parse import urlsplit

import pytest
from browser.kinds import EACH_KIND, LONGEST
from browser.looking import BEYOND, Open


def check(page: Any, width: int) -> None:
    page.set_viewport_size({"width": width, "height": 844})
    assert page.evaluate("document.scrollingElement.scrollWidth") <= width, width
    assert page.evaluate(BEYOND) == [], width


@pytest.mark.parametrize("address", [*EACH_KIND, *LONGEST])
def test_nothing_reaches_beyond_the_window_and_the_page_keeps_to_itself(
    address: str, visit: Open
) -> None:
    seen = visit(address, width=360)
    page = seen.page
    check(page, 360)
    closed = page.locator("details:not([open]) > summary:visible")
    while closed.count():  # one that is opened is no longer among them
        closed.first.click()
    for width in (360, 390, 1400):
        check(page, width)
    page.evaluate("scrollTo(0, document.documentElement.scrollHeight)")
    if "wall-charts" in address:  # its pictures are asked for when they come near
        page.wait_for_load_state("networkidle")
    assert {urlsplit(url).hostname for url in seen.asked} == {"127.0.0.1"}
    if address != LONGEST[-1]:  # an address that leads nowhere
        assert len(seen.asked) > 8
        assert seen.complaints() == []


@pytest.mark.parametrize("address", ["alloys/silver/sterling-925/", "alloys/", "", "reduction/"])
@pytest.mark.parametrize("width", [320, 768, 1000])
def test_in_between_and_enlarged_four_times_as_well(width: int, address: str, visit: Open) -> None:
    check(visit(address, width=width).page, width)


def test_the_check_itself_finds_what_is_cut(visit: Open) -> None:
    page = visit("glossary/").page
    page.evaluate("document.querySelector('dd').innerHTML = 'x'.repeat(900)")
    page.evaluate("document.querySelector('dd').style.overflowWrap = 'normal'")
    assert page.evaluate(BEYOND)
