import { circlesIn } from "./circles.js";
import type { Imports } from "./imports.js";

/**
 * Folders and single files, from the ground up: each may import from the floors below its own, and
 * from nothing beside it. An entry with a slash is a folder in a folder.
 */
type Floors = readonly (readonly string[])[];

/** The floors of `lib`, as DEVELOPERS.md draws them. */
export const floorsOfLib: Floors = [
  ["units", "random"],
  ["refusal"],
  ["check", "linear", "solve", "normal", "parameters"],
  ["tails"],
  ["tyre", "spring", "linkage", "load"],
  ["car"],
  ["statics"],
  ["balance"],
  ["transient"],
  ["change"],
  ["certainty", "map"],
  ["measure"],
  ["day"],
  ["physics"],
  ["index"],
];

/** One sentence for each import that leads up or across, each file without a floor, and each circle of files. */
export function faultsIn(imports: Imports, floors: Floors): string[] {
  const files = [...imports.keys()];
  return [
    ...files.filter((file) => floorOf(file, floors) < 0).map((file) => `${file} is on no floor.`),
    ...files.flatMap((file) => wrongWay(file, imports.get(file) ?? [], floors)),
    ...circlesIn(imports).map((circle) => `${circle.join(" → ")} → ${circle[0]} is a circle.`),
  ];
}

function wrongWay(file: string, imported: readonly string[], floors: Floors): string[] {
  const [own, floor] = [entryOf(file, floors), floorOf(file, floors)];
  return imported
    .filter((other) => entryOf(other, floors) !== own && floorOf(other, floors) >= floor)
    .map((other) => `${file} imports ${other}, which is not below it.`);
}

function floorOf(file: string, floors: Floors): number {
  const entry = entryOf(file, floors);
  return floors.findIndex((names) => entry !== undefined && names.includes(entry));
}

/** The folder of a file that has a floor, or its own name. */
function entryOf(file: string, floors: Floors): string | undefined {
  const name = file.replace(/\.ts$/, "");
  return floors.flat().find((entry) => name === entry || name.startsWith(`${entry}/`));
}
