// What a wire bears, and how many grains lie across it.
import * as alloys from "./alloys.js";
import { drawForce, drawStress } from "./drawing.js";
import { aboveZero, refuse } from "./guards.js";
import { general } from "./texts.js";

const NEWTONS = 9.80665; // in a kilogram-force, exact
const MOST_SAID = 1e6; // percent of the strength; beyond it a number says nothing more
const HARD = ["hard", "spring", "extra-hard", "extra-spring"];

// Load [N] that breaks a wire: diameter [mm], tensile strength [MPa].
export function breakingLoad(diameter, tensile) {
  aboveZero({ diameter, tensile });
  return ((Math.PI * diameter ** 2) / 4) * tensile;
}

// Grains [1] across a wire: diameter and grain size [mm].
export function grainsAcross(diameter, grainSize) {
  aboveZero({ diameter, "grain-size": grainSize });
  return diameter / grainSize;
}

// Share [1] of a round section that a straight nick on one side takes: diameter, depth [mm].
export function nickShare(diameter, depth) {
  aboveZero({ diameter, nick: depth });
  if (depth >= diameter) refuse(`a nick of ${general(depth)} mm goes through the wire`);
  const radius = diameter / 2;
  const chord = Math.sqrt(2 * radius * depth - depth ** 2);
  const segment = radius ** 2 * Math.acos((radius - depth) / radius) - (radius - depth) * chord;
  return segment / (Math.PI * radius ** 2);
}

function load({ diameter, tensile }) {
  const newtons = breakingLoad(diameter, tensile);
  return { outputs: { load: newtons, "load-kgf": newtons / NEWTONS } };
}

function drawMargin(given, tables) {
  const { diameter, from } = given;
  const { drawn, annealed, notes } = strengths(given, tables);
  if (annealed > drawn) refuse("annealed wire is not stronger than drawn wire");
  const used = drawStress(from, diameter, given["half-angle"], given.friction, 1);
  const nick = nickShare(diameter, given.nick);
  const outputs = {
    "draw-stress": used * drawn,
    "draw-stress-annealed": used * annealed,
    "strength-used": 100 * used,
    "breaking-load": breakingLoad(diameter, drawn),
    "breaking-load-annealed": breakingLoad(diameter, annealed),
    "draw-force": drawForce(used * drawn, diameter),
    "draw-force-annealed": drawForce(used * annealed, diameter),
    "nick-share": 100 * nick,
    "nick-load": nick * breakingLoad(diameter, drawn),
    "nick-load-annealed": nick * breakingLoad(diameter, annealed),
  };
  const grain = grainOf(given, tables);
  if (grain) {
    outputs["grains-across"] = grainsAcross(diameter, grain);
    notes.push(["grain", { grain }]);
  }
  return { outputs, notes: [...notes, ...decisive(outputs, given)] };
}

// What the numbers show to break it, and nothing more.
function decisive(outputs, given) {
  const die = ["die", { "half-angle": given["half-angle"], friction: given.friction }];
  const [used, nick] = [outputs["strength-used"], outputs["nick-share"]];
  if (used >= 100) return [die, ["draw-breaks", { used: Math.min(used, MOST_SAID) }]];
  if (used + nick >= 100) return [die, ["nick-breaks", { used, nick, depth: given.nick }]];
  const left = outputs["breaking-load"] - outputs["draw-force"];
  const soft = outputs["breaking-load-annealed"] - outputs["draw-force-annealed"];
  return [die, ["load", { used, left, "left-annealed": soft }]];
}

// Strength [MPa] of drawn and of annealed wire, given or the alloy's lowest readings.
function strengths(given, tables) {
  if (!given.alloy) return { drawn: given.drawn, annealed: given.annealed, notes: [] };
  const { name, figures } = alloys.record(given, tables);
  const soft = tensile(figures, ["annealed"]);
  const hard = tensile(figures, HARD);
  if (!soft || !hard) {
    refuse(`the strength of ${name} is not known both drawn and annealed; give drawn and annealed instead`);
  }
  const [drawn, annealed] = [hard, soft].map(alloys.lowest);
  const said = { name, drawn, annealed, form: hard.form || "stock", state: hard.state };
  return { drawn, annealed, notes: [["strengths", said]] };
}

// The alloy's strength in the first of these states that it has: wire first.
function tensile(figures, states) {
  for (const state of states) {
    const fitting = (figures.tensile ?? []).filter((known) => known.state === state && !known.name);
    const inForm = (form) => fitting.find((known) => known.form === form);
    if (fitting.length) return inForm("wire") ?? inForm("") ?? fitting[0];
  }
  return undefined;
}

function grainOf(given, tables) {
  if (given["grain-size"] !== undefined) return given["grain-size"];
  if (!given.alloy) return undefined;
  const figures = alloys.record(given, tables).figures["grain-size"] ?? [];
  const soft = figures.find((known) => known.state === "annealed" && !known.name);
  return soft && alloys.highest(soft);
}

export const RUNS = {
  "breaking-load": load,
  "grains-across": (given) => ({ outputs: { number: grainsAcross(given.diameter, given["grain-size"]) } }),
  "draw-margin": drawMargin,
};
