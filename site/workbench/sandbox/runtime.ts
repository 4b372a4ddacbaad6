/** What a worker holds before the edited cells: the whole physics, what a cell may call, and the answers to the page. */

import type { Car } from "@rollbook/lib";
import * as lib from "@rollbook/lib";
import { reader } from "../../cells/reader.js";
import type { UnitSystem } from "../../say/units.js";
import * as cells from "./cells.js";

/** What the page asks of a worker. */
export type Question =
  | { readonly kind: "run"; readonly car: Car; readonly units: UnitSystem }
  | {
      readonly kind: "draw";
      readonly cell: number;
      readonly index: number;
      readonly values: Readonly<Record<string, number>>;
    };

type Cells = (require: (name: string) => unknown, at: (cell: number) => void) => void;

const { at, drawers, left, ...forCells } = cells;
const offered: Record<string, unknown> = { "@rollbook/lib": lib, "@rollbook/cells": forCells };
const say = (answer: object): void => postMessage(JSON.stringify(answer));

function faultOf(error: unknown) {
  if (!(error instanceof Error)) return { message: String(error), stack: "" };
  return { message: error.message || error.name, stack: error.stack ?? "" };
}

function require(name: string): unknown {
  if (Object.hasOwn(offered, name)) return offered[name];
  throw new Error(`A cell may import @rollbook/lib and @rollbook/cells, not ${name}.`);
}

function step(cell: number): void {
  at(cell);
  say({ kind: "at", cell });
}

function run(taken: Cells): void {
  try {
    taken(require, step);
    say({ kind: "ran", outputs: left });
  } catch (error) {
    say({ kind: "ran", outputs: left, fault: faultOf(error) });
  }
}

function draw(index: number, values: Readonly<Record<string, number>>): void {
  try {
    say({ kind: "drawn", ...drawers.get(index)?.(values) });
  } catch (error) {
    say({ kind: "failed", fault: faultOf(error) });
  }
}

Error.stackTraceLimit = 50;
Object.assign(globalThis, {
  takeCells(taken: Cells) {
    addEventListener("message", ({ data }: MessageEvent<Question>) => {
      if (data.kind === "draw") draw(data.index, data.values);
      else {
        Object.assign(reader, { car: data.car, units: data.units });
        run(taken);
      }
    });
  },
});
