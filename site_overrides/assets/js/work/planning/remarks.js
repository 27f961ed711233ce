// What a plan must say of itself: warnings for the bench, and notes on how it was reckoned. Each is [id, values].
import { highest, lowest } from "../alloys.js";
import { deltaFactor } from "../drawing.js";
import { splitsEnds } from "../rolling.js";
import { section } from "../sections.js";
import { bitten } from "./passes.js";
import * as path from "./path.js";
import { DUST } from "./runs.js";
import { SOFT, thicker, thinner } from "./tempering.js";

const HALF_ANGLE = 6; // degrees: the sharp end of what dies have, so that the note errs to silence
const TRIMMED = 1.02; // a width beyond this share of the end's is worth a trim
const areaOf = (run) => path.areaReduction(run.start, run.end);
const sum = (numbers) => numbers.reduce((all, number) => all + number, 0);

export function warnings(plan, stages, bench) {
  const found = plan.runs.some((run) => run.underFloor) ? floors(plan, stages) : [];
  plan.runs.forEach((run, place) => found.push(...ofRun(run, place + 1, plan, bench)));
  const { last, state } = plan.request;
  if (last !== undefined && state === "cast" && plan.runs.length === 1) found.push(["last-from-cast"]);
  if (!plan.facts.figures.anneal?.length && plan.anneals) {
    found.push(["no-anneal-published", { alloy: plan.facts.name }]);
  }
  return found;
}

function ofRun(run, number, plan, bench) {
  const found = [];
  const percent = areaOf(run);
  if (run.withoutReserve) found.push(["no-reserve", { run: number, percent }]);
  if (run.then !== "anneal") return found;
  if (!run.floor && percent < bench.critical) {
    found.push(["little-work", { run: number, percent, critical: bench.critical }]);
  }
  const thin = run.end.shape === "round" && run.end.thickness < bench.thick_wire - DUST;
  if (plan.process === "draw" && thin) {
    found.push(["fine-wire-anneal", { run: number, diameter: run.end.thickness, thick: bench.thick_wire }]);
  }
  return found;
}

function floors(plan, stages) {
  const found = plan.runs.flatMap((run, place) =>
    run.underFloor ? [["under-floor", { run: place + 1, percent: areaOf(run), floor: run.floor.area }]] : [],
  );
  const over = [stages.first, stages.later].find(
    ({ ceiling, floor }) => floor && ceiling && floor.strain > ceiling.strain + DUST,
  );
  if (over) found.push(["floor-over-ceiling", { floor: over.floor.area, ceiling: over.ceiling.area }]);
  else if (!plan.request.more) found.push(...nearest(plan, stages));
  return found;
}

// The nearest start and end for which every run before an anneal reaches its floor.
function nearest(plan, stages) {
  const { start, end } = plan.request;
  const bound = plan.runs.filter((run) => run.then === "anneal");
  const free = plan.strain - sum(bound.map((run) => run.strain));
  const rest = plan.strain - free;
  const limit = (end_) => bound.map((_, place) => (place ? stages.later : stages.first).limits[end_]);
  const more = sum(limit("floor"));
  const fewer = sum(limit("ceiling").slice(0, -1));
  const least = sum(limit("floor").slice(0, -1));
  const fitting = [more, fewer].filter((w) => w >= least - DUST && (w > DUST || bound.length === 1));
  if (!fitting.length) return [];
  const wanted = fitting.sort((a, b) => Math.abs(a - rest) - Math.abs(b - rest) || a - b)[0] + free;
  if (wanted <= DUST) return [];
  return [["nearest-sizes", { start: thicker(start, end, wanted).text, end: thinner(start, end, wanted).text }]];
}

export function notes(plan, stages, bench) {
  const { request } = plan;
  const { later, first } = stages;
  const found = ofLimit(later.ceiling, "later");
  if (first.ceiling && !same(first.ceiling, later.ceiling)) found.push(...ofLimit(first.ceiling, "first"));
  found.push(...ofShape(plan, bench));
  if (request.start.shape === "square" && plan.process === "draw") found.push(["square-to-round"]);
  if (plan.process === "forge") found.push(["forging-has-no-passes"]);
  if (plan.process === "draw") found.push(...tornMiddle(plan, bench));
  if (plan.temper) {
    const { of } = plan.temper;
    found.push([
      "temper-from-table",
      { temper: request.temper, low: lowest(plan.temper), high: highest(plan.temper), of },
    ]);
  } else if (request.temper === SOFT) found.push(["soft-end"]);
  if (request.more) found.push(["more-anneals", { more: request.more, percent: areaOf(plan.runs.at(-1)) }]);
  return [...found, ...ofAmount(plan, bench)];
}

const same = (one, other) => JSON.stringify(one) === JSON.stringify(other);

function ofLimit(bound, which) {
  if (!bound || bound.how === "given") return [];
  const found = [];
  if (bound.how === "practice") found.push([`${which}-limit-is-practice`, { percent: bound.percent }]);
  if (bound.of === "not-stated") {
    found.push([`${which}-basis-not-stated`, { percent: bound.percent, area: bound.area }]);
  }
  return found;
}

function ofShape(plan, bench) {
  if (plan.process !== "flat") return [];
  const { start, end } = plan.request;
  const roll = bench.equipment.roll_diameter;
  const found = [];
  if (plan.width === undefined) found.push(["width-constant", { width: end.width }]);
  else {
    found.push(["width-estimated", { width: plan.width, roll }]);
    if (plan.width > end.width * TRIMMED) found.push(["width-to-trim", { width: plan.width, end: end.width }]);
  }
  if (end.width < start.width / path.SAME) {
    found.push(["narrower-by-work", { cut: section("flat", end.width, start.thickness).text }]);
  }
  found.push(...splitEnds(plan, bench));
  const perPass = bench.equipment.per_pass.flat;
  if (plan.runs.some((run) => bitten(run.start, bench.equipment, perPass))) {
    found.push(["bite-sets-passes", { roll }]);
  }
  return found;
}

// Each pass as [section before, section after].
const steps = (plan) =>
  plan.runs.flatMap((run) => run.passes.map((pass, place) => [place ? run.passes[place - 1].section : run.start, pass.section]));

// Flat passes that leave the middle behind, and down to which thickness.
function splitEnds(plan, { equipment, split_ends: criterion }) {
  if (!criterion) return [];
  const behind = ([before, after]) => splitsEnds(before.thickness, after.thickness, equipment.roll_diameter / 2, criterion);
  const thin = steps(plan).filter(behind).map(([, after]) => after.thickness);
  return thin.length ? [["middle-behind", { passes: thin.length, thickness: Math.min(...thin) }]] : [];
}

// Draws so light that the middle of the wire may tear, at the usual angle of a hole.
function tornMiddle(plan, { delta: limit }) {
  const most = Math.max(0, ...steps(plan).map(([before, after]) => deltaFactor(HALF_ANGLE, 1 - after.area / before.area)));
  return limit && most > limit ? [["light-draws", { delta: most, limit, angle: HALF_ANGLE }]] : [];
}

function ofAmount(plan, bench) {
  const found = [];
  const { density, density_how: how } = plan.facts;
  if (plan.mass !== undefined) found.push(["mass-from-density", { density: density ?? 0, how }]);
  if (plan.charge !== undefined) {
    const shares = ["trim", "crop", "scalp", "loss"].map((name) => [name, 100 * bench.equipment[name]]);
    found.push(["charge-settings", Object.fromEntries(shares)]);
  }
  return found;
}
