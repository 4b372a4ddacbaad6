import fc from "fast-check";
import { expect, test } from "vitest";
import { centreOfLoad } from "../../../lib/load/centre-of-load.js";
import { lateralLoadTransfer, longitudinalLoadTransfer } from "../../../lib/load/transfer.js";
import type { Axles, Wheels } from "../../../lib/load/wheels.js";

const frame = { wheelbase: 2.4, front: { track: 1.5 }, rear: { track: 1.5 } };

/** A weight, N, shared over four wheels. */
function fourLoads(weight: number, front: number, left: number): Wheels<number> {
  const axle = (share: number) => ({ left: share * left, right: share * (1 - left) });
  return { front: axle(weight * front), rear: axle(weight * (1 - front)) };
}

/** The loads with some moved to the right on each axle, and some from the front to the rear. */
function moved(
  { front, rear }: Wheels<number>,
  across: Axles<number>,
  along: number,
): Wheels<number> {
  return {
    front: {
      left: front.left - across.front - along / 2,
      right: front.right + across.front - along / 2,
    },
    rear: {
      left: rear.left - across.rear + along / 2,
      right: rear.right + across.rear + along / 2,
    },
  };
}

test("at rest the load is centred below the centre of gravity", () => {
  const loads = fourLoads(9806.65, 0.6, 0.52);
  const { behindFrontAxle, leftOfCentre } = centreOfLoad(loads, frame);
  expect(behindFrontAxle).toBeCloseTo(2.4 * 0.4, 12); // by hand
  expect(leftOfCentre).toBeCloseTo(1.5 * 0.02, 12); // by hand
});

test("it wanders by h·a/g away from the acceleration, however the axles share the transfer", () => {
  const acceleration = fc.double({ min: -6, max: 6, noNaN: true });
  const share = fc.double({ min: 0, max: 1, noNaN: true });
  fc.assert(
    fc.property(acceleration, acceleration, share, (ax, ay, frontShare) => {
      const car = { mass: 1000, centreOfGravityHeight: 0.49, track: 1.5, wheelbase: 2.4 };
      const across = lateralLoadTransfer({ ...car, lateralAcceleration: ay });
      const along = longitudinalLoadTransfer({ ...car, longitudinalAcceleration: ax });
      const axles = { front: across * frontShare, rear: across * (1 - frontShare) };
      const rest = fourLoads(9806.65, 0.5, 0.5);
      const centre = centreOfLoad(moved(rest, axles, along), frame);
      expect(centre.leftOfCentre).toBeCloseTo((-0.49 * ay) / 9.80665, 10); // moments by hand
      expect(centre.behindFrontAxle).toBeCloseTo(1.2 + (0.49 * ax) / 9.80665, 10);
    }),
  );
});

test("a car that does not press on the road has no centre of load", () => {
  const loads = fourLoads(0, 0.5, 0.5);
  expect(() => centreOfLoad(loads, frame)).toThrow(/sum of the wheel loads/);
});
