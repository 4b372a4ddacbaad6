import { format, fromShown, type Parameter, toShown, unitOf } from "@rollbook/lib";
import { element } from "./element.js";

/** A slider with a number box and single steps, all showing one value. */
export interface Slider {
  readonly row: HTMLElement;
  /** Shows an SI value without reporting it. */
  set(value: number): void;
}

const tidy = (value: number): number => Number(value.toPrecision(12));

/** Calls `report` with the SI value whenever the reader moves it. */
export function slider(id: string, parameter: Parameter, report: (value: number) => void): Slider {
  const { quantity, decimals, name } = parameter;
  const shown = (value: number) => tidy(toShown(quantity, value));
  const [min, max, step] = [shown(parameter.min), shown(parameter.max), shown(parameter.step)];
  const bounds = { min, max, step };
  const unit = unitOf(quantity);
  const rangeId = `${id}-range`;
  const range = element("input", { type: "range", id: rangeId, ...bounds });
  const box = element("input", {
    type: "number",
    inputmode: "decimal",
    ...bounds,
    step: "any",
    "aria-label": unit ? `${name} in ${unit}` : name,
  });
  const less = element("button", { type: "button", "aria-label": `${name}: one step less` }, "−");
  const more = element("button", { type: "button", "aria-label": `${name}: one step more` }, "+");
  const fault = element("p", { class: "fault", role: "alert", hidden: true });

  function show(value: number): void {
    range.value = String(value);
    range.setAttribute("aria-valuetext", format(quantity, fromShown(quantity, value), decimals));
    less.disabled = value <= min;
    more.disabled = value >= max;
    box.removeAttribute("aria-invalid");
    fault.hidden = true;
  }
  function move(value: number): void {
    const kept = tidy(Math.min(max, Math.max(min, value)));
    show(kept);
    box.value = kept.toFixed(decimals);
    report(fromShown(quantity, kept));
  }
  function refuse(): void {
    box.setAttribute("aria-invalid", "true");
    const given = box.value === "" ? "nothing readable" : box.value;
    const between = `${min.toFixed(decimals)} to ${max.toFixed(decimals)} ${unit}`.trim();
    fault.textContent = `${name} takes ${between}, not ${given}.`;
    fault.hidden = false;
  }
  function typed(): void {
    const value = box.valueAsNumber;
    if (value >= min && value <= max) {
      show(value);
      report(fromShown(quantity, value));
    } else refuse();
  }

  range.addEventListener("input", () => move(range.valueAsNumber));
  box.addEventListener("input", typed);
  less.addEventListener("click", () => move(range.valueAsNumber - step));
  more.addEventListener("click", () => move(range.valueAsNumber + step));

  const label = element("label", { for: rangeId }, name);
  const boxed = element("span", { class: "boxed" }, less, box, element("span", {}, unit), more);
  return {
    row: element("div", { class: "slider" }, label, range, boxed, fault),
    set(value) {
      show(shown(value));
      box.value = shown(value).toFixed(decimals);
    },
  };
}
