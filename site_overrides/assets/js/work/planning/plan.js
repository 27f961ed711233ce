// The working plan: runs between anneals, their passes, and what the metal is like after each.
// facts: an alloy of bench.json. bench: its "bench" with what was typed in the place of settings.
import * as hardening from "../hardening.js";
import { charge as chargeOf } from "../alloying.js";
import { mass as massOf } from "../masses.js";
import * as bounds from "./bounds.js";
import { legs } from "./dividing.js";
import { holdPlanned, impossible } from "./impossible.js";
import * as passes from "./passes.js";
import * as path from "./path.js";
import * as remarks from "./remarks.js";
import { DUST, RESERVE } from "./runs.js";
import { widthAfter } from "./spread.js";
import { stagesOf } from "./stages.js";
import { SOFT, holdReachable, lastRun, stockOf } from "./tempering.js";

const STARTS = ["cast", "annealed"];

// request: {start, end, state, temper, last, ceiling, first_ceiling, floor, first_floor, process, length, mass, more}.
export function make(request, facts, bench) {
  const process = held(request, facts);
  const width = widthOf(request, process, bench);
  const strain = path.work(request.start, request.end);
  if (strain <= DUST) impossible("nothing-to-do", { end: request.end.text });
  const stages = stagesOf(request, facts, process, bench.usual);
  const last = lastRun(request, facts);
  if (last) holdReachable(last, request, strain, stages);
  const found = legs(request, process, stages, last?.strain, bench.equipment, bench.thick_wire);
  const curve = hardening.curve(facts, stockOf(request.end));
  const plan = { facts, request, process, strain, curve, temper: last?.known, width };
  plan.runs = found.map((leg, number) => runOf(leg, number, found.length, plan, bench));
  plan.anneals = plan.runs.filter((run) => run.then === "anneal").length;
  Object.assign(plan, masses(request, facts, bench.equipment));
  plan.warnings = [...stages.warnings, ...remarks.warnings(plan, stages, bench)];
  plan.notes = remarks.notes(plan, stages, bench);
  return plan;
}

// The process, once everything that forbids the plan from the first is ruled out.
function held(request, facts) {
  holdPlanned(facts);
  if (!STARTS.includes(request.state)) impossible("unknown-start", { state: request.state });
  if (request.state === "cast" && facts.melt !== "bench") {
    impossible("not-melted", { alloy: facts.name, melt: facts.melt });
  }
  path.holdSmaller(request.start, request.end);
  path.holdRolled(request.start, request.end);
  return path.processFor(request);
}

// The width [mm] that a flat spreads to; undefined where it is taken as constant.
function widthOf({ start, end }, process, { equipment, rule }) {
  if (process !== "flat") return undefined;
  const reached = rule
    ? widthAfter(start.width, start.thickness, end.thickness, equipment.roll_diameter, equipment.per_pass.flat, rule)
    : start.width;
  if (end.width > Math.max(reached, start.width) * path.SAME) {
    impossible("end-too-wide", { width: end.width, reached, start: start.text });
  }
  return rule ? reached : undefined;
}

function runOf(leg, number, count, plan, bench) {
  const { request, facts, process, curve } = plan;
  const then = number === count - 1 && request.temper !== SOFT ? "end" : "anneal";
  const cast = number === 0 && request.state === "cast";
  const hardness = cast || !curve ? undefined : hardening.at(curve, leg.strain);
  const floor = then === "anneal" ? leg.stage.floor : undefined;
  const { ceiling } = leg.stage;
  return {
    ...leg,
    process,
    ceiling,
    floor,
    then,
    passes: passesOf(leg, process, facts, bench.equipment),
    hardness,
    hardnessWhy: cast ? "from-cast" : hardness ? "" : curve ? "beyond-table" : "no-table",
    underFloor: Boolean(floor) && leg.strain < floor.strain - DUST,
    withoutReserve: Boolean(ceiling) && leg.strain > ceiling.strain * RESERVE + DUST,
  };
}

function passesOf({ start, end }, process, facts, equipment) {
  if (process === "forge") return [];
  if (process === "draw" && equipment.holes.length) {
    const before = passes.asRound(start);
    const between = equipment.holes.filter((hole) => end.thickness <= hole && hole < before);
    const sizes = [...new Set([...between, end.thickness])].sort((a, b) => b - a);
    return passes.throughHoles(start, sizes, equipment.per_pass.draw);
  }
  const own = equipment.given.includes("per-pass") ? undefined : bounds.perPass(facts, process);
  return passes.ofRun(start, end, process, equipment, own || equipment.per_pass[process]);
}

function masses(request, facts, equipment) {
  let { mass } = request;
  if (mass === undefined && request.length !== undefined && facts.density !== null) {
    mass = massOf(facts.density, request.end.area, request.length);
  }
  if (mass === undefined || facts.melt !== "bench") return { mass, charge: undefined, parts: {} };
  const charge = chargeOf(mass / (1 - equipment.trim), equipment.crop, equipment.scalp, equipment.loss);
  const parts = Object.entries(facts.composition).map(([element, share]) => [element, (charge * share) / 100]);
  return { mass, charge, parts: Object.fromEntries(parts) };
}
