import fc from "fast-check";
import { expect, test } from "vitest";
import { standingCar } from "../../../../lib/balance/standing-car.js";
import { demoCar } from "../../../../lib/car/demo-car.js";
import { applyChange, applyChanges } from "../../../../lib/change/apply.js";
import { baselineOf, effectOf } from "../../../../lib/change/effect.js";
import { possibleChanges } from "../../../../lib/change/steps.js";
import { differenceOfSetUps } from "../../../../lib/day/plan/difference.js";
import { testedChanges } from "../../../../lib/day/plan/single.js";

const anyChange = fc.constantFrom(...possibleChanges(demoCar));

test("a car differs in nothing from itself", () => {
  expect(differenceOfSetUps(demoCar, demoCar)).toEqual({ changes: [], other: [] });
});

test("whatever single change is made, the difference names it and nothing else", () => {
  fc.assert(
    fc.property(anyChange, (change) => {
      const { changes, other } = differenceOfSetUps(demoCar, applyChange(demoCar, change));
      expect(other).toEqual([]);
      expect(changes).toHaveLength(1);
      expect(changes[0]).toMatchObject({ ...change, by: expect.closeTo(change.by, 9) });
    }),
  );
});

test("making the difference again leads from one car to the other", () => {
  fc.assert(
    fc.property(anyChange, anyChange, (one, other) => {
      fc.pre(one.lever !== other.lever);
      const after = applyChanges(demoCar, [one, other]);
      const made = applyChanges(demoCar, differenceOfSetUps(demoCar, after).changes);
      expect(differenceOfSetUps(made, after)).toEqual({ changes: [], other: [] });
    }),
  );
});

test("one side alone is told apart from both", () => {
  const crossed = applyChange(demoCar, { lever: "seatTurns", end: "rear", side: "left", by: 2 });
  expect(differenceOfSetUps(demoCar, crossed).changes).toEqual([
    { lever: "seatTurns", end: "rear", side: "left", by: 2 },
  ]);
});

test("what is no lever is named by its path", () => {
  const wider = { ...demoCar, rear: { ...demoCar.rear, track: 1.5 } };
  expect(differenceOfSetUps(demoCar, wider)).toEqual({ changes: [], other: ["rear.track"] });
});

test("a spring with its seats put back is one tested change", () => {
  const spring = { lever: "springRate", end: "front", by: -10e3 } as const;
  const { putBack } = effectOf(spring, baselineOf(standingCar(demoCar)));
  expect(putBack).toBeDefined();
  const after = putBack?.car ?? demoCar;
  expect(differenceOfSetUps(demoCar, after).changes.length).toBeGreaterThan(1);
  expect(testedChanges(standingCar(demoCar), standingCar(after, demoCar))).toEqual([spring]);
});

test("a spring with seats turned further than put back is two", () => {
  const after = applyChanges(demoCar, [
    { lever: "springRate", end: "front", by: 5e3 },
    { lever: "seatTurns", end: "front", by: 8 },
  ]);
  expect(testedChanges(standingCar(demoCar), standingCar(after, demoCar))).toHaveLength(2);
});
