import fc from "fast-check";
import { expect, test } from "vitest";
import { staticWheelLoads, wheelLoads } from "../../../lib/load/wheel-loads.js";
import { sumOfWheels } from "../../../lib/load/wheels.js";

test("a car of 1000 kg with 52 % in front stands on 2550 and 2354 N", () => {
  const loads = staticWheelLoads({ mass: 1000, frontWeightShare: 0.52 });
  expect(loads.front.left).toBeCloseTo(2549.729, 3); // by hand: 9806.65 × 0.26
  expect(loads.rear.right).toBeCloseTo(2353.596, 3); // by hand: 9806.65 × 0.24
});

test("a left turn loads the right wheels, braking loads the front ones", () => {
  const rest = staticWheelLoads({ mass: 1000, frontWeightShare: 0.5 });
  const loads = wheelLoads(rest, { front: 900, rear: 600 }, -400);
  expect(loads.front.right - rest.front.right).toBeCloseTo(900 + 200, 9);
  expect(loads.rear.left - rest.rear.left).toBeCloseTo(-600 - 200, 9);
});

test("the loads sum to the weight whatever is moved", () => {
  const newton = fc.double({ min: -5000, max: 5000, noNaN: true });
  const share = fc.double({ min: 0, max: 1, noNaN: true });
  fc.assert(
    fc.property(newton, newton, newton, share, share, (front, rear, along, f, l) => {
      const rest = staticWheelLoads({ mass: 1200, frontWeightShare: f, leftWeightShare: l });
      expect(sumOfWheels(wheelLoads(rest, { front, rear }, along))).toBeCloseTo(11767.98, 8);
    }),
  );
});
