// Divides the work of a plan into runs: where the metal is annealed.
import { section } from "../sections.js";
import * as holes from "./holes.js";
import { asRound } from "./passes.js";
import * as path from "./path.js";
import { DUST, split, underFloor } from "./runs.js";

// The runs of a plan: {start, end, strain, stage}. thick: diameter [mm] below which an anneal is better avoided.
export function legs(request, process, stages, last, equipment, thick) {
  if (process === "draw" && equipment.holes.length) {
    return throughHoles(request, stages, last, equipment);
  }
  const total = path.work(request.start, request.end);
  const [first, later] = [stages.first.limits, stages.later.limits];
  let found = split(total, first, later, last, request.more);
  if (process === "draw" && last === undefined) found = annealedThick(found, request, total, first, later, thick);
  return placed(request, found.map((run) => run.strain), stages);
}

function placed(request, strains, stages) {
  const total = strains.reduce((sum, strain) => sum + strain, 0);
  const found = [];
  let done = 0;
  let start = request.start;
  strains.forEach((strain, number) => {
    done += strain;
    const share = number === strains.length - 1 ? 1 : done / total;
    const end = path.at(request.start, request.end, share);
    found.push({ start, end, strain, stage: number ? stages.later : stages.first });
    start = end;
  });
  return found;
}

// As many runs with the last anneal at a thick wire, where the limits allow it.
function annealedThick(found, request, total, first, later, thick) {
  const [before, after] = [request.start.thickness, request.end.thickness];
  if (found.length < 2 || after >= thick || before <= thick) return found;
  const last = 2 * Math.log(thick / after);
  if (last <= found.at(-1).strain + DUST || last > later.ceiling + DUST) return found;
  const moved = split(total, first, later, last, request.more);
  const under = (runs) => runs.slice(0, -1).filter(underFloor).length;
  return moved.length > found.length || under(moved) > under(found) ? found : moved;
}

function throughHoles(request, stages, last, equipment) {
  const { start, end } = request;
  const sizes = holes.usable(asRound(start), end.thickness, equipment.per_pass.draw, equipment.holes);
  const ends = holes.stops(sizes, stages.first.limits, stages.later.limits, last, request.more);
  let from = start;
  return ends.map((position, number) => {
    const size = sizes[position];
    const to = position === sizes.length - 1 ? end : section("round", size, size);
    const leg = { start: from, end: to, strain: path.work(from, to), stage: number ? stages.later : stages.first };
    from = to;
    return leg;
  });
}
