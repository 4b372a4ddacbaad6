import { expect, test } from "vitest";
import { inRoot } from "../../site/build/paths.js";
import { circlesIn } from "../../site/commands/floors/circles.js";
import { faultsIn, floorsOfLib } from "../../site/commands/floors/floors.js";
import { importsIn, importsOf } from "../../site/commands/floors/imports.js";

const floors = [["check"], ["tyre", "load"], ["car"]];
const faults = (files: Record<string, string>) =>
  faultsIn(
    new Map(Object.entries(files).map(([file, text]) => [file, importsOf(file, text)])),
    floors,
  );

test("every import of lib leads to a floor below, and no files of it import each other in a circle", () => {
  const imports = importsIn(inRoot("lib"));
  expect(imports.get("change/effect.ts")).toContain("statics/put-back.ts");
  expect(faultsIn(imports, floorsOfLib)).toEqual([]);
});

test("an import from a floor above is a fault, of a type too and over several lines", () => {
  expect(
    faults({
      "tyre/grip.ts": 'import type {\n  Car,\n  Axle,\n} from "../car/car.js";\n',
      "car/car.ts": 'export * from "../tyre/grip.js";\nimport "../check.js";\n',
      "check.ts": 'type Late = import("./car/file/parse.js").Parsed;\n',
    }),
  ).toEqual([
    "tyre/grip.ts imports car/car.ts, which is not below it.",
    "check.ts imports car/file/parse.ts, which is not below it.",
    "tyre/grip.ts → car/car.ts → tyre/grip.ts is a circle.",
  ]);
});

test("so is one from beside it on the same floor, and a file on no floor", () => {
  expect(
    faults({
      "load/roll.ts": 'import { grip } from "../tyre/grip.js";\n',
      "tyre/grip.ts": 'import { inside } from "./inside.js";\n',
      "tyre/inside.ts": "",
      "attic/old.ts": 'import fs from "node:fs";\n',
    }),
  ).toEqual([
    "attic/old.ts is on no floor.",
    "load/roll.ts imports tyre/grip.ts, which is not below it.",
  ]);
});

test("a circle is told once, from the file where it was come upon", () => {
  const imports = new Map([
    ["start.ts", ["a.ts", "leaf.ts"]],
    ["a.ts", ["b.ts"]],
    ["b.ts", ["c.ts", "leaf.ts"]],
    ["c.ts", ["a.ts"]],
    ["leaf.ts", []],
  ]);
  expect(circlesIn(imports)).toEqual([["a.ts", "b.ts", "c.ts"]]);
});
