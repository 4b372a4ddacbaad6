import { element } from "@rollbook/page";
import { words } from "../words.js";

export type PartName = keyof typeof words.part;

/** A part of the page: its place and what fills it whenever it is opened. */
export interface Part {
  readonly name: PartName;
  readonly section: HTMLElement;
  readonly open: (query: URLSearchParams) => void;
}

/** A part with its heading and introduction; `fill` is called with its place when it is opened. */
export function part(
  name: PartName,
  intro: string,
  fill: (place: HTMLElement, query: URLSearchParams) => void,
): Part {
  const place = element("div");
  const section = element(
    "section",
    { id: name, hidden: true },
    element("h2", {}, words.part[name]),
    element("p", { class: "intro" }, intro),
    place,
  );
  return { name, section, open: (query) => fill(place, query) };
}

/** A button that does something. */
export function button(text: string, act: () => void): HTMLButtonElement {
  const made = element("button", { type: "button" }, text);
  made.addEventListener("click", act);
  return made;
}
