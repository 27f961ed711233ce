// Runs and draws on the holes of a plate: the fewest anneals first, then the most even runs.
import { impossible } from "./impossible.js";
import { DUST } from "./runs.js";

// The sizes [mm] from `before` down to `after` that the plate has, the start among them.
export function usable(before, after, perDraw, holes) {
  const inside = [...new Set(holes)]
    .filter((hole) => after * (1 - DUST) < hole && hole < before * (1 - DUST))
    .sort((a, b) => b - a);
  if (!inside.length || inside.at(-1) > after * (1 + DUST)) {
    impossible("no-such-hole", { size: after, nearest: nearest(after, holes) });
  }
  const sizes = [before, ...inside];
  for (let place = 1; place < sizes.length; place += 1) holdGap(sizes[place - 1], sizes[place], perDraw);
  return sizes;
}

function holdGap(large, small, perDraw) {
  const taken = 1 - (small / large) ** 2;
  if (taken > perDraw + 1e-9) {
    impossible("gap-in-plate", { large, small, taken: 100 * taken, most: 100 * perDraw });
  }
}

const nearest = (size, holes) =>
  holes.reduce((best, hole) => (Math.abs(hole - size) < Math.abs(best - size) ? hole : best));

// Where the anneals fall: positions in `sizes` at which a run ends, the end included.
export function stops(sizes, first, later, last, more) {
  const work = sizes.map((size) => 2 * Math.log(sizes[0] / size));
  const final = sizes.length - 1;
  if (last === undefined) return even(work, final, first, later, more);
  const opened = beforeLast(work, final, last, later);
  return opened === 0 ? [final] : [...even(work, opened, first, later, more), final];
}

function beforeLast(work, final, last, later) {
  const off = (place) => Math.abs(work[final] - work[place] - last);
  const fitting = [...Array(final).keys()].filter((place) => work[final] - work[place] <= later.ceiling + DUST);
  if (!fitting.length) impossible("holes-under-ceiling");
  return fitting.sort((a, b) => off(a) - off(b) || a - b)[0];
}

// The fewest runs, with the smallest sum of squares of their work, which is the most even.
function even(work, final, first, later, more) {
  const best = [new Map([[0, { cost: 0, route: [] }]])];
  let fewest = 0;
  for (let number = 1; number <= work.length; number += 1) {
    best.push(reachedFrom(best.at(-1), work, final, number === 1 ? first : later));
    if (best.at(-1).has(final) && !fewest) fewest = number;
    if (fewest && (number === fewest + more || !best.at(-1).size)) break;
  }
  if (!fewest) impossible("holes-under-ceiling");
  const chosen = best[Math.min(best.length - 1, fewest + more)];
  return (chosen.get(final) ?? best[fewest].get(final)).route;
}

function reachedFrom(before, work, final, limits) {
  const reached = new Map();
  for (const [start, { cost, route }] of before) {
    for (let stop = start + 1; stop <= final; stop += 1) {
      const done = work[stop] - work[start];
      if (done > limits.ceiling + DUST) break;
      const total = cost + done * done;
      if (!reached.has(stop) || total < reached.get(stop).cost - 1e-12) {
        reached.set(stop, { cost: total, route: [...route, stop] });
      }
    }
  }
  return reached;
}
