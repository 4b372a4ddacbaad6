import { expect, test } from "vitest";
import {
  axleRollStiffness,
  rollStiffnessOfBar,
  rollStiffnessOfPair,
} from "../../../lib/spring/roll-stiffness.js";

test("30 N/mm at each wheel on a track of 1.5 m give 33 750 N·m/rad", () => {
  expect(rollStiffnessOfPair(30e3, 1.5)).toBe(33750); // by hand
});

test("a bar resists roll by the force of its ends, found by virtual work", () => {
  // ends move ±i·φ·t/2; energy ½k(i·t·φ)², whose second derivative is k·i²·t²
  const bar = { barRate: 20e3, motionRatio: 0.6, track: 1.5 };
  const energy = (angle: number) => 0.5 * 20e3 * (0.6 * 1.5 * angle) ** 2;
  const step = 1e-3;
  const stiffness = (energy(step) - 2 * energy(0) + energy(-step)) / step ** 2;
  expect(rollStiffnessOfBar(bar)).toBeCloseTo(stiffness, 6);
});

const axle = { wheelRate: 30e3, barRollStiffness: 12e3, track: 1.5, tyreStiffness: 200e3 };

test("tyres under the axle take away from its roll stiffness", () => {
  const [suspension, tyres] = [33750 + 12000, 225000]; // by hand
  expect(axleRollStiffness(axle)).toBeCloseTo(1 / (1 / suspension + 1 / tyres), 6);
  expect(axleRollStiffness({ ...axle, tyreStiffness: Infinity })).toBe(suspension);
});

test("springs of a beam axle work at their own spacing", () => {
  const beam = { ...axle, springSpacing: 1, tyreStiffness: Infinity };
  expect(axleRollStiffness(beam)).toBe(15000 + 12000); // by hand: ½ · 30 000 · 1²
});
