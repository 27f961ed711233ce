// Ring sizes of several systems, and the strip that makes a ring.
import { aboveZero, refuse } from "./guards.js";

const [LEAST, MOST] = [8, 32]; // mm, inside diameters that a finger has
const THICK = 0.25; // thickness over inside diameter from which the middle line is no longer safe
const NUMBER = /^(\d+(?:\.\d+)?)?(?:[ \t\n\r\f\v]*([123])\/([248]))?$/;
const LETTER = /^([A-Z])(?:[ \t\n\r\f\v]*([123])\/([248]))?$/;
const FRACTIONS = { "½": " 1/2", "¼": " 1/4", "¾": " 3/4" };

// Inside diameter [mm] of a ring size such as `54`, `7 1/2`, `L½`, by a system's rule or its own sizes.
export function insideDiameter(size, system) {
  const text = spaced(size);
  if (!system.rule) {
    if (!Object.hasOwn(system.sizes, text)) refuse(`\`${size}\` is no size of this system`);
    return system.sizes[text];
  }
  const number = numberOf(text, system.letters);
  if (number === undefined) {
    refuse(`\`${size}\` is no size of this system; write ${system.letters ? "L or L 1/2" : "54 or 7 1/2"}`);
  }
  const measure = system.rule.first + system.rule.step * number;
  const diameter = system.rule.measure === "circumference" ? measure / Math.PI : measure;
  if (!(diameter >= LEAST && diameter <= MOST)) refuse(`\`${size}\` is no size of a finger in this system`);
  return diameter;
}

function spaced(size) {
  const text = size.trim().toUpperCase().replace(/[½¼¾]/g, (sign) => FRACTIONS[sign]);
  return text.replace(/(?<=[A-Z])(?=[123]\/)/g, " ").replace(/\s+/g, " ").trim();
}

function numberOf(text, letters) {
  const match = (letters ? LETTER : NUMBER).exec(text);
  if (!text || !match) return undefined;
  const whole = letters ? match[1].charCodeAt(0) - "A".charCodeAt(0) + 1 : Number(match[1] ?? 0);
  return whole + (match[2] ? Number(match[2]) / Number(match[3]) : 0);
}

// Length [mm] of the strip for a ring: inside diameter and thickness [mm], on the mean diameter.
export function blankLength(inside, thickness) {
  aboveZero({ "inside-diameter": inside, thickness });
  return Math.PI * (inside + thickness);
}

function inside(given, tables) {
  const system = tables["ring-sizes"][given.system];
  if (!system) refuse(`the records have no ring sizes of ${given.system}`);
  return insideDiameter(given.size, system);
}

function ringSize(given, tables) {
  const diameter = inside(given, tables);
  return { outputs: { "inside-diameter": diameter, circumference: Math.PI * diameter } };
}

function ringBlank(given, tables) {
  const diameter = given["inside-diameter"] ?? inside(given, tables);
  return {
    outputs: { length: blankLength(diameter, given.thickness) },
    notes: given.thickness > THICK * diameter ? [["thick"]] : [],
  };
}

export const RUNS = { "ring-size": ringSize, "ring-blank": ringBlank };
