import fc from "fast-check";
import { expect, test } from "vitest";
import { axlesInTurn } from "../../../lib/balance/axle-in-turn.js";
import { axleSideForce } from "../../../lib/balance/axle-side-force.js";
import { axleForce, sideForceUnder, slipForDemand } from "../../../lib/balance/axle-slip.js";
import { axleCapacity, searchCapacity } from "../../../lib/balance/capacity.js";
import type { HandlingCar } from "../../../lib/balance/handling-car.js";
import { anyCar, lightCar } from "./cars.js";

const ends = ["front", "rear"] as const;

function axleOf(car: HandlingCar, end: "front" | "rear") {
  const axles = axlesInTurn(car, { speed: 25 });
  if (axles === undefined) throw new Error("a car of these tests stands on its springs");
  return axles[end];
}

test("at its limit an axle holds its mass, and no slip angle holds more", () => {
  fc.assert(
    fc.property(anyCar, fc.constantFrom(...ends), (car, end) => {
      const axle = axleOf(car, end);
      const { lateralAcceleration: ay, slipAngle } = axleCapacity(axle);
      const force = axleSideForce(axle, slipAngle, ay).force;
      expect(Math.abs(force / axle.mass - ay)).toBeLessThan(1e-5);
      for (const angle of [0.7, 0.9, 1.1, 1.3])
        expect(axleSideForce(axle, slipAngle * angle, ay).force).toBeLessThan(force + 1e-6);
    }),
  );
});

test("quick steps and slow searches agree, from a cold and from a warm start", () => {
  fc.assert(
    fc.property(anyCar, anyCar, fc.constantFrom(...ends), (car, other, end) => {
      const axle = axleOf(car, end);
      const sure = searchCapacity(axle).lateralAcceleration;
      const warm = axleCapacity(axle, axleCapacity(axleOf(other, end)));
      expect(Math.abs(axleCapacity(axle).lateralAcceleration - sure)).toBeLessThan(1e-5);
      expect(Math.abs(warm.lateralAcceleration - sure)).toBeLessThan(1e-5);
    }),
  );
});

test("the slope of side force is its derivative", () => {
  fc.assert(
    fc.property(anyCar, fc.double({ min: -0.3, max: 0.3, noNaN: true }), (car, angle) => {
      const axle = axleOf(car, "front");
      const step = 1e-6;
      const difference =
        axleSideForce(axle, angle + step, 7).force - axleSideForce(axle, angle - step, 7).force;
      expect(axleSideForce(axle, angle, 7).slope).toBeCloseTo(difference / (2 * step), -1);
    }),
  );
});

test("tyres that push give the push asked for, and the more they push the less they hold", () => {
  const axle = axleOf(lightCar, "rear");
  const held = [0, 1000, 2000, 3000].map((demand) => {
    const found = slipForDemand(axle, demand, 0.08, 6);
    expect(found?.force.longitudinal).toBeCloseTo(demand, 2);
    return found?.force.side ?? NaN;
  });
  expect(held).toEqual([...held].sort((a, b) => b - a));
});

test("a push that no slip can give is refused", () => {
  expect(slipForDemand(axleOf(lightCar, "rear"), 20e3, 0.08, 6)).toBeUndefined();
});

test("with nothing to push, combined slip gives pure side force", () => {
  const axle = axleOf(lightCar, "front");
  expect(axleForce(axle, 0, 0.1, 8).side).toBeCloseTo(axleSideForce(axle, 0.1, 8).force, 8);
});

test("the slope under a push is the derivative with the push held", () => {
  const axle = axleOf(lightCar, "rear");
  const under = sideForceUnder(2000);
  const step = 1e-5;
  const difference = under(axle, 0.1 + step, 7).force - under(axle, 0.1 - step, 7).force;
  expect(under(axle, 0.1, 7).slope / (difference / (2 * step))).toBeCloseTo(1, 3);
});
