// Small drawings of a run: both sections to one scale, and its work on a bar up to the ceiling.
import { sizeOf } from "./words.js";

// The name of the drawings' own language, as the browser has it.
const SVG = namespace();
const [TALL, WIDE, BAR] = [44, 240, 16];

function namespace() {
  const holder = document.createElement("template");
  holder.innerHTML = "<svg></svg>";
  return holder.content.firstChild.namespaceURI;
}

function made(tag, attributes, ...inside) {
  const element = document.createElementNS(SVG, tag);
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
  element.append(...inside);
  return element;
}

function drawing(width, height, label, ...shapes) {
  const svg = made("svg", { class: "plan-drawn", viewBox: `0 0 ${width} ${height}`, width, height, role: "img", "aria-label": label });
  svg.append(...shapes);
  return svg;
}

// The section of the start as a dashed outline, the section of the end toned within it.
export function sections(run, largest) {
  const scale = TALL / largest;
  const outline = (of, attributes) => outlineOf(of, scale, attributes);
  const before = outline(run.from, { fill: "none", stroke: "var(--ash)", "stroke-dasharray": "3 2" });
  const after = outline(run.to, { fill: "var(--hairline)", stroke: "var(--ink)" });
  return drawing(TALL * 2, TALL + 4, `${run.from.text} becomes ${run.to.text}, drawn to one scale`, before, after);
}

function outlineOf(of, scale, attributes) {
  const [width, height] = [of.width_mm ?? sizeOf(of), sizeOf(of)].map((size) => size * scale);
  const [x, y] = [TALL, (TALL + 4) / 2];
  if (of.shape === "round") return made("circle", { cx: x, cy: y, r: height / 2, ...attributes });
  const shown = Math.min(width, TALL * 2 - 4); // a wide strip is cut short: its thickness is what counts
  return made("rect", { x: x - shown / 2, y: y - height / 2, width: shown, height, ...attributes });
}

// Work since the anneal, each pass a step, up to the ceiling; hatched beyond it: do not enter.
export function work(run, mostWork) {
  const at = (strain) => (WIDE * strain) / mostWork;
  const ceiling = run.ceiling_pct === null ? undefined : -Math.log(1 - run.ceiling_pct / 100);
  const shapes = [made("rect", { x: 0.5, y: 4, width: at(run.true_strain), height: BAR, fill: "var(--hairline)", stroke: "var(--ink)" })];
  for (const pass of run.passes.slice(0, -1)) {
    const x = at(-Math.log(1 - (pass.since_anneal_thickness_pct ?? pass.since_anneal_area_pct) / 100) * (pass.to.shape === "square" ? 2 : 1));
    shapes.push(made("path", { d: `M${x} 4v${BAR}`, stroke: "var(--ink)", "stroke-width": 0.7 }));
  }
  if (ceiling !== undefined) {
    const x = at(ceiling);
    shapes.push(made("path", { d: `M${x} 0v${BAR + 8}`, stroke: "var(--ink)", "stroke-width": 3 }), ...hatched(x, WIDE - x));
  }
  return drawing(WIDE + 2, BAR + 8, "The work of the run as a share of what the ceiling allows", ...shapes);
}

function hatched(x, width) {
  const lines = Math.floor(width / 5);
  return Array.from({ length: lines }, (_, n) => made("path", { d: `M${x + 5 * n + 2} ${BAR + 4}l5 -${BAR}`, stroke: "var(--ink)", "stroke-width": 0.6 }));
}
