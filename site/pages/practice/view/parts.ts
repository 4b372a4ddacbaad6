import { Refusal } from "@rollbook/lib";
import { element } from "@rollbook/page";

/** One line, for eye and ear, on what goes on. */
export const notice = element("p", { role: "status", class: "notice" });

/** A button that does something. */
export function button(id: string, text: string, work: () => void, kind = ""): HTMLButtonElement {
  const made = element("button", { type: "button", id, ...(kind && { class: kind }) }, text);
  made.addEventListener("click", work);
  return made;
}

/** A part of the page with a heading that can be led to. */
export function part(id: string, heading: string, ...content: (Node | string)[]): HTMLElement {
  return element(
    "section",
    { id, "aria-labelledby": `${id}-h` },
    element("h2", { id: `${id}-h`, tabindex: -1 }, heading),
    ...content,
  );
}

/** Puts a part at the end of the page and leads to it. */
export function follow(place: Element, made: HTMLElement): void {
  place.append(made);
  made.querySelector("h2")?.focus();
}

/** Sentences as a list. */
export const sentences = (texts: readonly string[]): HTMLElement =>
  element("ul", {}, ...texts.map((text) => element("li", {}, text)));

/** What went wrong, in a sentence; anything but a refusal is a fault of the program. */
export function reasonOf(error: unknown): string {
  if (error instanceof Refusal) return error.message;
  throw error;
}
