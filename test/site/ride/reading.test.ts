import { expect, test } from "vitest";
import { demoCar, predictedRollGradient } from "../../../lib/index.js";
import { observationsOf } from "../../../site/pages/measure/learn/observations.js";
import { resultOf } from "../../../site/pages/measure/model/results.js";
import { specOf } from "../../../site/pages/measure/model/spec.js";
import { toShown } from "../../../site/say/units.js";
import { nothingMeasured } from "../../../site/store/measured-sheets.js";
import { withRide } from "../../../site/store/ride-reading.js";

const rook = { ...demoCar, name: "Rook" };
const typed = (si: number) => ({
  text: String(toShown("rollGradient", si, "metric")),
  units: "metric" as const,
});
const reading = (value: number) => ({ gradient: typed(value), spread: typed(2e-4) });
const stamp = { when: "2026-05-02", by: "Ada" };

/** Measurements with rides of a car that leans so much. */
function after(...values: readonly number[]) {
  return values.reduce(
    (all, value) => withRide(all, "Rook", reading(value), stamp) ?? all,
    nothingMeasured,
  );
}

test("a ride that is kept stands on Measure, beside what the model says", () => {
  const sheet = after(0.008).sheets.Rook ?? {};
  const form = { spec: specOf("ride"), end: "front" } as const;
  const [found] = resultOf({ car: rook, sheet, form }).found ?? [];
  expect(found?.value).toBeCloseTo(0.008, 12);
  expect(found?.spread).toBeCloseTo(2e-4, 12);
  expect(found?.predicted).toBe(predictedRollGradient(rook));
});

test("rides are taken together, and a car learns from them", () => {
  const sheet = after(0.008, 0.0084).sheets.Rook ?? {};
  const [observation, ...others] = observationsOf(rook, sheet);
  expect(others).toEqual([]);
  expect(observation?.id).toBe("ride.rollGradient");
  expect(observation?.measured.value).toBeCloseTo(0.0082, 12);
  expect(observation?.of(rook)).toBe(predictedRollGradient(rook));
});

test("there is room for ten rides", () => {
  const full = after(...Array.from({ length: 10 }, () => 0.008));
  expect(withRide(full, "Rook", reading(0.008), stamp)).toBeUndefined();
});
