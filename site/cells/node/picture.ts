import * as Plot from "@observablehq/plot";
import { quantities, toShown, type UnitSystem, unitOf } from "@rollbook/lib";
import { isChart, type Layout, layoutOf } from "../layout.js";
import { paint } from "../paint.js";
import { spell } from "../reader.js";
import type { Axis, Chart, Interval, Panel } from "../spec.js";
import { document } from "./document.js";

const svgNamespace = "http://www.w3.org/2000/svg";

function element(name: string, attributes: Record<string, string | number>): SVGElement {
  const made = document.createElementNS(svgNamespace, name) as unknown as SVGElement;
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, String(value));
  return made;
}

const shownDomain = ({ quantity, domain }: Axis, units: UnitSystem): Interval => [
  toShown(quantity, domain[0], units),
  toShown(quantity, domain[1], units),
];

const axisLabel = ({ label, quantity, names }: Axis, units: UnitSystem): string => {
  const unit = unitOf(quantity, units);
  return spell(unit === "" || names ? label : `${label} (${unit})`, units);
};

const plainNumber = (value: number): string =>
  String(Number(value.toPrecision(6))).replace("-", "−");

function ticks({ quantity, names }: Axis, units: UnitSystem) {
  if (!names) return { ticks: 6, tickFormat: plainNumber };
  const shown = names.map(
    ([position, name]) => [toShown(quantity, position, units), spell(name, units)] as const,
  );
  return {
    ticks: shown.map(([position]) => position),
    tickFormat: (position: number) => shown.find(([at]) => at === position)?.[1] ?? "",
  };
}

function axes({ x, y }: Chart<never>, layout: Layout, units: UnitSystem): Element[] {
  const { width, height, box } = layout;
  const [xTicks, yTicks] = [ticks(x, units), ticks(y, units)];
  const plot = Plot.plot({
    document: document as unknown as Document,
    width,
    height,
    marginTop: box.y,
    marginLeft: box.x,
    marginRight: width - box.x - box.width,
    marginBottom: height - box.y - box.height,
    x: { type: "linear", domain: shownDomain(x, units) },
    y: { type: "linear", domain: shownDomain(y, units) },
    marks: [
      Plot.gridX({ ...xTicks, strokeOpacity: 0.12 }),
      Plot.gridY({ ...yTicks, strokeOpacity: 0.12 }),
      Plot.axisX({ ...xTicks, label: null, tickSize: 4 }),
      Plot.axisY({ ...yTicks, label: null, tickSize: 4 }),
    ],
  });
  return [...plot.children].filter(({ tagName }) => tagName.toLowerCase() !== "style");
}

function axisTitles({ x, y }: Chart<never>, layout: Layout, units: UnitSystem): Element[] {
  const { width, height, box } = layout;
  const title = (text: string, at: Record<string, string | number>) => {
    const made = element("text", { fill: "currentColor", class: "axis-title", ...at });
    made.textContent = text;
    return made;
  };
  return [
    title(axisLabel(x, units) + (x.names ? "" : " →"), {
      x: width - 18,
      y: height - 10,
      "text-anchor": "end",
    }),
    title((y.names ? "" : "↑ ") + axisLabel(y, units), {
      x: 4,
      y: box.y - 12,
      "text-anchor": "start",
    }),
  ];
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

function frame(chart: Chart<never>, layout: Layout, units: UnitSystem): SVGElement {
  const group = element("g", { "data-frame": units, "text-anchor": "middle" });
  group.append(...axes(chart, layout, units), ...axisTitles(chart, layout, units));
  for (const part of group.querySelectorAll("*")) withoutDust(part);
  return group;
}

const readsAlike = ({ quantity }: Axis): boolean =>
  quantities[quantity].metric.size === quantities[quantity].us.size;

/** The frame in US units, waiting for a reader who wants it; none where both systems agree. */
function spareFrame(chart: Chart<never>, layout: Layout): string {
  if (readsAlike(chart.x) && readsAlike(chart.y)) return "";
  return `<template><svg>${frame(chart, layout, "us").outerHTML}</svg></template>`;
}

/** The still picture of a panel: its frame by Plot, its marks by the painter that the page uses. */
export function picture<Values>(panel: Panel<Values>, values: Values, label: string): string {
  const layout = layoutOf(panel);
  const chart = isChart(panel) ? (panel as Chart<never>) : undefined;
  const svg = element("svg", {
    xmlns: svgNamespace,
    viewBox: `0 0 ${layout.width} ${layout.height}`,
    width: layout.width,
    height: layout.height,
    class: chart ? "panel chart" : "panel drawing",
    role: "img",
    "aria-label": label,
    fill: "currentColor",
    "font-family": "system-ui, sans-serif",
    "font-size": 13,
  });
  const { x, y, width, height } = layout.box;
  const viewBox = [x, y, width, height].join(" ");
  const clipped = element("svg", { x, y, width, height, viewBox, "data-layer": "clipped" });
  const free = element("g", { "data-layer": "free" });
  paint({ clipped, free }, panel.draw(values), layout);
  if (chart) svg.append(frame(chart, layout, "metric"));
  svg.append(clipped, free);
  return svg.outerHTML + (chart ? spareFrame(chart, layout) : "");
}
