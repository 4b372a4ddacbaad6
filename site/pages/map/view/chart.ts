import {
  decimalsIn,
  decimalsOfStep,
  formatNumber,
  type MapAxis,
  parameters,
  placeOn,
  type SetUpMap,
  toShown,
  unitOf,
} from "@rollbook/lib";
import { element, reader, spell } from "@rollbook/page";
import { type Contour, contourLines, type Frame } from "../contours.js";
import { drawnOf } from "../drawn.js";
import { levelsBetween, rangeOf } from "../levels.js";
import type { Scales } from "../scales.js";
import { ticksOf } from "../ticks.js";
import { words } from "../words.js";
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

/** The map as a picture; the ground on a canvas, lines and words on top of it. */
export function chart() {
  const canvas = element("canvas", { "aria-hidden": "true" });
  const paint = ground(canvas);
  const clip = svg("rect");
  const limit = svg("path", { class: "limit", "clip-path": "url(#map-clip)" });
  const grip = svg("path", { class: "grip", "clip-path": "url(#map-clip)" });
  const balance = svg("path", { class: "balance", "clip-path": "url(#map-clip)" });
  const neutral = svg("path", { class: "neutral", "clip-path": "url(#map-clip)" });
  const undrawn = svg("path", { class: "undrawn", "clip-path": "url(#map-clip)" });
  const border = svg("rect", { class: "border" });
  const axes = svg("g", { class: "axes" });
  const labels = svg("g", { class: "labels" });
  const hairs = svg("path", { class: "hairs" });
  const present = svg("path", { class: "present" });
  const [halo, mark] = [
    svg("circle", { class: "halo", r: 9 }),
    svg("circle", { class: "mark", r: 9 }),
  ];
  const drawing = svg(
    "svg",
    { "aria-hidden": "true", focusable: "false" },
    svg("defs", {}, svg("clipPath", { id: "map-clip" }, clip), hatch(), dots()),
    limit,
    grip,
    balance,
    neutral,
    undrawn,
    border,
    axes,
    labels,
    hairs,
    present,
    halo,
    mark,
  );
  const node = element("div", {
    class: "map",
    role: "application",
    tabindex: 0,
    "aria-roledescription": words.role,
    "aria-describedby": "map-keys",
  });
  node.append(canvas, drawing);
  let frame: Frame = { left: 0, top: 0, width: 1, height: 1 };
  let shown: Look | undefined;

  function measure(): void {
    const rem = Number.parseFloat(getComputedStyle(document.documentElement).fontSize);
    const width = Math.max(200, node.clientWidth);
    const height = Math.max(16 * rem, Math.min(0.8 * width, 32 * rem));
    const [left, right, top, bottom] = [3.4 * rem, 0.9 * rem, 2 * rem, 3.2 * rem];
    frame = { left, top, width: width - left - right, height: height - top - bottom };
    set(drawing, { width, height, viewBox: `0 0 ${width} ${height}` });
    const { left: x, top: y } = frame;
    const box = { x, y, width: frame.width, height: frame.height };
    set(clip, box);
    set(border, box);
  }

  const pointOf = ({ along, up }: Look, x: number, y: number): Point => ({
    x: frame.left + placeOn(along, x) * frame.width,
    y: frame.top + (1 - placeOn(up, y)) * frame.height,
  });

  function drawAxes(look: Look): void {
    const rem = frame.top / 2;
    const { left, top, width, height } = frame;
    const across = ticksOf(look.along, Math.max(2, Math.floor(width / (4 * rem)))).map((value) => {
      const { x } = pointOf(look, value, look.up.min);
      return tick(tickText(look.along, value), x, top + height + 1.2 * rem, "middle");
    });
    const upwards = ticksOf(look.up, Math.max(2, Math.floor(height / (2.2 * rem)))).map((value) => {
      const { y } = pointOf(look, look.along.min, value);
      return tick(tickText(look.up, value), left - 0.5 * rem, y + 0.3 * rem, "end");
    });
    axes.replaceChildren(
      ...across,
      ...upwards,
      tick(`↑ ${titleOf(look.up)}`, 0.2 * rem, 1.2 * rem, "start"),
      tick(`${titleOf(look.along)} →`, left + width, top + height + 2.7 * rem, "end"),
    );
  }

  function drawLines({ map, scales }: Look): void {
    const grid = (values: ArrayLike<number>) => ({ columns: map.columns, rows: map.rows, values });
    const levels = (values: Float64Array, step: number) => {
      const { least, most } = rangeOf(drawnOf(map, values));
      return levelsBetween(least, most, step);
    };
    const { understeerMargin, lateralAcceleration, room, state } = map;
    const margins = levels(understeerMargin, scales.balance);
    const lines = contourLines(grid(understeerMargin), margins, frame);
    const turns = levels(lateralAcceleration, scales.grip);
    const gripLines = contourLines(grid(lateralAcceleration), turns, frame, "falling");
    const limited = rangeOf(room).least < 0;
    const outside = limited ? contourLines(grid(room.map((steps) => -steps)), [0], frame) : [];
    const bare = state.some((one) => one > 0);
    const blank = bare ? contourLines(grid(state.map(Math.sign)), [BESIDE], frame) : [];
    set(balance, { d: pathOf(lines.filter(({ level }) => level !== 0)) });
    set(neutral, { d: pathOf(lines.filter(({ level }) => level === 0)) });
    set(grip, { d: pathOf(gripLines) });
    set(limit, { d: pathOf(outside) });
    set(undrawn, { d: pathOf(blank) });
    drawLabels(
      labels,
      [
        ...lines.map((line) => labelOf(line, scales.balance, true)),
        ...gripLines.map((line) => labelOf(line, scales.grip, false)),
      ]
        .filter((label) => label !== undefined)
        .filter(({ x, y }) =>
          isDrawn(map, (x - frame.left) / frame.width, (y - frame.top) / frame.height),
        ),
    );
  }

  return {
    node,
    /** Draws a map and keeps it for later. */
    draw(look: Look): void {
      if (frame.width <= 1) measure();
      if (shown?.along !== look.along || shown?.up !== look.up) drawAxes(look);
      shown = look;
      paint(look.map, look.scales.deepest, frame);
      drawLines(look);
      const { x, y } = pointOf(look, look.along.present, look.up.present);
      set(present, { d: `M${x},${y - 8}l8,8l-8,8l-8,-8z` });
    },
    /** Puts the reading mark at two values. */
    point(x: number, y: number): void {
      if (!shown) return;
      const at = pointOf(shown, x, y);
      for (const circle of [halo, mark]) set(circle, { cx: at.x, cy: at.y });
      const { left, top, height } = frame;
      set(hairs, { d: `M${left},${at.y}H${at.x}M${at.x},${top + height}V${at.y}` });
    },
    /** Draws the same again, for another size or other colours. */
    again(): void {
      measure();
      const look = shown;
      shown = undefined;
      if (look) this.draw(look);
    },
    /** Where on the map an event is, both 0–1. */
    placeOf({ clientX, clientY }: MouseEvent): Point {
      const box = node.getBoundingClientRect();
      const x = (clientX - box.left - node.clientLeft - frame.left) / frame.width;
      const y = 1 - (clientY - box.top - node.clientTop - frame.top) / frame.height;
      return { x: Math.min(1, Math.max(0, x)), y: Math.min(1, Math.max(0, y)) };
    },
  };
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
