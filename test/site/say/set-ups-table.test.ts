import { expect, test } from "vitest";
import { exampleLog } from "../../../lib/day/example/example-event.js";
import { parseCsv } from "../../../lib/day/log/csv.js";
import { readerWith } from "../../../site/say/reader.js";
import { setUpsTable } from "../../../site/say/set-ups-table.js";

test("the table of set-ups says what is new in each, and how often it was driven", () => {
  const table = parseCsv(setUpsTable(exampleLog, readerWith("metric"))).table ?? [];
  expect(table.map(([id, , follows, changes, , runs]) => [id, follows, changes, runs])).toEqual([
    ["id", "follows", "changes", "runs"],
    ["desk-1", "", "", "6"],
    ["desk-3", "desk-1", "front bar position 3 → 4", "6"],
    ["desk-4", "desk-3", "front bar position 4 → 3", "6"],
    ["desk-5", "desk-4", "rear bar position 2 → 3", "12"], // by hand: driven in two runs
    [
      "desk-6",
      "desk-5",
      "front bar position 3 → 4; front tyre pressure 200\u00a0kPa → 170\u00a0kPa",
      "6",
    ],
  ]);
});

test("it is in the reader's units and spelling", () => {
  const table = setUpsTable(exampleLog, readerWith("us"));
  expect(table).toContain("front tire pressure 29.0\u00a0psi → 24.7\u00a0psi"); // by hand: ÷ 6894.757
});
