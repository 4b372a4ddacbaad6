import { expect, test } from "vitest";
import { demoCar } from "../../../lib/car/demo-car.js";
import { Refusal } from "../../../lib/refusal.js";
import { changeLabel, changeSize, leverName } from "../../../site/say/change.js";
import { feltReasonInWords } from "../../../site/say/felt.js";
import { conflictInWords, looseEndInWords } from "../../../site/say/log.js";
import { warningInWords } from "../../../site/say/plan.js";
import { pollAdviceInWords } from "../../../site/say/poll.js";
import {
  practiceLabel,
  scoreReasonInWords,
  wayBackInWords,
} from "../../../site/say/practice/score.js";
import { readerWith } from "../../../site/say/reader.js";

const metric = readerWith("metric");
const us = readerWith("us");

test("a lever is named by its end, its side where sides differ, and as the reader spells", () => {
  expect(leverName({ lever: "springRate", end: "front" }, metric)).toBe("front spring rate");
  expect(leverName({ lever: "tyrePressure", end: "rear", side: "left" }, us)).toBe(
    "rear left tire pressure",
  );
  expect(leverName({ lever: "brakeFrontShare" }, metric)).toBe("front brake share");
});

test("a change says from what to what, in the reader's units", () => {
  const softer = { lever: "tyrePressure", end: "rear", by: -10e3 } as const; // Pa
  expect(changeLabel(softer, demoCar, metric)).toBe(
    "rear tyre pressure 200\u00a0kPa → 190\u00a0kPa",
  );
  expect(changeLabel(softer, demoCar, us)).toBe(
    "rear tire pressure 29.0\u00a0psi → 27.6\u00a0psi", // by hand: ÷ 6894.757
  );
  const spring = { lever: "springRate", end: "rear", by: -5e3 } as const; // N/m
  expect(changeLabel(spring, demoCar, metric)).toBe("rear spring rate 50\u00a0N/mm → 45\u00a0N/mm");
  expect(changeLabel(spring, demoCar, us)).toBe(
    "rear spring rate 286\u00a0lbf/in → 257\u00a0lbf/in",
  );
  const seat = { lever: "seatTurns", end: "front", side: "left", by: 2 } as const;
  expect(changeLabel(seat, demoCar, metric)).toBe(
    "front left spring seat turns 0.0\u00a0turns → 2.0\u00a0turns",
  );
  expect(changeSize(softer, metric)).toBe("−10\u00a0kPa");
});

test("seats say that they are the change, and every other lever is named as on its card", () => {
  const seats = (end: "front" | "rear", by: number) =>
    practiceLabel({ lever: "seatTurns", end, by }, demoCar, metric);
  expect(seats("front", 10)).toBe("front spring seats up by 10.0\u00a0turns (nose left higher)");
  expect(seats("rear", -7.5)).toBe("rear spring seats down by 7.5\u00a0turns (tail left lower)");
  const bar = { lever: "barPosition", end: "front", by: 1 } as const;
  expect(practiceLabel(bar, demoCar, metric)).toBe("front bar position 3 → 4");
});

test("why felt lies beside predicted as it does", () => {
  const said = (reason: Parameters<typeof feltReasonInWords>[0], reader = metric) =>
    feltReasonInWords(reason, reader);
  expect(said({ code: "predicted", shift: 0.2 })).toBe(
    "The model moves balance by 0.20\u00a0m/s² towards the front sliding first here.",
  );
  expect(said({ code: "predicted", shift: -0.2 }, us)).toBe(
    "The model moves balance by 0.020\u00a0g towards the rear sliding first here.", // by hand: ÷ 9.80665
  );
  expect(said({ code: "predicted", shift: 0.004 })).toBe(
    "The model moves balance by nothing here.",
  );
  expect(said({ code: "several-changes", count: 2 })).toMatch(/^2 things were changed at once/);
  expect(said({ code: "nothing-changed" })).toContain("Nothing was changed");
  expect(said({ code: "other-input", before: "steady", now: "lifting off" })).toContain(
    "was steady before and lifting off now",
  );
  expect(said({ code: "other-input", before: "steady" })).toContain("did not say what now");
  expect(said({ code: "felt-elsewhere", towards: -1 })).toContain(
    "The shift towards the rear sliding first was felt in another part",
  );
  expect(said({ code: "rough-road" })).toContain("rough");
  expect(said({ code: "a-guess" })).toContain("a guess");
  expect(said({ code: "nothing-changed" }, us)).toContain("tires");
});

test("warnings of a plan give both numbers, the limit and the caution in full", () => {
  const tiny = { code: "too-small", most: 0.02, least: 0.1 } as const;
  expect(warningInWords(tiny, metric)).toContain("less than the 0.10\u00a0m/s²");
  expect(warningInWords(tiny, us)).toContain("less than the 0.010\u00a0g");
  const low = {
    code: "limit",
    parameter: "rideHeight",
    where: "front left",
    kind: "least",
    ...{ limit: 0.11, margin: -0.004, rule: "4.2" },
  } as const;
  expect(warningInWords(low, metric)).toBe(
    "It breaks the class limit of rule 4.2, ride height at least 110\u00a0mm by 4.0\u00a0mm (front left).",
  );
  expect(warningInWords({ ...low, margin: -0.4e-6 }, us)).toContain("by 0.00002\u00a0in");
  const brakes = warningInWords({ code: "brakes-rearwards" }, metric);
  expect(brakes).toContain("never on a road car"); // chapter 8, Caution
  expect(brakes).toContain("in a straight line first");
  expect(warningInWords({ code: "tips-over", phases: ["turn-in", "middle"] }, us)).toMatch(
    /before its tires let go \(turn-in, middle\): nobody drives it near that/,
  );
  expect(warningInWords({ code: "towards-the-rear", phases: ["middle"] }, metric)).toContain(
    "first lap slowly",
  );
  expect(warningInWords({ code: "too-late", minutes: 12 }, metric)).toBe(
    "It ends 12 minutes after the day is over.",
  );
  const refusal = new Refusal("no-adjuster", "It cannot be set.");
  expect(warningInWords({ code: "refused", refusal }, metric)).toBe("It cannot be set.");
});

test("the second vote leads to the slider or to the twin, not to a third vote", () => {
  for (const advice of ["teach again", "discuss", "move on"] as const)
    expect(pollAdviceInWords({ advice, rightShare: 0.5 }, 2)).toMatch(/twin/);
  expect(pollAdviceInWords({ advice: "discuss", rightShare: 0.5 })).toContain("vote again");
});

test("what a log has twice or not at all is told by id", () => {
  const at = "2031-05-10T09:00:00.000Z";
  const note = (words: string) =>
    ({ kind: "note", id: "desk-1", at, author: "desk", words }) as const;
  expect(conflictInWords({ id: "desk-1", entries: [note("a"), note("b")] })).toContain(
    "2 different entries are called desk-1",
  );
  expect(looseEndInWords({ from: "desk-1", to: "desk-9" })).toBe(
    "desk-1 refers to desk-9, which is not in this log: merge its device too.",
  );
});

test("the way back is told as a share, as too much, or as no help", () => {
  expect(wayBackInWords({ code: "takes-back", share: 1 })).toBe(
    "takes back 100 % of what had moved.",
  );
  expect(wayBackInWords({ code: "takes-back", share: 0.5 })).toBe(
    "takes back 50 % of what had moved.",
  );
  expect(wayBackInWords({ code: "overshoots", along: 1.5 })).toBe(
    "overshoots: it moves the car back by 150 % of what had moved, past the one you know.",
  );
  expect(wayBackInWords({ code: "makes-it-worse" })).toBe(
    "makes it worse: it moves the car further the same way.",
  );
  expect(wayBackInWords({ code: "does-not-help" })).toContain("does not help");
  expect(wayBackInWords({ code: "hardly-felt" })).toContain("can hardly be felt");
});

test("a score says what was said, what moved, and what cannot be", () => {
  const cars = { car: demoCar, changed: demoCar };
  const said = (reason: Parameters<typeof scoreReasonInWords>[0], reader = metric) =>
    scoreReasonInWords(reason, cars, reader);
  const moved = { code: "moved-otherwise", phase: "middle", said: -2, shift: 0.25 } as const;
  expect(said(moved)).toBe(
    "You say that the rear slides first in middle; there balance moved by 0.25\u00a0m/s² towards the front sliding first.",
  );
  expect(said(moved, us)).toMatch(/there balance moved by \d\.\d{3}\u00a0g towards/);
  expect(said({ code: "not-said", field: "corner" })).toMatch(/^Not said: Where/);
  expect(said({ code: "cannot-be-changed" })).toBe("This car cannot be changed so.");
});
