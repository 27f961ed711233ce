// The temper that cold work gives, from an alloy's own tables.
import * as alloys from "./alloys.js";
import { refuse } from "./guards.js";
import { at, curve, strainOn, temperSteps, temperStrain } from "./hardening.js";
import { fixed } from "./texts.js";

const SLACK = 1 + 1e-9; // dust of rounding at the end of a table

function temper(given, tables) {
  const facts = alloys.record(given, tables);
  const stock = given.form === "wire" ? "wire" : "flat";
  const strain = work(given, stock);
  const table = curve(facts, stock);
  const steps = stepsOf(facts, stock);
  if (!table && !steps.length) {
    refuse(`no table of hardness or temper over cold work of ${facts.name} as ${given.form} is known`);
  }
  holdWithin(strain, table, steps, facts.name);
  const found = table && at(table, strain);
  const outputs = found
    ? { hardness: (found.low + found.high) / 2, "hardness-low": found.low, "hardness-high": found.high }
    : {};
  const units = Object.fromEntries(Object.keys(outputs).map((name) => [name, found.unit]));
  const notes = found ? [between(table, strain, facts)] : [];
  if (steps.length && strain <= Math.max(...steps.map(([, least]) => least)) * SLACK) {
    Object.assign(outputs, named(strain, steps));
  }
  return { outputs, notes, units };
}

function work({ reduction, of }, stock) {
  if (stock === "flat" && of === "diameter") {
    refuse("sheet and strip have no diameter; give the reduction of thickness");
  }
  if (stock === "wire" && of === "thickness") {
    refuse("wire has no thickness; give the reduction of diameter or area");
  }
  return strainOn(reduction, of, stock) ?? refuse("reduction lies between 0 and 100 percent");
}

// Least work [1] of each temper, in order of hardness.
function stepsOf(facts, stock) {
  const steps = temperSteps(facts, stock).map(([name, known]) => [name, temperStrain(known, stock)]);
  return steps.filter(([, least]) => least !== undefined);
}

// Refuses work [1] beyond every table: nothing is extrapolated.
function holdWithin(strain, table, steps, name) {
  const end = Math.max(...(table ? [table.most] : []), ...steps.map(([, least]) => least));
  if (strain > end * SLACK) {
    const area = fixed(100 * (1 - Math.E ** -end), 1);
    refuse(`the table of ${name} ends at ${area} percent of the area; what more work gives is not known`);
  }
}

function between({ points, form }, strain, { name }) {
  const index = points.findIndex((point) => strain <= point.strain * SLACK);
  const [left, right] = [points[Math.max(0, index - 1)], points[index]];
  return ["between", { name, form: form || "stock", left: left.state, right: right.state }];
}

// The last temper that is reached and the next one.
function named(strain, steps) {
  const reached = steps.filter(([, least]) => strain >= least / SLACK).at(-1);
  const ahead = steps.find(([, least]) => strain < least / SLACK);
  const found = { temper: reached ? reached[0] : strain === 0 ? "annealed" : `below ${ahead[0]}` };
  return ahead ? { ...found, "next-temper": ahead[0] } : found;
}

export const RUNS = { temper };
