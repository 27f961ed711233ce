// Drawing through a die: stress and force of a draw, holes of a schedule, the shape of the zone.
import { beyond, fraction, refuse, smallerAfter } from "./guards.js";
import { meanFlowStress } from "./rolling.js";
import { general } from "./texts.js";

const DUST = 1e-9;
const MOST_DRAWS = 500; // more than that is a slip of the pen
const radians = (degrees) => (degrees * Math.PI) / 180;

// Stress [MPa] in the wire as it leaves the die: diameters [mm], half-angle [degrees], mean flow stress [MPa].
export function drawStress(before, after, halfAngle, friction, flowStress) {
  smallerAfter(before, after, "a draw", "diameter");
  if (!(halfAngle > 0 && halfAngle < 90)) refuse("a half-angle lies between 0 and 90 degrees");
  const angle = radians(halfAngle);
  const mean = (before + after) / 2;
  const length = (before - after) / (2 * Math.sin(angle));
  const uneven = 0.88 + (0.12 * mean) / length;
  const strain = 2 * Math.log(before / after);
  return flowStress * (1 + friction / Math.tan(angle)) * uneven * strain;
}

// Force [N] on the wire: draw stress [MPa], diameter behind the die [mm].
export const drawForce = (stress, after) => (stress * Math.PI * after ** 2) / 4;

// Shape of the deformation zone [1]: die half-angle [degrees], area reduction [1].
export function deltaFactor(halfAngle, areaReduction) {
  if (!(areaReduction > 0 && areaReduction < 1)) refuse("a reduction lies between 0 and 100 percent");
  return (radians(halfAngle) / areaReduction) * (1 + Math.sqrt(1 - areaReduction)) ** 2;
}

// Diameters [mm] of the fewest equal draws that stay within a share [1] of the area.
export function evenSchedule(before, after, perDraw) {
  smallerAfter(before, after, "a draw", "diameter");
  if (!(perDraw > 0 && perDraw < 1)) refuse("per-draw lies between 0 and 100 percent");
  const each = -Math.log(1 - perDraw);
  if (each === 0) beyond();
  const needed = (2 * Math.log(before / after)) / each;
  if (needed > MOST_DRAWS) refuse(`that would take more than ${MOST_DRAWS} draws; take more at each`);
  const draws = Math.max(1, Math.ceil(needed - DUST));
  const ratio = (after / before) ** (1 / draws);
  const between = Array.from({ length: draws - 1 }, (_, step) => before * ratio ** (step + 1));
  return [...between, after];
}

// The fewest holes [mm] of a plate that stay within a share [1] of the area at each draw.
export function scheduleByHoles(before, after, perDraw, holes) {
  fraction(perDraw, "per-draw");
  const usable = throughEveryHole(before, after, holes);
  const leastRatio = Math.sqrt(1 - perDraw);
  const chosen = [];
  for (let size = before; size > after; ) {
    const reach = usable.filter((hole) => hole < size && hole >= size * leastRatio * (1 - DUST));
    if (!reach.length) refuse(`no hole follows ${general(size)} mm within the limit of one draw`);
    size = Math.min(...reach);
    chosen.push(size);
  }
  return chosen;
}

// The holes [mm] of a plate from below a diameter down to another, each used in turn.
export function throughEveryHole(before, after, holes) {
  smallerAfter(before, after, "a draw", "diameter");
  const usable = [...new Set(holes.filter((hole) => hole >= after && hole < before))].sort((a, b) => b - a);
  if (!usable.includes(after)) refuse(`the plate has no hole of ${general(after)} mm`);
  return usable;
}

function force(given) {
  const { from, to } = given;
  smallerAfter(from, to, "a draw", "diameter");
  const strain = 2 * Math.log(from / to);
  const flow = meanFlowStress(strain, given["strength-coefficient"], given["hardening-exponent"]);
  const stress = drawStress(from, to, given["half-angle"], given.friction, flow);
  return {
    outputs: { "true-strain": strain, "mean-flow-stress": flow, "draw-stress": stress, force: drawForce(stress, to) },
  };
}

function schedule(given) {
  const sizes = sizesOf(given);
  return { outputs: { draws: sizes.length, sizes } };
}

function sizesOf({ from, to, holes, ...given }) {
  if (!holes) return evenSchedule(from, to, given["per-draw"] / 100);
  if (given["per-draw"] === undefined) return throughEveryHole(from, to, holes);
  return scheduleByHoles(from, to, given["per-draw"] / 100, holes);
}

export const RUNS = {
  "draw-force": force,
  "draw-schedule": schedule,
  "delta-factor": (given) => ({ outputs: { delta: deltaFactor(given["half-angle"], given.reduction / 100) } }),
};
