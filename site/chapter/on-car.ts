import { build, type Plugin } from "esbuild";
import type { Car } from "../../lib/car/car.js";
import * as lib from "../../lib/index.js";
import { join } from "../build/join.js";
import type { Notebook } from "../build/notebook.js";
import * as alike from "../cells/alike.js";
import { reader } from "../cells/reader.js";
import type { ExerciseSpec, FigureSpec, Inputs, PredictSpec, WorkedSpec } from "../cells/spec.js";

/** Everything that the cells of a chapter asked to show. */
export interface ChapterOnCar {
  readonly figures: readonly FigureSpec<Inputs>[];
  readonly worked: readonly WorkedSpec[];
  readonly predictions: readonly PredictSpec[];
  readonly exercises: readonly ExerciseSpec[];
}

const packages: Plugin = {
  name: "packages-by-hand",
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^@rollbook\// }, ({ path }) => ({ path, namespace: "by-hand" }));
    onLoad({ filter: /.*/, namespace: "by-hand" }, ({ path }) => ({
      contents: `module.exports = rollbook[${JSON.stringify(path)}];`,
    }));
  },
};

/** A chapter as a function of what its two packages are. */
export type Chapter = (rollbook: unknown) => void;

const made = new Map<string, Promise<Chapter>>();

/** A chapter's cells as one function, made once: test files share it. */
export function compiled(notebook: Notebook): Promise<Chapter> {
  const known = made.get(notebook.name) ?? compile(notebook);
  made.set(notebook.name, known);
  return known;
}

async function compile(notebook: Notebook): Promise<Chapter> {
  const { outputFiles } = await build({
    stdin: { contents: join(notebook).source, loader: "ts" },
    bundle: true,
    write: false,
    format: "iife",
    plugins: [packages],
  });
  return new Function("rollbook", outputFiles[0]?.text ?? "") as Chapter;
}

const known = new WeakMap<Chapter, Map<Car, ChapterOnCar>>();

/** What the cells of a chapter show for a car, worked out once: several tests look at it. */
export function onCar(chapter: Chapter, car: Car): ChapterOnCar {
  const onCars = known.get(chapter) ?? new Map<Car, ChapterOnCar>();
  known.set(chapter, onCars);
  const shown = onCars.get(car) ?? runOn(chapter, car);
  onCars.set(car, shown);
  return shown;
}

/** Runs the cells of a chapter for a car, as a page does, and keeps what they asked to show. */
function runOn(chapter: Chapter, car: Car): ChapterOnCar {
  const shown = {
    figures: [] as FigureSpec<Inputs>[],
    worked: [] as WorkedSpec[],
    predictions: [] as PredictSpec[],
    exercises: [] as ExerciseSpec[],
  };
  const cells = {
    ...alike,
    figure: (spec: FigureSpec<Inputs>) => shown.figures.push(spec),
    worked: (spec: WorkedSpec) => shown.worked.push(spec),
    predict: (spec: PredictSpec) => shown.predictions.push(spec),
    exercise: (spec: ExerciseSpec) => shown.exercises.push(spec),
  };
  const { car: carBefore, units: unitsBefore } = reader;
  Object.assign(reader, { car, units: "metric" });
  try {
    chapter({ "@rollbook/lib": lib, "@rollbook/cells": cells });
    return shown;
  } finally {
    Object.assign(reader, { car: carBefore, units: unitsBefore });
  }
}
