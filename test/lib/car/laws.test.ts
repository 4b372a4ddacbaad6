import fc from "fast-check";
import { expect, test, vi } from "vitest";
import { handlingCarOf } from "../../../lib/balance/handling-car-of.js";
import { limitBalanceOf } from "../../../lib/balance/limit-balance.js";
import { standingCar } from "../../../lib/balance/standing-car.js";
import { axleLoadsOf } from "../../../lib/car/axle-loads.js";
import type { Car } from "../../../lib/car/car.js";
import { demoCar } from "../../../lib/car/demo-car.js";
import { formatCar, parseCar } from "../../../lib/car/file/parse.js";
import { totalMassOf } from "../../../lib/car/masses.js";
import { applyChange } from "../../../lib/change/apply.js";
import { behaviourOf, cornersOf } from "../../../lib/change/behaviour.js";
import { figuresOf } from "../../../lib/change/figures.js";
import { possibleChanges } from "../../../lib/change/steps.js";
import { GRAVITY } from "../../../lib/units.js";
import { anyCar, RUNS } from "./any-car.js";

vi.setConfig({ testTimeout: 60_000 + 100 * RUNS });

const runs = { numRuns: RUNS };
const few = { numRuns: Math.ceil(RUNS / 20) }; // 8 cars: the balance of each is found eight times over
const acceleration = fc.double({ min: -20, max: 20, noNaN: true });

/** Every number in a result, wherever it is. */
function numbersIn(value: unknown): number[] {
  if (typeof value === "number") return [value];
  if (typeof value !== "object" || value === null) return [];
  return Object.values(value).flatMap(numbersIn);
}

/** A result, or nothing where the car was refused in a sentence. */
function unlessRefused<T>(work: () => T): T | undefined {
  try {
    return work();
  } catch (error) {
    expect(error).toBeInstanceOf(RangeError);
    expect((error as Error).message).toMatch(/\.$/);
    return undefined;
  }
}

test("any car at any lateral acceleration has finite loads that sum to its weight", () => {
  fc.assert(
    fc.property(anyCar, acceleration, (car, ay) => {
      const result = axleLoadsOf(car, ay);
      expect(numbersIn(result).every(Number.isFinite)).toBe(true);
      const weight = totalMassOf(car).mass * GRAVITY;
      const loads = [...numbersIn(result.front.load), ...numbersIn(result.rear.load)];
      const sum = loads.reduce((a, b) => a + b);
      expect(Math.abs(sum / weight - 1)).toBeLessThan(1e-9);
      expect(Math.min(...loads)).toBeGreaterThanOrEqual(-1e-9 * weight);
    }),
    runs,
  );
});

test("the loads of any car hold the moment of its side forces and of its leaning body", () => {
  fc.assert(
    fc.property(anyCar, acceleration, (car, ay) => {
      const result = axleLoadsOf(car, ay);
      fc.pre(!result.tipped);
      const { mass, height } = totalMassOf(car);
      const made = result.front.total * car.front.track + result.rear.total * car.rear.track;
      const asked = mass * height * ay + result.momentFromRoll;
      const size = Math.abs(mass * height * ay) + Math.abs(result.momentFromRoll) + 1;
      expect(Math.abs(made - asked) / size).toBeLessThan(1e-9);
    }),
    runs,
  );
});

test("the limit of any car is finite and above nothing", () => {
  fc.assert(
    fc.property(anyCar, (car) => {
      const limit = unlessRefused(() => limitBalanceOf(car));
      if (limit === undefined) return;
      expect(numbersIn(limit).every(Number.isFinite)).toBe(true);
      expect(limit.lateralAcceleration).toBeGreaterThan(0);
    }),
    runs,
  );
});

test("any car can be written and read without loss", () => {
  fc.assert(
    fc.property(anyCar, (car) => {
      expect(parseCar(formatCar(car)).car).toEqual(car);
    }),
    runs,
  );
});

test("any change that a car allows gives figures without NaN, or is refused in a sentence", () => {
  fc.assert(
    fc.property(anyCar, fc.nat(), (car, pick) => {
      const changes = possibleChanges(car);
      fc.pre(changes.length > 0);
      const change = changes[pick % changes.length];
      if (change === undefined) return;
      const figures = unlessRefused(() => figuresOf(standingCar(applyChange(car, change), car)));
      for (const number of numbersIn(figures)) expect(number).not.toBeNaN();
    }),
    runs,
  );
});

test("balance and figures of any car are without NaN in every part of a corner, or refused", () => {
  fc.assert(
    fc.property(anyCar, fc.double({ min: 5, max: 60, noNaN: true }), (car, speed) => {
      const behaviour = unlessRefused(() => behaviourOf(standingCar(car), speed));
      for (const number of numbersIn(behaviour)) expect(number).not.toBeNaN();
      for (const number of numbersIn(behaviour?.phases)) expect(number).toSatisfy(Number.isFinite);
    }),
    few,
  );
});

/** The demo car after some changes that it allows, at one wheel or at both. */
const anyClubCar: fc.Arbitrary<Car> = fc
  .array(
    fc.tuple(fc.nat(), fc.constantFrom("left", "right", undefined), fc.integer({ min: 1, max: 6 })),
    {
      maxLength: 6,
    },
  )
  .map((picks) =>
    picks.reduce((car, [pick, side, steps]) => {
      const changes = possibleChanges(car, steps);
      const change = changes[pick % Math.max(1, changes.length)];
      if (change === undefined) return car;
      return applyChange(car, side && "end" in change ? { ...change, side } : change);
    }, demoCar),
  );

test("a car and its mirror image do the same", () => {
  fc.assert(
    fc.property(anyClubCar, (car) => {
      const [one, other] = [
        behaviourOf(standingCar(car, demoCar)),
        behaviourOf(standingCar(mirrored(car), mirrored(demoCar))),
      ];
      for (const [i, number] of numbersIn(one.phases).entries())
        expect(numbersIn(other.phases)[i]).toBeCloseTo(number, 2); // its search begins elsewhere
    }),
    few,
  );
});

test("what a car does is found the same from whichever car the search begins", () => {
  fc.assert(
    fc.property(anyClubCar, anyClubCar, (car, before) => {
      const start = cornersOf(handlingCarOf(before, demoCar), 25);
      const [cold, warm] = [
        behaviourOf(standingCar(car, demoCar)),
        behaviourOf(standingCar(car, demoCar), 25, start),
      ];
      for (const [i, number] of numbersIn(cold.phases).entries())
        expect(numbersIn(warm.phases)[i]).toBeCloseTo(number, 2);
    }),
    few,
  );
});

/** Everything on the other side of the centre line. */
function mirrored(car: Car): Car {
  return JSON.parse(JSON.stringify(car), (_, value) => {
    if (value && typeof value === "object" && "left" in value && "right" in value)
      return { left: value.right, right: value.left };
    if (value && typeof value === "object" && "leftOfCentre" in value)
      return { ...value, leftOfCentre: -value.leftOfCentre };
    return value;
  });
}
