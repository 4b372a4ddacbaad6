import fc from "fast-check";
import { expect, test } from "vitest";
import { carInRoll } from "../../../lib/car/axle-loads.js";
import { demoCar } from "../../../lib/car/demo-car.js";
import type { CarInRoll } from "../../../lib/load/car-in-roll.js";
import { distributeLoadTransfer } from "../../../lib/load/distribution.js";
import { tippingAcceleration } from "../../../lib/load/tipping.js";
import { between } from "../evenly.js";

const g = 9.80665;
const axle = {
  track: 1.4,
  rollStiffness: 1e9,
  rollCentreHeight: 0.1,
  unsprungMass: 100,
  unsprungHeight: 0.3,
};
const block: CarInRoll = {
  sprungMass: 1000,
  sprungHeight: 0.8,
  sprungFrontShare: 0.5,
  front: axle,
  rear: axle,
};

test("a stiff block tips at half its track over the height of its centre of gravity", () => {
  const height = (1000 * 0.8 + 200 * 0.3) / 1200;
  expect(tippingAcceleration(block)).toBeCloseTo((0.7 / height) * g, 3); // NHTSA, T/2h
});

test("on soft tyres it leans out by what they give and by that its weight leans", () => {
  // one stiff body of 1200 kg on tyres alone, by hand: M = m·h·(a + g·φ) = Kt·φ, tips at M = m·g·t/2
  const soft = { ...axle, tyreRollStiffness: 100e3 };
  const [m, h, k] = [1200, 860 / 1200, 200e3];
  const angle = (m * g * 0.7) / k;
  const tip = (g * 0.7) / h - g * angle;
  const car = { ...block, front: soft, rear: soft };
  expect(tippingAcceleration(car)).toBeCloseTo(tip, 3);
});

test("springs, tyres and links only bring the threshold down, and less weight inside still more", () => {
  const car = carInRoll(demoCar);
  const total = demoCar.front.unsprungMass + demoCar.rear.unsprungMass + car.sprungMass;
  const height =
    (car.sprungMass * car.sprungHeight +
      demoCar.front.unsprungMass * 0.29 +
      demoCar.rear.unsprungMass * 0.29) /
    total;
  const tip = tippingAcceleration(car);
  expect(tip).toBeLessThan(((0.7225 * g) / height) * 0.95);
  expect(tippingAcceleration(car, { front: 2400, rear: 2400 })).toBeLessThan(tip);
});

test("below the threshold a car stands on at least one inner wheel, and higher it tips sooner", () => {
  fc.assert(
    fc.property(between(0.4, 0.9), between(0.8, 1.5), (sprungHeight, springs) => {
      const car = carInRoll(demoCar);
      const soft = (one: typeof car.front) => ({
        ...one,
        rollStiffness: one.rollStiffness * springs,
      });
      const tall = { ...car, sprungHeight, front: soft(car.front), rear: soft(car.rear) };
      const tip = tippingAcceleration(tall);
      expect(distributeLoadTransfer(tall, 0.9 * tip).tipped).toBe(false);
      expect(tippingAcceleration({ ...tall, sprungHeight: sprungHeight + 0.05 })).toBeLessThan(tip);
    }),
    { numRuns: 30 },
  );
});

test("a body that hangs at the road tips over in no turn, and one that cannot stand is refused", () => {
  const low = { ...axle, rollCentreHeight: 0, unsprungHeight: 0 };
  expect(tippingAcceleration({ ...block, sprungHeight: 0, front: low, rear: low })).toBe(Infinity);
  const none = { ...axle, rollStiffness: 0 };
  expect(() => tippingAcceleration({ ...block, front: none, rear: none })).toThrow(
    /^roll stiffness of the two axles together/,
  );
});
