// Reduction: the share of a section that a step takes away, and on which basis it is counted.
import { fraction, refuse } from "./guards.js";

// Fraction [1] taken from a size or an area; negative where it grows.
export function reduction(before, after) {
  if (Math.min(before, after) <= 0) refuse("sizes must be above zero");
  return 1 - after / before;
}

// Area reduction [1] of a round or square whose diameter or side falls by a fraction [1].
export function areaFromLinear(share) {
  fraction(share);
  return 1 - (1 - share) ** 2;
}

// Reduction [1] of diameter or side of a round or square whose area falls by a fraction [1].
export function linearFromArea(share) {
  fraction(share);
  return 1 - Math.sqrt(1 - share);
}

const SIZE = { round: "diameter", square: "thickness", wide: "thickness" };

// The same reduction [1] on each basis that the stock has.
export function onEachBasis(share, of, stock) {
  fraction(share);
  if (!Object.hasOwn(SIZE, stock)) refuse(`\`${stock}\` is no stock; write round, square or wide`);
  const size = SIZE[stock];
  if (of !== "area" && of !== size) refuse(`${stock} stock has no ${of}; it has area and ${size}`);
  if (stock === "wide") return { area: share, thickness: share };
  const area = of === "area" ? share : areaFromLinear(share);
  return { area, [size]: linearFromArea(area) };
}

// Work [1] of going from one section to another; to a flat the thickness counts where it says more.
export function trueStrain(before, after) {
  const byArea = Math.log(before.area / after.area);
  if (after.shape !== "flat") return byArea;
  return Math.max(byArea, Math.log(before.thickness / after.thickness));
}

function between({ from, to }) {
  if (to.area > from.area) refuse(`\`${to.text}\` is larger than \`${from.text}\`; work takes away`);
  const outputs = { area: 100 * reduction(from.area, to.area) };
  const shapes = [from.shape, to.shape];
  const size = 100 * reduction(from.thickness, to.thickness);
  if (shapes.every((shape) => shape === "round")) outputs.diameter = size;
  else if (!shapes.includes("round")) outputs.thickness = size;
  outputs["true-strain"] = trueStrain(from, to);
  outputs["length-ratio"] = from.area / to.area;
  return { outputs };
}

function basis({ value, of, section }) {
  const each = Object.entries(onEachBasis(value / 100, of, section));
  return { outputs: Object.fromEntries(each.map(([name, share]) => [name, 100 * share])) };
}

export const RUNS = { reduction: between, "reduction-basis": basis };
