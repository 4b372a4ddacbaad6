import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { demoCar } from "../../../../lib/car/demo-car.js";
import type { Change } from "../../../../lib/change/change.js";
import { possibleChanges } from "../../../../lib/change/steps.js";
import type { PhaseShifts } from "../../../../lib/day/plan/sheet-row.js";
import { carWith, shiftsIn } from "../../../../lib/day/practice/known-car.js";
import { practiceCorner, practiceFrom } from "../../../../lib/day/practice/practice.js";
import { scoreNext } from "../../../../lib/day/practice/score.js";
import { wayBack } from "../../../../lib/day/practice/way-back.js";
import { scoreReasonInWords } from "../../../../site/say/practice/score.js";
import { readerWith } from "../../../../site/say/reader.js";
import { between } from "../../evenly.js";

const shifts = (braking: number, turnIn: number, middle: number, power: number): PhaseShifts => ({
  "braking in": braking,
  "turn-in": turnIn,
  middle,
  "power on": power,
});
const moved = shifts(0.2, 0.2, 0.2, 0.2);
const told = (left: PhaseShifts) => wayBack(moved, left).way;

describe("the way back", () => {
  test("is told as a share while it leads back", () => {
    expect(told(shifts(0, 0, 0, 0))).toEqual({ code: "takes-back", share: 1 });
    expect(told(shifts(0.1, 0.1, 0.1, 0.1))).toEqual({ code: "takes-back", share: 0.5 });
  });

  test("past the known car is told as too much, even where less is left than there was", () => {
    expect(told(shifts(-0.1, -0.1, -0.1, -0.1))).toEqual({
      code: "overshoots",
      along: expect.closeTo(1.5, 12),
    });
    expect(told(shifts(-0.5, -0.5, -0.5, -0.5)).code).toBe("overshoots");
  });

  test("further away is worse, and no share of anything", () => {
    expect(told(shifts(0.5, 0.5, 0.5, 0.5))).toEqual({ code: "makes-it-worse" });
  });

  test("that moves another part of the corner, or next to nothing, is told as that", () => {
    expect(told(shifts(0.5, -0.1, 0.2, 0.2))).toEqual({ code: "does-not-help" });
    expect(told(shifts(0.21, 0.2, 0.2, 0.2))).toEqual({ code: "hardly-felt" });
  });

  test("counts 1 for all of it, 0 for none and less for worse, whatever had moved", () => {
    fc.assert(
      fc.property(between(-1, 1), between(0.05, 1), between(-2, 2), (a, b, k) => {
        const from = shifts(a, b, -b, a);
        const to = shifts(k * a, k * b, -k * b, k * a);
        expect(wayBack(from, to).back).toBeCloseTo(1 - Math.abs(k), 9);
      }),
    );
  });
});

test("a bar moved on the same way is told to make it worse, by no share", () => {
  const hidden = { lever: "barPosition", end: "front", by: -1 } as const;
  const changed = carWith(hidden, demoCar, demoCar);
  const moves = shiftsIn(practiceCorner, demoCar, changed);
  const practice = { ...practiceFrom(1), hidden: [hidden], changed, shifts: moves };
  const said = (next: Change) =>
    scoreNext(practice, next).reasons.map((reason) =>
      scoreReasonInWords(reason, practice, readerWith("metric")),
    )[0];
  expect(said(hidden)).toBe(
    "front bar position 2 → 1 makes it worse: it moves the car further the same way.",
  );
  expect(said({ ...hidden, by: 2 })).toMatch(/^front bar position 2 → 4 overshoots/);
});

test("no next change is told with a share below nothing or far above all", () => {
  const practices = [2, 5, 9, 14].map((seed) => practiceFrom(seed));
  const any = fc.tuple(fc.constantFrom(...practices), fc.constantFrom(...possibleChanges(demoCar)));
  fc.assert(
    fc.property(any, ([practice, next]) => {
      const [reason = ""] = scoreNext(practice, next).reasons.map((one) =>
        scoreReasonInWords(one, practice, readerWith("metric")),
      );
      expect(reason).not.toMatch(/-\d|−\d+ %/);
      const share = /takes back (\d+) %/.exec(reason)?.[1];
      if (share !== undefined) expect(Number(share)).toBeLessThanOrEqual(100);
    }),
    { numRuns: 60 },
  );
});
