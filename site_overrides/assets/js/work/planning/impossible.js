// How a plan is refused: by an id and the values that its sentence is filled with.
import { Refused } from "../guards.js";

export class Impossible extends Refused {
  constructor(id, values = {}) {
    super(id);
    this.id = id;
    this.values = values;
  }
}

export function impossible(id, values) {
  throw new Impossible(id, values);
}

// Refuses metal that no plan divides: not worked cold, or never annealed.
export function holdPlanned(facts) {
  if (!facts.cold) impossible("not-worked-cold", { alloy: facts.name });
  if (facts.heating?.rule === "none") impossible("needs-no-anneal", { alloy: facts.name });
}
