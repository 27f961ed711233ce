// Mass and length of stock.
import * as alloys from "./alloys.js";
import { refuse } from "./guards.js";

const TROY_OUNCE = 31.1034768; // g, exact
const PENNYWEIGHT = TROY_OUNCE / 20;

// Mass [g] of stock: density [g/cm3], area [mm2], length [mm].
export function mass(density, area, length) {
  hold(density, area, length);
  return (density * area * length) / 1000;
}

// Length [mm] after working, volume kept: length [mm], areas [mm2].
export function lengthAfter(length, areaBefore, areaAfter) {
  hold(length, areaBefore, areaAfter);
  return (length * areaBefore) / areaAfter;
}

// Length [mm] of stock: mass [g], density [g/cm3], area [mm2].
export function lengthOf(grams, density, area) {
  hold(grams, density, area);
  return (1000 * grams) / (density * area);
}

function hold(...sizes) {
  if (!sizes.every((size) => size > 0 && size < Infinity)) refuse("sizes, lengths and densities lie above zero");
}

function massOf(given, tables) {
  const density = alloys.density(given, tables);
  const grams = mass(density, given.section.area, given.length);
  return {
    outputs: { mass: grams, "troy-ounces": grams / TROY_OUNCE, pennyweights: grams / PENNYWEIGHT },
    notes: given.alloy ? [["density", { density }]] : [],
  };
}

function rolledLength(given, tables) {
  const { from, to } = given;
  if (to.area > from.area) refuse(`\`${to.text}\` is larger than \`${from.text}\`; work takes away`);
  const density = given.alloy || given.density !== undefined ? alloys.density(given, tables) : undefined;
  const length = given.length ?? lengthOf(given.mass, density, from.area);
  const grams = given.mass ?? (density === undefined ? undefined : mass(density, from.area, length));
  const outputs = { length: lengthAfter(length, from.area, to.area) };
  return { outputs: grams === undefined ? outputs : { ...outputs, mass: grams } };
}

export const RUNS = { mass: massOf, "rolled-length": rolledLength };
