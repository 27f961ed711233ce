"""An alloy's first screen on a phone: name, limits and caution are seen without a touch."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

import pytest
from browser.kinds import ALLOYS
from browser.looking import Open, box

LARGE = 32  # px of the largest figures at least, readable at arm's length
WORDS = 24  # px of a limit that is told in words


# Everything that a test asks of the screen, in one question to the browser.
MEASURE = """() => {
  const box = (e) => {
    const b = e.getBoundingClientRect();
    return { left: b.left, top: b.top, right: b.right, bottom: b.bottom };
  };
  const size = (e) => parseFloat(getComputedStyle(e).fontSize);
  const first = (selector) => document.querySelector(selector);
  const limits = [...document.querySelectorAll(".limits .limit")];
  const figures = [...document.querySelectorAll(".limits .limit-figure")].slice(0, 4);
  return {
    scrolled: scrollY,
    bar: box(first(".bar")),
    limits: limits.length,
    places: [first("h1"), ...limits.slice(0, 4), first(".limits .caution-now")].map(box),
    figures: figures.map((e) => ({
      text: e.innerText,
      words: e.classList.contains("is-words"),
      size: size(e),
      weight: Number(getComputedStyle(e).fontWeight),
    })),
    body: size(document.body),
    said: [".limit-said", ".limit-label", ".caution-now"].map((s) => size(first(s))),
  };
}"""


@pytest.fixture(scope="module")
def phone(browser: Any, site: str) -> Iterator[Any]:
    """One page as wide as a phone, that all alloys share."""
    context = browser.new_context(
        viewport={"width": 390, "height": 844}, reduced_motion="reduce", base_url=site
    )
    yield context.new_page()
    context.close()


@pytest.mark.parametrize("address", ALLOYS)
def test_everything_that_counts_is_on_the_first_screen(address: str, phone: Any) -> None:
    phone.goto(address)
    seen = phone.evaluate(MEASURE)
    bar = seen["bar"]
    assert bar["bottom"] == 844
    assert seen["scrolled"] == 0
    assert seen["limits"] == 4
    previous = 0.0
    for number, found in enumerate(seen["places"]):
        assert found["top"] >= previous - 0.5, f"{number} stands on what is before it"
        below = found["bottom"] - bar["top"]
        assert below <= 0, f"{number} ends {below:.0f} px below the fold"
        assert found["left"] >= 0
        assert found["right"] <= 390
        assert found["bottom"] > found["top"]
        previous = found["bottom"]
    sizes_are_large(seen)


def sizes_are_large(seen: dict[str, Any]) -> None:
    assert len(seen["figures"]) == 4
    for figure in seen["figures"]:
        assert figure["size"] >= (WORDS if figure["words"] else LARGE), figure["text"]
        assert figure["weight"] >= 700
    assert seen["body"] >= 16
    assert max(figure["size"] for figure in seen["figures"]) >= 2 * seen["body"]
    assert min(seen["said"]) >= 14


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
