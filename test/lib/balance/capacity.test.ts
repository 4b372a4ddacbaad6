import fc from "fast-check";
import { expect, test } from "vitest";
import { axlesInTurn } from "../../../lib/balance/axle-in-turn.js";
import { axleSideForce } from "../../../lib/balance/axle-side-force.js";
import { axleCapacity, searchCapacity } from "../../../lib/balance/capacity.js";
import type { HandlingCar } from "../../../lib/balance/handling-car.js";
import { between } from "../evenly.js";
import { anyCar } from "./cars.js";

const ends = ["front", "rear"] as const;

function axleOf(car: HandlingCar, end: "front" | "rear") {
  const axles = axlesInTurn(car, { speed: 25 });
  if (axles === undefined) throw new Error("a car of these tests stands on its springs");
  return { ...axles[end], push: 0 };
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
    fc.property(anyCar, between(-0.3, 0.3), (car, angle) => {
      const axle = axleOf(car, "front");
      const step = 1e-6;
      const difference =
        axleSideForce(axle, angle + step, 7).force - axleSideForce(axle, angle - step, 7).force;
      expect(axleSideForce(axle, angle, 7).slope).toBeCloseTo(difference / (2 * step), -1);
    }),
  );
});

test("the more an axle pushes or brakes, the less it holds", () => {
  fc.assert(
    fc.property(anyCar, between(0, 3000), (car, push) => {
      const axle = axleOf(car, "rear");
      const held = (force: number) =>
        axleSideForce({ ...axle, push: force }, 0.12, 6).force - axleSideForce(axle, 0.12, 6).force;
      expect(held(push * 1.1)).toBeLessThanOrEqual(held(push) + 1e-9);
      expect(held(-push)).toBeCloseTo(held(push), 9);
    }),
  );
});
