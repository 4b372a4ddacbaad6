import { escapeHtml } from "../escape.js";
import { panelLabel } from "../layout.js";
import { type FigureSpec, type Inputs, startValues } from "../spec.js";
import { ensureLooks } from "./ensure-looks.js";
import { picture } from "./picture.js";

/** A figure as it stands before anybody moves it, as HTML. */
export function still<const I extends Inputs>(spec: FigureSpec<I>): string {
  ensureLooks(spec);
  const { id, title, inputs, after, layout, looks } = spec;
  const values = startValues(inputs);
  const pictures = spec.panels.map((panel) => picture(panel, values, panelLabel(panel, title)));
  const explains = looks ? ` data-explained="${after}"` : "";
  const kind = ["figure", ...(layout ? [layout] : [])].join(" ");
  return (
    `<figure class="${kind}" id="${id}" data-figure data-inputs="${Object.keys(inputs).length}"${explains}>` +
    `<figcaption>${escapeHtml(title)}</figcaption>` +
    `<div class="panels">${pictures.join("")}</div>` +
    `<p class="says">${escapeHtml(spec.says(values))}</p></figure>`
  );
}
