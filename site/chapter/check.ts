import { readFileSync } from "node:fs";
import { readNotebooks } from "../build/build.js";
import { cachedOutputs } from "../build/cache.js";
import { CourseError, type Notebook } from "../build/notebook.js";
import { inRoot } from "../build/paths.js";
import { typecheck, writeJoined } from "../build/typecheck.js";
import type { Outputs, Progress } from "../kernel/run.js";
import { type CourseFolder, readPins } from "./folder.js";
import { compiled } from "./on-car.js";
import { carFaults } from "./on-cars.js";
import { physicsFaults, unusedFaults } from "./own-physics.js";
import { figuresIn, pinFaults } from "./pins.js";
import { answerFaults, chapterOf, resultFaults, shapeFaults } from "./shape.js";

/** What of a chapter is to be mended, in sentences. */
export interface Checked {
  readonly notebook: Notebook;
  readonly faults: readonly string[];
  readonly pinned: number;
}

/** What some work gives, or the sentences in which the course says why it cannot. */
async function orSentences<T>(work: () => Promise<T>): Promise<T | string[]> {
  try {
    return await work();
  } catch (error) {
    if (error instanceof CourseError) return error.message.split("\n");
    throw error;
  }
}

/** What a chapter's cells show; they are type-checked first, then by tslab's own compiler cell by cell, as in Jupyter. */
async function outputsOf(notebook: Notebook, progress: Progress): Promise<Outputs> {
  const joined = inRoot(".cache/joined-check");
  writeJoined([notebook], joined);
  await typecheck([notebook], joined);
  return (await cachedOutputs([notebook], { progress })).get(notebook.name) ?? {};
}

async function pinFaultsOf(path: string, figures: ReadonlyMap<string, number>): Promise<string[]> {
  const pins = await readPins(path);
  if (pins === undefined)
    return [`There is no pins file ${path}; each worked number needs its pin there.`];
  return pinFaults(pins, figures);
}

/** Looks at one chapter and no other: its sections, its cells, its pins, and what it does for other cars. */
export async function checkChapter(
  number: string,
  { notebooks, pinsOf }: CourseFolder,
  progress: Progress,
): Promise<Checked> {
  const notebook = chapterOf(readNotebooks(notebooks), number);
  const text = readFileSync(`${notebooks}/${notebook.name}.ipynb`, "utf8");
  const written = [shapeFaults, unusedFaults, physicsFaults].flatMap((rule) => rule(notebook));
  const faults = [...resultFaults(notebook, text), ...answerFaults(notebook, text), ...written];
  const outputs = await orSentences(() => outputsOf(notebook, progress));
  if (Array.isArray(outputs)) return { notebook, faults: [...faults, ...outputs], pinned: 0 };
  const figures = figuresIn(outputs);
  const pins = await pinFaultsOf(pinsOf(notebook.name), figures);
  const cars = carFaults(await compiled(notebook));
  return { notebook, faults: [...faults, ...pins, ...cars], pinned: figures.size };
}
