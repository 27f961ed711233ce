// An answer on the page: each output as a figure with its unit, then what is said beside it.
import { fixed, general } from "./texts.js";

const [DIGITS, MOST] = [4, 15]; // of a number; digits before its point that are still read
const MANY = 5; // figures from which they are smaller
const WORDS = ["text", "flag", "names"]; // units of what is no number

// A number as the handbook's pages print it: four digits, whole from ten thousand on.
export function shownNumber(value) {
  const size = Math.abs(value);
  if (size >= 10 ** DIGITS - 0.5 && size < 10 ** MOST) return fixed(value, 0).replace(/\B(?=(\d{3})+$)/g, ",");
  return power(general(value, DIGITS));
}

// `1.2×10^-9` for `1.2e-09`.
function power(text) {
  const [number, exponent] = text.split("e");
  if (exponent === undefined) return number;
  return `${number}×10^${Number(exponent)}`;
}

export function show(found, { outputs, units, notes }, record, data) {
  const names = [...record.first.filter((name) => name in outputs), ...Object.keys(outputs)];
  const rows = [...new Set(names)].map((name) =>
    row(labelOf(name, record, data), outputs[name], data.units[units[name]] ?? units[name]),
  );
  const figures = found.querySelector(".found-figures");
  figures.classList.toggle("is-many", rows.length > MANY);
  figures.replaceChildren(...rows);
  found.querySelector(".found-notes").replaceChildren(...notes.map(({ text }) => element("li", "", text)));
}

// The formula as one types it in a terminal.
export function command(id, given) {
  const words = Object.entries(given).map(([name, value]) => `${name}=${/^[\w./-]+$/.test(value) ? value : `"${value}"`}`);
  return ["temperbook compute", id, ...words].join(" ");
}

function labelOf(name, record, data) {
  const words = name.replaceAll("-", " ");
  return record.labels[name] ?? data.elements[name] ?? words[0].toUpperCase() + words.slice(1);
}

function row(label, value, unit) {
  const made = element("div", "found-row");
  const figure = element("dd", typeof value === "number" ? "found-figure" : "found-figure is-words");
  figure.append(...said(value));
  if (unit && !WORDS.includes(unit)) figure.append(element("span", "unit", `\u00a0${unit}`));
  made.append(element("dt", "", label), figure);
  return made;
}

// A value in pieces: a number, yes or no, several numbers, what each observer says, a colour with its sample.
function said(value) {
  if (typeof value === "number") return [shownNumber(value)];
  if (typeof value === "boolean") return [value ? "yes" : "no"];
  if (Array.isArray(value)) return [value.map(shownNumber).join(", ")];
  if (typeof value === "object") {
    return Object.entries(value).map(([observer, name]) => element("span", "found-name", `${observer}: ${name}`));
  }
  return /^#[0-9a-f]{6}$/.test(value) ? [swatch(value), value] : [value];
}

function swatch(colour) {
  const made = element("span", "found-swatch");
  made.style.backgroundColor = colour;
  return made;
}

function element(tag, name, text = "") {
  const made = document.createElement(tag);
  if (name) made.className = name;
  made.textContent = text;
  return made;
}
