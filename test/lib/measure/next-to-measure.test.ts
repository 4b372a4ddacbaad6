import { describe, expect, test } from "vitest";
import { phaseNames } from "../../../lib/balance/phases.js";
import { forEach } from "../../../lib/certainty/phase-bands.js";
import type { Sample } from "../../../lib/certainty/sampled-behaviour.js";
import { sharedDoubts } from "../../../lib/certainty/shared-doubts.js";
import { nextToMeasure } from "../../../lib/measure/next-to-measure.js";
import { normalFrom, randomFrom } from "../../../lib/random.js";
import { axle, firstRook } from "./first-rook.js";

describe("what to measure next", () => {
  test("is worth its share, less what measuring leaves in doubt", () => {
    const car = firstRook({ ...axle, kind: "beam", bar: 0 });
    const spread = car.known?.["body.height"]?.spread ?? 0;
    const [first, second, ...more] = nextToMeasure(car, {
      balance: [
        { path: "body.height", share: 0.6 },
        { path: "front.tyre.grip", share: 0.4 },
      ],
      changes: [[{ path: "front.spring.motionRatio", share: 0.5 }], []],
    });
    expect(first).toMatchObject({ id: "raised-axle", ofChanges: 0 });
    expect(first?.ofBalance).toBeCloseTo(0.6 * (1 - (0.02 / spread) ** 2), 9); // measured: 2 cm, spreads.ts
    expect(second).toMatchObject({ id: "motion-ratio", end: "front", ofBalance: 0 });
    expect(second?.ofChanges).toBeCloseTo(0.5 * (1 - (0.03 / 0.12) ** 2), 6);
    expect(more).toEqual([]); // grip nobody measures by such means
  });

  test("never tapes the joints of a beam", () => {
    const balance = [{ path: "rear.geometry.rollCentreHeight", share: 1 }];
    expect(
      nextToMeasure(firstRook({ ...axle, kind: "beam", bar: 0 }), { balance, changes: [] }),
    ).toEqual([]);
  });
});

test("a change's doubts are those of the numbers that move what it moves (400 cars made up)", () => {
  const random = randomFrom(8);
  const phases = (shift: number) =>
    forEach(phaseNames, () => ({ understeerMargin: shift, lateralAcceleration: 0 }));
  const samples = Array.from({ length: 400 }, (_, k): Sample => {
    const deviations = [0, 0, 0].map(() => normalFrom(random));
    const [a = 0, b = 0] = deviations;
    const moved =
      k % 10 === 0 ? undefined : { alone: phases(99), putBack: phases(0.2 + 0.04 * a - 0.03 * b) };
    return { deviations, phases: phases(0), tips: [], moved: [moved] };
  });
  const { balance, changes } = sharedDoubts(samples, 1, ["a", "b", "c"]);
  const [first, second, none] = changes[0] ?? [];
  expect(Math.abs(none?.share ?? 1)).toBeLessThan(0.03); // four of its standard deviations, √2/200
  for (const { share } of balance) expect(Math.abs(share)).toBeLessThan(0.03);
  expect([first?.path, second?.path]).toEqual(["a", "b"]);
  expect(first?.share ?? 0).toBeCloseTo(16 / 25, 1); // variances 0.04² and 0.03²
  expect(second?.share ?? 0).toBeCloseTo(9 / 25, 1);
});
