import { axisX, axisY, gridX, gridY, plot } from "@observablehq/plot";
import type { UnitSystem } from "../say/units.js";
import { type Axes, axisLabel, frameKey, shownDomain, shownNames } from "./frame-key.js";
import type { Layout } from "./layout.js";
import type { Axis } from "./spec.js";
import { svgElement } from "./svg-element.js";

const plainNumber = (value: number): string =>
  String(Number(value.toPrecision(6))).replace("-", "−");

function ticks(axis: Axis, units: UnitSystem) {
  if (!axis.names) return { ticks: 6, tickFormat: plainNumber };
  const shown = shownNames(axis, units);
  return {
    ticks: shown.map(([position]) => position),
    tickFormat: (position: number) => shown.find(([at]) => at === position)?.[1] ?? "",
  };
}

function lines(document: Document, { x, y }: Axes, layout: Layout, units: UnitSystem): Element[] {
  const { width, height, box } = layout;
  const [xTicks, yTicks] = [ticks(x, units), ticks(y, units)];
  const drawn = plot({
    document,
    width,
    height,
    marginTop: box.y,
    marginLeft: box.x,
    marginRight: width - box.x - box.width,
    marginBottom: height - box.y - box.height,
    x: { type: "linear", domain: shownDomain(x, units) },
    y: { type: "linear", domain: shownDomain(y, units) },
    marks: [
      gridX({ ...xTicks, strokeOpacity: 0.12 }),
      gridY({ ...yTicks, strokeOpacity: 0.12 }),
      axisX({ ...xTicks, label: null, tickSize: 4 }),
      axisY({ ...yTicks, label: null, tickSize: 4 }),
    ],
  });
  return [...drawn.children].filter(({ tagName }) => tagName.toLowerCase() !== "style");
}

function titles(document: Document, { x, y }: Axes, layout: Layout, units: UnitSystem): Element[] {
  const { height, box } = layout;
  const title = (text: string, at: Record<string, string | number>) => {
    const attributes = { fill: "currentColor", class: "axis-title", ...at };
    const made = svgElement(document, "text", attributes);
    made.textContent = text;
    return made;
  };
  const [along, up] = [axisLabel(x, units), axisLabel(y, units)];
  const end = { x: box.x + box.width, y: height - 10, "text-anchor": "end" };
  const top = { x: 4, y: box.y - 12, "text-anchor": "start" };
  return [title(along + (x.names ? "" : " →"), end), title((y.names ? "" : "↑ ") + up, top)];
}

/** Drops digits finer than a screen shows. */
function withoutDust(part: Element): void {
  for (const { name, value } of [...part.attributes]) {
    const short = value.replace(/\d+\.\d{3,}/g, (digits) =>
      String(Number(Number(digits).toFixed(1))),
    );
    if (short !== value) part.setAttribute(name, short);
  }
}

/** The axes of a chart, drawn by Plot; the kernel and the page draw them with this same code. */
export function frame(
  document: Document,
  axes: Axes,
  layout: Layout,
  units: UnitSystem,
): SVGElement {
  const key = frameKey(axes, units);
  const group = svgElement(document, "g", { "data-frame": key, "text-anchor": "middle" });
  const [grid, words] = [
    lines(document, axes, layout, units),
    titles(document, axes, layout, units),
  ];
  group.append(...grid, ...words);
  for (const part of group.querySelectorAll("*")) withoutDust(part);
  return group;
}
