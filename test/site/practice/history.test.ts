import {
  asRounds,
  type PracticeRound,
  pointsOf,
  practiceCorners,
  totalOf,
  withRound,
} from "@rollbook/lib";
import fc from "fast-check";
import { expect, test } from "vitest";
import { linkTo, tidyLink } from "../../../site/pages/practice/puzzle-link.js";

const link = linkTo({ seed: 7, level: 2, place: practiceCorners.tight });
const round: PracticeRound = { at: 1_700_000_000_000, link, report: 1, cause: 0.8, next: 0 };

test("rounds come back from their text as they were", () => {
  expect(asRounds(JSON.parse(JSON.stringify([round, round])), tidyLink)).toEqual([round, round]);
});

test.each([
  ["a score above 1", { ...round, cause: 2 }],
  ["a score that is no number", { ...round, next: "all" }],
  ["no time", { ...round, at: "today" }],
  ["a link that leads elsewhere", { ...round, link: "https://evil.example/" }],
  ["a link with a fault", { ...round, link: "#?seed=x" }],
  ["nothing", null],
])("a round with %s is left out, and the others stay", (_, broken) => {
  expect(asRounds([broken, round], tidyLink)).toEqual([round]);
});

test("anything at all is a history or none, and never throws", () => {
  fc.assert(
    fc.property(fc.jsonValue(), (value) => {
      expect(asRounds(value, tidyLink)).toEqual(Array.isArray(value) ? [] : undefined);
    }),
  );
});

test("two hundred rounds are kept, the latest ones", () => {
  const many = Array.from({ length: 205 }, (_, at) => ({ ...round, at }));
  const kept = many.reduce<PracticeRound[]>(withRound, []);
  expect(kept).toHaveLength(200);
  expect(kept.at(-1)?.at).toBe(204);
});

test("answers that were worked, or not asked any more, are left out and stay so", () => {
  const { report: _, ...own } = round;
  expect(asRounds(JSON.parse(JSON.stringify([own])), tidyLink)).toEqual([own]);
});

test("the total is the mean of the learner's own answers, in whole points, or none", () => {
  expect(pointsOf(totalOf(round) ?? -1)).toBe(60); // by hand: (1 + 0.8 + 0) / 3
  expect(pointsOf(totalOf({ cause: 0.8, next: 0 }) ?? -1)).toBe(40); // by hand: (0.8 + 0) / 2
  expect(totalOf({})).toBeUndefined();
});
