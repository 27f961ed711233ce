// Reads what is given to a formula, by the kind of each input, and refuses what does not fit.
import { parse as composition } from "./compositions.js";
import { refuse } from "./guards.js";
import { parse as section } from "./sections.js";
import { general, listed } from "./texts.js";

const PLAIN = /^[-+]?(?:\d+(?:\.\d*)?|\.\d+)$/;
const left = (value) => value === undefined || value === null;

// The inputs of a formula's record, read, with defaults filled in. Names first, then each in its order.
export function read(record, inputs, tables) {
  const here = Object.fromEntries(Object.entries(inputs).filter(([, value]) => !left(value)));
  holdNames(record, here);
  const given = {};
  for (const input of record.inputs) {
    const value = here[input.name] ?? input.default;
    if (!left(value)) given[input.name] = readOne(value, input, tables);
  }
  return given;
}

// One input by its kind.
export const readOne = (value, input, tables) => READERS[input.kind](value, input, tables);

const READERS = {
  alloy: (value, _, tables) => alloy(String(value), tables),
  section: (value) => section(String(value)),
  composition: (value) => composition(typeof value === "object" ? value : String(value)),
  choice,
  number: (value, { name }) => number(name, value),
  list: (value, { name }) => sizes(name, value),
  flag: (value, { name }) => flag(name, value),
  name: (value, { name }) => (typeof value === "string" ? value.trim() : general(number(name, value))),
};

// A number given as such or as text.
export function number(name, value) {
  if (typeof value === "string") {
    if (!PLAIN.test(value.trim())) refuse(`${name} is a plain number such as 1.5, not \`${value}\``);
    return number(name, Number(value));
  }
  if (typeof value !== "number" || !Number.isFinite(value)) refuse(`${name} is a plain finite number`);
  return value;
}

// The id of an alloy of the tables.
export function alloy(value, tables) {
  if (!Object.hasOwn(tables.alloys ?? {}, value)) refuse(`\`${value}\` is not the name of one alloy`);
  return value;
}

function choice(value, { name, choices }) {
  if (!choices.includes(value)) refuse(`${name} is ${listed(choices)}, not \`${value}\``);
  return value;
}

function sizes(name, value) {
  const parts = typeof value === "string" ? value.split(",").filter((part) => part.trim()) : [value].flat();
  try {
    return parts.map((part) => number(name, part));
  } catch {
    const said = typeof value === "string" ? value : parts.join(", ");
    return refuse(`${name} are sizes with commas between them, not \`${said}\``);
  }
}

function flag(name, value) {
  if (typeof value === "boolean") return value;
  if (value !== "true" && value !== "false") refuse(`${name} is true or false, not \`${value}\``);
  return value === "true";
}

// Holds that the names given are those that the formula takes.
function holdNames(record, here) {
  const missing = needed(record).filter((name) => !Object.hasOwn(here, name));
  const due = record.groups.filter((group) => !kept(group, here));
  const unknown = Object.keys(here).filter((name) => !record.inputs.some((input) => input.name === name));
  if (!missing.length && !due.length && !unknown.length) return;
  const wrong = [
    ["missing", missing],
    ["needed", due.map(oneOf)],
    ["unknown", unknown],
  ];
  const said = wrong.filter(([, names]) => names.length).map(([word, names]) => `; ${word}: ${names.join(", ")}`);
  refuse(`\`${record.id}\` takes ${usage(record)}${said.join("")}`);
}

// Whether an input may be left out.
const open = (input) => input.optional || !left(input.default);
const grouped = (record) => new Set(record.groups.flat(2));

// The inputs that are always needed.
export function needed(record) {
  const inGroup = grouped(record);
  return record.inputs.filter((input) => !open(input) && !inGroup.has(input.name)).map((input) => input.name);
}

// `section, length, one of (alloy | density), [thickness]`: what a formula takes.
function usage(record) {
  const inGroup = grouped(record);
  const may = record.inputs.filter((input) => open(input) && !inGroup.has(input.name));
  return [...needed(record), ...record.groups.map(oneOf), ...may.map((input) => `[${input.name}]`)].join(", ");
}

const oneOf = (group) => `one of (${group.map((alternative) => alternative.join(" and ")).join(" | ")})`;

// Whether exactly the inputs of one alternative are here.
function kept(group, here) {
  const named = [...new Set(group.flat())].filter((name) => Object.hasOwn(here, name));
  return group.some((alternative) => alternative.length === named.length && alternative.every((name) => named.includes(name)));
}
