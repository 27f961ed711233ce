"""axe finds nothing on any kind of page; keyboard and thumb reach everything."""

from __future__ import annotations

from typing import Any

import pytest
from browser.kinds import EACH_KIND
from browser.looking import Open, box, style
from outputs.building import missing

TAP = 44  # px


# Rows of a list are drawn by one template: so many stand for all of a long one.
FEWER = """() => {
  for (const list of document.querySelectorAll("main :is(ul, ol, dl, tbody)"))
    [...list.children].slice(20).forEach((row) => row.remove());
}"""


def violations(page: Any, scheme: str = "light") -> list[str]:
    """What axe objects to, and where. Dark differs from light by its colours alone."""
    try:
        from axe_playwright_python.sync_playwright import Axe
    except ImportError:
        missing("axe-playwright-python")
    options = {"runOnly": ["color-contrast"]} if scheme == "dark" else None
    found = Axe().run(page, options=options).response["violations"]
    return [f"{v['id']}: {v['help']}: {[n['target'] for n in v['nodes']][:4]}" for v in found]


@pytest.mark.parametrize("address", [*EACH_KIND, "no/such/page/"])
def test_axe_finds_nothing(address: str, visit: Open) -> None:
    page = visit(address).page
    page.evaluate(FEWER)
    assert violations(page) == []
    page.emulate_media(color_scheme="dark")
    assert violations(page, "dark") == []


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_axe_finds_nothing_in_the_sheets(scheme: str, visit: Open) -> None:
    page = visit("alloys/", scheme=scheme).page
    page.locator(".find-open").click()
    page.locator("#find-words").fill("sterling")
    page.locator(".find-result").first.wait_for()
    assert violations(page, scheme) == []
    page.locator(".find-close").click()
    page.locator(".contents-open").click()
    page.locator("#contents a").first.wait_for()
    assert violations(page, scheme) == []


def test_axe_finds_what_is_wrong(visit: Open) -> None:
    page = visit("glossary/").page
    page.evaluate("document.querySelector('main').append(document.createElement('img'))")
    page.evaluate("document.querySelector('dd').style.color = '#eee'")
    assert {v.split(":")[0] for v in violations(page)} == {"image-alt", "color-contrast"}
    assert {v.split(":")[0] for v in violations(page, "dark")} == {"color-contrast"}


def test_the_first_tab_leads_past_the_head(visit: Open) -> None:
    page = visit("alloys/silver/sterling-925/").page
    page.keyboard.press("Tab")
    skip = page.locator(".skip")
    assert skip.evaluate("(e) => e === document.activeElement")
    assert box(page, ".skip").left >= 0
    assert box(page, ".skip").top >= 0
    page.keyboard.press("Enter")
    assert page.evaluate("document.activeElement.id") == "text"
    page.keyboard.press("Tab")
    assert page.evaluate("document.activeElement.closest('main') !== null")


@pytest.mark.parametrize("width", [390, 1400])
@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_what_has_the_focus_is_seen(width: int, scheme: str, visit: Open) -> None:
    page = visit("alloys/", width=width, scheme=scheme).page
    seen = set()
    for _ in range(36):
        page.keyboard.press("Tab")
        here = page.evaluate("""() => {
          const e = document.activeElement, s = getComputedStyle(e), b = e.getBoundingClientRect();
          const upright = b.bottom > 0 && b.top < innerHeight;
          return {
            name: e.className || e.tagName,
            input: e.tagName === "INPUT",
            outline: s.outlineStyle,
            wide: parseFloat(s.outlineWidth),
            border: parseFloat(s.borderBottomWidth),
            inside: upright && b.right > 0 && b.left < innerWidth,
          };
        }""")
        seen.add(here["name"].split(" ")[-1])
        assert here["inside"], here
        if here["input"]:
            assert here["border"] >= 4, here
        else:
            assert here["outline"] != "none", here
            assert here["wide"] >= 2, here
    assert {"skip", "name", "scheme", "find-open", "contents-open"} <= seen
    assert "index-name" in seen


def test_the_thumb_s_bar_can_be_hit(visit: Open) -> None:
    page = visit("alloys/silver/sterling-925/", width=360).page
    words = page.locator(".bar .word")
    assert words.count() == 3
    for n in range(3):
        found = box(page, f".bar .word >> nth={n}")
        assert found.bottom - found.top >= TAP
        assert found.right - found.left >= TAP
        assert found.bottom <= 844


@pytest.mark.parametrize("address", ["alloys/", "cautions/", "sources/"])
def test_a_row_of_an_index_is_one_large_target(address: str, visit: Open) -> None:
    page = visit(address).page
    rows = page.locator(".index-row")
    assert rows.count() >= 10
    for n in range(min(rows.count(), 30)):
        found = box(page, f".index-row >> nth={n}")
        assert found.bottom - found.top >= TAP
    row = rows.nth(2)
    row.scroll_into_view_if_needed()
    hit = row.evaluate("""(e) => {
      const b = e.getBoundingClientRect();
      const low = b.top + b.height * 0.7;
      const at = (share) => document.elementFromPoint(b.left + b.width * share, low);
      return [0.05, 0.5, 0.95].map((share) => at(share).closest("a")?.href);
    }""")
    assert hit == [row.locator("a").evaluate("(e) => e.href")] * 3


@pytest.mark.parametrize(
    "selector",
    [".name", "button.scheme", ".caution-now a", ".crumbs a", ".jumps a", ".fold > summary"],
)
def test_other_targets_can_be_hit(selector: str, visit: Open) -> None:
    page = visit("alloys/silver/sterling-925/").page
    found = box(page, selector)
    assert found.bottom - found.top >= TAP


def test_escape_closes_a_sheet_and_gives_the_focus_back(visit: Open) -> None:
    page = visit("alloys/").page
    for opener, sheet in ((".find-open", "#find"), (".contents-open", "#contents")):
        page.locator(opener).focus()
        page.keyboard.press("Enter")
        page.locator(f"{sheet} :focus").wait_for()
        page.keyboard.press("Escape")
        page.locator(sheet).wait_for(state="hidden")
        page.locator(f"{opener}:focus").wait_for()


def test_nothing_moves_without_need(visit: Open) -> None:
    page = visit("alloys/").page
    moving = page.evaluate("""() => [...document.querySelectorAll("*")].filter((e) => {
      const s = getComputedStyle(e);
      const turns = s.transitionDuration !== "0s" && s.transitionProperty !== "none";
      return s.animationName !== "none" || turns;
    }).map((e) => e.className)""")
    assert moving == []


def test_the_letters_are_our_own(visit: Open) -> None:
    page = visit("alloys/silver/sterling-925/").page
    assert style(page, "body", "font-family").startswith('"Atkinson Hyperlegible Next"')
    page.evaluate("document.fonts.ready.then(() => true)")
    loaded = page.evaluate(
        "[...document.fonts].filter((f) => f.status === 'loaded').map((f) => f.weight)"
    )
    assert {"400", "800"} <= set(loaded)
