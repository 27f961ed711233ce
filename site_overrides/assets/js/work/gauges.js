// Wire gauges: the size of a number, and the number nearest to a size.
import { refuse } from "./guards.js";

const INCH = 25.4; // mm, exact

// A gauge number as the tables write it: `2/0` for `00`, `0` for `1/0`, `7` for `07`.
export function normal(number) {
  const text = number.replaceAll(" ", "");
  if (/^0{2,}$/.test(text)) return `${text.length}/0`;
  return text === "1/0" ? "0" : text.replace(/^0+/, "") || "0";
}

// Size [mm] of a gauge number; nothing is computed beyond the table.
export function size(number, table) {
  const wanted = normal(number);
  if (!Object.hasOwn(table, wanted)) {
    const bySize = Object.keys(table).sort((a, b) => table[a] - table[b]);
    refuse(`the table has no number \`${number}\`; it goes from ${bySize.at(-1)} to ${bySize[0]}`);
  }
  return table[wanted];
}

// The number whose size is nearest to a size [mm]; of two as near the larger.
export function nearest(millimetres, table) {
  if (!(millimetres > 0)) refuse("mm must be above zero");
  const off = (number) => Math.abs(table[number] - millimetres);
  return Object.keys(table).sort((a, b) => off(a) - off(b) || table[b] - table[a])[0];
}

// Whether a size [mm] lies outside the table's own sizes.
export function beyond(millimetres, table) {
  const sizes = Object.values(table);
  return !(Math.min(...sizes) <= millimetres && millimetres <= Math.max(...sizes));
}

function gauge(given, tables) {
  const table = tables.gauges[given.system] ?? {};
  if (!Object.keys(table).length) refuse(`the records have no table of ${given.system}`);
  if (given.number !== undefined) {
    const found = size(given.number, table);
    return { outputs: { mm: found, in: found / INCH } };
  }
  const number = nearest(given.mm, table);
  return {
    outputs: { nearest: number, difference: given.mm - table[number] },
    notes: beyond(given.mm, table) ? [["beyond", { number }]] : [],
  };
}

export const RUNS = { gauge };
