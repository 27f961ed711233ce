// Heat that melts a charge, from its elements by mass.
import * as alloys from "./alloys.js";
import { aboveZero, refuse } from "./guards.js";
import { general } from "./texts.js";

const ROOM = 20; // degC, from which metal is heated

// A property per gram mixed by mass: shares [percent] and the elements' values.
export function mixed(shares, values, what) {
  const missing = Object.keys(shares).filter((symbol) => values[symbol] === undefined);
  if (missing.length) refuse(`no ${what} of ${missing.join(", ")} is known`);
  return Object.entries(shares).reduce((sum, [symbol, share]) => sum + share * values[symbol], 0) / 100;
}

// Specific heat [J/(g K)] from cold to hot: the mean of both, the cold one where the hot is not known.
export const meanSpecific = (cold, hot) => (hot === undefined ? cold : (cold + hot) / 2);

// Heat [kJ] that brings cold metal above its liquidus: mass [g], specific heat [J/(g K)], latent heat [J/g],
// temperature and ends of melting [degC]. Parts are left out where the ends are not known.
export function heatToLiquid(mass, specific, latent, temperature, ends) {
  holdHot(temperature);
  aboveZero({ mass });
  const heat = (mass * (specific * (temperature - ROOM) + latent)) / 1000;
  if (!ends) return { melting: (mass * latent) / 1000, heat };
  const [solidus, liquidus] = ends;
  if (temperature < liquidus) {
    refuse(
      `at ${general(temperature)} degC the metal is neither solid nor wholly liquid; ask for a temperature below ${general(solidus)} or from ${general(liquidus)} degC on`,
    );
  }
  return {
    "to-solidus": (mass * specific * (solidus - ROOM)) / 1000,
    melting: (mass * (latent + specific * (liquidus - solidus))) / 1000,
    superheat: (mass * specific * (temperature - liquidus)) / 1000,
    heat,
  };
}

// Heat [kJ] that warms solid metal.
export function heatOfSolid(mass, specific, temperature) {
  holdHot(temperature);
  aboveZero({ mass });
  return (mass * specific * (temperature - ROOM)) / 1000;
}

function holdHot(temperature) {
  if (temperature <= ROOM) refuse(`the temperature lies above the ${ROOM} degC of the room`);
}

function heatToMelt(given, tables) {
  const { mass, temperature } = given;
  const { shares, ends } = metal(given, tables);
  const specific = mixed(shares, means(tables.thermal), "specific heat");
  if (ends && temperature < ends[0]) {
    const whole = heatOfSolid(mass, specific, temperature);
    const outputs = { "to-solidus": whole, melting: 0, superheat: 0, heat: whole };
    return { outputs, notes: [["solid", { solidus: ends[0] }], ...torch(whole, tables)] };
  }
  const latents = Object.entries(tables.thermal).map(([symbol, heats]) => [symbol, heats["latent-heat"]]);
  const latent = mixed(shares, Object.fromEntries(latents), "latent heat");
  const outputs = heatToLiquid(mass, specific, latent, temperature, ends);
  return { outputs, notes: [...(ends ? [] : [["range-unknown"]]), ...torch(outputs.heat, tables)] };
}

// Composition and ends of melting [degC]; no ends for several elements without a record.
function metal(given, tables) {
  if (given.elements) {
    const symbols = Object.keys(given.elements);
    const point = tables.thermal[symbols[0]]?.["melting-point"];
    return { shares: given.elements, ends: symbols.length === 1 && point !== undefined ? [point, point] : undefined };
  }
  const record = alloys.record(given, tables);
  const figures = (...quantities) => quantities.flatMap((quantity) => record.figures[quantity] ?? []);
  const below = figures("solidus", "melting-point").map(alloys.lowest);
  const above = figures("liquidus", "melting-point").map(alloys.highest);
  if (!below.length || !above.length) {
    refuse(`no melting range of ${record.name} is known; give its elements instead`);
  }
  return { shares: record.composition, ends: [Math.min(...below), Math.max(...above)] };
}

// The specific heat of each element that has one, the mean of cold and hot where both are known.
function means(thermal) {
  const known = Object.entries(thermal).filter(([, heats]) => heats["specific-heat"] !== undefined);
  return Object.fromEntries(
    known.map(([symbol, heats]) => [symbol, meanSpecific(heats["specific-heat"], heats["specific-heat-hot"])]),
  );
}

// What a torch must give so that its share [percent] is the heat [kJ] that is needed.
function torch(heat, tables) {
  const row = tables.settings["torch-share"]?.[0];
  if (!row?.low || !row.high) return [];
  const { low, high, said } = row;
  return [["torch", { low, high, said, least: (100 * heat) / high, most: (100 * heat) / low }]];
}

export const RUNS = { "heat-to-melt": heatToMelt };
