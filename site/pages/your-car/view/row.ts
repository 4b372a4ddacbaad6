import { element, reader, spell } from "@rollbook/page";
import { shownRangeOf } from "../model/number.js";
import { keyOf, type Path, placesOf, shapeAt } from "../model/path.js";
import { fields, whereOf, words } from "../words.js";
import { box } from "./box.js";
import type { Desk } from "./desk.js";

/** A fold that says how to measure something. */
export function how(name: string, help: string): HTMLElement {
  const summary = element("summary", { "aria-label": words.howNamed(name) }, words.how);
  return element("details", { class: "how" }, summary, element("p", {}, spell(help)));
}

function rangeOf(path: Path): string {
  const shape = shapeAt(path);
  return shape?.type === "number" ? shownRangeOf(shape, reader.units) : "";
}

/** The boxes of some places side by side, and under them what is wrong with any. */
export function boxes(desk: Desk, paths: readonly Path[], captionOf: (path: Path) => string) {
  const made = paths.flatMap((path) => {
    const one = box(desk.draft(), path, captionOf(path), (text) => desk.type(path, text));
    if (one) desk.boxes.set(path, one);
    return one ?? [];
  });
  return [
    element("div", { class: "boxes" }, ...made.map(({ whole }) => whole)),
    ...made.map(({ fault }) => fault),
  ];
}

/** A line of the form: what it is, its range and how to measure it, and its boxes. */
export function row(desk: Desk, key: string): HTMLElement {
  const paths = placesOf(key);
  const { label, help } = fields[keyOf(key)] ?? { label: key, help: undefined };
  const what = element("div", { class: "what" }, element("span", { class: "name" }, spell(label)));
  const range = rangeOf(paths[0] ?? "");
  if (range) what.append(" ", element("span", { class: "range" }, range));
  if (help) what.append(how(label, help));
  const line = element("div", { class: "row" }, what);
  line.append(...boxes(desk, paths, (path) => whereOf(path)));
  return line;
}
