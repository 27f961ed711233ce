"""What pages do asks nobody else for anything, and leaves nothing to complain of.

The pages themselves are watched where they are measured, in test_width.
"""

from __future__ import annotations

from urllib.parse import urlsplit

import pytest
from browser.looking import Open
from outputs.building import HOSTILE


def test_what_pages_do_keeps_to_itself_too(visit: Open) -> None:
    seen = visit("alloys/")
    page = seen.page
    page.locator("button.scheme").click()
    page.locator("#finder").fill("gold")
    page.locator(".find-open").click()
    page.locator("#find-words").fill("solder")
    page.locator(".find-count:not(:empty)").wait_for()
    page.locator(".find-close").click()
    page.locator(".contents-open").click()
    assert any(url.endswith("search_index.json") for url in seen.asked)
    assert {urlsplit(url).hostname for url in seen.asked} == {"127.0.0.1"}
    assert seen.complaints() == []


def test_the_watch_itself_sees_what_the_policy_refuses(visit: Open) -> None:
    seen = visit("alloys/")
    seen.page.evaluate("""() => new Promise((done) => {
      addEventListener("securitypolicyviolation", () => setTimeout(done));
      const script = document.createElement("script");
      script.textContent = "window.ran = true";
      document.body.append(script);
    })""")
    assert seen.page.evaluate("window.ran") is None
    assert seen.complaints()


def test_a_wrong_address_leads_on(visit: Open) -> None:
    seen = visit("no/such/page/")
    assert [f for f in seen.failed if not f.endswith("no/such/page/")] == []
    assert seen.page.locator("h1").inner_text() == "Nothing here"
    seen.page.locator("main a").first.click()
    assert seen.page.locator("html[lang=en] body").get_attribute("data-kind") == "home"


@pytest.mark.parametrize(
    "address", ["alloys/", "alloys/silver/britannia-958/", "glossary/", "cautions/hot-into-pickle/"]
)
def test_markup_in_records_never_runs(address: str, visit: Open, hostile: str) -> None:
    seen = visit(address, base=hostile)
    seen.page.locator(".find-open").click()
    seen.page.locator("#find-words").fill("script alert")
    seen.page.locator(".find-result").first.wait_for()
    assert seen.complaints() == []
    assert seen.page.locator("main img, .find img, main script, .find script").count() == 0
    assert {urlsplit(url).hostname for url in seen.asked} == {"127.0.0.1"}


def test_markup_is_found_and_shown_as_typed(visit: Open, hostile: str) -> None:
    page = visit("", base=hostile).page
    page.locator(".find-open").click()
    page.locator("#find-words").fill("britannia")
    assert page.locator(".find-title").first.inner_text() == HOSTILE["name"]
