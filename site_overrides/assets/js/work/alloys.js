// What formulas take from the table of alloys.
import { refuse } from "./guards.js";

const REFUSED = {
  "buy-stock": "is not melted at a bench; buy it as stock",
  licensed: "is melted by licensed refiners alone; buy it as stock",
  never: "is never melted at a bench; buy the stock or leave it to a licensed refiner",
};

// The facts of the alloy that is given.
export const record = (given, tables) => tables.alloys[given.alloy];

// The composition that is given, or the alloy's [percent by element].
export const composition = (given, tables) => given.composition ?? record(given, tables).composition;

// The density that is given, or the alloy's [g/cm3].
export function density(given, tables) {
  if (given.density !== undefined) return given.density;
  const found = record(given, tables);
  if (found.density === null) refuse(`no density of ${found.name} is known; give density instead`);
  return found.density;
}

// Refuses an alloy that no bench melts.
export function holdBench({ name, melt }) {
  if (Object.hasOwn(REFUSED, melt)) refuse(`${name} ${REFUSED[melt]}`);
}

// Lower and upper end of a figure, or the only one that it has.
export const lowest = (figure) => figure.low ?? figure.high;
export const highest = (figure) => figure.high ?? figure.low;
