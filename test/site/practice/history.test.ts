import fc from "fast-check";
import { expect, test } from "vitest";
import { linkTo } from "../../../site/pages/practice/puzzle/link.js";
import { presets } from "../../../site/pages/practice/puzzle/puzzle.js";
import {
  asHistory,
  points,
  type Round,
  totalOf,
  withRound,
} from "../../../site/pages/practice/record/history.js";

const link = linkTo({ seed: 7, level: 2, place: presets.tight });
const round: Round = { at: 1_700_000_000_000, link, report: 1, cause: 0.8, next: 0 };

test("rounds come back from their text as they were", () => {
  expect(asHistory(JSON.parse(JSON.stringify([round, round])))).toEqual([round, round]);
});

test.each([
  ["a score above 1", { ...round, cause: 2 }],
  ["no score", { ...round, next: undefined }],
  ["no time", { ...round, at: "today" }],
  ["a link that leads elsewhere", { ...round, link: "https://evil.example/" }],
  ["a link with a fault", { ...round, link: "#?seed=x" }],
  ["nothing", null],
])("a round with %s is left out, and the others stay", (_, broken) => {
  expect(asHistory([broken, round])).toEqual([round]);
});

test("anything at all is a history or none, and never throws", () => {
  fc.assert(
    fc.property(fc.jsonValue(), (value) => {
      expect(asHistory(value)).toEqual(Array.isArray(value) ? [] : undefined);
    }),
  );
});

test("two hundred rounds are kept, the latest ones", () => {
  const many = Array.from({ length: 205 }, (_, at) => ({ ...round, at }));
  const kept = many.reduce<Round[]>(withRound, []);
  expect(kept).toHaveLength(200);
  expect(kept.at(-1)?.at).toBe(204);
});

test("the total is the mean of the three answers, in whole points", () => {
  expect(points(totalOf(round))).toBe(60); // by hand: (1 + 0.8 + 0) / 3
});
