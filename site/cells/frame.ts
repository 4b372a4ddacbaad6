import { axisX, axisY, gridX, gridY, plot } from "@observablehq/plot";
import type { UnitSystem } from "../say/units.js";
import { type Axes, shownDomain } from "./frame-key.js";
import { framed, ticks } from "./frame-parts.js";
import type { Layout } from "./layout.js";

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

/** The axes of a chart, drawn by Plot, in the kernel; the page draws the same letter by letter without it. */
export const frame = (
  document: Document,
  axes: Axes,
  layout: Layout,
  units: UnitSystem,
): SVGElement => framed(document, axes, layout, units, lines(document, axes, layout, units));
