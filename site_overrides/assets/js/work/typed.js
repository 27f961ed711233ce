// What people type: a number, a number with its unit or gauge, a section, or a word.
import { size as gaugeSize } from "./gauges.js";
import { refuse } from "./guards.js";
import { fixed } from "./texts.js";

const NUMBER = /^([-+]?(?:\d+(?:\.\d*)?|\.\d+))[ \t\n\r\f\v]*([A-Za-z/0-9%]*)$/;
const GAUGE = /^(\d+(?:\/0)?)[ \t\n\r\f\v]*(awg|swg|bwg)$/i;
const SECTION = /^(round|square|flat)[ \t\n\r\f\v]+(.+)$/;
const TEMPERATURES = ["degC", "degF", "K"];

// A typed input by its kind, numbers in its unit; text where it is none of them. `bench`: units and tables.
export function typed(text, { kind, unit }, bench) {
  if (kind === "number") return value(text, unit, bench);
  if (kind === "section") return section(text, bench);
  if (kind !== "list") return text;
  const parts = text.split(",").filter((part) => part.trim());
  const read = parts.map((part) => value(part, unit, bench));
  return read.some((part) => typeof part === "string") ? text : read;
}

// A typed number in a unit; text where it is no number.
export function value(text, unit, bench) {
  const gauge = GAUGE.exec(text.trim());
  const no = () => refuse(`\`${text}\` is no ${unit || "plain number"}`);
  if (gauge) {
    if (!scaleOf("mm", unit, bench)) no();
    return convert(ofGauge(gauge[1], gauge[2].toLowerCase(), bench), "mm", unit, bench);
  }
  const match = NUMBER.exec(text.trim());
  if (!match) return text;
  const [number, written] = [Number(match[1]), match[2]];
  if (!written || (written === "%" && unit.startsWith("percent"))) return number;
  if (["deg", "degrees"].includes(written) && unit === "degrees") return number;
  if (!bench.written.includes(written)) {
    refuse(`\`${text}\` has an unknown unit; one of ${bench.written.join(", ")}`);
  }
  if (!unit || !sameKind(written, unit, bench)) no();
  return convert(number, written, unit, bench);
}

// A typed section with its sizes in millimetres; a unit behind the last size of a flat holds for both.
export function section(text, bench) {
  const match = SECTION.exec(text.trim());
  if (!match) return text;
  const sizes = match[2].replaceAll("×", "x");
  const parts = match[1] === "flat" ? sizes.split("x").map((part) => part.trim()) : [sizes.trim()];
  if (parts.length === 2) {
    const [first, last] = parts.map((part) => NUMBER.exec(part));
    if (first && last && !first[2] && !GAUGE.test(parts[1])) parts[0] += last[2];
  }
  const read = parts.map((part) => value(part, "mm", bench));
  if (read.some((part) => typeof part === "string")) return text;
  return `${match[1]} ${read.map((part) => fixed(part, 9).replace(/\.?0+$/, "")).join("x")}`;
}

function ofGauge(number, system, { tables }) {
  const table = tables.gauges[system] ?? {};
  if (!Object.keys(table).length) refuse(`the records have no table of ${system}`);
  return gaugeSize(number, table);
}

const scaleOf = (unit, other, { scales }) => scales.find((scale) => Object.hasOwn(scale, unit) && Object.hasOwn(scale, other));

const sameKind = (unit, other, bench) =>
  unit === other || scaleOf(unit, other, bench) || [unit, other].every((each) => TEMPERATURES.includes(each));

function convert(number, unit, to, bench) {
  if (unit === to) return number;
  const scale = scaleOf(unit, to, bench);
  return scale ? (number * scale[unit]) / scale[to] : fromCelsius(celsius(number, unit), to);
}

function celsius(number, unit) {
  if (unit === "degF") return (number - 32) / 1.8;
  return unit === "K" ? number - 273.15 : number;
}

function fromCelsius(number, unit) {
  if (unit === "degF") return number * 1.8 + 32;
  return unit === "K" ? number + 273.15 : number;
}
