import { element } from "@rollbook/page";

/** One choice of a row of chips: its value, what it shows, and how it is read out. */
export interface Chip<Value extends string | number> {
  readonly value: Value;
  readonly text: string;
  readonly spoken?: string;
}

/** A question with answers that a thumb can hit; one of them at most is chosen. */
export function chips<Value extends string | number>(
  id: string,
  question: string,
  choices: readonly Chip<Value>[],
  chosen: Value | undefined,
  report: (value: Value) => void,
  kind = "",
): HTMLElement {
  const answers = choices.map(({ value, text, spoken }, i) => {
    const input = element("input", {
      type: "radio",
      name: id,
      id: `${id}-${i}`,
      checked: value === chosen,
      ...(spoken !== undefined && { "aria-label": spoken }),
    });
    input.addEventListener("change", () => report(value));
    return element("label", { class: "chip" }, input, element("span", {}, text));
  });
  return element(
    "fieldset",
    { class: `chips ${kind}`, id },
    element("legend", {}, question),
    element("div", {}, ...answers),
  );
}

/** Choices that are shown as they are called. */
export const plainChips = <Value extends string>(values: readonly Value[]): Chip<Value>[] =>
  values.map((value) => ({ value, text: value }));
