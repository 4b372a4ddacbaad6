import type { Parameter } from "@rollbook/lib";
import { shownRange } from "../../say/shown-range.js";
import { format, fromShown, toShown, unitOf } from "../../say/units.js";
import { reader, spell } from "../reader.js";
import { setAttributes } from "../svg-element.js";
import { words } from "../words.js";
import { element, hide } from "./element.js";
import { namedChoice, type Slider } from "./named-choice.js";

const tidy = (value: number): number => Number(value.toPrecision(12));

/** What a slider is made of. */
function partsOf(id: string, parameter: Parameter) {
  const { decimals: _, ...bounds } = shownRange(parameter, reader.units);
  const name = spell(parameter.name);
  const unit = unitOf(parameter.quantity, reader.units);
  const button = (label: string, sign: string) =>
    element("button", { type: "button", "aria-label": label }, sign);
  const boxed = { type: "number", inputmode: "decimal", ...bounds, step: "any" };
  return {
    name,
    unit,
    label: element("label", { for: `${id}-range` }, name),
    beside: element("span", {}, unit),
    range: element("input", { type: "range", id: `${id}-range`, ...bounds }),
    box: element("input", { ...boxed, "aria-label": words.inUnit(name, unit) }),
    less: button(words.stepLess(name), "−"),
    more: button(words.stepMore(name), "+"),
    fault: element("p", { class: "fault", role: "alert", hidden: true }),
  };
}

/** A slider with a number box and single steps, all showing one value. */
class LiveSlider implements Slider {
  readonly row: HTMLElement;
  readonly #parts;
  readonly #shown;

  constructor(
    id: string,
    private readonly parameter: Parameter,
    private readonly report: (value: number) => void,
  ) {
    this.#shown = shownRange(parameter, reader.units);
    this.#parts = partsOf(id, parameter);
    const { label, beside, range, box, less, more, fault } = this.#parts;
    const { step } = this.#shown;
    label.append(beside);
    range.addEventListener("input", () => this.#move(range.valueAsNumber));
    box.addEventListener("input", () => this.#typed(box.valueAsNumber));
    less.addEventListener("click", () => this.#move(range.valueAsNumber - step));
    more.addEventListener("click", () => this.#move(range.valueAsNumber + step));
    const boxed = element("span", { class: "boxed" }, less, box, more);
    this.row = element("div", { class: "slider" }, label, range, boxed, fault);
  }
  set(value: number): void {
    const shown = tidy(toShown(this.parameter.quantity, value, reader.units));
    this.#show(shown);
    this.#parts.box.value = shown.toFixed(this.#shown.decimals);
  }
  #toSi(value: number): number {
    return fromShown(this.parameter.quantity, value, reader.units);
  }
  #show(value: number): void {
    const { range, less, more, box, fault } = this.#parts;
    const { min, max, decimals } = this.#shown;
    const { quantity } = this.parameter;
    range.value = String(value);
    const text = format(quantity, this.#toSi(value), decimals, reader.units);
    setAttributes(range, { "aria-valuetext": text });
    less.disabled = value <= min;
    more.disabled = value >= max;
    box.removeAttribute("aria-invalid");
    hide(fault, true);
  }
  #move(value: number): void {
    const { min, max, decimals } = this.#shown;
    const kept = tidy(Math.min(max, Math.max(min, value)));
    this.#show(kept);
    this.#parts.box.value = kept.toFixed(decimals);
    this.report(this.#toSi(kept));
  }
  #typed(value: number): void {
    const { min, max } = this.#shown;
    if (value >= min && value <= max) {
      this.#show(value);
      this.report(this.#toSi(value));
    } else this.#refuse();
  }
  #refuse(): void {
    const { box, fault, name, unit } = this.#parts;
    const { min, max, decimals } = this.#shown;
    const given = box.value === "" ? words.nothingReadable : box.value;
    const [from, to] = [min.toFixed(decimals), max.toFixed(decimals)];
    box.setAttribute("aria-invalid", "true");
    fault.textContent = words.outOfRange(name, from, to, unit, given);
    fault.hidden = false;
  }
}

/** Calls `report` with the SI value whenever the reader moves it; what has names gets a button for each. */
export const slider = (
  id: string,
  parameter: Parameter,
  report: (value: number) => void,
): Slider =>
  parameter.names ? namedChoice(id, parameter, report) : new LiveSlider(id, parameter, report);
