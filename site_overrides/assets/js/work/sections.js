// Sections of stock: round, square and flat, with their sizes in millimetres.
import { refuse } from "./guards.js";
import { fixed } from "./texts.js";

const FORM =
  /^(?:(round|square)[ \t\n\r\f\v]+(\d+(?:\.\d+)?)|flat[ \t\n\r\f\v]+(\d+(?:\.\d+)?)[ \t\n\r\f\v]*x[ \t\n\r\f\v]*(\d+(?:\.\d+)?))$/;

const NUDGE = 1 + 1e-12; // a half is rounded up even where dust has taken a bit of it

// A section of a shape; width and thickness are both the diameter of a round, the side of a square.
export function section(shape, width, thickness) {
  const square = width * thickness;
  const area = shape === "round" ? (square * Math.PI) / 4 : square;
  const text = shape === "flat" ? `flat ${size(width)}x${size(thickness)}` : `${shape} ${size(thickness)}`;
  return { shape, width, thickness, area, text };
}

// The section that `round 1.0`, `square 6` or `flat 20x1.5` names.
export function parse(text) {
  const match = FORM.exec(text.trim());
  if (!match) refuse(`\`${text}\` is no section; write \`round 1.0\`, \`square 6\` or \`flat 20x1.5\``);
  const [shape, width, thickness] = match[1]
    ? [match[1], Number(match[2]), Number(match[2])]
    : ["flat", Number(match[3]), Number(match[4])];
  if (Math.min(width, thickness) <= 0) refuse(`\`${text}\` has a size of zero`);
  return section(shape, width, thickness);
}

function size(value) {
  const text = fixed(value * NUDGE, 3).replace(/0+$/, "");
  return text.endsWith(".") ? `${text}0` : text;
}
