import { expect, test } from "vitest";
import { demoCar } from "../../../lib/car/demo-car.js";
import type { Change } from "../../../lib/change/change.js";
import type { LoadMoved } from "../../../lib/day/diagnosis/load-moved.js";
import { Refusal } from "../../../lib/refusal.js";
import {
  askInWords,
  outcomeInWords,
  putBackInWords,
  reasonInWords,
  whyNotInWords,
} from "../../../site/say/diagnosis.js";
import { costInWords, whyItHelps } from "../../../site/say/proposal.js";
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
  expect(askInWords({ ...ofOne, ...odd }, ["Ada"], 3, metric)).toBe(
    "Ada, run 3: It was said of power on, while braking: which of the two was it?",
  );
});

test("two reports that say opposite things are named by driver, run and place", () => {
  const both = { reports: [0, 1], needed: true, code: "opposite-reports", corner: "Dip" } as const;
  expect(askInWords({ ...both, phase: "middle" }, ["Ada", "Bela"], 3, metric)).toMatch(
    /^Ada and Bela say opposite things of Dip, middle in run 3: /,
  );
  expect(askInWords(both, ["Ada", "Bela"], 1, metric)).toMatch(
    /^Ada and Bela say opposite things of Dip in run 1: /,
  );
});

test("what was not said is asked as the form asks it", () => {
  expect(askInWords({ ...ofOne, code: "not-said", field: "corner" }, [], 1, metric)).toBe(
    "Where: in which corner?",
  );
  const unlisted = { code: "corner-not-listed", field: "speedClass", corner: "Barn" } as const;
  expect(askInWords({ ...ofOne, ...unlisted }, [], 1, metric)).toBe(
    "Barn is not in the corner list: is it slow, medium or fast?",
  );
});

test("pressures are asked about in the reader's spelling", () => {
  expect(askInWords({ ...ofCar, code: "best-pressure" }, [], 1, metric)).toContain(
    "Which warm pressure do these tyres grip best at?",
  );
  expect(askInWords({ ...ofCar, code: "best-pressure" }, [], 1, us)).toContain(
    "do these tires grip",
  );
  expect(askInWords({ ...ofCar, code: "hot-pressures" }, [], 1, metric)).toContain(
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
  expect(said({ code: "next-change", change: stiffer, fits: true })).toBe(
    `Next, and nothing else with it: rear bar position ${position} → ${position + 1}.`,
  );
  expect(said({ code: "next-change", change: stiffer, fits: false })).toMatch(
    /^Nothing .* fits into the minutes of a change\. Between two sessions, .*: rear bar position /,
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
  const margin = {
    ...({ parameter: "tyrePressure", where: "rear left", kind: "greatest" } as const),
    ...{ value: 262e3, limit: 260e3, margin: -2e3 },
  };
  expect(said({ code: "breaks-limit", margin }, us)).toBe(
    "It breaks the class limit of tire pressure at most 37.7\u00a0psi by 0.29\u00a0psi (rear left) before it is felt there.",
  );
  const fixed = { kind: "fixed", name: "4.3", levers: ["springRate"] } as const;
  expect(said({ code: "fixed-by-class", rule: fixed })).toBe(
    "Rule 4.3 of the class does not allow it to be moved.",
  );
  expect(said({ code: "tried", change: softer, outcome: "same" })).toMatch(
    /^front spring rate \d+\sN\/mm → \d+\sN\/mm was tried: same\.$/,
  );
  expect(said({ code: "refused", refusal: new Refusal("falls-over", "It falls over.") })).toBe(
    "It falls over.",
  );
});

test("why a change should help says which load moves where, and what comes of it", () => {
  const at = { corner: "Dip", phase: "middle", shift: -0.2 } as const;
  const loads = { ...at, across: { front: -200, rear: 180 }, along: { front: 4, rear: -4 } };
  const said = (tells: LoadMoved["tells"], change: Change = stiffer, reader = metric) =>
    whyItHelps({ change, loads: { ...loads, tells } }, reader);
  expect(said("across")).toBe(
    "Dip, middle: the front tyres share their load more evenly (200\u00a0N less between outer and inner), the rear tyres share theirs less evenly (180\u00a0N more); tyres that share a load evenly grip more, which moves balance there towards the rear sliding first.",
  );
  expect(said("across", stiffer, us)).toContain("the front tires share their load");
  expect(said("across", stiffer, us)).toContain("45.0\u00a0lbf"); // by hand: 200 N ÷ 4.448
  expect(said("against")).toContain("loads alone would move balance the other way");
  const brakes = { lever: "brakeFrontShare", by: 0.02 } as const;
  expect(said("neither", brakes)).toContain("the front tyres brake more");
  const along = { ...loads, along: { front: -90, rear: 120 }, tells: "along" } as const;
  expect(whyItHelps({ change: stiffer, loads: along }, metric)).toContain(
    "the front axle carries 90\u00a0N less, the rear axle carries 120\u00a0N more",
  );
});

test("what a change costs names who said something of that place", () => {
  const cost = { corner: "Dip", phase: "turn-in", shift: -0.2, named: [], further: 0 } as const;
  expect(costInWords(cost, metric)).toBe(
    "Dip, turn-in: balance moves by 0.20\u00a0m/s² towards the rear sliding first.",
  );
  const named = [{ driver: "Bela", report: { balance: -1 } }];
  expect(costInWords({ ...cost, named, further: 0.2 }, metric)).toBe(
    "Dip, turn-in, named by Bela (−1): it comes 0.20\u00a0m/s² further from balance.",
  );
  expect(costInWords({ ...cost, named, further: -0.1 }, metric)).toContain("nearer to balance");
  expect(costInWords({ ...cost, named }, metric)).toContain("no nearer and no further");
  const many = [-1, 0, 0, 2].map((balance, i) => ({ driver: `D${i}`, report: { balance } }));
  expect(costInWords({ ...cost, named: many }, metric)).toContain("named by 4 drivers (−1 to +2)");
});
