// A plan from what was typed: `bench.json` holds alloys, bench, gauges and texts.
import { Refused } from "../guards.js";
import { parse } from "../sections.js";
import { fill } from "../texts.js";
import * as back from "./backwards.js";
import { data } from "./data.js";
import { Impossible } from "./impossible.js";
import { make } from "./plan.js";
import * as where from "./where.js";

// asked: {alloy, start, end, ...} with shares as fractions; equipment: what stands in the place of the settings.
export function plan(asked, equipment, { alloys, bench, gauges, texts }) {
  return spoken(texts, () => {
    const made = make(requestOf(asked), alloys[asked.alloy], withGiven(bench, equipment));
    return data(made, gauges, texts);
  });
}

// Where metal stands: asked.start is the section at the last anneal, asked.end the one now.
export function used(asked, { alloys, bench, texts }) {
  return spoken(texts, () => where.data(where.used(requestOf(asked), alloys[asked.alloy], bench), texts));
}

// From the finished piece to the ingot: asked.mould a section or nothing, asked.anneals a number.
export function backward(asked, equipment, { alloys, bench, gauges, texts }) {
  return spoken(texts, () => {
    const { mould, anneals, ...rest } = asked;
    const request = requestOf({ ...rest, start: rest.end });
    const cast = mould ? parse(mould) : undefined;
    const found = back.backwards(request, alloys[asked.alloy], withGiven(bench, equipment), cast, anneals);
    return back.data(found, gauges, texts);
  });
}

const UNLESS_SAID = { state: "annealed", temper: "", process: "", more: 0 };

function requestOf({ alloy, start, end, ...rest }) {
  return { ...UNLESS_SAID, ...rest, start: parse(start), end: parse(end) };
}

// Runs a computation; a plan that cannot be made is refused in its own sentence.
export function spoken(texts, run) {
  try {
    return run();
  } catch (error) {
    if (!(error instanceof Impossible)) throw error;
    throw new Refused(fill(texts.impossible[error.id], error.values));
  }
}

// The bench with what was typed in the place of settings: {roll_diameter, friction, per_pass, holes}.
export function withGiven(bench, { per_pass: share, ...rest }) {
  const equipment = { ...bench.equipment, ...rest };
  if (share === undefined) return { ...bench, equipment };
  const per_pass = Object.fromEntries(Object.keys(equipment.per_pass).map((process) => [process, share]));
  return { ...bench, equipment: { ...equipment, per_pass, given: ["per-pass"] } };
}
