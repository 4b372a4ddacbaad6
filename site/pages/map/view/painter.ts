import { type MapAxis, parameters, placeOn, type SetUpMap } from "@rollbook/lib";
import { element, reader, spell } from "@rollbook/page";
import { decimalsIn, decimalsOfStep } from "../../../say/shown-range.js";
import { formatNumber, toShown, unitOf } from "../../../say/units.js";
import { type Contour, contourLines, type Frame } from "../contours.js";
import { drawnOf } from "../drawn.js";
import { levelsBetween, rangeOf } from "../levels.js";
import type { Scales } from "../scales.js";
import { ticksOf } from "../ticks.js";
import { ground } from "./colours.js";
import { set, svg } from "./svg.js";

/** All that a drawing of the map shows. */
export interface Look {
  readonly map: SetUpMap;
  readonly scales: Scales;
  readonly along: MapAxis;
  readonly up: MapAxis;
}

interface Point {
  readonly x: number;
  readonly y: number;
}

/** The parts that are drawn, one on top of the other. */
function layersOf() {
  const lines = { "clip-path": "url(#map-clip)" };
  return {
    clip: svg("rect"),
    limit: svg("path", { class: "limit", ...lines }),
    grip: svg("path", { class: "grip", ...lines }),
    balance: svg("path", { class: "balance", ...lines }),
    neutral: svg("path", { class: "neutral", ...lines }),
    undrawn: svg("path", { class: "undrawn", ...lines }),
    border: svg("rect", { class: "border" }),
    axes: svg("g", { class: "axes" }),
    labels: svg("g", { class: "labels" }),
    hairs: svg("path", { class: "hairs" }),
    present: svg("path", { class: "present" }),
    halo: svg("circle", { class: "halo", r: 9 }),
    mark: svg("circle", { class: "mark", r: 9 }),
  };
}

/** The lines of a map: of equal balance, of equal turn, of the limits, and where nothing is drawn. */
function linesOf({ map, scales }: Look, frame: Frame) {
  const grid = (values: ArrayLike<number>) => ({ columns: map.columns, rows: map.rows, values });
  const levels = (values: Float64Array, step: number) => {
    const { least, most } = rangeOf(drawnOf(map, values));
    return levelsBetween(least, most, step);
  };
  const { understeerMargin, lateralAcceleration, room, state } = map;
  const margins = levels(understeerMargin, scales.balance);
  const turns = levels(lateralAcceleration, scales.grip);
  const limited = rangeOf(room).least < 0;
  const bare = state.some((one) => one > 0);
  return {
    balance: contourLines(grid(understeerMargin), margins, frame),
    grip: contourLines(grid(lateralAcceleration), turns, frame, "falling"),
    limit: limited ? contourLines(grid(room.map((steps) => -steps)), [0], frame) : [],
    undrawn: bare ? contourLines(grid(state.map(Math.sign)), [BESIDE], frame) : [],
  };
}

/** The map as a picture; the ground on a canvas, lines and words on top of it. */
export class MapPainter {
  readonly #canvas = element("canvas", { "aria-hidden": "true" });
  readonly #paint = ground(this.#canvas);
  readonly #layers = layersOf();
  readonly #drawing: SVGSVGElement;
  #frame: Frame = { left: 0, top: 0, width: 1, height: 1 };
  #shown: Look | undefined;

  /** @param node - an empty element that the map fills; it has its size from the style sheet */
  constructor(private readonly node: HTMLElement) {
    const { clip, ...layers } = this.#layers;
    const defs = svg("defs", {}, svg("clipPath", { id: "map-clip" }, clip), hatch(), dots());
    const hidden = { "aria-hidden": "true", focusable: "false" };
    this.#drawing = svg("svg", hidden, defs, ...Object.values(layers));
    node.append(this.#canvas, this.#drawing);
  }
  /** Draws a map and keeps it for later. */
  draw(look: Look): void {
    if (this.#frame.width <= 1) this.#measure();
    if (this.#shown?.along !== look.along || this.#shown?.up !== look.up) this.#drawAxes(look);
    this.#shown = look;
    this.#paint(look.map, look.scales.deepest, this.#frame);
    this.#drawLines(look);
    const { x, y } = this.#pointOf(look, look.along.present, look.up.present);
    set(this.#layers.present, { d: `M${x},${y - 8}l8,8l-8,8l-8,-8z` });
  }
  /** Puts the reading mark at two values. */
  point(x: number, y: number): void {
    if (!this.#shown) return;
    const at = this.#pointOf(this.#shown, x, y);
    const { halo, mark, hairs } = this.#layers;
    for (const circle of [halo, mark]) set(circle, { cx: at.x, cy: at.y });
    const { left, top, height } = this.#frame;
    set(hairs, { d: `M${left},${at.y}H${at.x}M${at.x},${top + height}V${at.y}` });
  }
  /** Draws the same again, for another size or other colours. */
  again(): void {
    this.#measure();
    const look = this.#shown;
    this.#shown = undefined;
    if (look) this.draw(look);
  }
  /** Where on the map an event is, both 0–1. */
  placeOf({ clientX, clientY }: MouseEvent): Point {
    const box = this.node.getBoundingClientRect();
    const { left, top, width, height } = this.#frame;
    const x = (clientX - box.left - this.node.clientLeft - left) / width;
    const y = 1 - (clientY - box.top - this.node.clientTop - top) / height;
    return { x: Math.min(1, Math.max(0, x)), y: Math.min(1, Math.max(0, y)) };
  }
  #measure(): void {
    const rem = Number.parseFloat(getComputedStyle(document.documentElement).fontSize);
    const width = Math.max(200, this.node.clientWidth);
    const height = Math.max(16 * rem, Math.min(0.8 * width, 32 * rem));
    const [left, right, top, bottom] = [3.4 * rem, 0.9 * rem, 2 * rem, 3.2 * rem];
    this.#frame = { left, top, width: width - left - right, height: height - top - bottom };
    set(this.#drawing, { width, height, viewBox: `0 0 ${width} ${height}` });
    const { left: x, top: y } = this.#frame;
    const box = { x, y, width: this.#frame.width, height: this.#frame.height };
    set(this.#layers.clip, box);
    set(this.#layers.border, box);
  }
  #pointOf({ along, up }: Look, x: number, y: number): Point {
    const { left, top, width, height } = this.#frame;
    return { x: left + placeOn(along, x) * width, y: top + (1 - placeOn(up, y)) * height };
  }
  #drawAxes(look: Look): void {
    const { left, top, width, height } = this.#frame;
    const rem = top / 2;
    const across = ticksOf(look.along, Math.max(2, Math.floor(width / (4 * rem)))).map((value) => {
      const { x } = this.#pointOf(look, value, look.up.min);
      return tick(tickText(look.along, value), x, top + height + 1.2 * rem, "middle");
    });
    const upwards = ticksOf(look.up, Math.max(2, Math.floor(height / (2.2 * rem)))).map((value) => {
      const { y } = this.#pointOf(look, look.along.min, value);
      return tick(tickText(look.up, value), left - 0.5 * rem, y + 0.3 * rem, "end");
    });
    this.#layers.axes.replaceChildren(
      ...across,
      ...upwards,
      tick(`↑ ${titleOf(look.up)}`, 0.2 * rem, 1.2 * rem, "start"),
      tick(`${titleOf(look.along)} →`, left + width, top + height + 2.7 * rem, "end"),
    );
  }
  #drawLines(look: Look): void {
    const { map, scales } = look;
    const frame = this.#frame;
    const lines = linesOf(look, frame);
    const isNeutral = ({ level }: Contour) => level === 0;
    set(this.#layers.balance, { d: pathOf(lines.balance.filter((one) => !isNeutral(one))) });
    set(this.#layers.neutral, { d: pathOf(lines.balance.filter(isNeutral)) });
    set(this.#layers.grip, { d: pathOf(lines.grip) });
    set(this.#layers.limit, { d: pathOf(lines.limit) });
    set(this.#layers.undrawn, { d: pathOf(lines.undrawn) });
    const labels = [
      ...lines.balance.map((line) => labelOf(line, scales.balance, true)),
      ...lines.grip.map((line) => labelOf(line, scales.grip, false)),
    ].filter((label) => label !== undefined);
    const onGround = ({ x, y }: Label) =>
      isDrawn(map, (x - frame.left) / frame.width, (y - frame.top) / frame.height);
    drawLabels(this.#layers.labels, labels.filter(onGround));
  }
}

/** Whether there is a balance at a place of the frame, both 0–1 from its upper left corner. */
function isDrawn({ columns, rows, state }: SetUpMap, right: number, down: number): boolean {
  const [column, row] = [Math.round(right * (columns - 1)), Math.round((1 - down) * (rows - 1))];
  return state[row * columns + column] === 0;
}

const BESIDE = 0.02; // near 0: nothing is drawn all the way to where there is a balance again

interface Label extends Point {
  readonly text: string;
  readonly kind: "of-balance" | "of-grip";
}

function labelOf({ level, label }: Contour, step: number, signed: boolean): Label | undefined {
  if (!label) return undefined;
  const shown = (value: number) => toShown("acceleration", value, reader.units);
  const number = formatNumber(shown(level), decimalsOfStep(shown(step)));
  const text = signed && level > 0 ? `+${number}` : number;
  return { ...label, text, kind: signed ? "of-balance" : "of-grip" };
}

const apart = { x: 44, y: 18 }; // px between two labels

/** Labels that do not stand on one another, in text elements that are used again. */
function drawLabels(group: SVGGElement, labels: readonly Label[]): void {
  const placed: Label[] = [];
  for (const label of labels) {
    const free = placed.every(
      ({ x, y }) => Math.abs(x - label.x) > apart.x || Math.abs(y - label.y) > apart.y,
    );
    if (free) placed.push(label);
  }
  while (group.childElementCount < placed.length) group.append(svg("text", { dy: "0.35em" }));
  while (group.childElementCount > placed.length) group.lastElementChild?.remove();
  placed.forEach(({ x, y, text, kind }, i) => {
    const node = group.children[i];
    if (!node) return;
    set(node, { x: x.toFixed(1), y: y.toFixed(1), class: kind });
    if (node.textContent !== text) node.textContent = text;
  });
}

const pathOf = (lines: readonly Contour[]): string => lines.map(({ path }) => path).join("");

const tick = (text: string, x: number, y: number, anchor: string) =>
  svg("text", { x, y, "text-anchor": anchor }, text);

function tickText({ parameter }: MapAxis, value: number): string {
  const { quantity, decimals } = parameters[parameter];
  const { units } = reader;
  return formatNumber(toShown(quantity, value, units), decimalsIn(quantity, decimals, units));
}

function titleOf({ name, parameter }: MapAxis): string {
  const unit = unitOf(parameters[parameter].quantity, reader.units);
  return spell(unit === "" ? name : `${name}, ${unit}`);
}

function hatch(): SVGElement {
  return svg(
    "pattern",
    { id: "map-hatch", width: 9, height: 9, patternUnits: "userSpaceOnUse" },
    svg("path", { class: "stroke", d: "M-2,2L2,-2M-1,10L10,-1M7,11L11,7" }),
  );
}

function dots(): SVGElement {
  return svg(
    "pattern",
    { id: "map-dots", width: 10, height: 10, patternUnits: "userSpaceOnUse" },
    svg("rect", { class: "paper", width: 10, height: 10 }),
    svg("circle", { class: "dot", cx: 5, cy: 5, r: 1.4 }),
  );
}
