import { escapeHtml } from "../escape.js";
import { panelLabel } from "../layout.js";
import { type FigureSpec, type Inputs, startValues } from "../spec.js";
import { picture } from "./picture.js";

/** A figure as it stands before anybody moves it, as HTML. */
export function still<const I extends Inputs>(spec: FigureSpec<I>): string {
  const values = startValues(spec.inputs);
  const pictures = spec.panels.map((panel) =>
    picture(panel, values, panelLabel(panel, spec.title)),
  );
  const kind = ["figure", ...(spec.layout ? [spec.layout] : [])].join(" ");
  return (
    `<figure class="${kind}" id="${spec.id}" data-figure data-inputs="${Object.keys(spec.inputs).length}">` +
    `<figcaption>${escapeHtml(spec.title)}</figcaption>` +
    `<div class="panels">${pictures.join("")}</div>` +
    `<p class="says">${escapeHtml(spec.says(values))}</p></figure>`
  );
}
