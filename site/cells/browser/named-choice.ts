import type { Parameter } from "@rollbook/lib";
import { shownRange } from "../../say/shown-range.js";
import { fromShown, toShown } from "../../say/units.js";
import { reader, spell } from "../reader.js";
import { element } from "./element.js";

/** What moves one value of a figure. */
export interface Slider {
  readonly row: HTMLElement;
  /** Shows an SI value without reporting it. */
  set(value: number): void;
}

/** A few settings that have names, as a button each: nobody has to know which number stands for which. */
export function namedChoice(
  id: string,
  { name, names = [], quantity, ...parameter }: Parameter,
  report: (value: number) => void,
): Slider {
  const { min, step } = shownRange({ name, quantity, ...parameter }, reader.units);
  const label = element("span", { id: `${id}-name`, class: "name" }, spell(name));
  const buttons = names.map((text) => element("button", { type: "button" }, spell(text)));
  const press = (chosen: number) => {
    for (const [i, button] of buttons.entries())
      button.setAttribute("aria-pressed", String(i === chosen));
  };
  for (const [i, button] of buttons.entries())
    button.addEventListener("click", () => {
      press(i);
      report(fromShown(quantity, min + i * step, reader.units));
    });
  const group = element("span", { role: "group", "aria-labelledby": `${id}-name` }, ...buttons);
  return {
    row: element("div", { class: "slider named", id: `${id}-names` }, label, group),
    set: (value) => press(Math.round((toShown(quantity, value, reader.units) - min) / step)),
  };
}
