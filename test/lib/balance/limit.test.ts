import fc from "fast-check";
import { expect, test } from "vitest";
import { limitBalance } from "../../../lib/balance/limit.js";
import { carInRoll } from "../../../lib/car/axle-loads.js";
import { demoCar } from "../../../lib/car/demo-car.js";
import type { CarInRoll } from "../../../lib/load/car-in-roll.js";
import { peakSideForceAtLoad, simpleTyre } from "../../../lib/tyre/load-sensitive.js";
import { GRAVITY } from "../../../lib/units.js";
import { rollByEnergy } from "../load/roll-by-energy.js";

const grip = (load: number) => peakSideForceAtLoad(simpleTyre, load);
const both = { front: grip, rear: grip };
const car = carInRoll(demoCar);
const stiffer = (end: "front" | "rear", factor: number): CarInRoll => ({
  ...car,
  [end]: { ...car[end], rollStiffness: car[end].rollStiffness * factor },
});

test("tyres without load sensitivity hold every axle to friction times gravity", () => {
  const plain = (load: number) => 0.9 * load; // by hand: the limit is 0.9 g whatever the transfer
  const limit = limitBalance(car, { front: plain, rear: plain });
  expect(limit.lateralAcceleration).toBeCloseTo(0.9 * GRAVITY, 8);
  expect(limit.first).toBe("both");
});

test("a load-sensitive axle without height loses nothing: its limit is friction at its own load", () => {
  const flat: CarInRoll = {
    sprungMass: 1000,
    sprungHeight: 0,
    sprungFrontShare: 0.6,
    front: {
      track: 1.5,
      rollStiffness: 3e4,
      rollCentreHeight: 0,
      unsprungMass: 0,
      unsprungHeight: 0,
    },
    rear: {
      track: 1.5,
      rollStiffness: 3e4,
      rollCentreHeight: 0,
      unsprungMass: 0,
      unsprungHeight: 0,
    },
  };
  const { axle } = limitBalance(flat, both);
  const friction = (load: number) => 1.3 - 5e-5 * load; // the numbers of the simple tyre
  expect(axle.front).toBeCloseTo(friction(300 * GRAVITY) * GRAVITY, 8); // by hand
  expect(axle.rear).toBeCloseTo(friction(200 * GRAVITY) * GRAVITY, 8);
});

test("the limit solves the quadratic that load sensitivity and transfer make", () => {
  // one end alone: m·ay = 2(μ0 − sF)F − 2s(c·ay)², with c the transfer for each m/s²
  const { axle } = limitBalance(car, both);
  const s = 5e-5;
  const front = frontByHand();
  const [a, b, c] = [
    2 * s * front.slope ** 2,
    front.mass,
    -2 * (1.3 - s * front.half) * front.half,
  ];
  const byHand = (-b + Math.sqrt(b * b - 4 * a * c)) / (2 * a);
  expect(axle.front).toBeCloseTo(byHand, 8);
});

function frontByHand() {
  const mass = car.sprungMass * car.sprungFrontShare + car.front.unsprungMass;
  return { slope: rollByEnergy(car).transferFront, mass, half: (mass * GRAVITY) / 2 };
}

test("stiffening one end brings its own limit down and lifts the other's", () => {
  const factor = fc.double({ min: 1.05, max: 2, noNaN: true });
  fc.assert(
    fc.property(factor, fc.constantFrom("front" as const, "rear" as const), (f, end) => {
      const [before, after] = [limitBalance(car, both), limitBalance(stiffer(end, f), both)];
      const other = end === "front" ? "rear" : "front";
      expect(after.axle[end]).toBeLessThan(before.axle[end]);
      expect(after.axle[other]).toBeGreaterThan(before.axle[other]);
    }),
  );
});

test("the end with less left gives up first, and the margin says by how much", () => {
  const limit = limitBalance(stiffer("front", 1.5), both);
  expect(limit.first).toBe("front");
  expect(limit.understeerMargin).toBeCloseTo(limit.axle.rear - limit.axle.front, 12);
  expect(limit.lateralAcceleration).toBe(limit.axle.front);
  expect(limitBalance(stiffer("rear", 2), both).first).toBe("rear");
});

test("a tall car on sticky tyres tips over first, at half track over height", () => {
  const sticky = (load: number) => 2 * load;
  const axle = {
    track: 1.4,
    rollStiffness: 1e9,
    rollCentreHeight: 0.3,
    unsprungMass: 0,
    unsprungHeight: 0.3,
  };
  const tall = {
    sprungMass: 1500,
    sprungHeight: 0.8,
    sprungFrontShare: 0.5,
    front: axle,
    rear: axle,
  };
  const limit = limitBalance(tall, { front: sticky, rear: sticky });
  expect(limit.tips).toBe(true);
  expect(limit.lateralAcceleration).toBeCloseTo((1.4 / 1.6) * GRAVITY, 3); // NHTSA, T/2h
});
