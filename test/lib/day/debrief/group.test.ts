import { expect, test } from "vitest";
import type { FeltCell } from "../../../../lib/day/debrief/felt.js";
import { groupSummary, median } from "../../../../lib/day/debrief/group.js";

const cell = (felt: number | undefined): FeltCell => ({
  corner: "Gate",
  phase: "middle",
  predicted: 0.2,
  verdict: felt === undefined ? "no comparison" : felt > 0 ? "match" : "nothing felt",
  reasons: [],
  ...(felt !== undefined && { felt }),
});

test("a group is summed up by median, spread and count", () => {
  const [summary] = groupSummary([0, 1, 1, 2, 3].map((felt) => [cell(felt)]));
  // by hand: median of 0 1 1 2 3 is 1; of the distances 1 0 0 1 2 it is 1
  expect(summary).toMatchObject({ count: 5, felt: { median: 1, spread: 1 } });
  expect(summary?.felt?.verdicts).toEqual({ match: 4, "nothing felt": 1 });
});

test("a group of two is only counted: who said what could be guessed", () => {
  expect(groupSummary([[cell(3)], [cell(-3)]])).toEqual([
    { corner: "Gate", phase: "middle", count: 2 },
  ]);
});

test("those who could not compare do not make a small group large", () => {
  const [summary] = groupSummary([[cell(1)], [cell(1)], [cell(undefined)]]);
  expect(summary).toEqual({ corner: "Gate", phase: "middle", count: 2 });
});

test("the median of an even number of values is the mean of the two in the middle", () => {
  expect(median([3, 1, 2, 10])).toBe(2.5);
});

test("a summary carries no names", () => {
  const text = JSON.stringify(groupSummary([1, 2, 3].map((felt) => [cell(felt)])));
  expect(Object.keys(JSON.parse(text)[0]).sort()).toEqual(["corner", "count", "felt", "phase"]);
});
