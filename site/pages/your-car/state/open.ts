import { computed } from "@preact/signals";
import { ownCars, reader } from "@rollbook/page";
import { placesAsDemo } from "../model/as-demo.js";
import { type Fault, faultsOf } from "../model/faults.js";
import { type Path, valueAt } from "../model/path.js";
import { draftFor, openId } from "./kept.js";

/** The car on the form. */
export const openDraft = computed(() => draftFor(openId.now.value));

/** All that is wrong with it. */
export const faults = computed<readonly Fault[]>(() => {
  const draft = openDraft.value;
  if (!draft) return [];
  const others = ownCars.now.value.cars.map(({ name }) => name);
  return faultsOf(
    draft,
    others.filter((name) => name !== draft.of),
    reader.units,
  );
});

const sentences = computed(
  () => new Map(faults.value.map(({ path, sentence }) => [path, sentence])),
);

/** What is wrong at a place; empty for nothing. */
export const faultAt = (path: Path): string => sentences.value.get(path) ?? "";

/** Places whose number is still the workbook's own car's. */
export const asDemo = computed(() => new Set(openDraft.value ? placesAsDemo(openDraft.value) : []));

/** What stands at a place of the car, apart from what was typed since. */
export const baseAt = (path: Path): unknown => valueAt(openDraft.value?.base ?? {}, path);

/** How many entries a list of the car has. */
export function entriesAt(list: Path): readonly unknown[] {
  const entries = baseAt(list);
  return Array.isArray(entries) ? entries : [];
}
