import { expect, test } from "vitest";
import { pollAdvice, pollGain } from "../../../../lib/day/debrief/poll.js";

const cards = (right: number, wrong: number) => ({ a: right, b: wrong, c: 0, d: 0 });

test.each([
  [34, "teach again"],
  [35, "discuss"],
  [70, "discuss"],
  [71, "move on"],
] as const)("with %d of a hundred right the advice is to %s", (right, advice) => {
  expect(pollAdvice(cards(right, 100 - right), "a").advice).toBe(advice); // Smith 2009: discuss at 35–70 %
});

test("gain is the share of those who were wrong and now are right", () => {
  // Smith 2009, twin item: 52 % before, 73 % after; by hand (0.73 − 0.52)/(1 − 0.52)
  expect(pollGain(cards(52, 48), cards(73, 27), "a")).toBeCloseTo(0.4375, 12);
});

test("nobody wrong before, nobody wrong after: no gain and no division by nothing", () => {
  expect(pollGain(cards(6, 0), cards(6, 0), "a")).toBe(0);
});

test("no card, half a card or less than none is refused with a sentence", () => {
  expect(() => pollAdvice(cards(0, 0), "a")).toThrow("cards up is 0 but must be from 1 to 40000.");
  expect(() => pollAdvice(cards(1.5, 0), "a")).toThrow(
    "cards A is 1.5 but must be a whole number.",
  );
  expect(() => pollAdvice(cards(-1, 5), "a")).toThrow("cards A is -1 but must be from 0 to 10000.");
});
