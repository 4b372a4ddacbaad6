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
  /** Runs of one kernel share what they make, as far as no name is made twice. */
  readonly kernel?: string;
  /** The cell and what it needs of earlier ones, in the order in which they ran. */
  readonly cells?: readonly Cell[];
}

/** A cell: which it was in its kernel, the names that it makes, and what it does. */
type Cell = readonly [
  index: number,
  makes: string,
  work: (exports: Exports, require: Require) => unknown,
];

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

const namesIn = (makes: string): string[] => (makes === "" ? [] : makes.split(" "));

/** What cells have made together, and what each of them called. */
class Session {
  readonly #made = exportsOf();
  readonly #calls = new Map<number, Call[]>();
  /** Which cell makes each name, of the cells that ran or are to. */
  readonly #makers = new Map<string, number>();
  #present: Call[] = [];
  #last: Promise<unknown> = Promise.resolve();
  readonly #offered: Record<string, unknown> = {
    "@rollbook/lib": lib,
    "@rollbook/cells": {
      ...alike,
      figure: (spec: FigureSpec<Inputs>) => void this.#present.push({ kind: "figure", spec }),
      predict: (spec: PredictSpec) => void this.#present.push({ kind: "predict", spec }),
      exercise: (spec: ExerciseSpec) => void this.#present.push({ kind: "exercise", spec }),
      worked: () => {},
    },
  };
  readonly #require: Require = (name) => {
    if (Object.hasOwn(this.#offered, name)) return this.#offered[name];
    throw new Error(words.notHere(name));
  };

  /** Whether these cells would make no name anew that another cell made here. */
  takes(cells: readonly Cell[]): boolean {
    return cells.every(([index, makes]) =>
      namesIn(makes).every((name) => (this.#makers.get(name) ?? index) === index),
    );
  }
  /** Runs what has not run here yet; answers what the last of them called. */
  run(cells: readonly Cell[]): Promise<Ran> {
    for (const [index, makes] of cells)
      for (const name of namesIn(makes)) this.#makers.set(name, index);
    const next = this.#last.then(() => this.#runNow(cells));
    this.#last = next.catch(() => {});
    return next;
  }
  async #runNow(cells: readonly Cell[]): Promise<Ran> {
    for (const [index, , work] of cells) {
      if (this.#calls.has(index)) continue;
      this.#present = [];
      await work(this.#made, this.#require);
      this.#calls.set(index, this.#present);
    }
    return this.#calls.get(cells.at(-1)?.[0] ?? -1) ?? [];
  }
}

const sessions = new Map<string, Session[]>();

/** Runs the cells again, here; answers what the last of them called. */
export function replay(kernel: string, cells: readonly Cell[]): Promise<Ran> {
  const known = sessions.get(kernel) ?? [];
  const fit = known.find((session) => session.takes(cells)) ?? new Session();
  if (!known.includes(fit)) sessions.set(kernel, [fit, ...known]);
  return fit.run(cells);
}
