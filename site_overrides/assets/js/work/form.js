// A formula's page: reads the form, answers, keeps the inputs in the address. Without script the page is whole
// but for the form.
import { addressWith, inputsOf } from "./address.js";
import { command, show } from "./answer.js";
import { Fields } from "./fields.js";
import { readOne } from "./given.js";
import { Refused } from "./guards.js";
import { compute } from "./register.js";
import { typed } from "./typed.js";

const PAUSE = 900; // ms without a key before a refusal is said

async function bench() {
  const answer = await fetch(new URL("../../data/bench.json", import.meta.url));
  if (!answer.ok) throw new Error(`bench.json: ${answer.status}`);
  return answer.json();
}

export class Form {
  constructor(form, data) {
    this.data = data;
    this.record = data.formulas[form.dataset.formula] ?? data.questions[form.dataset.question];
    this.fields = new Fields(form, data);
    this.refused = form.querySelector(".refused");
    this.found = document.getElementById("found");
    this.link = document.getElementById("found-link");
    form.addEventListener("input", () => this.answer());
    form.addEventListener("change", () => this.answer({ aloud: true }));
    form.addEventListener("reset", (event) => (event.preventDefault(), this.fill({})));
    form.addEventListener("submit", (event) => (event.preventDefault(), this.asked()));
    addEventListener("popstate", () => this.open());
    this.found.querySelector(".work-print").addEventListener("click", () => print());
    this.found.querySelector(".work-link").addEventListener("click", (event) => this.copy(event.target));
    form.hidden = false;
  }

  // Fills the form from the address and answers.
  open() {
    this.fields.fill(inputsOf(location.href, this.fields.names));
    this.answer({ aloud: true });
  }

  // The same for a link of this page: the answer comes into sight, and back leads to what was before.
  show(address) {
    history.pushState(null, "", address);
    this.open();
    this.asked();
  }

  fill(inputs) {
    this.fields.fill(inputs);
    this.answer();
  }

  // The button: an answer is brought into sight, and what is missing is said.
  asked() {
    if (!this.answer({ aloud: true, complete: true })) return;
    this.found.focus({ preventScroll: true });
    this.found.scrollIntoView({ block: "nearest" });
  }

  // Answers what is typed. A number that no longer holds is taken away at once; a refusal waits for a pause.
  answer({ aloud = false, complete = false } = {}) {
    clearTimeout(this.waiting);
    let refusal = "";
    try {
      const given = this.fields.typed();
      this.keep(given);
      const inputs = this.read(given);
      const wanting = this.fields.wanting();
      if (!wanting.length) return this.say(inputs, given);
      refusal = complete ? `Still needed: ${wanting.join(", ")}.` : "";
    } catch (error) {
      if (!(error instanceof Refused)) throw error;
      refusal = error.message;
    }
    this.found.hidden = true;
    if (aloud || !refusal) this.refuse(refusal);
    else this.waiting = setTimeout(() => this.refuse(refusal), PAUSE);
    return false;
  }

  // What is given, in its units. Each is tried by itself, so that a slip shows before the rest is filled in.
  read(given) {
    const inputs = {};
    for (const input of this.record.inputs.filter(({ name }) => given[name])) {
      inputs[input.name] = typed(given[input.name], input, this.data);
      readOne(inputs[input.name], input, this.data.tables);
    }
    return inputs;
  }

  say(inputs, given) {
    show(this.found, compute(this.record, inputs, this.data.tables), this.record, this.data);
    this.found.querySelector("code").textContent = command(this.record.id, given);
    this.found.hidden = false;
    this.refuse("");
    return true;
  }

  refuse(sentence) {
    const said = spoken(sentence);
    if (this.refused.textContent !== said) this.refused.textContent = said;
    this.fields.mark(sentence);
  }

  keep(given) {
    const address = addressWith(location.href, given);
    this.link.value = address;
    try {
      if (address !== location.href) history.replaceState(null, "", address);
    } catch {
      // a browser that counts the changes of an address refuses for a while; the link above holds them
    }
  }

  async copy(button) {
    const word = (button.dataset.word ??= button.textContent);
    try {
      await navigator.clipboard.writeText(this.link.value);
      button.textContent = "Copied";
    } catch {
      this.link.select(); // the browser refuses: the reader copies the marked link
      button.textContent = "Copy it from below";
    }
    setTimeout(() => (button.textContent = word), 2000);
  }
}

// A refusal as a sentence on the page: what a terminal sets between backticks stands in quotation marks.
function spoken(sentence) {
  if (!sentence) return "";
  const quoted = sentence.replace(/`([^`]*)`/g, "“$1”");
  return `${quoted[0].toUpperCase()}${quoted.slice(1)}${quoted.endsWith(".") ? "" : "."}`;
}

// A form of a kind at work, once its tables are here; without them the page says so.
export async function start(form, Kind) {
  const without = document.querySelector(".work-without");
  try {
    const work = new Kind(form, await bench());
    work.open();
    without.remove();
    for (const place of document.querySelectorAll(".work-open")) {
      place.hidden = false;
      place.querySelector("a").addEventListener("click", (event) => (event.preventDefault(), work.show(event.target.href)));
    }
  } catch (error) {
    without.textContent = "The tables that the form computes from cannot be read here. The formula and the example below need none.";
    throw error;
  }
}

const form = document.querySelector("form[data-formula]");
if (form) start(form, Form);
