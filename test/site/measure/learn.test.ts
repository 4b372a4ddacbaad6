import { describe, expect, test } from "vitest";
import { type Car, learnt, rideRateOf, uncertainNumbersOf } from "../../../lib/index.js";
import { acceptable, beforeLearning, isStill } from "../../../site/pages/measure/learn/accept.js";
import { observationsOf } from "../../../site/pages/measure/learn/observations.js";
import { written } from "../../../site/pages/measure/model/write.js";
import { readingInWords } from "../../../site/say/measure/learn.js";
import type { Accepted } from "../../../site/store/measured-sheets.js";
import { firstRook } from "../../lib/measure/first-rook.js";
import { ballastTexts } from "./ballast-texts.js";

/** What was read of a car whose front ride rate is a fifth higher than the file has it. */
function sheetOf(car: Car) {
  const rate = 1.2 * rideRateOf(car.front);
  const texts = ballastTexts(rate, [50, 100, 150]);
  return Object.fromEntries(
    texts.map(([place, text]) => [place, { text, units: "metric" as const }]),
  );
}

const by = { when: "2026-05-02", by: "Ada", how: "estimated" } as const;

/** The car with the first number that it can take over, and a note of it. */
function takenOver(car: Car) {
  const readings = observationsOf(car, sheetOf(car));
  const { numbers } = learnt(car, readings, uncertainNumbersOf(car));
  const [write] = acceptable(car, numbers, []).flatMap((row) => row.write ?? []);
  if (write === undefined) throw new Error("nothing learned");
  const told = written(car, [write], by);
  const [before] = "before" in told ? told.before : [];
  if (!("car" in told) || before === undefined) throw new Error("not written");
  const note: Accepted = { path: write.path, value: Number(write.value.toPrecision(6)), before };
  return { car: told.car, note, numbers };
}

describe("a car learns from what was read on the page", () => {
  test("each reading once: the ride rate, not the two numbers that follow from it", () => {
    const car = firstRook();
    const ids = observationsOf(car, sheetOf(car)).map(({ id }) => id);
    expect(ids).toEqual(["ride-rate.front.rideRate"]);
    const [reading] = observationsOf(car, sheetOf(car));
    expect((reading?.measured.value ?? 0) / (reading?.of(car) ?? 1)).toBeCloseTo(1.2, 1);
    expect(readingInWords(ids[0] ?? "")).toBe(
      "Ballast over an axle (front): ride rate at each wheel",
    );
  });

  test("a reading whose number was written into the car is not given again", () => {
    const car = firstRook();
    const sheet = sheetOf(car);
    const text = (value: string) => ({ text: value, units: "metric" as const });
    const hub = Object.fromEntries(
      [0, 20, 40].flatMap((rise, i) => [
        [`motion-ratio.front.hub.${i}`, text(String(290 + rise))],
        [`motion-ratio.front.spring.${i}`, text(String(300 - 0.75 * rise))],
      ]),
    );
    const both = { ...sheet, ...hub };
    expect(observationsOf(car, both)).toHaveLength(2);
    const told = written(car, [{ path: "front.spring.motionRatio", value: 0.75, spread: 0.02 }], {
      when: "2026-05-02",
      by: "",
    });
    if ("faults" in told) throw new Error(told.faults.join());
    expect(observationsOf(told.car, both).map(({ id }) => id)).toEqual([
      "ride-rate.front.rideRate",
    ]);
  });

  test("spring and ratio share what the ride rate says, and the circle's place is said in words", () => {
    const { numbers } = takenOver(firstRook());
    const paths = numbers.map(({ path }) => path);
    expect(paths).toContain("front.spring.rate");
    expect(paths).toContain("front.spring.motionRatio");
    for (const { path, before, after } of numbers) {
      expect(after.spread, path).toBeLessThanOrEqual(before.spread);
      expect(path.startsWith("rear"), path).toBe(false);
    }
  });

  test("what was taken over stays an estimate, and is not learned from the same reading again", () => {
    const before = firstRook();
    const { car, note, numbers } = takenOver(before);
    expect(car.known?.[note.path]).toMatchObject({ how: "estimated", by: "Ada" });
    expect(isStill(car, note)).toBe(true);
    const again = beforeLearning(car, [note]);
    expect(JSON.stringify(again)).toBe(JSON.stringify(before));
    expect(learnt(again, observationsOf(again, sheetOf(before))).numbers).toEqual(numbers);
    expect(acceptable(car, numbers, [note]).filter(({ taken }) => taken)).toHaveLength(1);
  });

  test("what was changed since on the car stands, and is not put back", () => {
    const { car, note } = takenOver(firstRook());
    const told = written(
      car,
      [{ path: note.path, value: 1.05 * note.value, spread: 1e-3 * note.value }],
      by,
    );
    if ("faults" in told) throw new Error(told.faults.join());
    expect(isStill(told.car, note)).toBe(false);
    expect(beforeLearning(told.car, [note])).toEqual(told.car);
  });

  test("a bar of one position takes its rate there; what all tyres share has no place", () => {
    const car = firstRook();
    const one = (path: string) => ({
      path,
      before: { value: 1, spread: 0.1 },
      after: { value: 1.1, spread: 0.05 },
      because: [],
    });
    const rows = acceptable(
      car,
      [one("front.bar.rate"), one("gripOfTheDay"), one("body.height")],
      [],
    );
    expect(rows.map(({ write }) => write?.path)).toEqual([
      "front.bar.positions.0.rate",
      undefined,
      "body.height",
    ]);
  });
});
