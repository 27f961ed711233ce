// Which section the metal has when a share of the work is done.
import { reduction, trueStrain } from "../reduction.js";
import { section } from "../sections.js";
import { impossible } from "./impossible.js";

export const SAME = 1 + 1e-9; // sizes that differ by less are one

// The process that leads from one section to another where none is named.
export function processOf(start, end) {
  if (end.shape === "flat") return "flat";
  if (start.shape === "flat") impossible("strip-first", { thickness: start.thickness, end: end.text });
  return end.shape === "round" ? "draw" : "groove";
}

const FITS = { flat: ["flat"], draw: ["round", "square"], groove: ["square", "round"] };

// The process that is asked for, held to what it makes, or the one that the sections tell.
export function processFor({ process, start, end }) {
  if (!process) return processOf(start, end);
  holdProcess(process, end);
  return process;
}

export function holdProcess(process, end) {
  if (process in FITS && !FITS[process].includes(end.shape)) {
    impossible("process-shape", { process, end: end.text });
  }
}

export function holdSmaller(start, end) {
  const values = { start: start.text, end: end.text };
  if (end.area > start.area * SAME) impossible("end-larger", values);
  if (end.shape === "flat" && end.thickness > start.thickness * SAME) impossible("end-thicker", values);
}

export function holdRolled(start, end) {
  const flat = end.shape === "flat" && end.thickness >= start.thickness / SAME;
  if (flat && end.width < start.width / SAME) impossible("cut-to-width", { width: end.width });
}

// Work [1] from start to end, never below zero.
export const work = (start, end) => Math.max(0, trueStrain(start, end));

// The section after a share [1] of the work: sizes in geometric steps, in the end's shape.
export function at(start, end, share) {
  if (share <= 0) return start;
  if (share >= 1) return end;
  if (end.shape === "flat") {
    const before = start.shape === "round" ? start.area / start.thickness : start.width;
    const thickness = start.thickness * (end.thickness / start.thickness) ** share;
    return section("flat", before * (end.width / before) ** share, thickness);
  }
  const area = start.area * (end.area / start.area) ** share;
  const side = Math.sqrt(end.shape === "round" ? (area * 4) / Math.PI : area);
  return section(end.shape, side, side);
}

// The other basis [percent] beside the area: [diameter | thickness, percent], where both have one.
export function linearReduction(before, after) {
  const size = 100 * reduction(before.thickness, after.thickness);
  if (before.shape === "round" && after.shape === "round") return ["diameter", size];
  if (after.shape === "flat" || (before.shape !== "round" && after.shape !== "round")) return ["thickness", size];
  return undefined;
}

export const areaReduction = (before, after) => 100 * reduction(before.area, after.area);
