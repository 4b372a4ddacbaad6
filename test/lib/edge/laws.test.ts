import fc from "fast-check";
import { expect, test, vi } from "vitest";
import { carBalance } from "../../../lib/balance/car-balance.js";
import { handlingCarOf } from "../../../lib/balance/handling-car-of.js";
import { mirrorCar } from "../../../lib/balance/mirror-car.js";
import { phaseNames, phases } from "../../../lib/balance/phases.js";
import { tipsOverAt } from "../../../lib/balance/stance-in-turn.js";
import { standingCar } from "../../../lib/balance/standing-car.js";
import { trim } from "../../../lib/balance/trim.js";
import { axleLoadsOf } from "../../../lib/car/axle-loads.js";
import { figuresOf } from "../../../lib/change/figures.js";
import { driveCorner } from "../../../lib/day/practice/drive-corner.js";
import { setUpReport } from "../../../site/report/set-up-report.js";
import { anyLegalCar, RUNS } from "../car/any-car.js";
import { between } from "../evenly.js";

// Any car that its file may hold, every field anywhere in its range, driven as fast as may be asked.

vi.setConfig({ testTimeout: 60_000 + 2_000 * RUNS });

const speed = between(1, 100);
const radius = between(5, 500);

/** Times that the four wheels are worked out for one balance or one trim: some ten thousand at most. */
const MOST_WORK = 40_000;

/** What may be without end, as docs/report.md says where. */
const mayBeEndless =
  /\.(bumpTravel|understeerGradient|yawResponseTime|tipsOverAt|freeTravel|moved)\b/;

/** Places of numbers that are no numbers, or without end where nothing may be. */
function wrongNumbers(value: unknown, place = ""): string[] {
  if (typeof value === "number") {
    const isRight = Number.isFinite(value) || (!Number.isNaN(value) && mayBeEndless.test(place));
    return isRight ? [] : [`${place} is ${value}`];
  }
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([name, part]) => wrongNumbers(part, `${place}.${name}`));
}

/** Words of the library that no reader has typed, and numbers that are none. */
const internal =
  /sprung (height|mass|front share) is|tyre input|inner load|sprungFront|NaN|Infinity|undefined|unknowns/;

/** Calls work and looks through what it says: numbers all through, or one sentence about what was typed. */
function isSaid(work: () => unknown): void {
  try {
    expect(wrongNumbers(work())).toEqual([]);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    expect(error.message).toMatch(/^[^\n]+\.$/);
    expect(error.message).not.toMatch(internal);
  }
}

test("loads, tipping, figures, balance and trim of any car: numbers, or one sentence, after a bounded count of work", () => {
  const phase = fc.constantFrom(...phaseNames);
  const asked = fc.record({ v: speed, R: radius, phase, round: fc.boolean(), ay: between(0, 20) });
  fc.assert(
    fc.property(anyLegalCar, asked, (car, { v, R, phase, round, ay }) => {
      const work = { done: 0 };
      const driving = { ...phases[phase], ...(round ? { cornerRadius: R } : { speed: v }) };
      isSaid(() => axleLoadsOf(car, ay));
      isSaid(() => ({ tipsOverAt: tipsOverAt(mirrorCar(handlingCarOf(car)), driving) }));
      isSaid(() => figuresOf(standingCar(car), v));
      isSaid(() => carBalance(handlingCarOf(car), driving, undefined, work));
      expect(work.done).toBeLessThan(MOST_WORK);
      work.done = 0;
      isSaid(() => trim(handlingCarOf(car), driving, ay, undefined, work));
      expect(work.done).toBeLessThan(MOST_WORK);
    }),
    { numRuns: Math.ceil(RUNS / 2) },
  );
});

test("the report of any car: numbers, or one sentence", () => {
  fc.assert(
    fc.property(anyLegalCar, speed, between(0, 30), (car, v, ay) => {
      isSaid(() => setUpReport(car, { lateralAcceleration: ay, speed: v }));
    }),
    { numRuns: Math.ceil(RUNS / 100) },
  );
});

test("any car through any corner: driven, or one sentence why not", () => {
  const corner = fc.record({
    name: fc.constant("Any"),
    direction: fc.constantFrom("left" as const, "right" as const),
    radius,
    speed,
    grade: between(-0.25, 0.25),
    banking: between(-0.35, 0.7),
  });
  fc.assert(
    fc.property(anyLegalCar, corner, (car, driven) => {
      isSaid(() => driveCorner(car, driven));
    }),
    { numRuns: Math.ceil(RUNS / 100) },
  );
});
