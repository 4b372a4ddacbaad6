import fc from "fast-check";
import { expect, test } from "vitest";
import { gripOf, limitBalanceOf } from "../../../lib/balance/limit-balance.js";
import { withBars } from "../../../lib/car/bars.js";
import { demoCar } from "../../../lib/car/demo-car.js";
import { demoInRoll } from "../load/demo-in-roll.js";
import { rollByEnergy } from "../load/roll-by-energy.js";

test("an upright club tyre at 200 kPa has friction 1.30 less 0.05 for each kN", () => {
  const { front } = gripOf(demoCar);
  expect(front(3000)).toBeCloseTo(3000 * 1.15, 6); // by hand: 1.15 − 0.15·(Fz − 3000)/3000
  expect(front(4500)).toBeCloseTo(4500 * 1.075, 6);
});

test("while all wheels are down, a stiffer front bar takes from the front limit and gives to the rear", () => {
  const bar = fc.double({ min: 0, max: 30e3, noNaN: true });
  const softRear = fc.double({ min: 0, max: 5e3, noNaN: true });
  fc.assert(
    fc.property(bar, bar, softRear, (a, b, rear) => {
      fc.pre(Math.abs(a - b) > 100);
      const soft = limitBalanceOf(withBars(demoCar, { front: Math.min(a, b), rear })).axle;
      const stiff = limitBalanceOf(withBars(demoCar, { front: Math.max(a, b), rear })).axle;
      expect(stiff.front).toBeLessThanOrEqual(soft.front);
      expect(stiff.rear).toBeGreaterThanOrEqual(soft.rear);
    }),
    { numRuns: 300 },
  );
});

test("the demo car's front axle gives up at the root of its quadratic", () => {
  const { axle, first } = limitBalanceOf(demoCar);
  expect(first).toBe("front");
  expect(axle.front).toBeCloseTo(frontLimitByHand(), 8);
});

/** m·ay = μ0·W − s·W²/2 − 2s·(c·ay)², with c the transfer of the front axle for each m/s². */
function frontLimitByHand(): number {
  const [g, s, mu] = [9.80665, 5e-5, 1.3];
  const { transferFront: c } = rollByEnergy(demoInRoll);
  const m = demoInRoll.sprungMass * demoInRoll.sprungFrontShare + 75;
  const W = m * g;
  const [A, C] = [2 * s * c ** 2, mu * W - (s * W ** 2) / 2];
  return (-m + Math.sqrt(m ** 2 + 4 * A * C)) / (2 * A);
}
