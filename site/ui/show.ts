import { type ComponentChild, render } from "preact";

/** Fills a place of the page with a view, in place of what stands there without a script. */
export function show(view: ComponentChild, place: HTMLElement): void {
  place.replaceChildren();
  render(view, place);
}
