import { element } from "@rollbook/page";

/** What is read now and then: a line that unfolds. */
export function fold(id: string, title: string, ...content: (Node | string)[]): HTMLElement {
  return element("details", { id }, element("summary", {}, title), ...content);
}
