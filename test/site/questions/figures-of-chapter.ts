import * as lib from "@rollbook/lib";
import { transformSync } from "esbuild";
import { join } from "../../../site/build/join.js";
import type { Notebook } from "../../../site/build/notebook.js";
import * as pageCells from "../../../site/cells/browser/index.js";
import type { FigureSpec, Inputs } from "../../../site/cells/spec.js";

/** The figures of a chapter as its cells make them for a car. */
export function figuresOf(notebook: Notebook, car: lib.Car): Map<string, FigureSpec<Inputs>> {
  const figures = new Map<string, FigureSpec<Inputs>>();
  const cells = {
    ...pageCells,
    currentCar: () => car,
    figure: (spec: FigureSpec<Inputs>) => figures.set(spec.id, spec),
    worked: () => {},
    predict: () => {},
    exercise: () => {},
  };
  const { code } = transformSync(join(notebook).source, { loader: "ts", format: "cjs" });
  const require = (name: string) => (name === "@rollbook/lib" ? lib : cells);
  new Function("require", "module", code)(require, { exports: {} });
  return figures;
}
