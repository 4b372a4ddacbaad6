import { demoCar } from "@rollbook/lib";
import { contentOf, type Draft } from "./draft.js";
import { isNumber, leavesOf } from "./leaves.js";
import { type Path, valueAt } from "./path.js";

/** Places whose number is the workbook's own car's, and that the reader has neither typed nor confirmed. */
export function placesAsDemo(draft: Draft): Path[] {
  const own = new Set([...draft.own, ...Object.keys(draft.typed)]);
  return leavesOf(contentOf(draft))
    .filter((leaf) => isNumber(leaf) && !own.has(leaf.path))
    .filter(({ path, value }) => value === valueAt(demoCar, path))
    .map(({ path }) => path);
}
