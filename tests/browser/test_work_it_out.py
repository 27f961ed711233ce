"""Work it out: the browser answers each formula as Python does, and the forms work with a thumb."""

from __future__ import annotations

import json
import math
from pathlib import Path
from typing import Any

import pytest
from browser import vectors
from browser.looking import BEYOND, Visit, box, style
from browser.test_accessible import TAP, violations

from temperbook.metal import register
from temperbook.views import formula_page

MOST_OFF = 1e-9
ASK = """async (questions) => {
  const { asked, typed, numbers } = JSON.parse(questions);
  const work = "/assets/js/work/";
  const [{ compute }, reader, answer] = await Promise.all(
    ["register.js", "typed.js", "answer.js"].map((name) => import(work + name)));
  const bench = await (await fetch("/assets/data/bench.json")).json();
  const tried = (answer) => {
    try { return answer(); } catch (error) {
      return { refused: error.message, slip: error.constructor.name !== "Refused" && error.stack };
    }
  };
  const found = {};
  for (const [id, questions] of Object.entries(asked)) {
    found[id] = questions.map((inputs) =>
      tried(() => compute(bench.formulas[id], inputs, bench.tables)));
  }
  const read = typed.map(([text, input]) =>
    tried(() => ({ value: reader.typed(text, input, bench) })));
  const shown = numbers.map((number) => answer.shownNumber(number));
  const ids = Object.keys(bench.formulas);
  return JSON.stringify({ found, read, shown, ids, tables: Object.keys(bench.tables) });
}"""

# The figures of each example as its page prints them, and as the browser answers it in a form.
EXAMPLES = """async (ids) => {
  const work = "/assets/js/work/";
  const [{ compute }, { typed }, { show }] = await Promise.all(
    ["register.js", "typed.js", "answer.js"].map((name) => import(work + name)));
  const bench = await (await fetch("/assets/data/bench.json")).json();
  const said = (row) => [...row.children].map((e) => e.textContent.trim()).join(" ");
  const both = async (id) => {
    const html = await (await fetch(`/work-it-out/${id}/`)).text();
    const page = new DOMParser().parseFromString(html, "text/html");
    for (const line of page.querySelectorAll("br")) line.replaceWith(" / ");
    const printed = [...page.querySelectorAll("#example tr.is-adopted")].map(said);
    const query = new URLSearchParams(page.querySelector(".work-open a").getAttribute("href"));
    const record = bench.formulas[id];
    const given = record.inputs.filter((input) => query.has(input.name));
    const inputs = given.map((input) => [input.name, typed(query.get(input.name), input, bench)]);
    const answer = compute(record, Object.fromEntries(inputs), bench.tables);
    const found = page.querySelector("#found");
    show(found, answer, record, bench);
    for (const name of found.querySelectorAll(".found-name + .found-name")) name.prepend(" / ");
    return [id, [printed, [...found.querySelectorAll(".found-row")].map(said)]];
  };
  return Object.fromEntries(await Promise.all(ids.map(both)));
}"""


@pytest.fixture(scope="module")
def tables(built: Path) -> dict[str, Any]:
    found: dict[str, Any] = json.loads((built / "assets/data/bench.json").read_text("utf-8"))
    return found["tables"]  # type: ignore[no-any-return]


@pytest.fixture(scope="module")
def asked(tables: dict[str, Any]) -> dict[str, list[dict[str, Any]]]:
    """What Python says to every question, computed from the very tables that the browser gets."""
    return vectors.all_of(tables)


@pytest.fixture(scope="module")
def answers(page: Visit, asked: dict[str, list[dict[str, Any]]], tables: Any) -> dict[str, Any]:
    """What the browser says to the same, all in one go."""
    page.page.goto("glossary/")
    questions = {
        "asked": {id: [q["inputs"] for q in found] for id, found in asked.items()},
        "typed": [[text, declared] for text, declared, _ in vectors.all_typed(tables)],
        "numbers": numbers(asked),
    }
    found: dict[str, Any] = json.loads(page.page.evaluate(ASK, json.dumps(questions)))
    return found


def numbers(asked: dict[str, list[dict[str, Any]]]) -> list[float]:
    """Every number that Python answered, and some at which rounding turns."""
    outputs = [v for found in asked.values() for q in found for v in q.get("outputs", {}).values()]
    turns = [0.5, 2.5, 0.125, 1.00005, 9999.49, 9999.5, 9999.6, 99999.5, 12345.5, 1e15, 1.5e-7]
    found = [v for v in outputs if isinstance(v, int | float) and not isinstance(v, bool)]
    return [*found, *turns, *(-turn for turn in turns), 0.0]


def same(one: Any, other: Any) -> bool:
    """Numbers within a part in a thousand million, everything else exactly."""
    if isinstance(one, bool) or isinstance(other, bool) or not isinstance(one, int | float):
        if isinstance(one, dict) and isinstance(other, dict):
            return list(one) == list(other) and all(same(one[k], other[k]) for k in one)
        if isinstance(one, list) and isinstance(other, list):
            return len(one) == len(other) and all(map(same, one, other))
        return type(one) is type(other) and one == other
    return isinstance(other, int | float) and math.isclose(
        one, other, rel_tol=MOST_OFF, abs_tol=1e-12
    )


@pytest.mark.parametrize("formula_id", register.FORMULAS)
def test_the_browser_answers_as_python_does(
    formula_id: str, asked: dict[str, list[dict[str, Any]]], answers: dict[str, Any]
) -> None:
    """Names and their order, numbers, units, texts, notes; and the sentence of each refusal."""
    questions, found = asked[formula_id], answers["found"][formula_id]
    assert len(questions) == len(found) > 2 * vectors.VALID
    said, refused = 0, 0
    for question, answer in zip(questions, found, strict=True):
        assert not answer.get("slip"), (question, answer)
        if "refused" in question:
            refused += 1
            assert answer.get("refused") == question["refused"], question
            continue
        said += 1
        assert "refused" not in answer, (question, answer)
        assert same(question["outputs"], answer["outputs"]), (question, answer)
        assert question["units"] == answer["units"], (question, answer)
        notes = [[note["id"], note["text"]] for note in answer["notes"]]
        assert question["notes"] == notes, (question, answer)
    assert said > vectors.VALID
    assert refused > 10
    print(f"{formula_id}: {said} answers, {refused} refusals")


def test_the_browser_reads_what_is_typed_as_python_does(
    tables: dict[str, Any], answers: dict[str, Any]
) -> None:
    asked = vectors.all_typed(tables)
    assert len(asked) == len(answers["read"]) > 300
    refused = 0
    for (text, declared, due), found in zip(asked, answers["read"], strict=True):
        assert not found.get("slip"), (text, declared, found)
        refused += "refused" in due
        assert same(due, {k: v for k, v in found.items() if k != "slip"}), (text, declared, found)
    assert refused > 50


def test_the_browser_prints_numbers_as_the_pages_do(
    asked: dict[str, list[dict[str, Any]]], answers: dict[str, Any]
) -> None:
    due = [formula_page.figure(number) for number in numbers(asked)]
    assert len(due) > 3000
    wrong = [(a, b) for a, b in zip(due, answers["shown"], strict=True) if a != b]
    assert wrong == []


def test_the_browser_has_every_formula_and_the_same_tables(
    answers: dict[str, Any], tables: dict[str, Any]
) -> None:
    assert answers["ids"] == list(register.FORMULAS)
    assert answers["tables"] == list(tables)
    needed = {name for formula in register.FORMULAS.values() for name in formula.tables}
    assert needed <= set(tables)


def opened(page: Visit, formula_id: str, query: str = "") -> Any:
    """The page of a formula with its form at work."""
    page.page.goto(f"work-it-out/{formula_id}/{query}", wait_until="domcontentloaded")
    page.page.locator("form.work").wait_for()
    return page.page


def figures(page: Any) -> list[str]:
    """The answer as it is read: `Off the area 84 %`."""
    rows: list[str] = page.locator("#found:not([hidden]) .found-row").all_inner_texts()
    return [" ".join(row.split()) for row in rows]


def test_a_form_answers_while_it_is_filled(page: Visit) -> None:
    found = opened(page, "reduction")
    assert not found.locator("#found").is_visible()
    found.locator("#in-from").fill("round 1.0")
    assert figures(found) == []
    found.locator("#in-to").fill("round 0.4")
    said = figures(found)
    assert said[:2] == ["Off the area 84 %", "Off the diameter 60 %"]
    assert found.url.endswith("/work-it-out/reduction/?from=round+1.0&to=round+0.4")
    command = 'temperbook compute reduction from="round 1.0" to="round 0.4"'
    assert found.locator(".found-command code").inner_text() == command
    assert found.evaluate(BEYOND) == []
    found.locator("#in-to").fill("round")
    assert figures(found) == [], "a number that no longer holds is still shown"


def test_the_form_can_be_hit_and_read(page: Visit) -> None:
    found = opened(page, "draw-margin", "?diameter=0.5&from=0.55&drawn=400&annealed=220")
    for field in found.locator("form.work :is(input, select, button), #found button").all():
        if not field.is_visible():
            continue
        place = field.bounding_box()
        assert place["height"] >= TAP, field.evaluate("(e) => e.outerHTML")
        size = field.evaluate("(e) => parseFloat(getComputedStyle(e).fontSize)")
        assert size >= 16, "a phone enlarges the page to type into smaller letters"
    assert found.locator("#in-diameter").get_attribute("inputmode") == "decimal"
    labels = found.locator("form.work :is(input, select)").evaluate_all(
        "(all) => all.map((e) => e.labels[0]?.textContent || e.ariaLabel || '')"
    )
    assert all(labels), "a field without a label"
    assert float(style(found, ".found-figure", "font-size").removesuffix("px")) >= 28
    assert box(found, "label[for=in-diameter]").bottom <= box(found, "#in-diameter").top + 1


def test_a_link_brings_its_numbers_along(page: Visit) -> None:
    found = opened(page, "mass", "?density=10&section=square+6&length=10cm")
    assert found.locator("#in-density").input_value() == "10"
    assert not found.locator("#in-alloy").is_visible()
    assert figures(found)[0] == "Mass 36 g"
    assert float(style(found, ".found-figure", "font-size").removesuffix("px")) >= 48
    assert found.locator("#found-link").input_value() == found.url


def test_the_link_can_be_copied(page: Visit) -> None:
    page.context.grant_permissions(["clipboard-read", "clipboard-write"])
    found = opened(page, "max-draft", "?roll-radius=250&friction=0.12")
    found.locator(".work-link").click()
    found.locator(".work-link", has_text="Copied").wait_for()
    assert found.evaluate("navigator.clipboard.readText()") == found.url
    assert figures(found) == ["Greatest draft 3.6 mm"]


def test_what_does_not_fit_is_refused_in_words(page: Visit) -> None:
    found = opened(page, "reduction", "?from=round+1.0&to=round+0.4")
    found.locator("#in-to").fill("oval 3")
    found.locator("#in-to").blur()
    alert = found.locator(".refused[role=alert]")
    said = "“oval 3” is no section; write “round 1.0”, “square 6” or “flat 20x1.5”."
    assert alert.inner_text() == said
    assert figures(found) == []
    found.locator("#in-to").fill("round 2")
    found.locator("#in-to").blur()
    assert alert.inner_text() == "“round 2.0” is larger than “round 1.0”; work takes away."
    found.locator("#in-to").fill("round 0.5")
    assert alert.inner_text() == ""
    assert figures(found)[0] == "Off the area 75 %"


def test_what_is_missing_is_named_when_asked_for(page: Visit) -> None:
    found = opened(page, "max-draft")
    found.locator("#in-friction").fill("0.12")
    assert found.locator(".refused").inner_text() == ""
    found.locator("button[type=submit]").click()
    assert found.locator(".refused").inner_text() == "Still needed: Radius of the rolls."
    found.locator("#in-friction").fill("")
    found.locator("#in-roll-radius").fill("abc")
    found.locator("#in-roll-radius").press("Enter")
    assert "roll-radius is a plain number" in found.locator(".refused").inner_text().lower()
    assert found.locator("[aria-invalid=true]").get_attribute("id") == "in-roll-radius"
    found.locator("#in-friction").fill("0.12")
    found.locator("#in-roll-radius").fill("250")
    found.locator("#in-roll-radius").press("Enter")
    assert found.locator("#found").evaluate("(e) => e === document.activeElement")
    found.locator("button[type=reset]").click()
    assert figures(found) == []
    assert found.url.endswith("/work-it-out/max-draft/")


def test_one_way_of_several_is_asked_for(page: Visit) -> None:
    found = opened(page, "mass")
    found.locator("[data-ways]").select_option(label="Density")
    found.locator("#in-density").fill("10")
    found.locator("#in-section").fill("square 6")
    found.locator("#in-length").fill("100")
    assert figures(found)[0] == "Mass 36 g"
    found.locator("[data-ways]").select_option(label="Alloy")
    assert figures(found) == []
    found.locator("#in-alloy").select_option(label="Sterling silver")
    assert figures(found)[0].startswith("Mass 37")
    assert "density" not in found.url


def test_units_and_gauges_are_chosen_beside_the_number(page: Visit) -> None:
    """A number of a gauge is no decimal; some telephones type a comma."""
    found = opened(page, "grains-across")
    found.locator("#in-diameter").fill("1")
    found.locator("[aria-label='Unit: Diameter']").select_option("in")
    found.locator("#in-grain-size").fill("0,0254")
    assert figures(found) == ["Grains across 1000"]
    assert "diameter=1in" in found.url
    found.locator("[aria-label='Unit: Diameter']").select_option("awg")
    found.locator("#in-diameter").fill("2/0")
    assert found.locator("#in-diameter").get_attribute("inputmode") == "text"
    assert len(figures(found)) == 1
    found.reload()
    found.locator("form.work").wait_for()
    assert found.locator("#in-diameter").input_value() == "2/0"
    found.locator("#in-grain-size").fill("1,125")
    found.locator("#in-grain-size").blur()
    assert "may mean two numbers" in found.locator(".refused").inner_text()


def test_each_example_is_answered_in_the_browser_as_its_page_prints_it(page: Visit) -> None:
    """The page's figures are Python's; here the browser's own stand beside them."""
    page.page.goto("glossary/")
    found = page.page.evaluate(EXAMPLES, list(register.FORMULAS))
    assert found.keys() == register.FORMULAS.keys()
    for formula_id, (printed, answered) in found.items():
        assert len(printed) >= 1, formula_id
        assert printed == answered, formula_id


@pytest.mark.parametrize("formula_id", ["draw-margin", "rolled-length", "heat-colour", "alloying"])
def test_an_example_opens_in_its_form(formula_id: str, page: Visit) -> None:
    found = opened(page, formula_id)
    printed = found.locator("#example tr.is-adopted").all_inner_texts()
    found.locator(".work-open a").click()
    found.locator("#found:not([hidden])").wait_for()
    assert figures(found) == [" ".join(row.split()) for row in printed]
    assert found.locator(".refused").inner_text() == ""
    assert found.locator("#found").evaluate("(e) => e.getBoundingClientRect().top < innerHeight")
    command = found.locator(".found-command code").inner_text()
    assert command.startswith(f"temperbook compute {formula_id} ")
    assert found.evaluate("document.scrollingElement.scrollWidth") <= 390
    assert found.evaluate(BEYOND) == []
    found.go_back()
    found.locator("#found").wait_for(state="hidden")


def test_a_sheet_of_paper_holds_the_answer_and_not_the_screen(page: Visit) -> None:
    found = opened(page, "mass", "?density=10&section=square+6&length=100")
    found.emulate_media(media="print")
    try:
        for selector in (".bar", ".sections", ".work-do", ".work-open", ".crumbs", ".scheme"):
            assert not found.locator(selector).first.is_visible(), selector
        for selector in ("h1", "#in-section", ".found-figures", ".found-notes", ".formula-text"):
            assert found.locator(selector).first.is_visible() or selector == ".found-notes"
        assert found.locator("#found-link").is_visible()
        assert figures(found)[0] == "Mass 36 g"
    finally:
        found.emulate_media(media="screen")


@pytest.mark.parametrize("query", ["?density=10&section=square+6&length=100", "?length=abc"])
@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_axe_finds_nothing_in_a_form_at_work(query: str, scheme: str, page: Visit) -> None:
    page.page.emulate_media(color_scheme=scheme)
    found = opened(page, "mass", query)
    at_work = found.locator("#found" if "density" in query else ".refused")
    at_work.wait_for()
    assert violations(found) == []
    page.page.emulate_media(color_scheme="light")


def test_the_forms_keep_to_themselves(page: Visit, site: str) -> None:
    opened(page, "heat-colour", "?temperature=900")
    assert page.page.locator(".found-swatch").is_visible()
    assert page.complaints() == []
    assert any(url.endswith("/assets/data/bench.json") for url in page.asked)
    assert all(url.startswith(site) for url in page.asked)


def test_without_script_the_page_says_so_and_shows_the_example(visit: Any) -> None:
    page = visit("work-it-out/reduction/", script=False).page
    assert page.locator(".work-without").is_visible()
    for selector in ("form.work", "#found", ".work-open"):
        assert not page.locator(selector).is_visible(), selector
    assert "75" in page.locator("#example tr.is-adopted").first.inner_text()
    assert page.locator("#example code").inner_text().startswith("temperbook compute reduction")
