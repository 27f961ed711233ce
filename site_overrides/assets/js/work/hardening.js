// How hard metal is after cold work, from an alloy's own table: never beyond its ends.
import { highest, lowest } from "./alloys.js";

const SLACK = 1 + 1e-9; // dust of rounding at the end of a table
const SCALES = ["hardness", "hardness-brinell", "hardness-strip"];
// Which forms of a record's table serve for stock that is flat, or wire.
const FORMS = { flat: ["sheet", "strip"], wire: ["wire"] };
// Tempers in the order of their hardness; a word that stands in none has no table.
export const TEMPERS = ["quarter-hard", "half-hard", "three-quarter-hard", "hard", "extra-hard", "spring", "extra-spring"];

// Work [1] of a reduction [percent] on a basis; undefined where the basis leaves it open.
export function strainOn(percent, of, stock) {
  const share = percent / 100;
  if (!(share >= 0 && share < 1) || (of === "not-stated" && stock === "wire")) return undefined;
  return -Math.log(1 - share) * (of === "diameter" ? 2 : 1);
}

// The alloy's table for a stock (flat, wire): the scale with most points, annealed first.
export function curve(facts, stock) {
  let best;
  for (const scale of SCALES) {
    for (const form of [...FORMS[stock], ""]) {
      const found = curveOf(facts.figures[scale] ?? [], form, stock);
      if (found && found.points.length > (best?.points.length ?? 0)) best = found;
    }
  }
  return best;
}

function curveOf(figures, form, stock) {
  const worked = figures
    .filter((known) => known.reduction && known.form === form && !known.name)
    .map((known) => point(strainOn(known.reduction, known.of, stock), known))
    .filter(({ strain }) => strain !== undefined)
    .sort((a, b) => a.strain - b.strain);
  const soft = figures.find((k) => k.state === "annealed" && [form, ""].includes(k.form) && !k.name);
  if (!worked.length || !soft) return undefined;
  const points = [point(0, soft), ...worked];
  const rises = (next, index) => points[index].low <= next.low && points[index].high <= next.high;
  if (!worked.every(rises)) return undefined;
  return { unit: soft.unit, form, points, most: points.at(-1).strain };
}

const point = (strain, known) => ({ strain, low: lowest(known), high: highest(known), state: known.state, known });

// Hardness after a work [1] since the anneal, straight between the points; undefined beyond the table's end.
export function at(table, strain) {
  if (!(strain >= 0 && strain <= table.most * SLACK)) return undefined;
  const index = table.points.findIndex((each, place) => place && strain <= each.strain * SLACK);
  const [left, right] = [table.points[index - 1], table.points[index]];
  const share = (strain - left.strain) / (right.strain - left.strain);
  const between = (end) => left[end] + share * (right[end] - left[end]);
  return { low: between("low"), high: between("high"), unit: table.unit, between: [left.known, right.known] };
}

// Work [1] after which the middle of the range is a hardness; undefined outside the table.
export function strainFor({ points }, hardness) {
  const middle = ({ low, high }) => (low + high) / 2;
  for (let place = 1; place < points.length; place += 1) {
    const [left, right] = [points[place - 1], points[place]];
    const [one, other] = [middle(left), middle(right)];
    if (one <= hardness && hardness <= other && other > one) {
      return left.strain + ((hardness - one) / (other - one)) * (right.strain - left.strain);
    }
  }
  return undefined;
}

// The reduction that gives each temper, for a stock, in order of hardness.
export function temperSteps(facts, stock) {
  const fits = ({ form }) => FORMS[stock].includes(form) || (form === "" && stock === "flat");
  const figures = (facts.figures["temper-reduction"] ?? []).filter((known) => fits(known) && !known.name);
  return TEMPERS.map((temper) => [temper, figures.find((known) => known.state === temper)]).filter(([, known]) => known);
}

// Work [1] that a temper's reduction asks for at least; undefined where it is left open.
export function temperStrain(known, stock) {
  const [low, high] = [lowest(known), highest(known)].map((end) => strainOn(end, known.of, stock));
  return high === undefined ? undefined : low;
}
