import fc from "fast-check";
import { expect, test } from "vitest";
import { carInRoll } from "../../../lib/car/axle-loads.js";
import type { Axle, Car } from "../../../lib/car/car.js";
import { demoCar } from "../../../lib/car/demo-car.js";
import { loweredCar } from "../../../lib/car/lowered.js";
import { distributeLoadTransfer } from "../../../lib/load/distribution.js";
import { rollLeverArm } from "../../../lib/load/roll-lever-arm.js";

const axle = { track: 1.45, rollStiffness: 30e3, unsprungMass: 80, unsprungHeight: 0.29 };

test("the lever arm reaches from the roll axis under the mass to the centre of gravity", () => {
  const arm = rollLeverArm({
    sprungMass: 900,
    sprungHeight: 0.52,
    sprungFrontShare: 0.6,
    front: { ...axle, rollCentreHeight: 0.05 },
    rear: { ...axle, rollCentreHeight: 0.1 },
  });
  expect(arm).toBeCloseTo(0.52 - (0.6 * 0.05 + 0.4 * 0.1), 12); // by hand
});

const withMigration = (car: Car, rollCentreMigration: number): Car => {
  const moved = (one: Axle) => ({ ...one, geometry: { ...one.geometry, rollCentreMigration } });
  return { ...car, front: moved(car.front), rear: moved(car.rear) };
};

test("lowering moves less load, even where the roll centres outrun the body and it rolls more", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.005, max: 0.05, noNaN: true }),
      fc.double({ min: 1.2, max: 2.6, noNaN: true }),
      (by, ratio) => {
        const car = withMigration(demoCar, -ratio);
        const [high, low] = [carInRoll(car), carInRoll(loweredCar(car, by))];
        const [before, after] = [distributeLoadTransfer(high, 7), distributeLoadTransfer(low, 7)];
        expect(rollLeverArm(low) - rollLeverArm(high)).toBeCloseTo((ratio - 1) * by, 12);
        expect(after.rollAngle.front).toBeGreaterThan(before.rollAngle.front);
        expect(after.total).toBeLessThan(before.total);
      },
    ),
  );
});
