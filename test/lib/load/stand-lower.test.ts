import fc from "fast-check";
import { expect, test } from "vitest";
import type { CarInRoll } from "../../../lib/load/car-in-roll.js";
import { distributeLoadTransfer } from "../../../lib/load/distribution.js";
import { rollLeverArm, standLower } from "../../../lib/load/stand-lower.js";

const axle = { track: 1.45, rollStiffness: 30e3, unsprungMass: 80, unsprungHeight: 0.29 };
const car: CarInRoll = {
  sprungMass: 900,
  sprungHeight: 0.52,
  sprungFrontShare: 0.6,
  front: { ...axle, rollCentreHeight: 0.05 },
  rear: { ...axle, rollCentreHeight: 0.1 },
};

test("the lever arm reaches from the roll axis under the mass to the centre of gravity", () => {
  expect(rollLeverArm(car)).toBeCloseTo(0.52 - (0.6 * 0.05 + 0.4 * 0.1), 12); // by hand
});

test("a roll centre that falls further than the body lengthens the lever arm", () => {
  const lowered = standLower(car, 0.03, { front: -0.07, rear: -0.07 });
  expect(rollLeverArm(lowered) - rollLeverArm(car)).toBeCloseTo(0.04, 12); // by hand
});

test("lowering always moves less load, even where the body then rolls more", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.005, max: 0.06, noNaN: true }),
      fc.double({ min: 1.2, max: 2.6, noNaN: true }),
      (lowering, ratio) => {
        const change = -ratio * lowering;
        const lowered = standLower(car, lowering, { front: change, rear: change });
        const [before, after] = [car, lowered].map((c) => distributeLoadTransfer(c, 7));
        if (!before || !after) throw new Error("both cars were solved");
        expect(after.total).toBeLessThan(before.total);
        expect(after.rollAngle.front).toBeGreaterThan(before.rollAngle.front);
      },
    ),
  );
});

test("a lowering that nobody can mean is refused", () => {
  expect(() => standLower(car, 1, { front: 0, rear: 0 })).toThrow(
    "lowering is 1 m but must be from -0.3 to 0.3 m.",
  );
});
