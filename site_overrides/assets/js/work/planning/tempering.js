// The last run of a plan: how much work gives the temper that is asked for.
import { highest, lowest } from "../alloys.js";
import * as hardening from "../hardening.js";
import { section } from "../sections.js";
import { impossible } from "./impossible.js";
import { DUST, strainOf } from "./runs.js";

export const SOFT = "soft";

const FORM = { flat: "sheet or strip", wire: "wire" };
const HARDNESS = /^(\d+(?:\.\d+)?)[- ]?(hv|hb)?$/;

export const stockOf = ({ shape }) => (shape === "flat" ? "flat" : "wire");

// The last run that is asked for: {strain, known}; undefined for none, or where an anneal closes the plan.
export function lastRun(request, facts) {
  if (request.last !== undefined) return { strain: strainOf(request.last) };
  if (["", SOFT].includes(request.temper)) return undefined;
  const stock = stockOf(request.end);
  const asked = HARDNESS.exec(request.temper);
  if (asked) return byHardness(Number(asked[1]), (asked[2] ?? "HV").toUpperCase(), request, facts);
  const steps = hardening.temperSteps(facts, stock);
  const step = steps.find(([temper]) => temper === request.temper);
  if (!step) unknown(request, facts, steps.map(([temper]) => temper));
  const known = step[1];
  const strains = [lowest(known), highest(known)].map((end) => hardening.strainOn(end, known.of, stock));
  if (strains.includes(undefined)) {
    impossible("temper-basis-not-stated", { temper: request.temper, alloy: facts.name });
  }
  return { strain: (strains[0] + strains[1]) / 2, known };
}

// The last run for a hardness, from the alloy's own table and never beyond its ends.
function byHardness(value, unit, { end }, facts) {
  const stock = stockOf(end);
  const curve = hardening.curve(facts, stock);
  const form = FORM[stock];
  if (!curve || curve.unit !== unit) impossible("no-hardness-table", { alloy: facts.name, form, unit });
  const strain = hardening.strainFor(curve, value);
  if (strain === undefined || strain <= DUST) {
    const [soft, hard] = [curve.points[0], curve.points.at(-1)].map(({ low, high }) => (low + high) / 2);
    impossible("hardness-not-in-table", { alloy: facts.name, form, hardness: value, unit, soft, hard });
  }
  return { strain, hardness: value };
}

function unknown({ temper, end }, facts, known) {
  const form = FORM[stockOf(end)];
  if (!hardening.TEMPERS.includes(temper)) {
    impossible("unknown-temper", { temper, words: [SOFT, ...hardening.TEMPERS].join(", ") });
  }
  if (known.length) impossible("temper-not-in-table", { temper, alloy: facts.name, form, known: known.join(", ") });
  impossible("no-temper-table", { alloy: facts.name, form });
}

const percent = (strain) => 100 * (1 - Math.exp(-strain));

// Refuses a last run that is over its ceiling, or larger than all the work there is.
export function holdReachable(last, request, total, stages) {
  const { ceiling } = stages.later.limits;
  if (last.strain > ceiling + DUST) {
    impossible("last-over-ceiling", { last: percent(last.strain), ceiling: percent(ceiling) });
  }
  const start = thicker(request.start, request.end, last.strain).text;
  if (last.strain > total + DUST) {
    impossible("too-thin-for-temper", { last: percent(last.strain), there: percent(total), start });
  }
  const claimed = (last.known || last.hardness !== undefined) && request.state === "cast";
  if (claimed && total - last.strain <= DUST) impossible("temper-from-cast", { start });
}

const sideOf = (shape, area) => Math.sqrt(shape === "round" ? (area * 4) / Math.PI : area);

// The start, in the start's own shape, from which the end is a work [1] away.
export function thicker(start, end, strain) {
  if (end.shape === "flat") {
    const size = end.thickness * Math.exp(strain);
    return section(start.shape, start.shape === "flat" ? start.width : size, size);
  }
  const area = end.area * Math.exp(strain);
  if (start.shape === "flat") return section("flat", start.width, area / start.width);
  const size = sideOf(start.shape, area);
  return section(start.shape, size, size);
}

// The end that is a work [1] away from a start, in the end's shape and width.
export function thinner(start, end, strain) {
  if (end.shape === "flat") return section("flat", end.width, start.thickness * Math.exp(-strain));
  const size = sideOf(end.shape, start.area * Math.exp(-strain));
  return section(end.shape, size, size);
}
