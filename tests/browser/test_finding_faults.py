"""From a crack to its page in three taps on a phone, with script and without, and for the metal."""

from __future__ import annotations

import re

import pytest
from browser.looking import Open

WHITE = "gold/18ct-nickel-white"
STERLING = "silver/sterling-925"


@pytest.mark.parametrize("script", [True, False])
def test_three_taps_lead_from_the_first_page_to_the_fault(script: bool, visit: Open) -> None:
    """My ingot cracks at the edge on the third pass: when it cracks, rolling, the fault."""
    page = visit("", width=390, script=script).page
    page.locator("main a", has_text="It cracked").first.click()
    page.wait_for_url("**/when-it-cracks/")
    stage = page.locator("details#rolling")
    assert not stage.evaluate("e => e.open")
    stage.locator("summary").click()
    stage.locator("a", has_text="edges of sheet").first.click()
    page.wait_for_url("**/when-it-cracks/edge-cracks/")
    assert page.locator("h1").inner_text().strip()
    assert page.locator(".cause").count() >= 2
    assert page.locator("svg.drawn").count() == 1


def test_three_questions_narrow_the_faults_down(visit: Open) -> None:
    page = visit("when-it-cracks/", width=390).page
    every = page.evaluate(
        "new Set([...document.querySelectorAll('.fault-row a')].map((a) => a.href)).size"
    )
    assert every >= 45
    page.select_option("#fault-when", "rolling")
    rolling = page.locator(".fault-found a").count()
    page.select_option("#fault-look", "crack-edge")
    edges = page.locator(".fault-found a").count()
    assert every > rolling > edges >= 1
    assert page.locator(".fault-count").inner_text() == f"{edges} of {every} faults"
    assert page.locator(".fault-tree").is_hidden()
    page.select_option("#fault-metal", WHITE)
    assert page.locator(".fault-found a").count() == edges, "the metal sorts and hides nothing"
    first = page.locator(".fault-found a").first
    assert first.get_attribute("href").endswith(f"?alloy={WHITE}")  # type: ignore[union-attr]
    first.click()
    page.wait_for_url(re.compile(r"/when-it-cracks/[^/]+/\?alloy="))
    assert page.locator("#fault-alloy").input_value() == WHITE


def test_the_metal_in_hand_changes_the_ranking(visit: Open) -> None:
    def causes(alloy: str) -> list[str]:
        page = visit(f"when-it-cracks/edge-cracks/?alloy={alloy}").page
        assert page.locator("#fault-alloy").input_value() == alloy
        return page.locator(".cause strong").all_inner_texts()

    white, sterling = causes(WHITE), causes(STERLING)
    assert white != sterling
    page = visit("when-it-cracks/edge-cracks/").page
    general = page.locator(".cause strong").all_inner_texts()
    page.select_option("#fault-alloy", WHITE)
    assert page.locator(".cause strong").all_inner_texts() == white
    assert "18 ct nickel white gold" in page.locator(".fault-said").inner_text()
    page.select_option("#fault-alloy", "")
    assert page.locator(".cause strong").all_inner_texts() == general
    assert page.locator(".fault-said").is_hidden()


def test_an_alloys_page_leads_to_its_faults(visit: Open) -> None:
    page = visit(f"alloys/{WHITE}/").page
    link = page.locator("#onward a[href*='when-it-cracks']").first
    assert link.get_attribute("href").endswith(f"?alloy={WHITE}")  # type: ignore[union-attr]
