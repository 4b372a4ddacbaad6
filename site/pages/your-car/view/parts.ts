import { element, spell } from "@rollbook/page";

export function button(text: string, act: () => void, attributes = {}): HTMLButtonElement {
  const made = element("button", { type: "button", ...attributes }, text);
  made.addEventListener("click", act);
  return made;
}

/** The id of a place's input. */
export const idOf = (path: string): string => `at-${path.replace(/\./g, "-")}`;

/** Opens every fold around an element and puts the focus on it. */
export function goTo(id: string): void {
  const target = document.getElementById(id);
  if (!target) return;
  for (
    let fold = target.closest("details");
    fold;
    fold = fold.parentElement?.closest("details") ?? null
  )
    fold.open = true;
  target.focus();
  target.scrollIntoView({ block: "center" });
}

/** A list of definitions: what, and how much. */
export function pairs(rows: readonly (readonly [string, string])[]): HTMLElement {
  const list = element("dl", { class: "pairs" });
  for (const [name, value] of rows)
    list.append(element("dt", {}, spell(name)), element("dd", {}, spell(value)));
  return list;
}
