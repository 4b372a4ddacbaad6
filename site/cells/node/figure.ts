import { escapeHtml } from "../escape.js";
import { panelLabel } from "../layout.js";
import { type FigureSpec, type Inputs, startValues } from "../spec.js";
import { picture } from "./picture.js";
import { show } from "./show.js";

/** A picture with its result in a sentence; on the page it comes alive under its inputs. */
export function figure<const I extends Inputs>(spec: FigureSpec<I>): void {
  const values = startValues(spec.inputs);
  const pictures = spec.panels.map((panel) =>
    picture(panel, values, panelLabel(panel, spec.title)),
  );
  show(
    `<figure class="figure" id="${spec.id}" data-figure data-inputs="${Object.keys(spec.inputs).length}">` +
      `<figcaption>${escapeHtml(spec.title)}</figcaption>` +
      `<div class="panels">${pictures.join("")}</div>` +
      `<p class="says">${escapeHtml(spec.says(values))}</p></figure>`,
  );
}
