// How much wider a narrow bar grows as it is rolled flat.
import { aboveZero, fraction } from "../guards.js";

const MOST_PASSES = 500;

// Width [mm] after one pass. rule: {factor, power}.
export function widthAfterPass(width, before, after, rollDiameter, rule) {
  aboveZero({ width, before, after, "roll-diameter": rollDiameter });
  const slenderness = (width / before) * (before / rollDiameter) ** rule.power;
  return width * (before / after) ** (10 ** (rule.factor * slenderness));
}

// Width [mm] after the equal passes of at most a share [1] from one thickness to another.
export function widthAfter(width, before, after, rollDiameter, perPass, rule) {
  fraction(perPass, "per-pass");
  const strain = Math.log(before / after);
  const passes = Math.min(MOST_PASSES, Math.max(1, Math.ceil(strain / -Math.log(1 - perPass) - 1e-9)));
  const ratio = Math.exp(-strain / passes);
  let [wide, thickness] = [width, before];
  for (let pass = 0; pass < passes; pass += 1) {
    wide = widthAfterPass(wide, thickness, thickness * ratio, rollDiameter, rule);
    thickness *= ratio;
  }
  return wide;
}
