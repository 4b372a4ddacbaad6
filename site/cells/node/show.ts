import { display } from "tslab";

/** Hands a cell's result to the front end. */
export function show(html: string): void {
  display.html(html);
}
