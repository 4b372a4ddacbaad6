import fc from "fast-check";
import { expect, test } from "vitest";
import { mostPush, pushWith } from "../../../lib/balance/rolling-tyre.js";
import { sharePush } from "../../../lib/balance/share-push.js";
import { clubTyreCoefficients } from "../../../lib/tyre/club-tyre.js";
import { combinedForce61 } from "../../../lib/tyre/magic-formula-61-combined.js";
import { referenceTyreCoefficients } from "../../../lib/tyre/reference-tyre.js";
import { between } from "../evenly.js";

const anyTyre = fc.record({
  coefficients: fc.constantFrom(clubTyreCoefficients, referenceTyreCoefficients),
  load: between(100, 8000),
  pressure: fc.constant(200e3),
  inclination: between(-0.05, 0.05),
  slipAngle: between(-0.15, 0.15),
});

test("a tyre pushes as asked while it can, else with about all it has", () => {
  fc.assert(
    fc.property(anyTyre, between(-1.3, 1.3), (tyre, share) => {
      const wanted = share * mostPush(tyre);
      const { slip, force } = pushWith(tyre, wanted);
      const { coefficients: t, load, pressure, inclination, slipAngle } = tyre;
      expect(force).toEqual(combinedForce61(t, slip, slipAngle, load, pressure, inclination));
      if (Math.abs(force.longitudinal - wanted) < 1e-3) return;
      expect(Math.abs(force.longitudinal)).toBeLessThan(Math.abs(wanted) + 1e-3);
      expect(Math.abs(slip)).toBeGreaterThan(0.05);
    }),
  );
});

test("a small push is always given, whatever the start", () => {
  fc.assert(
    fc.property(anyTyre, between(-0.3, 0.3), between(-0.05, 0.05), (tyre, share, start) => {
      const wanted = share * mostPush(tyre);
      expect(pushWith(tyre, wanted, start).force.longitudinal).toBeCloseTo(wanted, 5);
    }),
  );
});

test("a tyre in the air does nothing", () => {
  const tyre = {
    coefficients: clubTyreCoefficients,
    pressure: 2e5,
    inclination: 0,
    slipAngle: 0.1,
  };
  expect(pushWith({ ...tyre, load: 0 }, 500)).toEqual({
    slip: 0,
    force: { longitudinal: 0, side: 0 },
  });
});

test("two tyres share a push in halves until one has no more, and the sum is kept", () => {
  const most = fc.record({ left: between(0, 6000), right: between(0, 6000) });
  fc.assert(
    fc.property(most, between(-8000, 8000), (each, push) => {
      const { left, right } = sharePush(push, each);
      expect(left + right).toBeCloseTo(push, 8);
      if (Math.abs(push) > 1 && Math.abs(push) < 0.5 * Math.min(each.left, each.right))
        expect(left / push).toBeCloseTo(0.5, 3);
      const weaker = each.left < each.right ? left : right;
      expect(Math.abs(weaker)).toBeLessThanOrEqual(Math.min(each.left, each.right) + 1e-9);
    }),
  );
});
