import { decimalsIn, formatNumber, fromShown, type Quantity, toShown, unitOf } from "@rollbook/lib";
import { element, reader, spell } from "@rollbook/page";
import { words } from "../words.js";

type Content = Node | string;

/** A label, what it is for, and the place where a fault is told. */
function field(id: string, label: string, input: HTMLElement, note = ""): HTMLElement {
  const small = note === "" ? [] : [element("span", {}, note)];
  return element(
    "div",
    { class: "field" },
    element("label", { for: id }, label, ...small),
    input,
    element("p", { class: "fault", id: `${id}-fault`, role: "alert", hidden: true }),
  );
}

type Input = HTMLInputElement | HTMLTextAreaElement;

/** Tells a fault at an input, or that there is none. */
export function tellFault(input: Input, fault: string | undefined): void {
  const place = document.getElementById(`${input.id}-fault`);
  if (place === null) return;
  place.textContent = fault ?? "";
  place.hidden = fault === undefined;
  if (fault === undefined) input.removeAttribute("aria-invalid");
  else input.setAttribute("aria-invalid", "true");
  if (fault === undefined) input.removeAttribute("aria-describedby");
  else input.setAttribute("aria-describedby", place.id);
}

/** A line of text; `report` gives back a sentence where it cannot be used. */
export function textField(
  id: string,
  label: string,
  value: string,
  report: (value: string) => string | undefined,
  more: Record<string, string | number | boolean> = {},
): HTMLElement {
  const input = element("input", {
    type: "text",
    id,
    maxlength: 200,
    autocomplete: "off",
    ...more,
  });
  input.value = value;
  input.addEventListener("change", () => tellFault(input, report(input.value.trim())));
  return field(id, label, input);
}

/** Lines of text. */
export function linesField(
  id: string,
  label: string,
  value: string,
  report: (value: string) => string | undefined,
  note = "",
): HTMLElement {
  const input = element("textarea", { id, rows: 4, maxlength: 10_000 });
  input.value = value;
  input.addEventListener("change", () => tellFault(input, report(input.value)));
  return field(id, label, input, note);
}

/** What a number measures, its range in SI, and digits after the point in the metric unit. */
export interface NumberRange {
  readonly quantity: Quantity;
  readonly min: number;
  readonly max: number;
  readonly decimals: number;
  readonly whole?: boolean;
}

/** A number in the reader's unit; only what lies in the range is reported, in SI. */
export function numberField(
  id: string,
  label: string,
  range: NumberRange,
  value: number,
  report: (value: number) => void,
): HTMLElement {
  const { quantity, min, max, whole = false } = range;
  const unit = unitOf(quantity, reader.units);
  const decimals = decimalsIn(quantity, range.decimals, reader.units);
  const shown = (si: number) => toShown(quantity, si, reader.units);
  const input = element("input", { type: "number", id, step: "any", inputmode: "decimal" });
  input.value = String(Number(shown(value).toFixed(decimals)));
  const fits = (number: number) =>
    number >= min - 1e-9 && number <= max + 1e-9 && (!whole || Number.isInteger(number));
  input.addEventListener("change", () => {
    const typed = input.value === "" ? Number.NaN : input.valueAsNumber;
    const si = fromShown(quantity, typed, reader.units);
    const ends = [
      formatNumber(roundedIn(Math.ceil, shown(min), decimals), decimals),
      formatNumber(roundedIn(Math.floor, shown(max), decimals), decimals),
    ];
    tellFault(input, fits(si) ? undefined : words.numberFault(label, ends, unit, whole));
    if (fits(si)) report(si);
  });
  return field(id, label, input, unit);
}

/** An end of a range, rounded so that it lies inside. */
function roundedIn(round: (value: number) => number, value: number, decimals: number): number {
  const scale = 10 ** decimals;
  return round(Number((value * scale).toPrecision(12))) / scale;
}

/** One of some choices. */
export function choiceField<Value extends string>(
  id: string,
  label: string,
  choices: readonly (readonly [Value, string])[],
  value: Value,
  report: (value: Value) => void,
): HTMLElement {
  const select = element("select", { id });
  select.append(
    ...choices.map(([key, text]) =>
      element("option", { value: key, selected: key === value }, text),
    ),
  );
  select.addEventListener("change", () => report(select.value as Value));
  return field(id, label, select);
}

/** A button that does something. */
export function button(
  id: string,
  label: Content,
  work: () => void,
  more: Record<string, string | boolean> = {},
): HTMLButtonElement {
  const made = element("button", { type: "button", id, ...more }, label);
  made.addEventListener("click", work);
  return made;
}

/** Texts of the library in the reader's spelling, one list item each. */
export const listOf = (texts: readonly string[], kind = "plain"): HTMLElement =>
  element("ul", { class: kind }, ...texts.map((text) => element("li", {}, spell(text))));
