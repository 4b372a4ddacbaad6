import { describe, expect, test } from "vitest";
import { backToBase, type PlacedRun } from "../../../lib/measure/back-to-base.js";
import { normalFrom, randomFrom } from "../../../lib/random.js";

const SCATTER = 0.2; // s of a lap
const random = randomFrom(31);

/** Laps of runs in their order, B with the change, with an even drift and a level of each driver. */
function day(order: string, { change, drift }: { change: number; drift: number }): PlacedRun[] {
  return ["Ada", "Bela"].flatMap((driver, level) =>
    [...order].map((setUp, i) => {
      const tested = setUp === "B";
      const laps = [0, 0, 0].map(
        () => 80 + level + drift * i + (tested ? change : 0) + SCATTER * normalFrom(random),
      );
      const value = laps.reduce((sum, lap) => sum + lap, 0) / 3;
      const scatter = Math.sqrt(laps.reduce((sum, lap) => sum + (lap - value) ** 2, 0) / 2);
      return { driver, run: i + 1, tested, value, laps: 3, scatter, byStopwatch: 0.01 };
    }),
  );
}

const share = (all: readonly boolean[]) => all.filter(Boolean).length / all.length;
const days = Array.from({ length: 600 }, (_, k) => k);

describe("a change and an even drift are told apart where the first set-up is driven again", () => {
  test.each(["ABA", "ABAB", "ABBA"])(
    "of 600 days %s: what is there lies within nine times in ten",
    (order) => {
      const told = days.map(() => backToBase(day(order, { change: -0.3, drift: 0.4 })));
      const holds = told.map(({ value, within }) => Math.abs(value + 0.3) <= within);
      const drifts = told.map(({ drift }) => Math.abs(drift.value - 0.4) <= drift.within);
      for (const held of [holds, drifts]) {
        expect(share(held)).toBeGreaterThan(0.865); // three standard deviations of 600 tries
        expect(share(held)).toBeLessThan(0.935);
      }
    },
  );

  test("of changes that did nothing while the day drifts, one in twenty is called measured", () => {
    const called = days.map(() => backToBase(day("ABA", { change: 0, drift: 1 })).measured);
    expect(share(called)).toBeLessThan(0.075);
    expect(share(called)).toBeGreaterThan(0.02);
  });

  test("refuses a day on which nobody went back", () => {
    const nobody = day("AABB", { change: 0, drift: 0 });
    expect(() => backToBase(nobody)).toThrow(/the first one again/);
    const [a, b] = day("AB", { change: 0, drift: 0 }) as [PlacedRun, PlacedRun];
    const other = { ...a, driver: "Cora", run: 3 };
    expect(() => backToBase([a, b, other])).toThrow(/the first one again/);
  });
});
