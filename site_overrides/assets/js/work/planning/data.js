// A working plan as plain data, key for key what `temperbook plan --json` prints. texts: templates of bench.json.
import { beyond, nearest as nearestNumber } from "../gauges.js";
import * as hardening from "../hardening.js";
import { fill } from "../texts.js";
import * as path from "./path.js";

export const said = (found, templates) => found.map(([id, values]) => ({ id, text: fill(templates[id], values ?? {}) }));

export function data(plan, gauges, texts) {
  const { request, facts } = plan;
  return {
    alloy: facts.id,
    name: facts.name,
    start: { ...sectionOf(request.start), state: request.state, length_mm: lengthOf(plan, request.start) },
    end: { ...sectionOf(request.end), length_mm: lengthOf(plan, request.end) },
    process: plan.process,
    total_reduction_area_pct: path.areaReduction(request.start, request.end),
    true_strain: plan.strain,
    anneals: plan.anneals,
    temper: request.temper || null,
    runs: plan.runs.map((run) => runData(plan, run, gauges, texts)),
    mass_g: plan.mass ?? null,
    charge_g: plan.charge ?? null,
    charge_by_element_g: plan.parts,
    width_estimate_mm: plan.width ?? null,
    notes: said(plan.notes, texts.notes),
    warnings: said(plan.warnings, texts.warnings),
    cautions: facts.cautions.map(([id, signal, text]) => ({ id, signal, text })),
  };
}

export function sectionOf(of) {
  const sizes = {
    round: { diameter_mm: of.thickness },
    square: { side_mm: of.thickness },
    flat: { width_mm: of.width, thickness_mm: of.thickness },
  };
  return { shape: of.shape, text: of.text, area_mm2: of.area, ...sizes[of.shape] };
}

function lengthOf({ request, mass, facts }, of) {
  if (request.length !== undefined) return (request.length * request.end.area) / of.area;
  if (mass !== undefined && facts.density) return (mass / facts.density / of.area) * 1000;
  return null;
}

function runData(plan, run, gauges, texts) {
  return {
    from: sectionOf(run.start),
    to: sectionOf(run.end),
    process: run.process,
    ...reductions(run.start, run.end),
    true_strain: run.strain,
    ...bound("ceiling", run.ceiling),
    ...bound("floor", run.floor),
    then: run.then,
    anneal: run.then === "anneal" ? anneal(plan.facts) : null,
    hardness: hardness(run.hardness),
    hardness_why: run.hardnessWhy ? texts.hardness_why[run.hardnessWhy] : null,
    passes: run.passes.map((_, place) => passData(plan, run, place, gauges)),
  };
}

export function reductions(before, after) {
  const found = { reduction_area_pct: path.areaReduction(before, after) };
  const linear = path.linearReduction(before, after);
  if (linear) found[`reduction_${linear[0]}_pct`] = linear[1];
  return found;
}

export function bound(name, limit) {
  if (!limit) return { [`${name}_pct`]: null, [`${name}_basis`]: null, [`${name}_how`]: null };
  return {
    [`${name}_pct`]: limit.area,
    [`${name}_basis`]: limit.of,
    [`${name}_how`]: limit.how,
    [`${name}_stated_pct`]: limit.percent,
    [`${name}_from`]: limit.sources,
  };
}

function passData(plan, run, place, gauges) {
  const pass = run.passes[place];
  const before = place ? run.passes[place - 1].section : run.start;
  const since = Object.entries(reductions(run.start, pass.section));
  const soft = plan.curve && ["", "beyond-table"].includes(run.hardnessWhy);
  return {
    number: place + 1,
    to: sectionOf(pass.section),
    ...reductions(before, pass.section),
    ...Object.fromEntries(since.map(([key, value]) => [key.replace("reduction_", "since_anneal_"), value])),
    length_ratio: before.area / pass.section.area,
    length_mm: lengthOf(plan, pass.section),
    gauges: nearest(pass.section.thickness, gauges),
    hardness: hardness(soft ? hardening.at(plan.curve, pass.strain) : undefined),
  };
}

function nearest(millimetres, gauges) {
  const reaching = Object.entries(gauges).filter(([, table]) => Object.keys(table).length && !beyond(millimetres, table));
  const numbered = reaching.map(([gauge, table]) => [gauge, table, nearestNumber(millimetres, table)]);
  return Object.fromEntries(
    numbered.map(([gauge, table, number]) => [gauge, { number, difference_mm: millimetres - table[number] }]),
  );
}

export function hardness(found) {
  if (!found) return null;
  const from = [...new Set(found.between.flatMap((known) => known.sources))];
  return { low: found.low, high: found.high, unit: found.unit, how: "computed", from };
}

export function anneal(facts) {
  const heat = facts.figures.anneal?.[0];
  const time = heat && (facts.figures["anneal-time"] ?? []).find((each) => [heat.heat, "any"].includes(each.heat));
  return {
    heating: stated(facts.heating),
    heat: known(heat),
    colour: facts.glow ? { text: facts.glow, how: "computed", from: [] } : null,
    time: known(time),
    avoid: known(facts.figures["no-dwell"]?.[0]),
    quench_from: known(facts.figures["quench-from"]?.[0]),
    quench: stated(facts.quench),
    pickle: stated(facts.pickle),
  };
}

function known(of) {
  if (!of) return null;
  return { low: of.low, high: of.high, unit: of.unit, heat: of.heat || null, how: of.how, from: of.sources };
}

function stated(of) {
  return of ? { rule: of.rule, text: of.text, how: of.how, from: of.sources } : null;
}
