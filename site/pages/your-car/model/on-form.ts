import type { Item, Section } from "../sections.js";
import { sections } from "../sections.js";
import { type Content, type Path, placesOf, valueAt } from "./path.js";

/** Every place of a section that a car has on the form: its fields, and its parts whether there or not. */
export const placesIn = ({ items }: Section, base: Content): Path[] =>
  items.flatMap((item) => placesOfItem(item, base));

function placesOfItem(item: Item, base: Content): Path[] {
  const has = (path: Path) => valueAt(base, path) !== undefined;
  if ("row" in item) return placesOf(item.row);
  if ("part" in item) {
    const inside = has(item.part) ? item.items.flatMap((one) => placesOfItem(one, base)) : [];
    return [item.part, ...inside];
  }
  if ("list" in item) {
    const entries = valueAt(base, item.list);
    const count = Array.isArray(entries) ? entries.length : 0;
    return Array.from({ length: count }, (_, i) =>
      item.columns.map((column) => `${item.list}.${i}.${column}`),
    ).flat();
  }
  return has(item.reach) ? reachPlaces(item.reach) : [];
}

/** The three places of how far a lever can be set. */
export const reachPlaces = (reach: Path): Path[] =>
  ["min", "max", "step"].map((end) => `${reach}.${end}`);

/** The place itself, or the part around it that is on the form; the name where there is none. */
export function nearestOnForm(path: Path, base: Content): Path {
  const all = new Set(sections.flatMap((section) => placesIn(section, base)));
  let near = path;
  while (near !== "" && !all.has(near)) near = near.split(".").slice(0, -1).join(".");
  return near || "name";
}
