import { existsSync, statSync } from "node:fs";
import { pathToFileURL } from "node:url";
import { inRoot } from "../build/paths.js";
import { fromCaller, UsageError } from "../commands/usage.js";
import type { Pins } from "./pins.js";

/** Where the chapters of a course lie, and the pins of each. */
export interface CourseFolder {
  readonly notebooks: string;
  readonly pinsOf: (name: string) => string;
}

const own: CourseFolder = {
  notebooks: inRoot("notebooks"),
  pinsOf: (name) => inRoot(`test/worked-figures/${name}.ts`),
};

/** The folder that `--course` names, its pins beside its notebooks; the workbook's own where it names none. */
export function courseFolder(given: string): CourseFolder {
  if (given === "") return own;
  const notebooks = fromCaller(given);
  if (!statSync(notebooks, { throwIfNoEntry: false })?.isDirectory())
    throw new UsageError(`--course is ${given}, which is no folder.`);
  return { notebooks, pinsOf: (name) => `${notebooks}/pins/${name}.ts` };
}

/** The pins of a chapter; undefined where it has no file of them. */
export async function readPins(path: string): Promise<Pins | undefined> {
  if (!existsSync(path)) return undefined;
  const { pins } = (await import(pathToFileURL(path).href)) as { pins: Pins };
  return pins;
}
