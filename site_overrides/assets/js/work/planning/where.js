// Where the metal stands: work used since the last anneal, what is left, what comes next.
import * as hardening from "../hardening.js";
import { section } from "../sections.js";
import { anneal, bound, hardness, reductions, said, sectionOf } from "./data.js";
import { holdPlanned } from "./impossible.js";
import * as path from "./path.js";
import { DUST, RESERVE } from "./runs.js";
import { stagesOf } from "./stages.js";
import { stockOf, thinner } from "./tempering.js";

// request.start: the section at the last anneal (or as cast); request.end: the section now.
export function used(request, facts, bench) {
  holdPlanned(facts);
  const { start, end } = request;
  path.holdSmaller(start, end);
  const process = path.processFor(request);
  const { first, warnings } = stagesOf(request, facts, process, bench.usual);
  const { ceiling, floor } = first;
  const done = path.work(start, end);
  const curve = hardening.curve(facts, stockOf(end));
  const early = floor && done < floor.strain - DUST && floor.strain <= ceiling.strain;
  return {
    ...{ facts, start, end, process, done, ceiling, floor },
    left: Math.max(0, ceiling.strain - done),
    until: after(request, ceiling.strain),
    earliest: early ? after(request, floor.strain) : undefined,
    next: done > ceiling.strain * RESERVE + DUST ? "anneal" : "work",
    hardness: curve && request.state !== "cast" ? hardening.at(curve, done) : undefined,
    warnings: [...warnings, ...past(done, ceiling)],
  };
}

// The section after a work [1] from the start, in the shape and width of the section now.
function after({ start, end }, strain) {
  if (end.shape === "flat") return section("flat", end.width, start.thickness * Math.exp(-strain));
  return thinner(start, end, strain);
}

function past(done, ceiling) {
  if (done <= ceiling.strain + DUST) return [];
  return [["past-ceiling", { percent: 100 * (1 - Math.exp(-done)), ceiling: ceiling.area }]];
}

// Key for key what `temperbook used --json` prints.
export function data(where, texts) {
  const used_ = Object.entries(reductions(where.start, where.end));
  return {
    alloy: where.facts.id,
    name: where.facts.name,
    from: sectionOf(where.start),
    now: sectionOf(where.end),
    process: where.process,
    ...Object.fromEntries(used_.map(([key, value]) => [key.replace("reduction_", "used_"), value])),
    true_strain: where.done,
    ...bound("ceiling", where.ceiling),
    ...bound("floor", where.floor),
    left_strain: where.left,
    left_area_pct: 100 * (1 - Math.exp(-where.left)),
    until: sectionOf(where.until),
    not_before: where.earliest ? sectionOf(where.earliest) : null,
    next: where.next,
    anneal: anneal(where.facts),
    hardness: hardness(where.hardness),
    notes: [],
    warnings: said(where.warnings, texts.warnings),
    cautions: where.facts.cautions.map(([id, signal, text]) => ({ id, signal, text })),
  };
}
