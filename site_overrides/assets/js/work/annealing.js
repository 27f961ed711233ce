// Anneals at another temperature: how much longer or shorter, by one activation energy.
import * as alloys from "./alloys.js";
import { aboveZero, refuse } from "./guards.js";
import { general, listed } from "./texts.js";

const GAS = 8.31446261815324; // J/(mol K), SI 2019 exact
const ZERO_CELSIUS = 273.15;
const REACH = 150; // K from the known anneal: beyond it one energy no longer says anything

// Time at `to` [degC] that does what a time does at a temperature [degC]: energy of activation [kJ/mol].
export function equivalentTime(time, energy, temperature, to) {
  aboveZero({ time, "activation-energy": energy });
  if (Math.min(temperature, to) <= -ZERO_CELSIUS) refuse("a temperature lies above -273.15 degC");
  if (Math.abs(to - temperature) > REACH) {
    refuse(
      `${general(to)} degC is more than ${REACH} K away from ${general(temperature)} degC; so far off one activation energy says nothing, find an anneal nearer to it`,
    );
  }
  const inverse = 1 / (to + ZERO_CELSIUS) - 1 / (temperature + ZERO_CELSIUS);
  return time * Math.exp(((1000 * energy) / GAS) * inverse);
}

function annealEquivalent(given, tables) {
  const { time, temperature, to } = given;
  const notes = given["activation-energy"] === undefined ? [energyOf(given, tables)] : [];
  const energy = given["activation-energy"] ?? notes[0][1].energy;
  const found = equivalentTime(time, energy, temperature, to);
  if (given.alloy) holdOnePhase(alloys.record(given, tables), temperature, to);
  else notes.push(["unchecked"]);
  return { outputs: { time: found }, notes };
}

function energyOf({ metal, mechanism }, tables) {
  const rows = tables["activation-energies"];
  const row = rows.find((each) => each.metal === metal && each.mechanism === mechanism);
  if (row) return ["energy", { energy: row.energy, metal, how: row.said, mechanism }];
  const known = rows.map((each) => `${each.metal} ${each.mechanism}`);
  const there = known.length ? `; there is ${listed(known, "and")}` : "";
  return refuse(`no activation energy of ${metal} ${mechanism} is known${there}`);
}

// Refuses temperatures [degC] between which the alloy melts, orders or must not dwell.
function holdOnePhase({ name, figures, boundaries }, temperature, to) {
  const [low, high] = [Math.min(temperature, to), Math.max(temperature, to)];
  const melts = ["solidus", "melting-point"].flatMap((quantity) => figures[quantity] ?? []).map(alloys.lowest);
  if (melts.length && high >= Math.min(...melts)) refuse(`${name} begins to melt at ${general(Math.min(...melts))} degC`);
  for (const band of figures["no-dwell"] ?? []) {
    const below = band.low === null || high >= band.low;
    if (below && (band.high === null || low <= band.high)) refuse(`${name} must not linger at ${said(band)}`);
  }
  const orders = boundaries.map((bound) => bound.high);
  if (orders.length && low <= Math.max(...orders)) {
    refuse(
      `${name} orders or changes phase below ${general(Math.max(...orders))} degC; no anneal there is equal to one above`,
    );
  }
}

function said({ low, high }) {
  if (high === null) return `${general(low)} degC or above`;
  if (low === null) return `${general(high)} degC or below`;
  return low === high ? `${general(low)} degC` : `${general(low)} to ${general(high)} degC`;
}

export const RUNS = { "anneal-equivalent": annealEquivalent };
