import { ticks as roundNumbers } from "d3";
import { type Axes, shownDomain } from "../cells/frame-key.js";
import { framed, ticks } from "../cells/frame-parts.js";
import type { Layout } from "../cells/layout.js";
import type { Axis } from "../cells/spec.js";
import { svgElement } from "../cells/svg-element.js";
import type { UnitSystem } from "../say/units.js";

type Attributes = Readonly<Record<string, string | number>>;

interface Tick {
  /** In user units of the picture. */
  readonly at: number;
  readonly text: string;
}

function ticksOf(axis: Axis, units: UnitSystem, [start, end]: readonly [number, number]): Tick[] {
  const [from, to] = shownDomain(axis, units);
  const { ticks: wanted, tickFormat } = ticks(axis, units);
  const values = typeof wanted === "number" ? roundNumbers(from, to, wanted) : wanted;
  const place = (value: number) => start + ((value - from) / (to - from)) * (end - start);
  return values.map((value) => ({ at: place(value), text: tickFormat(value) }));
}

/** The box inside the axes, in user units of the picture. */
interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

const grid = { "stroke-opacity": 0.12, stroke: "currentColor", "aria-hidden": "true" };
const tickMark = { stroke: "currentColor", fill: "none", "aria-hidden": "true" };
const label = { "font-variant": "tabular-nums" };

/** Draws a group with a mark for each tick; a mark that is a text says the tick. */
type Draw = (
  group: Attributes,
  mark: "line" | "path" | "text",
  all: readonly Tick[],
  attributes: (tick: Tick) => Attributes,
) => Element;

const drawIn =
  (document: Document): Draw =>
  (group, mark, all, attributes) => {
    const drawn = svgElement(document, "g", group);
    drawn.append(
      ...all.map((tick) => {
        const made = svgElement(document, mark, attributes(tick));
        if (mark === "text") made.textContent = tick.text;
        return made;
      }),
    );
    return drawn;
  };

function grids(draw: Draw, { left, right, top, bottom }: Box, across: Tick[], up: Tick[]) {
  return [
    draw({ ...grid, "aria-label": "x-grid" }, "line", across, ({ at }) => ({
      x1: at,
      x2: at,
      y1: top,
      y2: bottom,
    })),
    draw({ ...grid, "aria-label": "y-grid" }, "line", up, ({ at }) => ({
      x1: left,
      x2: right,
      y1: at,
      y2: at,
    })),
  ];
}

function axisAcross(draw: Draw, { bottom }: Box, across: Tick[]) {
  const along = ({ at }: Tick) => `translate(${at},${bottom})`;
  const labels = { ...label, transform: "translate(0,9)", "aria-label": "x-axis tick label" };
  return [
    draw({ ...tickMark, "aria-label": "x-axis tick" }, "path", across, (tick) => ({
      transform: along(tick),
      d: "M0,0L0,4",
    })),
    draw(labels, "text", across, (tick) => ({ transform: along(tick), y: "0.71em" })),
  ];
}

function axisUp(draw: Draw, { left }: Box, up: Tick[]) {
  const along = ({ at }: Tick) => `translate(${left},${at})`;
  const labels = {
    ...label,
    transform: "translate(-9,0)",
    "text-anchor": "end",
    "aria-label": "y-axis tick label",
  };
  return [
    draw({ ...tickMark, "aria-label": "y-axis tick" }, "path", up, (tick) => ({
      transform: along(tick),
      d: "M0,0L-4,0",
    })),
    draw(labels, "text", up, (tick) => ({ transform: along(tick), y: "0.32em" })),
  ];
}

/**
 * The axes of a chart as the kernel draws them with Plot, letter by letter: numbers, ticks and a pale
 * grid between fixed ends, which is all that is left of a plotting library in a page.
 */
export function frame(
  document: Document,
  axes: Axes,
  layout: Layout,
  units: UnitSystem,
): SVGElement {
  const { x: left, y: top, width, height } = layout.box;
  const box = { left, right: left + width, top, bottom: top + height };
  const across = ticksOf(axes.x, units, [box.left, box.right]);
  const up = ticksOf(axes.y, units, [box.bottom, box.top]);
  const draw = drawIn(document);
  const drawn = [
    ...grids(draw, box, across, up),
    ...axisAcross(draw, box, across),
    ...axisUp(draw, box, up),
  ];
  return framed(document, axes, layout, units, drawn);
}
