import * as Plot from "@observablehq/plot";
import { toShown, unitOf } from "@rollbook/lib";
import { isChart, type Layout, layoutOf } from "../layout.js";
import { paint } from "../paint.js";
import type { Axis, Chart, Interval, Panel } from "../spec.js";
import { document } from "./document.js";

const svgNamespace = "http://www.w3.org/2000/svg";

function element(name: string, attributes: Record<string, string | number>): SVGElement {
  const made = document.createElementNS(svgNamespace, name) as unknown as SVGElement;
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, String(value));
  return made;
}

const shownDomain = ({ quantity, domain }: Axis): Interval => [
  toShown(quantity, domain[0]),
  toShown(quantity, domain[1]),
];

const axisLabel = ({ label, quantity, names }: Axis): string => {
  const unit = unitOf(quantity);
  return unit === "" || names ? label : `${label} (${unit})`;
};

const plainNumber = (value: number): string =>
  String(Number(value.toPrecision(6))).replace("-", "−");

function ticks({ quantity, names }: Axis) {
  if (!names) return { ticks: 6, tickFormat: plainNumber };
  const shown = names.map(([position, name]) => [toShown(quantity, position), name] as const);
  return {
    ticks: shown.map(([position]) => position),
    tickFormat: (position: number) => shown.find(([at]) => at === position)?.[1] ?? "",
  };
}

function frame(chart: Chart<never>, { width, height, box }: Layout): SVGSVGElement {
  return Plot.plot({
    document: document as unknown as Document,
    width,
    height,
    marginTop: box.y,
    marginLeft: box.x,
    marginRight: width - box.x - box.width,
    marginBottom: height - box.y - box.height,
    x: { type: "linear", domain: shownDomain(chart.x) },
    y: { type: "linear", domain: shownDomain(chart.y) },
    marks: [
      Plot.gridX({ ...ticks(chart.x), strokeOpacity: 0.12 }),
      Plot.gridY({ ...ticks(chart.y), strokeOpacity: 0.12 }),
      Plot.axisX({ ...ticks(chart.x), label: null, tickSize: 4 }),
      Plot.axisY({ ...ticks(chart.y), label: null, tickSize: 4 }),
    ],
  }) as SVGSVGElement;
}

function axisTitles(chart: Chart<never>, { width, height, box }: Layout): SVGElement[] {
  const along = element("text", {
    x: width - 18,
    y: height - 10,
    "text-anchor": "end",
    fill: "currentColor",
    class: "axis-title",
  });
  along.textContent = `${axisLabel(chart.x)} →`;
  const up = element("text", {
    x: 4,
    y: box.y - 12,
    "text-anchor": "start",
    fill: "currentColor",
    class: "axis-title",
  });
  up.textContent = `↑ ${axisLabel(chart.y)}`;
  return [along, up];
}

function canvas({ width, height }: Layout): SVGElement {
  const svg = element("svg", { xmlns: svgNamespace, width, height });
  svg.setAttribute("viewBox", `0 0 ${width} ${height}`);
  return svg;
}

/** The still picture of a panel: its frame by Plot, its marks by the painter that the page uses. */
export function picture<Values>(panel: Panel<Values>, values: Values, label: string): string {
  const layout = layoutOf(panel);
  const svg = isChart(panel) ? frame(panel as Chart<never>, layout) : canvas(layout);
  const { x, y, width, height } = layout.box;
  const viewBox = [x, y, width, height].join(" ");
  const clipped = element("svg", { x, y, width, height, viewBox, "data-layer": "clipped" });
  const free = element("g", { "data-layer": "free" });
  paint({ clipped, free }, panel.draw(values), layout);
  svg.append(clipped, free);
  if (isChart(panel)) svg.append(...axisTitles(panel as Chart<never>, layout));
  for (const style of svg.querySelectorAll("style")) style.remove();
  svg.setAttribute("class", isChart(panel) ? "panel chart" : "panel drawing");
  svg.setAttribute("role", "img");
  svg.setAttribute("aria-label", label);
  svg.setAttribute("font-family", "system-ui, sans-serif");
  svg.setAttribute("font-size", "13");
  return svg.outerHTML;
}
