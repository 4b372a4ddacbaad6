import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { standingCar } from "../../../lib/balance/standing-car.js";
import { frontShareOf, sprungMassOf, totalMassOf } from "../../../lib/car/masses.js";
import { marginsOf } from "../../../lib/statics/margins.js";
import { putBack } from "../../../lib/statics/put-back.js";
import { type Rest, restOf } from "../../../lib/statics/rest.js";
import { GRAVITY } from "../../../lib/units.js";
import { anyCar, RUNS } from "../car/any-car.js";

const LONG = 5000 + 20 * RUNS; // ms

/** The car at rest, or nothing when it is refused with a sentence. */
function restOrRefused<Result>(work: () => Result): Result | undefined {
  try {
    return work();
  } catch (error) {
    expect(error).toBeInstanceOf(RangeError);
    return undefined;
  }
}

function numbersIn(value: unknown): number[] {
  if (typeof value === "number") return [value];
  return value && typeof value === "object" ? Object.values(value).flatMap(numbersIn) : [];
}

describe("any car that a file may hold, at rest", () => {
  it(
    "stands with finite numbers or is refused with a sentence",
    () => {
      fc.assert(
        fc.property(anyCar, (car) => {
          const rest = restOrRefused(() => restOf(car));
          expect(numbersIn(rest).every(Number.isFinite)).toBe(true);
          const margins = restOrRefused(() => marginsOf(standingCar(car)));
          expect(numbersIn(margins).every(Number.isFinite)).toBe(true);
        }),
        { numRuns: RUNS },
      );
    },
    LONG,
  );

  it(
    "carries its weight on its wheels, and balances about its front axle and its middle",
    () => {
      fc.assert(
        fc.property(anyCar, (car) => {
          const rest = restOrRefused(() => restOf(car));
          if (rest === undefined) return;
          const { front, rear } = rest.load;
          const total = totalMassOf(car);
          const weight = total.mass * GRAVITY;
          const sum = front.left + front.right + rear.left + rear.right;
          expect(Math.abs(sum / weight - 1)).toBeLessThan(1e-9);
          const pitch = (rear.left + rear.right) * car.wheelbase - weight * total.behindFrontAxle;
          expect(Math.abs(pitch / (weight * car.wheelbase))).toBeLessThan(1e-9);
          expect(Math.abs(rollMoment(car, rest) / weight)).toBeLessThan(1e-9);
        }),
        { numRuns: RUNS },
      );
    },
    LONG,
  );

  it(
    "gets its heights and cross weight back by the turns that are computed",
    () => {
      fc.assert(
        fc.property(anyCar, anyCar, ({ front, rear }, car) => {
          const springs = {
            front: { ...car.front, spring: { ...car.front.spring, rate: front.spring.rate } },
            rear: { ...car.rear, spring: { ...car.rear.spring, rate: rear.spring.rate } },
          };
          const back = restOrRefused(() => putBack({ ...car, ...springs }, car));
          const before = restOrRefused(() => restOf(car));
          if (back === undefined || before === undefined) return;
          if (Math.min(...numbersIn(before.load), ...numbersIn(back.exact.load)) === 0) return;
          expect(Math.abs(back.exact.heave - before.heave)).toBeLessThan(1e-7);
          expect(Math.abs(back.exact.roll - before.roll)).toBeLessThan(1e-7);
          expect(Math.abs(back.exact.crossShare - before.crossShare)).toBeLessThan(1e-6);
        }),
        { numRuns: RUNS },
      );
    },
    LONG,
  );
});

/** Moment of wheels and weights about the middle of the ground, N·m; zero in balance. */
function rollMoment(car: Parameters<typeof restOf>[0], { load, roll }: Rest): number {
  const wheels =
    ((load.front.left - load.front.right) * car.front.track +
      (load.rear.left - load.rear.right) * car.rear.track) /
    2;
  const sprung = sprungMassOf(car);
  const share = frontShareOf(sprung, car.wheelbase);
  const axis =
    share * car.front.geometry.rollCentreHeight + (1 - share) * car.rear.geometry.rollCentreHeight;
  const leaning = sprung.mass * GRAVITY * (sprung.height - axis) * roll; // to the right
  return wheels - sprung.mass * GRAVITY * sprung.leftOfCentre + leaning;
}
