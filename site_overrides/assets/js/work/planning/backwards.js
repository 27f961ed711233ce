// From a finished piece back to the ingot, its mould and the charge.
import { mass as massOf } from "../masses.js";
import { section } from "../sections.js";
import { data as planData, sectionOf } from "./data.js";
import { holdPlanned, impossible } from "./impossible.js";
import * as path from "./path.js";
import { make } from "./plan.js";
import { RESERVE } from "./runs.js";
import { stagesOf } from "./stages.js";
import { SOFT, lastRun, thicker } from "./tempering.js";

const MOST_ANNEALS = 3; // options that are shown: more is a habit, not a need

// request: its start is not read. mould: section to pour, or undefined for the one that needs so many anneals.
export function backwards(request, facts, bench, mould, anneals) {
  holdPlanned(facts);
  if (facts.melt !== "bench") impossible("not-melted", { alloy: facts.name, melt: facts.melt });
  const { scalp, loss } = bench.equipment;
  const options = optionsOf(request, facts, bench);
  const start = mould ? scaled(mould, 1 - scalp) : chosen(options, anneals).start;
  const plan = make({ ...request, start, state: "cast" }, facts, bench);
  if (plan.mass === undefined || plan.charge === undefined || facts.density === null) {
    impossible("no-density", { alloy: facts.name });
  }
  const cast = mould ?? scaled(start, 1 / (1 - scalp));
  const poured = plan.charge * (1 - loss);
  return { options, plan, mould: cast, pourLength: poured / massOf(facts.density, cast.area, 1), poured };
}

function chosen(options, anneals) {
  const found = options.find((option) => option.anneals === anneals);
  return found ?? impossible("no-such-option", { anneals, least: options[0]?.anneals ?? 0 });
}

function optionsOf(request, facts, bench) {
  const { end } = request;
  const ingot = end.shape === "flat" ? end : square(end);
  const process = request.process || path.processOf(ingot, end);
  const cast = { ...request, start: ingot, state: "cast" };
  const stages = stagesOf(cast, facts, process, bench.usual);
  const last = lastRun(cast, facts);
  const ceilings = [stages.first.limits.ceiling, stages.later.limits.ceiling];
  const options = [];
  for (let anneals = 0; anneals <= MOST_ANNEALS; anneals += 1) {
    const strain = reach(anneals, ceilings, request, last?.strain);
    if (strain !== undefined) options.push({ anneals, start: thicker(ingot, end, strain), strain });
  }
  return options;
}

// The most work [1] that so many anneals allow; undefined where they cannot give the temper.
function reach(anneals, [first, later], { temper }, last) {
  const closes = temper === SOFT || last !== undefined;
  if (closes && !anneals) return undefined;
  const before = (first + (anneals - (closes ? 1 : 0)) * later) * RESERVE;
  return temper === SOFT ? before : before + (last ?? 0);
}

function square({ area }) {
  const side = Math.sqrt(area);
  return section("square", side, side);
}

// A flat loses thickness in scalping, a square is taken off all around.
function scaled(of, share) {
  if (of.shape === "flat") return section("flat", of.width, of.thickness * share);
  const size = of.thickness * Math.sqrt(share);
  return section(of.shape, size, size);
}

// Key for key what `temperbook backward --json` prints.
export function data(found, gauges, texts) {
  const made = planData(found.plan, gauges, texts);
  return {
    alloy: made.alloy,
    name: made.name,
    end: made.end,
    mass_g: made.mass_g,
    options: found.options.map(({ anneals, start, strain }) => ({ anneals, start: sectionOf(start), true_strain: strain })),
    mould: sectionOf(found.mould),
    pour_length_mm: found.pourLength,
    ingot_g: found.poured,
    charge_g: made.charge_g,
    charge_by_element_g: made.charge_by_element_g,
    plan: made,
  };
}
