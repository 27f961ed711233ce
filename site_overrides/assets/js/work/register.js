// The register of formulas: one answer for each id, from its inputs and the tables of assets/data/bench.json.
import { RUNS as ALLOYING } from "./alloying.js";
import { RUNS as ANNEALING } from "./annealing.js";
import { RUNS as BRIGHTNESS } from "./brightness.js";
import { RUNS as DRAWING } from "./drawing.js";
import { RUNS as GAUGES } from "./gauges.js";
import { read } from "./given.js";
import { beyond } from "./guards.js";
import { RUNS as HEAT_COLOUR } from "./heat-colour.js";
import { RUNS as MASSES } from "./masses.js";
import { RUNS as MELTING } from "./melting.js";
import { RUNS as MIXTURE } from "./mixture.js";
import { RUNS as REDUCTION } from "./reduction.js";
import { RUNS as RINGS } from "./rings.js";
import { RUNS as ROLLING } from "./rolling.js";
import { RUNS as TEMPERS } from "./tempers.js";
import { fill } from "./texts.js";
import { RUNS as WIRE } from "./wire.js";

export const RUNS = {
  ...REDUCTION,
  ...MIXTURE,
  ...MASSES,
  ...ALLOYING,
  ...HEAT_COLOUR,
  ...BRIGHTNESS,
  ...MELTING,
  ...GAUGES,
  ...RINGS,
  ...ROLLING,
  ...DRAWING,
  ...TEMPERS,
  ...ANNEALING,
  ...WIRE,
};

// The outputs of a formula with their units, and its notes as sentences. `record`: the formula's own in bench.json.
export function compute(record, inputs, tables) {
  const { outputs, notes = [], units = {} } = RUNS[record.id](read(record, inputs, tables), tables);
  if (Object.values(outputs).some((value) => typeof value === "number" && !Number.isFinite(value))) {
    beyond();
  }
  const unit = (name) => units[name] || (record.outputs[name] ?? record.series);
  return {
    outputs,
    units: Object.fromEntries(Object.keys(outputs).map((name) => [name, unit(name)])),
    notes: said(record, notes),
  };
}

// The record's own note first, then what this answer says.
function said(record, notes) {
  const fixed = record.note ? [{ id: "formula", text: record.note }] : [];
  return [...fixed, ...notes.map(([id, values]) => ({ id, text: fill(record.notes[id], values ?? {}) }))];
}
