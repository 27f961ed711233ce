// What inputs of several subjects must hold: refused with a sentence, never a silent number.
// The sentences are those of metal/guards.py, word for word.

// An input that does not fit; its message says what is allowed.
export class Refused extends Error {}

export function refuse(sentence) {
  throw new Refused(sentence);
}

// Numbers that leave what a computer counts with.
export const beyond = () => refuse("these numbers are too large or too small to compute with");

// Holds that every given number is above zero.
export function aboveZero(given) {
  for (const [name, value] of Object.entries(given)) {
    if (!(value > 0)) refuse(`${name} must be above zero`);
  }
}

// Holds that a share [1] lies at or above 0 and below 1.
export function fraction(value, name = "a reduction") {
  if (!(value >= 0 && value < 1)) refuse(`${name} lies between 0 and 100 percent`);
}

// Holds that a step takes a size away.
export function smallerAfter(before, after, step, size) {
  if (!(after > 0 && after < before)) {
    refuse(`${step} goes from a larger ${size} to a smaller one above zero`);
  }
}
