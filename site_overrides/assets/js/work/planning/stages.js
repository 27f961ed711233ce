// The limits of a plan's first run and of those that follow an anneal.
import { lowest } from "../alloys.js";
import * as bounds from "./bounds.js";

const typed = (share) => (share === undefined ? undefined : bounds.given(share));

// What was typed, else the alloy's own figures, else the usual ceiling of the bench.
export function stagesOf(request, facts, process, usual) {
  const warnings = [];
  const later = stage(
    laterCeiling(request.ceiling, facts, process, usual, warnings),
    typed(request.floor) ?? bounds.floor(facts, "annealed", process),
  );
  const first =
    request.state === "cast"
      ? stage(castCeiling(request, facts, process, later, warnings), castFloor(request, facts, process))
      : stage(typed(request.first_ceiling) ?? later.ceiling, typed(request.first_floor) ?? later.floor);
  return { first, later, warnings };
}

function stage(ceiling, floor) {
  return { ceiling, floor, limits: { ceiling: ceiling?.strain ?? Infinity, floor: floor?.strain ?? 0 } };
}

function laterCeiling(share, facts, process, usual, warnings) {
  if (share !== undefined) return bounds.given(share);
  const found = bounds.ceiling(facts, "annealed", process);
  if (!found) {
    warnings.push(["no-limit", { alloy: facts.name, percent: lowest(usual) }]);
    return bounds.usual(usual);
  }
  if (!found.fits) warnings.push(["limit-of-other-working", { percent: found.percent }]);
  return found;
}

function castCeiling(request, facts, process, later, warnings) {
  if (request.first_ceiling !== undefined) return bounds.given(request.first_ceiling);
  const found = bounds.ceiling(facts, "cast", process);
  if (!found) {
    warnings.push(["no-cast-limit", { alloy: facts.name }]);
    return later.ceiling;
  }
  if (!found.fits) warnings.push(["cast-limit-of-other-working", { percent: found.percent }]);
  return found;
}

function castFloor(request, facts, process) {
  if (request.first_floor !== undefined) return bounds.given(request.first_floor);
  return bounds.floor(facts, "cast", process) ?? typed(request.floor);
}
