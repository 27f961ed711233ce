// What follows from a composition alone: density by mixing, atomic shares, fineness.
import * as alloys from "./alloys.js";
import { refuse } from "./guards.js";
import { general, listed } from "./texts.js";

// Density [g/cm3] of an alloy whose elements keep their volumes: mass percent and density by element.
export function densityByMixing(shares, densities) {
  const total = Object.values(shares).reduce((sum, share) => sum + share, 0);
  if (Math.abs(total - 100) > 0.05) refuse(`shares sum to ${general(total)}, not to 100`);
  holdKnown(shares, densities, "density");
  return 100 / Object.entries(shares).reduce((sum, [symbol, share]) => sum + share / densities[symbol], 0);
}

// Share of the atoms [percent] by element: mass percent and atomic mass [u] by element.
export function atomicPercent(shares, masses) {
  holdKnown(shares, masses, "atomic mass");
  const moles = Object.entries(shares).map(([symbol, share]) => [symbol, share / masses[symbol]]);
  const whole = moles.reduce((sum, [, part]) => sum + part, 0);
  return Object.fromEntries(moles.map(([symbol, part]) => [symbol, (100 * part) / whole]));
}

// Fineness [per mille] of gold of so many carats.
export function finenessFromCarat(carat) {
  if (!(carat > 0 && carat <= 24)) refuse("a carat lies above 0 and at most at 24");
  return (1000 * carat) / 24;
}

// Carats of gold of a fineness [per mille].
export function caratFromFineness(fineness) {
  if (!(fineness > 0 && fineness <= 1000)) refuse("a fineness lies above 0 and at most at 1000");
  return (24 * fineness) / 1000;
}

function holdKnown(shares, known, what) {
  const missing = Object.keys(shares).filter((symbol) => !Object.hasOwn(known, symbol));
  if (missing.length) refuse(`no ${what} of ${missing.join(", ")} is known`);
}

function density(given, tables) {
  const found = densityByMixing(alloys.composition(given, tables), tables.densities);
  const errors = tables["mixing-errors"].map((row) => row.error);
  const values = { count: errors.length, least: Math.min(...errors), most: Math.max(...errors) };
  return { outputs: { density: found }, notes: errors.length ? [["error", values]] : [] };
}

function fineness(given, tables) {
  const found = given.carat === undefined ? given.fineness : finenessFromCarat(given.carat);
  const carat = given.carat ?? caratFromFineness(found);
  return { outputs: { carat, fineness: found }, notes: nearest(found, tables.finenesses) };
}

// The legal standards of gold at or below a fineness [per mille] and above it.
function nearest(found, standards) {
  const gold = standards.filter((row) => row.element === "Au");
  const below = gold.map((row) => row.fineness).filter((each) => each <= found + 1e-9);
  const above = gold.map((row) => row.fineness).filter((each) => each > found + 1e-9);
  return [
    ...(below.length ? [standard("standard-reached", Math.max(...below), gold)] : []),
    ...(above.length ? [standard("standard-above", Math.min(...above), gold)] : []),
  ];
}

function standard(note, found, gold) {
  const where = new Set(gold.filter((row) => row.fineness === found).map((row) => row.where));
  return [note, { fineness: found, where: listed([...where], "and") }];
}

export const RUNS = {
  density,
  "atomic-percent": (given, tables) => ({ outputs: atomicPercent(given.composition, tables["atomic-masses"]) }),
  fineness,
};
