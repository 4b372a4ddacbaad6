import { format, fromShown, type Parameter, shownRange, toShown, unitOf } from "@rollbook/lib";
import { reader, spell } from "../reader.js";
import { words } from "../words.js";
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
  const { quantity } = parameter;
  const { units } = reader;
  const { decimals, ...bounds } = shownRange(parameter, units);
  const { min, max, step } = bounds;
  const name = spell(parameter.name);
  const unit = unitOf(quantity, units);
  const rangeId = `${id}-range`;
  const range = element("input", { type: "range", id: rangeId, ...bounds });
  const box = element("input", {
    type: "number",
    inputmode: "decimal",
    ...bounds,
    step: "any",
    "aria-label": words.inUnit(name, unit),
  });
  const less = element("button", { type: "button", "aria-label": words.stepLess(name) }, "−");
  const more = element("button", { type: "button", "aria-label": words.stepMore(name) }, "+");
  const fault = element("p", { class: "fault", role: "alert", hidden: true });
  const toSi = (value: number) => fromShown(quantity, value, units);
  const beside = element("span", {}, unit);

  function show(value: number): void {
    range.value = String(value);
    const named = parameter.names?.[Math.round(value - min)];
    if (named) beside.textContent = named;
    range.setAttribute("aria-valuetext", named ?? format(quantity, toSi(value), decimals, units));
    less.disabled = value <= min;
    more.disabled = value >= max;
    box.removeAttribute("aria-invalid");
    fault.hidden = true;
  }
  function move(value: number): void {
    const kept = tidy(Math.min(max, Math.max(min, value)));
    show(kept);
    box.value = kept.toFixed(decimals);
    report(toSi(kept));
  }
  function refuse(): void {
    box.setAttribute("aria-invalid", "true");
    const given = box.value === "" ? words.nothingReadable : box.value;
    const [from, to] = [min.toFixed(decimals), max.toFixed(decimals)];
    fault.textContent = words.outOfRange(name, from, to, unit, given);
    fault.hidden = false;
  }
  function typed(): void {
    const value = box.valueAsNumber;
    if (value >= min && value <= max) {
      show(value);
      report(toSi(value));
    } else refuse();
  }

  range.addEventListener("input", () => move(range.valueAsNumber));
  box.addEventListener("input", typed);
  less.addEventListener("click", () => move(range.valueAsNumber - step));
  more.addEventListener("click", () => move(range.valueAsNumber + step));

  const label = element("label", { for: rangeId }, name, beside);
  const boxed = element("span", { class: "boxed" }, less, box, more);
  return {
    row: element("div", { class: "slider" }, label, range, boxed, fault),
    set(value) {
      const shown = tidy(toShown(quantity, value, units));
      show(shown);
      box.value = shown.toFixed(decimals);
    },
  };
}
