import type { UnitSystem } from "../say/units.js";
import { type Axes, axisLabel, frameKey, shownNames } from "./frame-key.js";
import type { Layout } from "./layout.js";
import type { Axis } from "./spec.js";
import { svgElement } from "./svg-element.js";

const plainNumber = (value: number): string =>
  String(Number(value.toPrecision(6))).replace("-", "−");

/** About how many numbers an axis has. */
const COUNT = 6;

/** Where an axis has ticks, or about how many, and what stands at them. */
export function ticks(axis: Axis, units: UnitSystem) {
  if (!axis.names) return { ticks: COUNT, tickFormat: plainNumber };
  const shown = shownNames(axis, units);
  return {
    ticks: shown.map(([position]) => position),
    tickFormat: (position: number) => shown.find(([at]) => at === position)?.[1] ?? "",
  };
}

/** What the axes measure, at their ends. */
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

/** What is drawn of a chart's axes, with what they measure and the key by which a page knows them. */
export function framed(
  document: Document,
  axes: Axes,
  layout: Layout,
  units: UnitSystem,
  drawn: readonly Element[],
): SVGElement {
  const key = frameKey(axes, units);
  const group = svgElement(document, "g", { "data-frame": key, "text-anchor": "middle" });
  group.append(...drawn, ...titles(document, axes, layout, units));
  for (const part of group.querySelectorAll("*")) withoutDust(part);
  return group;
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
