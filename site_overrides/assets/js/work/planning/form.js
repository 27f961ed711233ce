// The pages of planning: what is typed becomes a plan, where one stands, or the way back to the ingot.
import { Form, start } from "../form.js";
import { refuse } from "../guards.js";
import { backward, plan, spoken, used } from "./answer.js";
import { impossible } from "./impossible.js";
import * as show from "./show.js";
import * as words from "./words.js";

const SHARES = ["last", "ceiling", "first-ceiling", "floor", "first-floor"];
const ABOVE_ZERO = ["length", "mass", "roll-diameter", "friction"];
const underscored = (name) => name.replaceAll("-", "_");

// Numbers that are given, held to what the command takes as well.
function held(inputs) {
  for (const name of [...SHARES, "per-pass"]) {
    if (name in inputs && !(inputs[name] > 0 && inputs[name] < 100)) refuse(`${name} lies above 0 and below 100 percent`);
  }
  for (const name of ABOVE_ZERO) if (name in inputs && !(inputs[name] > 0)) refuse(`${name} must be above zero`);
  for (const name of ["anneals", "anneals-more"]) {
    const number = inputs[name] ?? 0;
    if (!Number.isInteger(number) || number < 0) refuse(`${name} is a whole number, 0 or more`);
  }
  if (inputs.temper && "last" in inputs) impossible("temper-or-last");
  if ("length" in inputs && "mass" in inputs) impossible("mass-or-length");
}

function askedOf(inputs) {
  const asked = { alloy: inputs.alloy, temper: inputs.temper ?? "", process: inputs.process ?? "" };
  for (const name of SHARES) if (name in inputs) asked[underscored(name)] = inputs[name] / 100;
  for (const name of ["length", "mass"]) if (name in inputs) asked[name] = inputs[name];
  return asked;
}

function equipmentOf(inputs) {
  const found = {};
  for (const name of ["roll-diameter", "friction", "holes"]) if (name in inputs) found[underscored(name)] = inputs[name];
  if ("per-pass" in inputs) found.per_pass = inputs["per-pass"] / 100;
  return found;
}

const ANSWERS = {
  plan(inputs, data) {
    const asked = { ...askedOf(inputs), start: inputs.from, end: inputs.to, state: inputs.start ?? "annealed" };
    return plan({ ...asked, more: inputs["anneals-more"] ?? 0 }, equipmentOf(inputs), data);
  },
  used(inputs, data) {
    return used({ ...askedOf(inputs), start: inputs.from, end: inputs.now, state: inputs.start ?? "annealed" }, data);
  },
  backward(inputs, data) {
    if (!("length" in inputs || "mass" in inputs)) refuse("Give the length or the mass of the finished piece.");
    const asked = { ...askedOf(inputs), end: inputs.to, mould: inputs.mould, anneals: inputs.anneals ?? 1 };
    return backward(asked, equipmentOf(inputs), data);
  },
};

const HEADS = { plan: show.head, used: usedHead, backward: backwardHead };

function usedHead(where) {
  const [area, ...others] = words.reductions(where, where.now, "used_").split(", ");
  const used = show.figure("Used since the anneal", area.replace(" of the area", ""), ["of the area", ...others].join(", "));
  const left =
    where.next === "anneal"
      ? show.figure("Next", "Anneal now")
      : show.figure("Left, down to", words.section(where.until), `${words.percent(where.left_area_pct)} of the area that it has now`);
  if (where.not_before) left.lastChild.append(show.element("span", "found-name", `not worth an anneal before ${words.section(where.not_before)}`));
  return [used, left, worded("Limits", words.limits(where)), worded("The anneal", words.anneal(where.anneal).map(([text]) => text).join("; "))];
}

function worded(label, text) {
  const row = show.figure(label, "", text);
  row.lastChild.classList.add("is-words");
  return row;
}

function backwardHead(found) {
  const reach = found.options.map(({ anneals, start: from }) => `${words.anneals(anneals)}: from at most ${words.section(from)}`);
  return [
    show.figure("Mould", words.section(found.mould), `poured ${words.number(found.pour_length_mm, 1)}\u00a0mm long`),
    show.charge(found),
    show.figure("The ingot weighs", `${words.number(found.ingot_g, 2)}\u00a0g`),
    show.figure("How far anneals reach", "", ...reach),
  ];
}

class PlanForm extends Form {
  say(inputs, given) {
    const { questions, tables, bench, texts } = this.data;
    const question = this.record.id;
    const data = { alloys: tables.alloys, gauges: tables.gauges, bench, texts, questions };
    const answer = spoken(texts, () => (held(inputs), ANSWERS[question](inputs, data)));
    this.found.querySelector(".found-figures").replaceChildren(...HEADS[question](answer));
    const made = question === "backward" ? answer.plan : answer;
    show.fill(this.found, ".plan-runs", made.runs ? show.runs(made) : []);
    show.remarks(this.found, made, new URL(this.found.dataset.root, location.href));
    this.found.querySelector("code").textContent = commandOf(question, given);
    this.found.hidden = false;
    this.refuse("");
    return true;
  }
}

// The same as one types it in a terminal.
function commandOf(question, given) {
  const quoted = (value) => (/^[\w./,-]+$/.test(value) ? value : `"${value}"`);
  const options = Object.entries(given).map(([name, value]) => `--${name} ${quoted(value)}`);
  return ["temperbook", question, ...options].join(" ");
}

// On paper nothing can be unfolded: what a plan rests on is printed with it.
addEventListener("beforeprint", () => {
  for (const folded of document.querySelectorAll("#found details")) folded.open = true;
});

const form = document.querySelector("form[data-question]");
if (form) start(form, PlanForm);
