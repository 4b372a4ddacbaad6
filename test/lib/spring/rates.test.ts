import fc from "fast-check";
import { expect, test } from "vitest";
import { rideRate, springsInSeries, wheelRate } from "../../../lib/spring/rates.js";

test("30 and 200 N/mm one on the other give 26.0870 N/mm", () => {
  expect(rideRate(30e3, 200e3)).toBeCloseTo(26086.96, 2); // by hand: 6000/230
});

test("a spring that moves half as far as the wheel is felt as a quarter of its rate", () => {
  expect(wheelRate(40e3, 0.5)).toBe(10e3); // by hand
});

test("two springs in series are softer than the softer one, in either order", () => {
  const stiffness = fc.double({ min: 0, max: 1e6, noNaN: true });
  fc.assert(
    fc.property(stiffness, stiffness, (a, b) => {
      const both = springsInSeries(a, b);
      expect(both).toBeLessThanOrEqual(Math.min(a, b));
      expect(both).toBeCloseTo(springsInSeries(b, a), 6);
    }),
  );
});

test("a negative rate is refused", () => {
  expect(() => wheelRate(-1, 1)).toThrow("spring rate is -1 N/m but must be at least 0 N/m.");
});
