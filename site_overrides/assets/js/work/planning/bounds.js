// Which of an alloy's limits stand for a run, and how much work each allows.
import { lowest } from "../alloys.js";
import { strainOf } from "./runs.js";

// How records name the working and the form of each process of a plan.
const WORKING = { forge: "forging", groove: "rolling", flat: "rolling", draw: "drawing" };
const FORMS = {
  forge: ["bar", "any", ""],
  groove: ["wire", "bar", "any", ""],
  flat: ["sheet", "strip", "any", ""],
  draw: ["wire", "bar", "any", ""],
};
const UNSURE = ["practice", "memory"];
const ANY = ["any", ""];

const bound = (strain, percent, of, how, sources = [], fits = true) => ({
  strain,
  percent,
  of,
  how,
  sources,
  fits,
  area: 100 * (1 - Math.exp(-strain)),
});

// A limit that was typed: an area reduction [1].
export const given = (share) => bound(strainOf(share), 100 * share, "area", "given");

// The bench's usual ceiling.
export const usual = (known) => bound(strainOf(lowest(known) / 100), lowest(known), known.of, known.how, known.sources);

// How far a run may go: the alloy's own figure for this working, else the least of the others.
export function ceiling(facts, stage, process) {
  const found = atStage(facts.figures["reduction-ceiling"] ?? [], stage);
  const [best] = bestFirst(found.filter((known) => fits(known, process)));
  if (best) return boundOf(best, process, false);
  const others = found.map((known) => boundOf(known, process, false, false));
  return others.sort((a, b) => a.strain - b.strain)[0];
}

// How little is too little before an anneal.
export function floor(facts, stage, process) {
  const found = atStage(facts.figures["reduction-floor"] ?? [], stage);
  const [best] = bestFirst(found.filter((known) => fits(known, process)));
  return best && boundOf(best, process, true);
}

// The area reduction [1] of one pass that the alloy's own figures allow.
export function perPass(facts, process) {
  const known = (facts.figures["reduction-per-pass"] ?? []).find((each) => fits(each, process));
  return known && 1 - Math.exp(-boundOf(known, process, false).strain);
}

const atStage = (figures, stage) => figures.filter((f) => [stage, "any", ""].includes(f.stage) && !f.name);

const fits = (known, process) =>
  [WORKING[process], ...ANY].includes(known.process) && FORMS[process].includes(known.form);

// Published before common practice, then one for this very working, then the record's order.
function bestFirst(figures) {
  const rank = (known) => [UNSURE.includes(known.how), ANY.includes(known.process)].map(Number);
  return [...figures].sort((a, b) => rank(a)[0] - rank(b)[0] || rank(a)[1] - rank(b)[1]);
}

function boundOf(known, process, asksMost, fitting = true) {
  const percent = lowest(known);
  const twice = known.of === "diameter" || (asksMost && process !== "flat" && known.of === "not-stated");
  return bound(strainOf(percent / 100) * (twice ? 2 : 1), percent, known.of, known.how, known.sources, fitting);
}
