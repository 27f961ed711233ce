"""The working plan in the browser: the same answers as Python, on a phone, by link, on paper."""

from __future__ import annotations

from collections import Counter
from typing import Any

import pytest
from browser import plan_vectors
from browser.looking import BEYOND, Visit
from browser.test_accessible import TAP, violations
from browser.test_work_it_out import same

from temperbook.derive.handbook import Handbook

ASK = """async (questions) => {
  const answers = await import("/assets/js/work/planning/answer.js");
  const bench = await (await fetch("/assets/data/bench.json")).json();
  const data = { ...bench.tables, bench: bench.bench, texts: bench.texts };
  const ask = {
    plan: (asked, equipment) => answers.plan(asked, equipment, data),
    used: (asked) => answers.used(asked, data),
    backward: (asked, equipment) => answers.backward(asked, equipment, data),
  };
  return questions.map(({ kind, asked, equipment }) => {
    try {
      return { answer: JSON.parse(JSON.stringify(ask[kind](asked, equipment))) };
    } catch (error) {
      return { refused: error.message, slip: error.constructor.name !== "Refused" && error.stack };
    }
  });
}"""
SHEET = (
    "work-it-out/plan/?alloy=silver%2Fsterling-925&from=flat+30x6&to=flat+30x0.8"
    "&start=cast&temper=half-hard&length=200"
)


def test_the_browser_plans_as_python_does(page: Visit, handbook: Handbook) -> None:
    """Every key, number, sentence and refusal of plan, used and backward."""
    questions = plan_vectors.all_of(handbook)
    page.page.goto("glossary/")
    asked = [{k: q[k] for k in ("kind", "asked", "equipment")} for q in questions]
    found = page.page.evaluate(ASK, asked)
    said: Counter[str] = Counter()
    for question, answer in zip(questions, found, strict=True):
        assert not answer.get("slip"), (question, answer)
        if "refused" in question:
            said[f"{question['kind']} refused"] += 1
            assert answer.get("refused") == question["refused"], question
        else:
            said[question["kind"]] += 1
            assert "refused" not in answer, (question, answer)
            assert same(question["answer"], answer["answer"]), question
    print(dict(said))
    for kind in plan_vectors.NUMBER:
        assert said[kind] >= 40
        assert said[f"{kind} refused"] >= 10


def opened(page: Visit, address: str) -> Any:
    page.page.goto(address)
    page.page.locator("form.work").wait_for()
    return page.page


def figures(page: Any) -> list[str]:
    rows: list[str] = page.locator("#found:not([hidden]) .found-row").all_inner_texts()
    return [" ".join(row.split()) for row in rows]


def test_a_link_opens_with_its_plan(page: Visit) -> None:
    found = opened(page, SHEET)
    said = figures(found)
    assert said[0] == "Anneals 3"
    assert said[2] == "The finished piece weighs 49.73 g"
    runs = found.locator(".plan-run")
    assert runs.count() == 4
    assert "30 × 6.00 mm" in runs.first.inner_text().replace("\u00a0", " ")
    assert found.locator(".plan-anneal").count() == 3
    assert "600–650" in found.locator(".plan-anneal").first.inner_text()
    assert found.locator(".plan-warnings li").count() > 0
    assert found.locator(".plan-cautions a").first.get_attribute("href").endswith("/mill-nip/")
    command = found.locator(".found-command code").inner_text()
    assert command.startswith("temperbook plan --alloy silver/sterling-925 --from")
    assert found.evaluate(BEYOND) == []
    assert found.evaluate("document.scrollingElement.scrollWidth") <= 390


def test_the_form_plans_while_it_is_filled_and_refuses_in_words(page: Visit) -> None:
    found = opened(page, "work-it-out/plan/")
    found.locator("#in-alloy").select_option(label="Tough pitch copper")
    found.locator("#in-from").fill("round 1.0")
    found.locator("#in-to").fill("round 0.35")
    found.locator("summary", has_text="Limits of your own").click()
    found.locator("#in-ceiling").fill("65")
    assert figures(found)[0] == "Anneals 1"
    assert "ceiling=65" in found.url
    found.locator("#in-ceiling").fill("130")
    found.locator("#in-ceiling").blur()
    assert "below 100 percent" in found.locator(".refused").inner_text()
    assert figures(found) == []
    found.locator("#in-ceiling").fill("")
    found.locator("#in-to").fill("round 2")
    found.locator("#in-to").blur()
    assert "larger than the start" in found.locator(".refused").inner_text()


def test_fields_can_be_hit_and_are_labelled(page: Visit) -> None:
    found = opened(page, SHEET)
    for field in found.locator("form.work :is(input, select, button, summary)").all():
        if field.is_visible():
            assert field.bounding_box()["height"] >= TAP
    labels = found.locator("form.work :is(input, select)").evaluate_all(
        "(all) => all.map((e) => e.labels[0]?.textContent || e.ariaLabel || '')"
    )
    assert all(labels)


def test_where_one_stands_and_the_way_back(page: Visit) -> None:
    """Square 6 to 4.8 mm is 36 percent of the area: arithmetic."""
    query = "?alloy=silver%2Fsterling-925&from=square+6&now=square+4.8"
    found = opened(page, f"work-it-out/used/{query}")
    assert figures(found)[0] == "Used since the anneal 36 % of the area, 20 % of the side"
    assert figures(found)[1].startswith("Left, down to 4.24 mm square")
    back = opened(page, "work-it-out/backward/?alloy=silver%2Fsterling-925&to=square+3&length=60")
    assert figures(back)[0].startswith("Mould ")
    assert back.locator(".plan-run").count() == 2


def test_a_sheet_of_paper_holds_the_plan(page: Visit) -> None:
    found = opened(page, SHEET)
    found.emulate_media(media="print")
    try:
        for selector in (".bar", ".work-do", "#example", ".work-more"):
            assert not found.locator(selector).first.is_visible(), selector
        assert found.locator(".plan-run").last.is_visible()
    finally:
        found.emulate_media(media="screen")


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_axe_finds_nothing_in_a_plan(scheme: str, page: Visit) -> None:
    page.page.emulate_media(color_scheme=scheme)
    assert violations(opened(page, SHEET), scheme) == []
    page.page.emulate_media(color_scheme="light")


def test_the_plan_keeps_to_itself(page: Visit, site: str) -> None:
    opened(page, SHEET)
    assert page.complaints() == []
    assert all(url.startswith(site) for url in page.asked)


def test_without_script_the_page_shows_its_example(visit: Any) -> None:
    page = visit("work-it-out/plan/", script=False).page
    assert page.locator(".work-without").is_visible()
    assert not page.locator("form.work").is_visible()
    assert "anneal" in page.locator(".plan-lines").inner_text()
