import { range } from "@observablehq/inputs";
import type { Parameter } from "@rollbook/lib";
import { panelLabel } from "../../../cells/layout.js";
import { type FigureSpec, type Inputs, startValues } from "../../../cells/spec.js";
import { shownRange } from "../../../say/shown-range.js";
import { fromShown, toShown, unitOf } from "../../../say/units.js";
import { element } from "./element.js";
import { picture } from "./picture.js";

/** A range input that reports SI values. */
function slider(parameter: Parameter, report: (value: number) => void): HTMLElement {
  const { name, quantity, start } = parameter;
  const { min, max, step, decimals } = shownRange(parameter, "metric");
  const unit = unitOf(quantity);
  const input = range([min, max], {
    step,
    value: toShown(quantity, start),
    label: unit === "" ? name : `${name} (${unit})`,
    format: (value) => value.toFixed(decimals),
  });
  input.addEventListener("input", () => report(fromShown(quantity, input.value)));
  return input;
}

/** Range inputs, a plot for each panel and the result in a sentence, drawn again on each input. */
export function figure<const I extends Inputs>(spec: FigureSpec<I>): HTMLElement {
  let values = startValues(spec.inputs);
  const panels = element("div", "panels");
  const says = element("p", "says");
  function redraw(): void {
    panels.replaceChildren(
      ...spec.panels.map((panel) => picture(panel, values, panelLabel(panel, spec.title))),
    );
    says.textContent = spec.says(values);
  }
  const sliders = Object.entries(spec.inputs).map(([key, parameter]) =>
    slider(parameter, (value) => {
      values = { ...values, [key]: value };
      redraw();
    }),
  );
  redraw();
  const made = element("figure", "figure");
  made.append(element("figcaption", "", spec.title), ...sliders, panels, says);
  made.id = spec.id;
  made.dataset.live = "";
  return made;
}
