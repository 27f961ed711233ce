// How much work goes into each run between two anneals, so that there are as few anneals as can be.
import { refuse } from "../guards.js";

export const DUST = 1e-9; // strain that is none: rounding must never cost an anneal
export const RESERVE = 0.98; // share of its ceiling from which a run has no reserve

// True strain [1] of an area reduction [1].
export const strainOf = (share) => -Math.log(1 - share);

// The work [1] of each of the fewest runs. Limits: {ceiling, floor} as work [1]; last: of a last run, or undefined.
export function split(total, first, later, last, more = 0) {
  if (total < 0) refuse("work is not taken back: the end must not be larger than the start");
  const rest = total - (last ?? 0);
  if (rest < -DUST) refuse("the last run is larger than the whole work");
  const runs = rest > DUST ? even(rest, first, later, more) : [];
  if (last !== undefined) {
    const limits = runs.length ? later : first;
    if (last > limits.ceiling + DUST) refuse("the last run passes its ceiling");
    runs.push({ strain: last, limits });
  }
  return runs;
}

export const underFloor = (run) => run.strain < run.limits.floor - DUST;

function even(rest, first, later, more) {
  let number = 1 + more;
  if (rest > first.ceiling + DUST) number += Math.ceil((rest - first.ceiling) / later.ceiling - DUST);
  if (number === 1) return [{ strain: rest, limits: first }];
  const start = opening(rest, number, first, later);
  const each = (rest - start) / (number - 1);
  const others = Array.from({ length: number - 1 }, () => ({ strain: each, limits: later }));
  return [{ strain: start, limits: first }, ...others];
}

// The first run: an equal part; held to limits of its own where it has them, with a reserve where there is room.
function opening(rest, number, first, later) {
  const equal = rest / number;
  if (first.ceiling === later.ceiling && first.floor === later.floor) return equal;
  for (const reserve of [RESERVE, 1]) {
    const most = first.ceiling * reserve;
    const least = rest - (number - 1) * later.ceiling * reserve;
    if (least <= most + DUST) {
      const wanted = Math.max(equal, Math.min(first.floor, rest));
      return Math.min(Math.max(wanted, least), most);
    }
  }
  return first.ceiling;
}
