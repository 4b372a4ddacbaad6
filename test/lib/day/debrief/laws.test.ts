import fc from "fast-check";
import { expect, test, vi } from "vitest";
import type { Car } from "../../../../lib/car/car.js";
import { diagnose } from "../../../../lib/day/diagnosis/diagnose.js";
import { exampleVenue } from "../../../../lib/day/example/example-venue.js";
import type { Report } from "../../../../lib/day/log/report.js";
import { proposePlan } from "../../../../lib/day/plan/propose.js";
import { sheetOf } from "../../../../lib/day/plan/sheet.js";
import { driveCorner } from "../../../../lib/day/practice/drive-corner.js";
import { practiceFrom } from "../../../../lib/day/practice/practice.js";
import { whyNotInWords } from "../../../../site/say/diagnosis.js";
import { anyCar, RUNS } from "../../car/any-car.js";

vi.setConfig({ testTimeout: 240_000 + 200 * RUNS }); // a whole day for each of many cars

const numRuns = Math.ceil(RUNS / 60); // 3 cars in npm test, thousands in the long tests
const report: Report = { corner: "Dip", phase: "braking in", input: "braking", balance: 2 };

/** Every number in an answer, infinite travel of a car without stops apart. */
function numbersIn(value: unknown): number[] {
  if (typeof value === "number") return [value];
  if (typeof value !== "object" || value === null) return [];
  return Object.values(value).flatMap(numbersIn);
}

/** Holds a law for the answer, or for the sentence where the car cannot do it. */
function answered<T>(work: () => T, law: (answer: T) => void): void {
  let answer: T;
  try {
    answer = work();
  } catch (error) {
    expect(error).toBeInstanceOf(RangeError);
    expect((error as RangeError).message).toMatch(/\.$/);
    return;
  }
  law(answer);
}

const metric = { units: "metric", spelling: "tyre" } as const;

const forAnyCar = (law: (car: Car) => void) =>
  fc.assert(fc.property(anyCar, law), { numRuns, endOnFailure: true });

test("for any car a day is planned with numbers only, or refused with a sentence", () => {
  forAnyCar((car) =>
    answered(
      () => sheetOf(proposePlan({ car, venue: exampleVenue, minutes: 300 })),
      (rows) => {
        const shown = rows.map(({ phases, cells, lasts, margins }) => ({
          phases,
          cells,
          lasts,
          margins,
        }));
        expect(numbersIn(shown).every(Number.isFinite)).toBe(true);
        expect(rows.every(({ refused }) => refused === undefined)).toBe(true);
      },
    ),
  );
});

test("for any car a diagnosis has numbers only, each change with a reason, or is refused", () => {
  forAnyCar((car) =>
    answered(
      () => diagnose({ car, venue: exampleVenue, reports: [report] }),
      ({ proposals, notProposed }) => {
        const shown = proposals.map(({ phases, gain, grip, merit }) => ({
          phases,
          gain,
          grip,
          merit,
        }));
        expect(numbersIn(shown).every(Number.isFinite)).toBe(true);
        for (const { why } of notProposed) expect(whyNotInWords(why, car, metric)).toMatch(/\.$/);
      },
    ),
  );
});

test("any car is driven through a corner with numbers only, or refused with a sentence", () => {
  forAnyCar((car) =>
    answered(
      () => {
        const { corner, changed } = practiceFrom(1, undefined, car);
        const before = driveCorner(car, corner);
        const again = { measured: car, wanted: before.speed };
        return { before, after: driveCorner(changed, corner, again) };
      },
      ({ before, after }) => {
        expect(numbersIn([before, after]).every(Number.isFinite)).toBe(true);
        for (const { moments } of [before, after])
          for (const { load } of moments)
            expect(Math.min(...numbersIn(load))).toBeGreaterThanOrEqual(-1e-6);
      },
    ),
  );
});
