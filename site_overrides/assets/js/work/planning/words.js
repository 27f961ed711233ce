// Words of a plan: sizes as a bench writes them, workings, reductions, limits, the anneal between.
import { fixed } from "../texts.js";

const SPACE = "\u00a0";
const BASES = ["area", "thickness", "diameter"];
export const WORKING = { forge: "Forge", groove: "Roll in grooves", flat: "Roll flat", draw: "Draw" };
export const HOW = {
  given: "as you asked",
  practice: "common practice, no source",
  memory: "from memory, unverified",
  quoted: "published",
  converted: "published, converted",
  chosen: "published, chosen among readings",
  applied: "published for the system or family",
  computed: "computed",
};
const UNITS = { degC: "°C" };

const trimmed = (text) => (text.includes(".") ? text.replace(/\.?0+$/, "") : text);
export const number = (value, decimals) => trimmed(fixed(value, decimals));
export const percent = (value) => `${number(value, 0)}${SPACE}%`;

// `40 × 3.62 mm`, `5.50 mm square`, `0.80 mm round`.
export function section(of) {
  const size = fixed(sizeOf(of), 2);
  if (of.shape === "flat") return `${number(of.width_mm, 1)}${SPACE}×${SPACE}${size}${SPACE}mm`;
  return `${size}${SPACE}mm ${of.shape}`;
}

export const sizeOf = (of) => of.thickness_mm ?? of.diameter_mm ?? of.side_mm;

// `49 % of the area, 28 % of the side`.
export function reductions(found, end, before = "reduction_") {
  const named = (basis) => (basis === "thickness" && end.shape === "square" ? "side" : basis);
  const known = BASES.filter((basis) => `${before}${basis}_pct` in found);
  return known.map((basis) => `${percent(found[`${before}${basis}_pct`])} of the ${named(basis)}`).join(", ");
}

// `at most 50 % of the area (common practice, no source)`, and the least.
export function limits(run) {
  const said = [];
  for (const [name, label] of [["ceiling", "at most"], ["floor", "at least"]]) {
    if (run[`${name}_pct`] === null) continue;
    const basis = run[`${name}_basis`] === "not-stated" ? "; basis not stated, read in the safe way" : "";
    said.push(`${label} ${percent(run[`${name}_pct`])} of the area (${HOW[run[`${name}_how`]]}${basis})`);
  }
  return said.join("; ");
}

export function range({ low, high, unit }, decimals) {
  const [least, most] = [low, high].map((end) => (end === null ? null : number(end, decimals)));
  const text = least === null ? `at most ${most}` : most === null ? `at least ${least}` : least === most ? least : `${least}–${most}`;
  return `${text}${SPACE}${UNITS[unit] ?? unit}`;
}

// `90–100 HV after it, from the alloy's table`, or why it is not known.
export function hardness(run) {
  if (!run.hardness) return run.hardness_why ?? "";
  return `${range(run.hardness, 0)} after it, from the alloy’s table`;
}

// The anneal: its parts as [word, how it is known], the heat first.
export function anneal({ heating, heat, colour, time, avoid, quench_from: from, quench, pickle }) {
  const parts = [heat ? [`${range(heat, 0)}${heat.heat && heat.heat !== "any" ? `, ${heat.heat}` : ""}`, heat.how] : ["no published heat", ""]];
  if (colour) parts.push([lower(colour.text), colour.how]);
  if (time) parts.push([`hold ${range(time, 1)}`, time.how]);
  if (heating) parts.push([lower(heating.text), heating.how]);
  for (const [band, label] of [[avoid, "do not linger:"], [from, "quench from:"]]) if (band) parts.push([`${label} ${range(band, 0)}`, band.how]);
  for (const stated of [quench, pickle]) if (stated) parts.push([lower(stated.text), stated.how]);
  return parts;
}

const lower = (text) => text[0].toLowerCase() + text.slice(1);
export const anneals = (count) => (count === 0 ? "no anneal" : `${count}${SPACE}anneal${count > 1 ? "s" : ""}`);

export function passes({ passes: all, process }) {
  const word = process === "draw" ? ["draw", "draws"] : ["pass", "passes"];
  return `${all.length}${SPACE}${word[all.length === 1 ? 0 : 1]}`;
}
