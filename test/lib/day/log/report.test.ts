import { expect, test } from "vitest";
import { whatIsMissing } from "../../../../lib/day/log/missing.js";
import { isComplete, type Report } from "../../../../lib/day/log/report.js";
import { faultsOfReport } from "../../../../lib/day/log/report-file.js";

const complete: Report = {
  corner: "Gate",
  phase: "power on",
  input: "throttle",
  balance: 2,
  howOften: "most laps",
  againstLastRun: "worse",
  confidence: "certain",
};

test("a report that says where, when, doing what, and what, is complete and asks nothing", () => {
  expect(isComplete(complete)).toBe(true);
  expect(whatIsMissing(complete)).toEqual([]);
  expect(faultsOfReport(complete)).toEqual([]);
});

test("it understeers is not yet a fault: where, when and doing what are asked first", () => {
  const report: Report = { balance: -2, words: "It understeers." };
  expect(isComplete(report)).toBe(false);
  const asked = whatIsMissing(report);
  expect(asked.filter(({ needed }) => needed).map(({ field }) => field)).toEqual([
    "corner",
    "phase",
    "input",
  ]);
  expect(asked.slice(3).every(({ needed }) => !needed)).toBe(true);
});

test("a balance of 0 is an answer, not a gap", () => {
  expect(isComplete({ ...complete, balance: 0 })).toBe(true);
});

test("an empty report may be filed, and asks for everything", () => {
  expect(faultsOfReport({})).toEqual([]);
  expect(whatIsMissing({}).length).toBe(7);
});

test.each<[unknown, string]>([
  [{ balance: 4 }, "balance is 4 but must be a whole number from -3 to 3."],
  [{ balance: 0.5 }, "balance is 0.5 but must be a whole number from -3 to 3."],
  [{ phase: "exit" }, 'phase is "exit" but must be one of: braking in, turn-in, middle, power on.'],
  [{ confidence: 1 }, "confidence is 1 but must be one of: a guess, fairly sure, certain."],
  [{ words: 7 }, "words is 7 but must be a text."],
])("%j is refused with one sentence: %s", (report, sentence) => {
  expect(faultsOfReport(report)).toEqual([sentence]);
});

test("each fault of a report has its own sentence", () => {
  expect(faultsOfReport({ phase: 1, input: "hope", balance: "much" })).toHaveLength(3);
});
