import { describe, expect, test } from "vitest";
import { standingCar } from "../../lib/balance/standing-car.js";
import type { Car } from "../../lib/car/car.js";
import { demoCar } from "../../lib/car/demo-car.js";
import { changeTable } from "../../lib/change/table.js";
import { requireInRange } from "../../lib/check.js";
import { diagnose } from "../../lib/day/diagnosis/diagnose.js";
import { exampleVenue } from "../../lib/day/example/example-venue.js";
import type { Report } from "../../lib/day/log/report.js";
import { proposePlan } from "../../lib/day/plan/propose.js";
import { orUndefined, Refusal } from "../../lib/refusal.js";

const fault = () => (1).toFixed(101); // a RangeError of the engine's own

test("a refusal names field, value and range, apart from its sentence", () => {
  const asked = () => requireInRange("wheelbase", 40, 1.2, 5, "m");
  expect(orUndefined(asked)).toBeUndefined();
  let refused: unknown;
  try {
    asked();
  } catch (error) {
    refused = error;
  }
  expect(refused).toBeInstanceOf(Refusal);
  expect(refused).toMatchObject({
    code: "out-of-range",
    message: "wheelbase is 40 m but must be from 1.2 to 5 m.",
    number: { field: "wheelbase", value: 40, least: 1.2, most: 5, unit: "m" },
  });
});

test("a fault of the program is no refusal", () => {
  expect(() => orUndefined(fault)).toThrow("toFixed");
});

/** The demo car, whose class limits break down once they were read so often; how often they were. */
function breaking(after: number): { car: Car; reads: () => number } {
  let reads = 0;
  const { limits } = demoCar;
  const car = Object.defineProperty({ ...demoCar }, "limits", {
    enumerable: true,
    get: () => (reads++ < after ? limits : fault()),
  });
  return { car, reads: () => reads };
}

describe("a fault of the program, wherever it comes up, is thrown on and never told as advice", () => {
  const report: Report = { corner: "Dip", phase: "turn-in", input: "steering", balance: 2 };
  const asked: Readonly<Record<string, (car: Car) => unknown>> = {
    "a diagnosis": (car) => diagnose({ car, venue: exampleVenue, reports: [report] }),
    "a plan": (car) => proposePlan({ car, venue: exampleVenue, minutes: 200 }),
    "a table of changes": (car) => changeTable(standingCar(car)),
  };
  test.each(Object.entries(asked))("%s", (_, ask) => {
    const whole = breaking(Number.POSITIVE_INFINITY);
    ask(whole.car);
    expect(whole.reads()).toBeGreaterThan(5);
    for (const share of [0, 0.5])
      expect(() => ask(breaking(Math.floor(share * whole.reads())).car)).toThrow("toFixed");
  });
});
