import { element, spell } from "@rollbook/page";

type Content = Node | string;

/** A label, what it is for, and the place where a fault is told. */
export function field(id: string, label: string, input: HTMLElement, note = ""): HTMLElement {
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
