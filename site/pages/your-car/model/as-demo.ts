import { type Car, demoCar } from "@rollbook/lib";
import { contentOf, type Draft } from "./draft.js";
import { isNumber, leavesOf } from "./leaves.js";
import { type Path, valueAt } from "./path.js";

/**
 * Places whose number is the workbook's own car's, that the reader has neither typed nor confirmed, and
 * of which the file does not say where its number is from.
 */
export function placesAsDemo(draft: Draft): Path[] {
  const content = contentOf(draft);
  const known = Object.entries((content.known ?? {}) as Required<Car>["known"]);
  const told = known.filter(([, { how }]) => how !== "copied").map(([path]) => path);
  const own = new Set([...draft.own, ...Object.keys(draft.typed), ...told]);
  return leavesOf(content)
    .filter((leaf) => isNumber(leaf) && !own.has(leaf.path))
    .filter(({ path, value }) => value === valueAt(demoCar, path))
    .map(({ path }) => path);
}
