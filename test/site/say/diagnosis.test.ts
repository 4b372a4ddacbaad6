import { expect, test } from "vitest";
import { demoCar } from "../../../lib/car/demo-car.js";
import { Refusal } from "../../../lib/refusal.js";
import {
  askInWords,
  outcomeInWords,
  putBackInWords,
  reasonInWords,
  whyNotInWords,
} from "../../../site/say/diagnosis.js";
import { readerWith } from "../../../site/say/reader.js";

const metric = readerWith("metric");
const us = readerWith("us");
const ofOne = { reports: [0], needed: true };
const ofCar = { reports: [], needed: false };
const stiffer = { lever: "barPosition", end: "rear", by: 1 } as const;
const softer = { lever: "springRate", end: "front", by: -5e3 } as const; // N/m

test("power on while braking is asked about", () => {
  const odd = {
    code: "input-or-phase",
    field: "input",
    phase: "power on",
    input: "braking",
  } as const;
  expect(askInWords({ ...ofOne, ...odd }, metric)).toBe(
    "It was said of power on, while braking: which of the two was it?",
  );
});

test("two reports that say opposite things are named by number and place", () => {
  const both = { reports: [0, 1], needed: true, code: "opposite-reports", corner: "Dip" } as const;
  expect(askInWords({ ...both, phase: "middle" }, metric)).toMatch(
    /^Reports 1 and 2 say opposite things of Dip, middle: /,
  );
  expect(askInWords(both, metric)).toMatch(/^Reports 1 and 2 say opposite things of Dip: /);
});

test("what was not said is asked as the form asks it", () => {
  expect(askInWords({ ...ofOne, code: "not-said", field: "corner" }, metric)).toBe(
    "Where: in which corner?",
  );
  const unlisted = { code: "corner-not-listed", field: "speedClass", corner: "Barn" } as const;
  expect(askInWords({ ...ofOne, ...unlisted }, metric)).toBe(
    "Barn is not in the corner list: is it slow, medium or fast?",
  );
});

test("pressures are asked about in the reader's spelling", () => {
  expect(askInWords({ ...ofCar, code: "best-pressure" }, metric)).toContain(
    "Which warm pressure do these tyres grip best at?",
  );
  expect(askInWords({ ...ofCar, code: "best-pressure" }, us)).toContain("do these tires grip");
  expect(askInWords({ ...ofCar, code: "hot-pressures" }, metric)).toContain(
    "hot pressures measured",
  );
});

test("a diagnosis leads to one change, to none, or to the caution that the car tips over", () => {
  const said = (outcome: Parameters<typeof outcomeInWords>[0]) =>
    outcomeInWords(outcome, demoCar, metric);
  expect(said({ code: "all-well" })).toBe("Nobody asks for a change: leave the car as it is.");
  expect(said({ code: "nothing-felt" })).toMatch(/^No single change within reach/);
  expect(said({ code: "nothing-to-go-by" })).toMatch(/ask before changing\.$/);
  expect(said({ code: "tips-over" })).toMatch(
    /tips over before its tyres let go: .* nobody drives it near that\.$/,
  );
  const position = demoCar.rear.bar?.position ?? 0;
  expect(said({ code: "next-change", change: stiffer })).toBe(
    `Next, and nothing else with it: rear bar position ${position} → ${position + 1}.`,
  );
});

test("reasons give amounts in the reader's units", () => {
  const nearer = { code: "nearer", gain: 0.25, elsewhere: 0.04 } as const;
  expect(reasonInWords(nearer, metric)).toBe(
    "It brings the reported places 0.25\u00a0m/s² nearer to balance and moves the rest of those corners by 0.04\u00a0m/s².",
  );
  expect(reasonInWords(nearer, us)).toContain("0.025\u00a0g nearer"); // by hand: 0.25 ÷ 9.80665 = 0.0255, of which 0.02549
  expect(reasonInWords({ code: "grip", more: 0.1 }, metric)).toBe(
    "The car can turn +0.10\u00a0m/s² there.",
  );
  expect(reasonInWords({ code: "grip", more: -0.1 }, metric)).toBe(
    "The car can turn −0.10\u00a0m/s² there.",
  );
  expect(reasonInWords({ code: "trade", slower: 0.1 }, metric)).toBe(
    "The car is better balanced there, and 0.10\u00a0m/s² slower.",
  );
  expect(reasonInWords({ code: "other-way-was-worse" }, metric)).toBe(
    "The other way was tried and was worse.",
  );
});

test("what is turned back is told wheel by wheel", () => {
  const seat = { what: "seat", end: "rear", side: "left", by: 1.5 } as const;
  expect(putBackInWords(seat)).toBe("rear left seat +1.5 turns");
  const toe = { what: "toe", end: "front", side: "right", by: (-0.1 * Math.PI) / 180 } as const;
  expect(putBackInWords(toe)).toBe("front right toe −0.10°");
});

test("why a lever is not proposed is one sentence", () => {
  const said = (why: Parameters<typeof whyNotInWords>[0], reader = metric) =>
    whyNotInWords(why, demoCar, reader);
  expect(said({ code: "no-adjuster" })).toBe("This car cannot be adjusted there.");
  expect(said({ code: "not-ranked", why: "best-pressure-not-known" })).toContain(
    "at which pressure this tyre grips best",
  );
  expect(said({ code: "not-ranked", why: "dampers" })).toContain("how the car arrives in a turn");
  expect(said({ code: "too-small", reach: 0.02, actsIn: "braking in" })).toBe(
    "It moves balance there by 0.02\u00a0m/s² at most, too little to feel; it acts in braking in.",
  );
  expect(said({ code: "too-small", reach: 0.004 })).toBe(
    "It moves balance there by nothing, too little to feel.",
  );
  expect(said({ code: "too-far", reach: 0.5 })).toBe(
    "It goes too far there: 0.50\u00a0m/s² where less was asked.",
  );
  expect(said({ code: "breaks-limit", parameter: "tyrePressure", where: "rear left" }, us)).toBe(
    "It breaks the class limit of tire pressure (rear left) before it is felt there.",
  );
  expect(said({ code: "tried", change: softer, outcome: "same" })).toMatch(
    /^front spring rate \d+\sN\/mm → \d+\sN\/mm was tried: same\.$/,
  );
  expect(said({ code: "refused", refusal: new Refusal("falls-over", "It falls over.") })).toBe(
    "It falls over.",
  );
});
