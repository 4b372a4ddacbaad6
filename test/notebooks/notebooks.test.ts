import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { readNotebooks } from "../../site/build/build.js";
import { inRoot } from "../../site/build/paths.js";
import { physicsFaults, unusedFaults } from "../../site/chapter/own-physics.js";
import { answerFaults, resultFaults, shapeFaults } from "../../site/chapter/shape.js";

it.each(readNotebooks())("chapter $name is as readers know chapters", (notebook) => {
  const text = readFileSync(inRoot(`notebooks/${notebook.name}.ipynb`), "utf8");
  expect(shapeFaults(notebook)).toEqual([]);
  expect(resultFaults(notebook, text)).toEqual([]);
  expect(answerFaults(notebook, text)).toEqual([]);
});

it.each(readNotebooks())(
  "chapter $name leaves physics to the library, and imports what it calls",
  (notebook) => {
    expect(physicsFaults(notebook)).toEqual([]);
    expect(unusedFaults(notebook)).toEqual([]);
  },
);
