// What a glowing black body looks like: Planck's law seen by the CIE 1931 standard observer.
import { refuse } from "./guards.js";
import { rounded } from "./texts.js";

// SI 2019, exact; h and c and k of the International System of Units.
const PLANCK = 6.62607015e-34; // J s
const LIGHT = 299792458; // m/s
const BOLTZMANN = 1.380649e-23; // J/K
const ZERO_CELSIUS = 273.15; // K
const MOST_LUMENS = 683.002; // lm/W, of the standard observer at 555 nm

// What pictures show as unlit soot and as full brightness: our choice, said on every scale.
const SOOT = [28, 26, 23]; // sRGB, 0 to 255
const [DIMMEST, BRIGHTEST] = [0.004, 1500]; // cd/m2
const [COOLEST, HOTTEST] = [300, 3000]; // degC

// Linear sRGB from XYZ, IEC 61966-2-1 (D65).
const SRGB_FROM_XYZ = [
  [3.2404542, -1.5371385, -0.4985314],
  [-0.969266, 1.8760108, 0.041556],
  [0.0556434, -0.2040259, 1.0572252],
];

// The light of a black body at a temperature [degC]: x, y (CIE 1931), luminance [cd/m2], whether sRGB can
// show it, and its hue, clipped. Observer: rows of wavelength [nm] and the three colour-matching functions.
export function glow(temperature, observer) {
  if (!(temperature >= COOLEST && temperature <= HOTTEST)) {
    refuse(`a heat that glows lies between ${COOLEST} and ${HOTTEST} degC`);
  }
  const kelvin = temperature + ZERO_CELSIUS;
  const step = (observer[1][0] - observer[0][0]) * 1e-9;
  const total = [0, 0, 0];
  for (const [wavelength, ...matching] of observer) {
    const radiance = planckRadiance(wavelength * 1e-9, kelvin);
    matching.forEach((value, axis) => (total[axis] += radiance * value * step));
  }
  const whole = total[0] + total[1] + total[2];
  const rgb = SRGB_FROM_XYZ.map((row) => row.reduce((sum, m, axis) => sum + (m * total[axis]) / total[1], 0));
  const clipped = rgb.map((channel) => Math.max(0, channel));
  return {
    x: total[0] / whole,
    y: total[1] / whole,
    luminance: MOST_LUMENS * total[1],
    inGamut: Math.min(...rgb) >= 0,
    hue: clipped.map((channel) => channel / Math.max(...clipped)),
  };
}

// Spectral radiance [W/(m2 sr m)] of a black body at a wavelength [m] and temperature [K].
function planckRadiance(wavelength, kelvin) {
  const power = (PLANCK * LIGHT) / (wavelength * BOLTZMANN * kelvin);
  return (2 * PLANCK * LIGHT ** 2) / wavelength ** 5 / Math.expm1(Math.min(power, 700));
}

// `#rrggbb` for screen and paper: the clipped hue, as bright as the logarithm of its luminance over soot.
export function shownColour(seen, floor, dimmest, brightest) {
  const span = Math.log(brightest / dimmest);
  const share = Math.min(1, Math.max(0, Math.log(Math.max(seen.luminance, dimmest) / dimmest) / span));
  const channels = seen.hue.map((hue, axis) => rounded(floor[axis] + (255 * encoded(hue) - floor[axis]) * share));
  return `#${channels.map((channel) => channel.toString(16).padStart(2, "0")).join("")}`;
}

const encoded = (linear) => (linear <= 0.0031308 ? 12.92 * linear : 1.055 * linear ** (1 / 2.4) - 0.055);

// What an observer calls the light at a temperature [degC]: rows of his word, its lowest and highest temperature.
export function named(names, temperature) {
  const meeting = names.filter(([, low, high]) => low <= temperature && temperature <= high);
  if (meeting.length) return meeting.map(([name]) => name).join(" or ");
  const below = names.filter(([, , high]) => high < temperature).at(-1);
  const above = names.find(([, low]) => low > temperature);
  if (below && above) return `between ${below[0]} and ${above[0]}`;
  return below ? `above ${below[0]}` : `below ${above[0]}`;
}

function heatColour({ temperature }, tables) {
  const seen = glow(temperature, tables.observer);
  const names = Object.entries(tables["colour-names"]).map(([observer, rows]) => [observer, named(rows, temperature)]);
  const outputs = {
    x: seen.x,
    y: seen.y,
    luminance: seen.luminance,
    hex: shownColour(seen, SOOT, DIMMEST, BRIGHTEST),
    "in-gamut": seen.inGamut,
    "seen-as": Object.fromEntries(names),
  };
  return { outputs, notes: seen.inGamut ? [] : [["clipped"]] };
}

export const RUNS = { "heat-colour": heatColour };
