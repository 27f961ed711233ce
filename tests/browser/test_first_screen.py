"""An alloy's first screen on a phone: name, limits and caution are seen without a touch."""

from __future__ import annotations

from typing import Any

import pytest
from browser.kinds import ALLOYS
from browser.looking import Open, box, style

LARGE = 32  # px of the largest figures at least, readable at arm's length
WORDS = 24  # px of a limit that is told in words


@pytest.mark.parametrize("address", ALLOYS)
def test_everything_that_counts_is_on_the_first_screen(address: str, visit: Open) -> None:
    page = visit(address, width=390, height=844).page
    bar = box(page, ".bar")
    assert bar.bottom == 844
    assert page.evaluate("scrollY") == 0
    limits = page.locator(".limits .limit")
    assert limits.count() == 4
    places = ["h1", *(f".limits .limit >> nth={n}" for n in range(4)), ".limits .caution-now"]
    previous = 0.0
    for place in places:
        found = box(page, place)
        assert found.top >= previous - 0.5, f"{place} stands on what is before it"
        assert found.bottom <= bar.top, (
            f"{place} ends {found.bottom - bar.top:.0f} px below the fold"
        )
        assert found.left >= 0
        assert found.right <= 390
        previous = found.bottom
    sizes_are_large(page)


def sizes_are_large(page: Any) -> None:
    sizes = []
    for n in range(4):
        figure = f".limits .limit-figure >> nth={n}"
        size = float(style(page, figure, "font-size").removesuffix("px"))
        words = page.locator(figure).get_attribute("class").split()
        sizes.append(size)
        assert size >= (WORDS if "is-words" in words else LARGE), page.locator(figure).inner_text()
        assert int(style(page, figure, "font-weight")) >= 700
    body = float(style(page, "body", "font-size").removesuffix("px"))
    assert body >= 16
    assert max(sizes) >= 2 * body
    for said in (".limit-said", ".limit-label", ".caution-now"):
        assert float(style(page, said, "font-size").removesuffix("px")) >= 14


def test_the_stop_is_marked_by_a_shape_and_not_by_colour_alone(visit: Open) -> None:
    page = visit("alloys/silver/sterling-925/").page
    drawn = page.locator(".limit-stop").evaluate(
        "(e) => getComputedStyle(e, '::before').backgroundImage"
    )
    assert "repeating-linear-gradient" in drawn
    assert "do not enter" in page.locator(".glowbar").get_attribute("aria-label").lower()


def test_the_bar_hides_nothing_at_the_end_of_a_page(visit: Open) -> None:
    page = visit("alloys/silver/sterling-925/").page
    page.evaluate("scrollTo(0, document.documentElement.scrollHeight)")
    assert page.evaluate("scrollY") > 0
    assert box(page, ".foot-words").bottom <= box(page, ".bar").top
