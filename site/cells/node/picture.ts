import { frame } from "../frame.js";
import { clipAttributes, isChart, layoutOf, pictureAttributes } from "../layout.js";
import { paint } from "../paint.js";
import { reader } from "../reader.js";
import type { Panel } from "../spec.js";
import { svgElement } from "../svg-element.js";
import { document as kernelDocument } from "./document.js";

const document = kernelDocument as unknown as Document;

/** Words stay legible on what they cross; set once for their layer. */
const halo = {
  stroke: "var(--paper, #fff)",
  "stroke-width": "4",
  "stroke-linejoin": "round",
  "paint-order": "stroke",
};

/** The still picture of a panel: its frame by Plot, its marks by the painter that the page uses. */
export function picture<Values>(panel: Panel<Values>, values: Values, label: string): string {
  const layout = layoutOf(panel);
  const svg = svgElement(document, "svg", {
    xmlns: "http://www.w3.org/2000/svg",
    ...pictureAttributes(layout),
    class: isChart(panel) ? "panel chart" : "panel drawing",
    role: "img",
    "aria-label": label,
    fill: "currentColor",
    "font-family": "system-ui, sans-serif",
    "font-size": 13,
  });
  const clip = { ...clipAttributes(layout), "data-layer": "clipped" };
  const clipped = svgElement(document, "svg", clip);
  const free = svgElement(document, "g", { "data-layer": "free", ...halo });
  paint({ clipped, free }, panel.draw(values), layout);
  if (isChart(panel)) svg.append(frame(document, panel, layout, reader.units));
  svg.append(clipped, free);
  return svg.outerHTML;
}
