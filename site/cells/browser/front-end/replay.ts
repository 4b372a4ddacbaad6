import * as lib from "@rollbook/lib";
import * as alike from "../../alike.js";
import { frontEndWords as words } from "../../front-end-words.js";
import type { ExerciseSpec, FigureSpec, Inputs, PredictSpec } from "../../spec.js";

type Exports = Record<string, unknown>;
type Require = (name: string) => unknown;

/** What an output tells of the run that made it. */
export interface Run {
  /** Its name. */
  readonly run: string;
  /** The name of the notebook; empty where the kernel was not told. */
  readonly notebook: string;
  /** The cell and what it needs of earlier ones, in the order in which they ran. */
  readonly cells?: readonly ((exports: Exports, require: Require) => unknown)[];
}

export type Call =
  | { readonly kind: "figure"; readonly spec: FigureSpec<Inputs> }
  | { readonly kind: "predict"; readonly spec: PredictSpec }
  | { readonly kind: "exercise"; readonly spec: ExerciseSpec };

/** What the last cell of a run called. */
export type Ran = readonly Call[];

/** As the kernel's own: what a cell makes anew takes the place of what it imported. */
const exportsOf = (): Exports =>
  new Proxy<Exports>(
    {},
    {
      defineProperty(target, name, { get, value }) {
        if (typeof name === "string" && name !== "__esModule") target[name] = get ? get() : value;
        return true;
      },
      set(target, name, value) {
        if (typeof name === "string") target[name] = value;
        return true;
      },
    },
  );

function requireInto(calls: Call[]): Require {
  const offered: Record<string, unknown> = {
    "@rollbook/lib": lib,
    "@rollbook/cells": {
      ...alike,
      figure: (spec: FigureSpec<Inputs>) => void calls.push({ kind: "figure", spec }),
      predict: (spec: PredictSpec) => void calls.push({ kind: "predict", spec }),
      exercise: (spec: ExerciseSpec) => void calls.push({ kind: "exercise", spec }),
      worked: () => {},
    },
  };
  return (name) => {
    if (Object.hasOwn(offered, name)) return offered[name];
    throw new Error(words.notHere(name));
  };
}

/** Runs the cells again, here; answers what the last of them called. */
export async function replay(cells: NonNullable<Run["cells"]>): Promise<Ran> {
  const calls: Call[] = [];
  const [made, require] = [exportsOf(), requireInto(calls)];
  for (const cell of cells) {
    calls.length = 0;
    await cell(made, require);
  }
  return calls;
}
