// Compositions as people type them: `Ag 90, Cu 10`, in percent of the mass.
import { refuse } from "./guards.js";
import { general } from "./texts.js";

const PART = /^([A-Z][a-z]?)[ \t\n\r\f\v]*(\d+(?:\.\d+)?)$/;
const SLACK = 0.05; // percent by which shares may miss 100

// Shares [percent] by element of a text such as `Ag 90, Cu 10`; an object is taken as it is.
export function parse(given) {
  const shares = typeof given === "object" ? { ...given } : read(given);
  for (const [symbol, share] of Object.entries(shares)) {
    if (typeof share !== "number" || !(share >= 0)) refuse(`the share of ${symbol} is no number at or above zero`);
  }
  const total = Object.values(shares).reduce((sum, share) => sum + share, 0);
  if (Math.abs(total - 100) > SLACK) refuse(`shares sum to ${general(total)}, not to 100`);
  return shares;
}

function read(text) {
  const shares = {};
  for (const part of text.split(",").map((piece) => piece.trim())) {
    const match = PART.exec(part);
    if (!match) refuse(`\`${part}\` is no share; write \`Ag 90, Cu 10\``);
    if (Object.hasOwn(shares, match[1])) refuse(`${match[1]} is named twice`);
    shares[match[1]] = Number(match[2]);
  }
  return shares;
}
