import { clipAttributes, isChart, layoutOf, panelLabel, pictureAttributes } from "../layout.js";
import { paint } from "../paint.js";
import { spell } from "../reader.js";
import type { Panel } from "../spec.js";
import { svgElement } from "../svg-element.js";
import { fitFrame } from "./frames.js";

/** A picture that the page makes for itself, without one of the kernel's to begin from. */
export interface LivePicture<Values> {
  readonly svg: SVGElement;
  paint(values: Values): void;
}

/**
 * A picture of a panel: marks at once, axes when their script is there.
 *
 * @param tell - takes the sentence when the axes cannot be had
 */
export function livePicture<Values>(
  panel: Panel<Values>,
  title: string,
  tell: (sentence: string) => void,
): LivePicture<Values> {
  const layout = layoutOf(panel);
  const svg = svgElement(document, "svg", {
    ...pictureAttributes(layout),
    class: isChart(panel) ? "panel chart" : "panel drawing",
    role: "img",
    "aria-label": spell(panelLabel(panel, title)),
    fill: "currentColor",
  });
  const clipped = svgElement(document, "svg", {
    ...clipAttributes(layout),
    "data-layer": "clipped",
  });
  const free = svgElement(document, "g", { "data-layer": "free" });
  if (isChart(panel)) svg.append(svgElement(document, "g", { "data-frame": "" }));
  svg.append(clipped, free);
  fitFrame(svg, panel, layout).catch(({ message }: Error) => tell(message));
  return { svg, paint: (values) => paint({ clipped, free }, panel.draw(values), layout) };
}
