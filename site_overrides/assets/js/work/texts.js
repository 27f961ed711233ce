// Sentences with numbers in them, filled as Python fills them: {name}, {name:.1f}, {name:g}.

// Numbers as Python's format() rounds them: exact, and a tie goes to the even digit.
// JavaScript's own rounding differs at ties alone, so more digits than a number has tell of one.
const MORE = 30;

const isTie = (longer, digits) => /^50*$/.test(longer.slice(-(MORE - digits)));

function evened(up, down) {
  return Number(up.replace(/e.*$/, "").replace(/[^\d]/g, "").at(-1)) % 2 ? down : up;
}

// A number with so many decimals: Python's f"{value:.2f}".
export function fixed(value, decimals) {
  if (!Number.isFinite(value)) return special(value);
  const size = Math.abs(value);
  const sign = value < 0 || Object.is(value, -0) ? "-" : "";
  if (size >= 1e21) return `${sign}${BigInt(size)}${decimals ? `.${"0".repeat(decimals)}` : ""}`;
  const up = size.toFixed(decimals);
  if (!isTie(size.toFixed(MORE), decimals)) return sign + up;
  const step = 10 ** -decimals;
  return sign + evened(up, (size - step / 2).toFixed(decimals));
}

// Six significant digits without needless noughts: Python's f"{value:g}".
export function general(value, digits = 6) {
  if (!Number.isFinite(value)) return special(value);
  if (value === 0) return Object.is(value, -0) ? "-0" : "0";
  const [mantissa, power] = scientific(value, digits - 1).split("e");
  const exponent = Number(power);
  if (exponent < -4 || exponent >= digits) return `${trimmed(mantissa)}e${signed(exponent)}`;
  return trimmed(fixed(Number(`${mantissa}e${power}`), Math.max(0, digits - 1 - exponent)));
}

function scientific(value, decimals) {
  const up = value.toExponential(decimals);
  const longer = value.toExponential(MORE).split("e")[0];
  if (!isTie(longer, decimals)) return up;
  const [head, power] = value.toExponential(decimals + 1).split("e"); // ends in 5, exactly
  const down = `${head.slice(0, -1).replace(/\.$/, "")}e${power}`;
  return evened(up, down);
}

const trimmed = (text) => (text.includes(".") ? text.replace(/\.?0+$/, "") : text);
const signed = (exponent) => (exponent < 0 ? "-" : "+") + String(Math.abs(exponent)).padStart(2, "0");
const special = (value) => (Number.isNaN(value) ? "nan" : value < 0 ? "-inf" : "inf");

// A whole number to the nearest, a half to the even one: Python's round().
export function rounded(value) {
  const low = Math.floor(value);
  const over = value - low;
  if (over !== 0.5) return over < 0.5 ? low : low + 1;
  return low % 2 ? low + 1 : low;
}

const PLACE = /\{([\w-]+)(?::(?:\.(\d)f|(g)))?\}/g;

// A template with its places filled from `values`.
export function fill(template, values) {
  return template.replace(PLACE, (_, name, decimals, short) => {
    const value = values[name];
    if (decimals !== undefined) return fixed(value, Number(decimals));
    return short ? general(value) : String(value);
  });
}

// `a, b or c`.
export const listed = (words, last = "or") =>
  words.length > 1 ? `${words.slice(0, -1).join(", ")} ${last} ${words.at(-1)}` : words[0];
