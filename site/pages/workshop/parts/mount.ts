import { type ComponentChild, render } from "preact";

/** A place filled by the view library, for views that are still put together by hand. */
export function mounted(content: ComponentChild): HTMLElement {
  const place = document.createElement("div");
  render(content, place);
  return place;
}
