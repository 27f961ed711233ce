// A plan on the page: what is asked first in large figures, then run by run, then what must be known.
import { fixed } from "../texts.js";
import * as drawn from "./drawn.js";
import * as words from "./words.js";

export function element(tag, name, ...inside) {
  const made = document.createElement(tag);
  if (name) made.className = name;
  made.append(...inside);
  return made;
}

// A labelled figure, and under it what must be said of it.
export function figure(label, value, ...under) {
  const said = under.map((text) => element("span", "found-name", text));
  return element("div", "found-row", element("dt", "", label), element("dd", "found-figure", value, ...said));
}

// The figures at the head of a plan.
export function head(plan) {
  const rows = [
    figure("Anneals", String(plan.anneals)),
    figure("Off the area in all", words.percent(plan.total_reduction_area_pct)),
  ];
  if (plan.mass_g !== null) rows.push(figure("The finished piece weighs", `${words.number(plan.mass_g, 2)}\u00a0g`));
  if (plan.start.length_mm !== null) rows.push(figure("Length of the start", `${words.number(plan.start.length_mm, 1)}\u00a0mm`));
  if (plan.charge_g !== null) rows.push(charge(plan));
  return rows;
}

export function charge({ charge_g: whole, charge_by_element_g: parts }) {
  const each = Object.entries(parts).map(([element, grams]) => `${element} ${words.number(grams, 2)}\u00a0g`);
  return figure("Melt", `${words.number(whole, 2)}\u00a0g`, each.join(", "));
}

// The runs as a list; between them the anneals.
export function runs(plan) {
  const works = plan.runs.flatMap((run) => [run.true_strain, -Math.log(1 - (run.ceiling_pct ?? 0) / 100)]);
  const most = Math.max(...works.filter(Number.isFinite)) * 1.12;
  const largest = words.sizeOf(plan.runs[0].from);
  return plan.runs.map((run, place) => runItem(run, place + 1, most, largest));
}

function runItem(run, number, most, largest) {
  const item = element("li", "plan-run");
  const title = `${number}. ${words.WORKING[run.process]}: ${words.section(run.from)} to ${words.section(run.to)}`;
  item.append(element("h3", "", title), element("div", "plan-pictures", drawn.sections(run, largest), drawn.work(run, most)));
  item.append(element("p", "plan-taken", words.reductions(run, run.to)));
  for (const text of [words.limits(run), words.hardness(run)]) if (text) item.append(element("p", "plan-said", text));
  if (run.passes.length) item.append(passes(run));
  if (run.anneal) item.append(anneal(run.anneal));
  return item;
}

function passes(run) {
  const sizes = run.passes.map((pass) => element("li", "", fixed(words.sizeOf(pass.to), 2)));
  return element("div", "plan-passes", element("p", "", `${words.passes(run)}, to (mm):`), element("ol", "", ...sizes));
}

function anneal(parts) {
  const said = words.anneal(parts).map(([text, how]) => {
    const part = element("li", "", text);
    if (how) part.append(" ", element("span", "plan-how", `(${words.HOW[how]})`));
    return part;
  });
  return element("div", "plan-anneal", element("p", "", "Then anneal"), element("ul", "", ...said));
}

// Warnings, notes, cautions. `root`: the site's root, for the cautions' pages.
export function remarks(found, { warnings, notes, cautions }, root) {
  fill(found, ".plan-warnings", warnings.map(({ text }) => element("li", "", text)));
  fill(found, ".plan-notes", notes.map(({ text }) => element("li", "", text)));
  fill(found, ".plan-cautions", cautions.map((caution) => cautionItem(caution, root)));
}

function cautionItem({ id, signal, text }, root) {
  const link = element("a", "", text);
  link.href = new URL(`cautions/${id}/`, root).href;
  return element("li", "", element("strong", "", signal.toUpperCase()), " ", link);
}

export function fill(found, selector, children) {
  const place = found.querySelector(selector);
  place.replaceChildren(...children);
  const part = place.closest("[data-part]");
  if (part) part.hidden = !children.length;
}
