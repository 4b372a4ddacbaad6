import fc from "fast-check";
import { expect, test } from "vitest";
import type { Axle } from "../../../lib/car/car.js";
import { demoCar } from "../../../lib/car/demo-car.js";
import { dampersInRoll } from "../../../lib/transient/dampers-in-roll.js";

const rate = fc.double({ min: 100, max: 30e3, noNaN: true });
const withDamper = (bump: number, rebound: number): Axle => ({
  ...demoCar.front,
  damper: { bump, rebound },
});

test("bump alone loads the outer tyre, rebound alone unloads the inner one", () => {
  // 2000 and 3000 N·s/m at a motion ratio of 0.65, 0.1 rad/s on a track of 1.44 m: 0.072 m/s
  const { pressed, relieved } = dampersInRoll(withDamper(2000, 3000), 0.1);
  expect(pressed).toBeCloseTo(2000 * 0.65 ** 2 * 0.072, 9);
  expect(relieved).toBeCloseTo(3000 * 0.65 ** 2 * 0.072, 9);
});

test("what the tyres lose in all pulls the body down", () => {
  fc.assert(
    fc.property(rate, rate, (bump, rebound) => {
      const { pressed, relieved, transfer, pull } = dampersInRoll(withDamper(bump, rebound), 0.15);
      expect(relieved - pressed).toBeCloseTo(pull, 6);
      expect((relieved + pressed) / 2).toBeCloseTo(transfer, 6);
    }),
  );
});

test("a click from rebound to bump moves the pull and not the transfer", () => {
  fc.assert(
    fc.property(rate, (click) => {
      const before = dampersInRoll(withDamper(2000, 2000 + click), 0.15);
      const after = dampersInRoll(withDamper(2000 + click, 2000), 0.15);
      expect(after.transfer).toBeCloseTo(before.transfer, 6);
      expect(after.pull).toBeCloseTo(-before.pull, 6);
    }),
  );
});

test("rolling back moves load back, and rebound still pulls down", () => {
  const [there, back] = [dampersInRoll(demoCar.rear, 0.2), dampersInRoll(demoCar.rear, -0.2)];
  expect(back.transfer).toBeCloseTo(-there.transfer, 9);
  expect(back.pull).toBeCloseTo(there.pull, 9);
});

test("the dampers of a beam axle have the lever of their own distance", () => {
  // forces of the dampers 0.5 m from the middle, moments about the other tyre 1.44 m away
  const beam = { ...withDamper(4000, 6000), spring: { ...demoCar.front.spring, spacing: 1 } };
  const [push, pull] = [4000 * 0.65 ** 2 * 0.05, 6000 * 0.65 ** 2 * 0.05];
  const outer = (push * (0.72 + 0.5) - pull * (0.72 - 0.5)) / 1.44;
  const { pressed, relieved } = dampersInRoll(beam, 0.1);
  expect(pressed).toBeCloseTo(outer, 9);
  expect(relieved).toBeCloseTo(outer - push + pull, 9);
});
