import fc from "fast-check";
import { expect, test } from "vitest";
import { shareTransfer } from "../../../lib/load/share-transfer.js";

const axleLoads = { front: 5000, rear: 4000 };

test("each axle moves its share", () => {
  // by hand: 55 % and 45 % of 2000
  const { front, rear } = shareTransfer({ total: 2000, frontShare: 0.55, axleLoads });
  expect(front).toBeCloseTo(1100, 9);
  expect(rear).toBeCloseTo(900, 9);
});

test("what a lifted wheel cannot give, the other axle takes", () => {
  const most = shareTransfer({ total: 4000, frontShare: 0.9, axleLoads });
  expect(most).toEqual({ front: 2500, rear: 1500 });
  expect(shareTransfer({ total: 4000, frontShare: 0, axleLoads })).toEqual({
    front: 2000,
    rear: 2000,
  });
});

test("the transfers sum to the total while the car has it to move", () => {
  const share = fc.double({ min: 0, max: 1, noNaN: true });
  fc.assert(
    fc.property(share, share, (part, frontShare) => {
      const total = 4500 * part;
      const { front, rear } = shareTransfer({ total, frontShare, axleLoads });
      expect(front + rear).toBeCloseTo(total, 9);
      expect(front).toBeLessThanOrEqual(2500);
      expect(rear).toBeLessThanOrEqual(2000);
    }),
  );
});

test("a share above one is refused", () => {
  expect(() => shareTransfer({ total: 1, frontShare: 1.1, axleLoads })).toThrow(
    "front share is 1.1 but must be from 0 to 1.",
  );
});
