// The fields of a form: what is typed in them, as text by name of input, and the other way.
import { refuse } from "./guards.js";

// A number with a comma, as some telephones type it. `1,125` could be either, so it is asked again.
const COMMA = /^([-+]?\d+),(\d+)$/;

export class Fields {
  constructor(form, data) {
    for (const select of form.querySelectorAll("[data-alloys]")) offerAlloys(select, data);
    for (const select of form.querySelectorAll("[data-units]")) offerUnits(select, data);
    this.fields = [...form.querySelectorAll("[data-input]")];
    this.ways = [...form.querySelectorAll("[data-ways]")];
    for (const way of this.ways) way.addEventListener("change", () => this.showWay(way));
    for (const field of this.fields) unitOf(field)?.addEventListener("change", () => keyboard(field));
  }

  get names() {
    return this.fields.map((field) => field.dataset.input);
  }

  // What is given, as it would be typed at a key; what is left empty is not there.
  typed() {
    const given = {};
    for (const field of this.fields.filter((field) => !field.closest("[hidden]"))) {
      const text = written(field);
      if (text) given[field.dataset.input] = text;
    }
    return given;
  }

  // Labels of the fields that have to be filled and are not.
  wanting() {
    const empty = (field) => !field.closest("[hidden]") && !field.closest("[data-may]") && !written(field);
    return this.fields.filter(empty).map((field) => field.labels[0].textContent.trim());
  }

  // Fills the form with inputs as they are typed, and shows the way of each group that they name.
  fill(inputs) {
    for (const field of this.fields) write(field, inputs[field.dataset.input] ?? "");
    for (const way of this.ways) {
      const named = [...way.options].filter((option) => option.dataset.names.split(" ").every((name) => inputs[name]));
      const most = named.sort((a, b) => b.dataset.names.split(" ").length - a.dataset.names.split(" ").length)[0];
      if (most) way.value = most.value;
      this.showWay(way);
    }
  }

  showWay(way) {
    const names = way.selectedOptions[0].dataset.names.split(" ");
    for (const part of way.closest("fieldset").querySelectorAll(".field[data-in-way]")) {
      part.hidden = !names.includes(part.dataset.inWay);
    }
  }

  // Marks the field that a sentence begins with, and no other.
  mark(sentence) {
    for (const field of this.fields) {
      const wrong = sentence?.startsWith(`${field.dataset.input} `);
      if (wrong) field.setAttribute("aria-invalid", "true");
      else field.removeAttribute("aria-invalid");
    }
  }
}

// Alloys by family.
function offerAlloys(select, { families, tables }) {
  for (const [label, ids] of families) {
    const group = document.createElement("optgroup");
    group.label = label;
    group.append(...ids.map((id) => new Option(tables.alloys[id].name, id)));
    select.append(group);
  }
}

// Units that may stand for a field's own, which is the first.
function offerUnits(select, { units }) {
  const written = select.dataset.units.split(" ");
  select.dataset.own = written[0];
  select.append(...written.map((unit) => new Option(units[unit] ?? unit, unit)));
}

const unitOf = (field) => field.closest(".field").querySelector("select.field-unit");

function written(field) {
  if (field.type === "checkbox") return field.checked ? "true" : "";
  const text = field.value.trim();
  const unit = unitOf(field);
  if (!unit) return field.inputMode === "decimal" ? pointed(text) : text;
  const own = !text || /[A-Za-z]/.test(text) || unit.value === unit.dataset.own;
  return pointed(text) + (own ? "" : unit.value);
}

function pointed(text) {
  const [, whole, part] = COMMA.exec(text) ?? [];
  if (whole === undefined) return text;
  if (part.length === 3 && Number(whole) !== 0) {
    refuse(`\`${text}\` may mean two numbers; write \`${whole},${part}0\` or \`${whole}${part}\``);
  }
  return `${whole}.${part}`;
}

function write(field, value) {
  if (field.type === "checkbox") {
    field.checked = value === "true";
    return;
  }
  const unit = unitOf(field);
  const known = unit && [...unit.options].map((option) => option.value);
  const match = unit && /^([-+\d./]+)\s*([A-Za-z][A-Za-z/0-9]*)$/.exec(value);
  if (match && known.includes(match[2])) {
    [field.value, unit.value] = [match[1], match[2]];
  } else {
    field.value = value;
    if (unit) unit.value = unit.dataset.own;
  }
  if (unit) keyboard(field);
}

// Numbers of a gauge are no decimals: 2/0.
function keyboard(field) {
  field.inputMode = /wg$/.test(unitOf(field).value) ? "text" : "decimal";
}
