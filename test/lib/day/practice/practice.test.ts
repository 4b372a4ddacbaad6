import fc from "fast-check";
import { describe, expect, test, vi } from "vitest";
import { phaseNames } from "../../../../lib/balance/phases.js";
import { standingCar } from "../../../../lib/balance/standing-car.js";
import { demoCar } from "../../../../lib/car/demo-car.js";
import { undoOf } from "../../../../lib/change/change.js";
import { possibleChanges } from "../../../../lib/change/steps.js";
import { LEAST_FELT_SHIFT } from "../../../../lib/day/debrief/feel.js";
import { testedChanges } from "../../../../lib/day/plan/single.js";
import { driveCorner } from "../../../../lib/day/practice/drive-corner.js";
import { carWith } from "../../../../lib/day/practice/known-car.js";
import {
  type Practice,
  practiceCorner,
  practiceFrom,
} from "../../../../lib/day/practice/practice.js";
import {
  bestWayBack,
  scoreCause,
  scoreNext,
  scoreReport,
} from "../../../../lib/day/practice/score.js";
import { marginsOf } from "../../../../lib/statics/margins.js";
import { scoreReasonInWords } from "../../../../site/say/practice/score.js";
import { readerWith } from "../../../../site/say/reader.js";

vi.setConfig({ testTimeout: 60_000 }); // many cars, or many files, in each test

/** Both cars through the corner, at the same speed if the second one can. */
function bothDrives({ car, changed, corner }: Pick<Practice, "car" | "changed" | "corner">) {
  const before = driveCorner(car, corner);
  return { before, after: driveCorner(changed, corner, { measured: car, wanted: before.speed }) };
}

const seeds = Array.from({ length: 24 }, (_, seed) => seed);
const practices = seeds.map((seed) => practiceFrom(seed));
const most = (practice: (typeof practices)[number]) =>
  phaseNames.reduce((a, b) =>
    Math.abs(practice.shifts[b]) > Math.abs(practice.shifts[a]) ? b : a,
  );

describe("a puzzle", () => {
  test("is the same again from the same seed, corner and car", () => {
    expect(practiceFrom(7)).toEqual(practiceFrom(7));
  });

  test("hides one change that is felt and breaks no limit", () => {
    for (const practice of practices) {
      expect(
        testedChanges(standingCar(demoCar), standingCar(practice.changed, demoCar)),
      ).toHaveLength(1);
      expect(Math.abs(practice.shifts[most(practice)])).toBeGreaterThanOrEqual(LEAST_FELT_SHIFT);
      expect(
        marginsOf(standingCar(practice.changed, demoCar)).every(({ margin }) => margin >= 0),
      ).toBe(true);
    }
  });

  test("is felt in the very corner, where a level road would have made more of it", () => {
    const falling = { ...practiceCorner, speed: 18, banking: -0.15, grade: -0.1 };
    for (const seed of seeds.slice(0, 8)) {
      const practice = practiceFrom(seed, falling);
      expect(Math.abs(practice.shifts[most(practice)])).toBeGreaterThanOrEqual(LEAST_FELT_SHIFT);
    }
  });

  test("is not always the same lever", () => {
    expect(new Set(practices.map(({ hidden: [change] }) => change?.lever)).size).toBeGreaterThan(3);
  });

  test("of no whole number is refused with a sentence", () => {
    expect(() => practiceFrom(1.5)).toThrow("seed is 1.5 but must be a whole number.");
    expect(() => practiceFrom(-1)).toThrow("seed is -1 but must be from 0 to 2147483647.");
  });
});

describe("scores", () => {
  test("naming the change, reporting where it is felt most and taking it back is all there is", () => {
    for (const practice of practices) {
      const phase = most(practice);
      const balance = Math.sign(practice.shifts[phase]);
      const report = { corner: "Practice corner", phase, input: "steady", balance } as const;
      if (Math.abs(practice.shifts[phase]) >= 0.1)
        expect(scoreReport(practice, report).score).toBeCloseTo(1, 9);
      expect(scoreCause(practice, practice.hidden).score).toBe(1);
      const [undo] = practice.hidden.map(undoOf);
      expect(bestWayBack(practice)).toEqual(undo);
      expect(undo && scoreNext(practice, undo).score).toBeGreaterThan(0.9);
    }
  });

  test("the wrong sign, or nothing said, is worth nothing and says why", () => {
    const [practice] = practices;
    if (practice === undefined) throw new Error("no puzzle");
    const phase = most(practice);
    const wrong = scoreReport(practice, { phase, balance: -2 * Math.sign(practice.shifts[phase]) });
    expect(wrong.score).toBe(0);
    expect(wrong.reasons.at(-1)).toEqual({
      code: "moved-otherwise",
      phase,
      said: -2 * Math.sign(practice.shifts[phase]),
      shift: practice.shifts[phase],
    });
    expect(scoreReport(practice, { balance: -2 }).reasons[0]).toEqual({
      code: "not-said",
      field: "corner",
    });
  });

  test("doing more of the same leads away", () => {
    const practice = practices.find(({ hidden: [change] }) => change?.lever === "springRate");
    if (practice === undefined) throw new Error("no puzzle with springs");
    const [change] = practice.hidden;
    expect(change && scoreNext(practice, change).score).toBe(0);
  });

  test("every single change of the car has a score from 0 to 1 with reasons", () => {
    const anyAnswer = fc.tuple(
      fc.constantFrom(...practices),
      fc.constantFrom(...possibleChanges(demoCar)),
    );
    fc.assert(
      fc.property(anyAnswer, ([practice, change]) => {
        for (const { score, reasons } of [
          scoreCause(practice, [change]),
          scoreNext(practice, change),
        ]) {
          expect(score).toBeGreaterThanOrEqual(0);
          expect(score).toBeLessThanOrEqual(1);
          expect(reasons.length).toBeGreaterThan(0);
          for (const reason of reasons)
            expect(scoreReasonInWords(reason, practice, readerWith("metric"))).toMatch(
              /^[a-z].*\.$/i,
            );
        }
      }),
      { numRuns: 60 },
    );
  });

  test("a change that this car does not have is no answer", () => {
    const [practice] = practices;
    if (practice === undefined) throw new Error("no puzzle");
    const none = { lever: "barPosition", end: "front", by: 9 } as const;
    expect(scoreNext(practice, none)).toEqual({
      score: 0,
      reasons: [{ code: "cannot-be-changed" }],
    });
  });
});

describe("a driven corner", () => {
  const { before, after } = bothDrives(practiceFrom(3));

  test("goes through all phases in order, time and distance growing", () => {
    for (const { moments } of [before, after]) {
      const order = moments.map(({ phase }) => phaseNames.indexOf(phase));
      expect([...order].sort()).toEqual(order);
      expect(new Set(order).size).toBe(4);
      moments.slice(1).forEach((moment, i) => {
        expect(moment.time).toBeGreaterThan(moments[i]?.time ?? 0);
        expect(moment.distance).toBeGreaterThan(moments[i]?.distance ?? 0);
      });
    }
  });

  test("on a bank is faster, and asks no more of the car", () => {
    const banked = driveCorner(demoCar, { ...practiceCorner, banking: 0.1 });
    const most = Math.max(...banked.moments.map(({ used }) => used));
    // by hand: μ = 0.96·ay/g on the level, (μ + tan b)/(1 − μ·tan b)·g on the bank; load eats some
    const level = before.speed ** 2 / practiceCorner.radius / 9.80665;
    const slope = Math.tan(0.1);
    const expected = Math.sqrt(((level + slope) / (1 - level * slope)) * 9.80665 * 50);
    expect(banked.speed / expected).toBeGreaterThan(0.97);
    expect(banked.speed / expected).toBeLessThan(1.005);
    expect(most).toBeLessThan(0.98);
  });

  test("asks for v²/R in its middle, and uses all but a little of what the car can do", () => {
    const middle = before.moments.filter(({ phase }) => phase === "middle");
    for (const { speed, lateralAcceleration } of middle)
      expect(lateralAcceleration).toBeCloseTo(speed ** 2 / practiceCorner.radius, 1);
    expect(Math.max(...before.moments.map(({ used }) => used))).toBeCloseTo(0.96, 2);
  });

  test("turns the car by a right angle", () => {
    const last = before.moments.at(-1);
    expect(last?.heading).toBeCloseTo(Math.PI / 2, 1);
    expect(last?.y).toBeGreaterThan(practiceCorner.radius);
  });

  test("carries the weight of the car on its wheels at every place", () => {
    for (const { load } of before.moments) {
      const sum = load.front.left + load.front.right + load.rear.left + load.rear.right;
      expect(sum / (1080 * 9.80665)).toBeCloseTo(1, 2); // by hand: the demo car is 1080 kg
    }
  });

  test("moves load to the outside and to the front as it should", () => {
    for (const { load, lateralAcceleration, longitudinalAcceleration } of before.moments) {
      if (lateralAcceleration > 3) expect(load.front.right).toBeGreaterThan(load.front.left);
      if (longitudinalAcceleration < -3)
        expect(load.front.left + load.front.right).toBeGreaterThan(
          load.rear.left + load.rear.right,
        );
    }
  });

  test("needs more steering in the middle with a front that gives up sooner", () => {
    const stiffer = carWith({ lever: "barPosition", end: "front", by: 2 }, demoCar, demoCar);
    const practice = { ...practiceFrom(3), changed: stiffer };
    const { before: known, after: pushing } = bothDrives(practice);
    const steering = (drive: typeof known) =>
      Math.max(...drive.moments.map(({ steeringWheel }) => steeringWheel));
    expect(steering(pushing)).toBeGreaterThan(steering(known));
  });

  test("to the right is the mirror of one to the left but for where the driver sits", () => {
    const right = bothDrives(practiceFrom(3, { ...practiceCorner, direction: "right" })).before;
    expect(right.speed).toBeCloseTo(before.speed, 1);
    expect(right.moments.at(-1)?.y).toBeLessThan(0);
    const [a, b] = [before, right].map(({ moments }) => moments[Math.floor(moments.length / 2)]);
    expect(b?.steeringWheel).toBeCloseTo(-(a?.steeringWheel ?? 0), 1);
  });

  test("the same braking loads the front wheels more downhill than uphill", () => {
    const steep = (grade: number) =>
      bothDrives(practiceFrom(3, { ...practiceCorner, grade })).before.moments;
    const front = (moments: ReturnType<typeof steep>) =>
      Math.max(...moments.map(({ load }) => load.front.left + load.front.right));
    expect(front(steep(-0.1))).toBeGreaterThan(front(steep(0.1)));
  });
});
