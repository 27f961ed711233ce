// Flat rolling: how much the rolls can bite, and a simple estimate of the force on them.
import { aboveZero, smallerAfter } from "./guards.js";

// Greatest draft [mm] that rolls of a radius [mm] draw in by a friction coefficient [1].
export function maxDraft(rollRadius, friction) {
  aboveZero({ "roll-radius": rollRadius, friction });
  return friction ** 2 * rollRadius;
}

// Whether a pass works the skin so much more than the middle that the ends may split: thicknesses, radius [mm].
export function splitsEnds(before, after, rollRadius, criterion) {
  const share = 1 - after / before;
  return before / rollRadius > (criterion * share) / (1 - share);
}

// Length of contact [mm] between roll and metal: roll radius and draft [mm].
export function contactLength(rollRadius, draft) {
  aboveZero({ "roll-radius": rollRadius, draft });
  return Math.sqrt(rollRadius * draft);
}

// Flow stress [MPa] averaged from no strain to a true strain [1], for K [MPa] and n [1].
export function meanFlowStress(strain, strengthCoefficient, hardeningExponent) {
  aboveZero({ strain, "strength-coefficient": strengthCoefficient });
  return (strengthCoefficient * strain ** hardeningExponent) / (1 + hardeningExponent);
}

// Force [N] that parts the rolls: mean flow stress [MPa], width and contact length [mm].
export function rollForce(flowStress, width, length) {
  aboveZero({ "flow-stress": flowStress, width, length });
  return flowStress * width * length;
}

function rollForceOf(given) {
  const { from, to, width } = given;
  smallerAfter(from, to, "a pass", "thickness");
  const strain = Math.log(from / to);
  const stress = meanFlowStress(strain, given["strength-coefficient"], given["hardening-exponent"]);
  const length = contactLength(given["roll-radius"], from - to);
  const force = rollForce(stress, width, length);
  return { outputs: { "contact-length": length, "true-strain": strain, "mean-flow-stress": stress, force } };
}

export const RUNS = {
  "max-draft": (given) => ({ outputs: { draft: maxDraft(given["roll-radius"], given.friction) } }),
  "roll-force": rollForceOf,
};
