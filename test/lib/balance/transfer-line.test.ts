import fc from "fast-check";
import { expect, test } from "vitest";
import { transferLines } from "../../../lib/balance/transfer-line.js";
import { axleLoads } from "../../../lib/load/car-in-roll.js";
import { distributeLoadTransfer } from "../../../lib/load/distribution.js";
import { between } from "../evenly.js";
import { anyCar } from "./cars.js";

const down = { front: false, rear: false };
const ends = ["front", "rear"] as const;

test("the line gives the transfer and roll of the distribution while all wheels are down", () => {
  fc.assert(
    fc.property(anyCar, between(0.5, 12), (car, ay) => {
      const shared = distributeLoadTransfer(car, ay);
      if (shared.front.lifted || shared.rear.lifted) return;
      const lines = transferLines(car, { front: 0, rear: 0 }, down);
      for (const end of ends) {
        const { offset, slope } = lines?.transfer[end] ?? { offset: NaN, slope: NaN };
        expect(offset + slope * ay).toBeCloseTo(shared[end].total, 7);
        expect((lines?.rollAngle[end].slope ?? NaN) * ay).toBeCloseTo(shared.rollAngle[end], 12);
      }
    }),
  );
});

test("with one wheel in the air the line follows the distribution too", () => {
  let lifts = 0;
  fc.assert(
    fc.property(anyCar, between(8, 20), (car, ay) => {
      const shared = distributeLoadTransfer(car, ay);
      const lifted = { front: shared.front.lifted, rear: shared.rear.lifted };
      if (lifted.front === lifted.rear) return;
      lifts++;
      const loads = axleLoads(car);
      const given = { front: loads.front / 2, rear: loads.rear / 2 };
      const lines = transferLines(car, given, lifted);
      for (const end of ends) {
        const { offset, slope } = lines?.transfer[end] ?? { offset: NaN, slope: NaN };
        expect(offset + slope * ay).toBeCloseTo(shared[end].total, 6);
      }
    }),
    { numRuns: 300 },
  );
  expect(lifts).toBeGreaterThan(20);
});
