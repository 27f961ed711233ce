// Changing a composition: what to add to reach another, and what a charge holds.
import * as alloys from "./alloys.js";
import { aboveZero, fraction, refuse } from "./guards.js";
import { listed } from "./texts.js";

const DUST = 1e-9;
const NEVER_MELTED = ["As", "Be", "Cd", "Pb"]; // at no bench: their fume and dust poison

// The least metal [g] that turns a mass [g] of stock into the target, both mass percent by element.
export function leastAddition(stock, target, mass) {
  aboveZero({ mass });
  const held = Object.entries(stock).filter(([, share]) => share > 0);
  const foreign = held.map(([element]) => element).filter((element) => !target[element]);
  if (foreign.length) {
    refuse(`the stock holds ${foreign.join(", ")}, which the target does not; only refining takes it out`);
  }
  const newMass = Math.max(...held.map(([element, share]) => (mass * share) / target[element]));
  const add = {};
  for (const [element, share] of Object.entries(target)) {
    const needed = (newMass * share) / 100 - (mass * (stock[element] ?? 0)) / 100;
    add[element] = Math.abs(needed) > DUST * mass ? needed : 0;
  }
  return { add, newMass };
}

// Refuses a composition [percent by element] that no bench melts.
export function holdMeltable(composition) {
  const poison = NEVER_MELTED.filter((element) => composition[element]);
  if (poison.length) {
    refuse(
      `a charge with ${poison.join(", ")} is never melted at a bench; buy the stock or leave it to a licensed refiner`,
    );
  }
}

// Metal to melt [g] for a finished mass [g]; crop, scalp and loss are fractions [1] of what goes into each step.
export function charge(mass, crop, scalp, loss) {
  aboveZero({ mass });
  for (const [name, part] of Object.entries({ crop, scalp, loss })) fraction(part, name);
  return mass / ((1 - crop) * (1 - scalp) * (1 - loss));
}

// Metal to add [g] so that a mass [g] of one fineness [per mille] reaches another, and whether it is fine metal.
export function finenessAddition(mass, fineness, target) {
  aboveZero({ mass });
  if (!(fineness > 0 && fineness <= 1000 && target > 0 && target <= 1000)) {
    refuse("a fineness lies above 0 and at most at 1000");
  }
  if (target <= fineness) return { add: mass * (fineness / target - 1), fine: false };
  if (target === 1000) refuse("no addition makes alloyed metal fine; only refining does");
  return { add: (mass * (target - fineness)) / (1000 - target), fine: true };
}

function alloying({ stock, target, mass }) {
  holdMeltable(stock);
  holdMeltable(target);
  const { add, newMass } = leastAddition(stock, target, mass);
  const least = Object.values(add).reduce((sum, grams) => sum + grams, 0);
  const full = Object.keys(stock).filter((element) => stock[element] > 0 && add[element] === 0);
  const note = least > 0 ? ["limits", { elements: full.length ? listed(full, "and") : "" }] : ["same"];
  return { outputs: { ...add, "least-metal-added": least, "new-mass": newMass }, notes: full.length ? [note] : [] };
}

function meltCharge(given, tables) {
  if (given.alloy) alloys.holdBench(alloys.record(given, tables));
  const shares = alloys.composition(given, tables);
  holdMeltable(shares);
  const [crop, scalp, loss] = ["crop", "scalp", "loss"].map((name) => given[name] / 100);
  const whole = charge(given.mass, crop, scalp, loss);
  const parts = Object.entries(shares).map(([element, part]) => [element, (whole * part) / 100]);
  return { outputs: { charge: whole, ...Object.fromEntries(parts) } };
}

function changeFineness({ mass, fineness, target }) {
  const { add, fine } = finenessAddition(mass, fineness, target);
  return { outputs: { add, "new-mass": mass + add }, notes: [[fine ? "fine" : add > 0 ? "alloying" : "same"]] };
}

export const RUNS = { alloying, "melt-charge": meltCharge, "change-fineness": changeFineness };
