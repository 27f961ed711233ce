// The passes of a run: each step through groove, rolls or drawplate.
import { scheduleByHoles } from "../drawing.js";
import { maxDraft } from "../rolling.js";
import { section } from "../sections.js";
import { impossible } from "./impossible.js";
import * as path from "./path.js";

const MOST = 400; // passes of one run; more than that is a slip in the settings

const draftOf = (equipment) => maxDraft(equipment.roll_diameter / 2, equipment.friction);

// The fewest passes of a run: {section, strain}; none for forging, which has no passes of a size.
export function ofRun(start, end, process, equipment, perPass) {
  const total = path.work(start, end);
  if (process === "forge" || total <= 0) return [];
  const shares = sharesOf(start, end, process, equipment, perPass, total);
  return shares.map((share) => ({ section: path.at(start, end, share), strain: total * share }));
}

function sharesOf(start, end, process, equipment, perPass, total) {
  const most = -Math.log(1 - perPass);
  if (process === "flat" && bitten(start, equipment, perPass)) {
    return bittenShares(start.thickness, end.thickness, most, draftOf(equipment));
  }
  const number = Math.max(1, Math.ceil(total / most - 1e-9));
  holdNumber(number);
  return Array.from({ length: number }, (_, step) => (step + 1) / number);
}

// Shares [1] of the work after each pass: both limits times one factor, found by halving.
function bittenShares(before, after, most, draft) {
  const number = countOf(before, after, most, draft);
  holdNumber(number);
  let [low, high] = [0, 1];
  for (let step = 0; step < 60; step += 1) {
    const middle = (low + high) / 2;
    if (afterAll(before, number, middle * most, middle * draft) > after) low = middle;
    else high = middle;
  }
  const whole = Math.log(before / after);
  let thickness = before;
  const shares = Array.from({ length: number }, () => {
    thickness = next(thickness, high * most, high * draft);
    return Math.log(before / thickness) / whole;
  });
  return [...shares.slice(0, -1), 1];
}

function countOf(before, after, most, draft) {
  let number = 0;
  for (let thickness = before; thickness > after * (1 + 1e-9) && number <= MOST; number += 1) {
    thickness = next(thickness, most, draft);
  }
  return number;
}

function afterAll(before, number, most, draft) {
  let thickness = before;
  for (let step = 0; step < number; step += 1) thickness = next(thickness, most, draft);
  return thickness;
}

const next = (thickness, most, draft) => Math.max(thickness * Math.exp(-most), thickness - draft);

function holdNumber(number) {
  if (number > MOST) impossible("too-many-passes", { number });
}

// The fewest draws of a run through the holes of a plate [mm], the last of them its end.
export function throughHoles(start, sizes, perDraw) {
  const chosen = scheduleByHoles(asRound(start), sizes.at(-1), perDraw, sizes);
  const sections = chosen.map((size) => section("round", size, size));
  return sections.map((each) => ({ section: each, strain: path.work(start, each) }));
}

// The diameter [mm] of a round with the area of a section: a square's corners come off first.
export const asRound = ({ shape, area, thickness }) => (shape === "round" ? thickness : Math.sqrt((area * 4) / Math.PI));

// Whether the bite of the rolls, and not the limit of a pass [1], sets the first passes.
export const bitten = (start, equipment, perPass) => draftOf(equipment) < start.thickness * perPass;
