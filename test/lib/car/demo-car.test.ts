import { expect, test } from "vitest";
import { rideRateOf } from "../../../lib/car/axle.js";
import { axleLoadsOf } from "../../../lib/car/axle-loads.js";
import type { Car } from "../../../lib/car/car.js";
import { demoCar } from "../../../lib/car/demo-car.js";
import { axleWeightsOf } from "../../../lib/car/masses.js";
import { rideFrequency } from "../../../lib/spring/ride.js";
import { GRAVITY } from "../../../lib/units.js";

const bars = (front: number, rear: number): Car => {
  const { bar: frontBar } = demoCar.front;
  const { bar: rearBar } = demoCar.rear;
  if (!frontBar || !rearBar) throw new Error("the demo car has two bars");
  return {
    ...demoCar,
    front: { ...demoCar.front, bar: { ...frontBar, position: front } },
    rear: { ...demoCar.rear, bar: { ...rearBar, position: rear } },
  };
};

test("the rear springs are 10 to 20 % quicker than the front ones, as on road cars", () => {
  // common practice, no source
  const weights = axleWeightsOf(demoCar);
  const frequency = (end: "front" | "rear") =>
    rideFrequency(
      rideRateOf(demoCar[end]),
      (weights[end] / GRAVITY - demoCar[end].unsprungMass) / 2,
    );
  const ratio = frequency("rear") / frequency("front");
  expect(ratio).toBeGreaterThan(1.1);
  expect(ratio).toBeLessThan(1.2);
  expect(frequency("front")).toBeGreaterThan(1.5); // between road and saloon racing – Giaraffa
  expect(frequency("rear")).toBeLessThan(2);
});

test("the body rolls between a soft road car's 7 and a racer's 1.5 degrees for each g", () => {
  // Milliken 1995, from memory
  const perG = axleLoadsOf(demoCar, GRAVITY).rollAngle.front / (Math.PI / 180);
  expect(perG).toBeGreaterThan(1.5);
  expect(perG).toBeLessThan(7);
});

test("each bar position moves at least one percent of the transfer", () => {
  for (let position = 1; position < 5; position++)
    expect(share(position + 1, 2) - share(position, 2)).toBeGreaterThan(0.01);
  for (let position = 1; position < 4; position++)
    expect(share(3, position) - share(3, position + 1)).toBeGreaterThan(0.01);
});

test("the stiffest rear bar without a front one lifts the inside rear wheel before 1.06 g", () => {
  expect(axleLoadsOf(bars(1, 4), 1.06 * GRAVITY).rear.lifted).toBe(true);
  expect(axleLoadsOf(demoCar, 1.06 * GRAVITY).rear.lifted).toBe(false);
});

function share(front: number, rear: number): number {
  return axleLoadsOf(bars(front, rear), 5).frontShare;
}
