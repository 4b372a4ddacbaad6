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
  const [right, bottom] = [left + width, top + height];
  const [across, up] = [
    ticksOf(axes.x, units, [left, right]),
    ticksOf(axes.y, units, [bottom, top]),
  ];
  const group = (attributes: Attributes, children: readonly Element[]) => {
    const made = svgElement(document, "g", attributes);
    made.append(...children);
    return made;
  };
  const each = (all: readonly Tick[], tag: string, attributes: (tick: Tick) => Attributes) =>
    all.map((tick) => svgElement(document, tag, attributes(tick)));
  const texts = (all: readonly Tick[], attributes: (tick: Tick) => Attributes) =>
    all.map((tick) => {
      const made = svgElement(document, "text", attributes(tick));
      made.textContent = tick.text;
      return made;
    });
  const [alongX, alongY] = [
    ({ at }: Tick) => `translate(${at},${bottom})`,
    ({ at }: Tick) => `translate(${left},${at})`,
  ];
  const [grid, tick] = [
    { "stroke-opacity": 0.12, stroke: "currentColor", "aria-hidden": "true" },
    { stroke: "currentColor", fill: "none", "aria-hidden": "true" },
  ];
  const label = { "font-variant": "tabular-nums" };
  const drawn = [
    group(
      { ...grid, "aria-label": "x-grid" },
      each(across, "line", ({ at }) => ({ x1: at, x2: at, y1: top, y2: bottom })),
    ),
    group(
      { ...grid, "aria-label": "y-grid" },
      each(up, "line", ({ at }) => ({ x1: left, x2: right, y1: at, y2: at })),
    ),
    group(
      { ...tick, "aria-label": "x-axis tick" },
      each(across, "path", (one) => ({ transform: alongX(one), d: "M0,0L0,4" })),
    ),
    group(
      { ...label, transform: "translate(0,9)", "aria-label": "x-axis tick label" },
      texts(across, (one) => ({ transform: alongX(one), y: "0.71em" })),
    ),
    group(
      { ...tick, "aria-label": "y-axis tick" },
      each(up, "path", (one) => ({ transform: alongY(one), d: "M0,0L-4,0" })),
    ),
    group(
      {
        ...{ ...label, transform: "translate(-9,0)" },
        ...{ "text-anchor": "end", "aria-label": "y-axis tick label" },
      },
      texts(up, (one) => ({ transform: alongY(one), y: "0.32em" })),
    ),
  ];
  return framed(document, axes, layout, units, drawn);
}
