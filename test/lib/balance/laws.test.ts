import fc from "fast-check";
import { expect, test, vi } from "vitest";
import type { CarBalance } from "../../../lib/balance/car-balance.js";
import { carBalance } from "../../../lib/balance/car-balance.js";
import type { HandlingCar } from "../../../lib/balance/handling-car.js";
import { carMass, requireHandlingCar } from "../../../lib/balance/handling-car.js";
import { handlingCarOf } from "../../../lib/balance/handling-car-of.js";
import { mirrorCar } from "../../../lib/balance/mirror-car.js";
import { phaseBalances, phaseNames } from "../../../lib/balance/phases.js";
import { trim } from "../../../lib/balance/trim.js";
import { GRAVITY } from "../../../lib/units.js";
import { anyCar, RUNS } from "../car/any-car.js";
import { between } from "../evenly.js";

vi.setConfig({ testTimeout: 20_000 + 200 * RUNS });

// Cars of these laws have every number anywhere in the range of the parameter table.

const runs = { numRuns: Math.ceil(RUNS / 10) }; // 15 cars
const few = { numRuns: Math.ceil(RUNS / 30) }; // 5 cars, each in all four phases
const speed = between(5, 60);

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

/** Cars that stand on their springs, ready to be driven. */
const anyHandlingCar: fc.Arbitrary<HandlingCar> = anyCar
  .map((car) => unlessRefused(() => requireHandlingCar(handlingCarOf(car))))
  .filter((car) => car !== undefined);

function isFinished(balance: CarBalance): boolean {
  const { lateralAcceleration, understeerMargin, mostLateralAcceleration, speed } = balance;
  const values = [lateralAcceleration, understeerMargin, mostLateralAcceleration, speed];
  return values.every(Number.isFinite);
}

test("every phase of any car has a finite balance, with no limit below zero", () => {
  fc.assert(
    fc.property(anyHandlingCar, speed, (car, v) => {
      const balances = unlessRefused(() => phaseBalances(car, v));
      if (balances === undefined) return;
      for (const name of phaseNames) {
        expect(isFinished(balances[name])).toBe(true);
        expect(balances[name].lateralAcceleration).toBeGreaterThanOrEqual(0);
      }
    }),
    few,
  );
});

test("no car turns harder than its stickiest tyre pair could hold its weight and downforce", () => {
  fc.assert(
    fc.property(anyHandlingCar, speed, (car, v) => {
      const balance = unlessRefused(() => carBalance(car, { speed: v }));
      if (balance === undefined) return;
      const downforce = (car.front.downforceFactor + car.rear.downforceFactor) * v ** 2;
      const most = 1.45 * (GRAVITY + Math.max(0, downforce) / carMass(car)); // friction of an unloaded tyre, leaning
      expect(balance.lateralAcceleration).toBeLessThan(most);
    }),
    runs,
  );
});

test("any car turned over is its mirror image in trim", () => {
  fc.assert(
    fc.property(anyHandlingCar, speed, between(0.01, 8), (car, v, ay) => {
      const left = unlessRefused(() => trim(car, { speed: v }, ay));
      const right = unlessRefused(() => trim(mirrorCar(car), { speed: v }, -ay));
      expect(left === undefined).toBe(right === undefined);
      if (left && right) expect(right.steer).toBeCloseTo(-left.steer, 6);
    }),
    runs,
  );
});

test("a trim of any car is finite and stands on its wheels, or there is none", () => {
  const ax = between(-6, 4);
  fc.assert(
    fc.property(anyHandlingCar, speed, between(-9, 9), ax, (car, v, ay, longitudinal) => {
      const driving = { speed: v, longitudinalAcceleration: longitudinal };
      const state = unlessRefused(() => trim(car, driving, ay));
      if (state === undefined) return;
      const { front, rear } = state.wheels;
      const wheels = [front.left, front.right, rear.left, rear.right];
      const load = wheels.reduce((sum, wheel) => sum + wheel.load, 0);
      const down = (car.front.downforceFactor + car.rear.downforceFactor) * v ** 2;
      expect(load / (carMass(car) * GRAVITY + down)).toBeCloseTo(1, 6);
      expect(Number.isFinite(state.steer + state.sideSlip + state.push)).toBe(true);
      expect(Math.min(...wheels.map((wheel) => wheel.load))).toBeGreaterThanOrEqual(0);
    }),
    runs,
  );
});
