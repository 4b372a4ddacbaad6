import {
  type Change,
  carLenses,
  demoCar,
  endLenses,
  exampleVenue,
  type PlanStep,
  safetyOf,
  sheetOf,
} from "@rollbook/lib";
import { describe, expect, it } from "vitest";
import { safety, safetyLines } from "../../../../site/say/workshop/safety.js";

const plan = { car: demoCar, venue: exampleVenue, minutes: 300 };

/** What the card of a change says of safety, and that of the way back. */
function cards(change: Change): [there: string[], back: string[]] {
  const steps: PlanStep[] = [{ kind: "baseline" }, { kind: "change", change }, { kind: "return" }];
  const [there = [], back = []] = sheetOf({ ...plan, steps })
    .slice(1)
    .map((row) => safetyLines(safetyOf(plan, row)));
  return [there, back];
}

const general = [safety.stands, safety.check, safety.first, safety.stop, safety.rules];

describe("the safety box of a change card", () => {
  it("has something to say of every lever, besides what holds for all", () => {
    for (const lever of [...Object.keys(endLenses), ...Object.keys(carLenses)])
      expect(safety.levers[lever as Change["lever"]].length, lever).toBeGreaterThan(0);
    const [there, back] = cards({ lever: "barPosition", end: "front", by: 1 });
    for (const lines of [there, back]) expect(lines.slice(-5)).toEqual(general);
  });

  it("forbids brakes rearwards on a road car, and wants any brake change tried straight ahead", () => {
    const [rearwards, back] = cards({ lever: "brakeFrontShare", by: -0.04 });
    expect(rearwards[0]).toMatch(/^This moves brake force rearwards\. Never on a road car/); // chapter 8, Caution
    for (const lines of [rearwards, back, ...cards({ lever: "brakeFrontShare", by: 0.02 })])
      expect(lines.join(" ")).toMatch(/maker’s instructions.+straight line first/);
    const [, returned] = cards({ lever: "brakeFrontShare", by: 0.02 });
    for (const lines of [back, returned]) expect(lines).not.toContain(safety.brakesRearwards);
  });

  it("speaks of loaded springs, wheel nuts, height, camber and toe where springs are changed", () => {
    const text = cards({ lever: "springRate", end: "front", by: -10e3 })[0].join(" ");
    for (const part of ["loaded spring can kill", "Wheel nuts", "height, camber and toe", "seats"])
      expect(text).toContain(part); // chapter 6, Caution
  });

  it("wants left and right alike where both are changed, and not of the whole car's levers", () => {
    expect(cards({ lever: "toe", end: "rear", by: 0.002 })[0]).toContain(safety.alike);
    const one = cards({ lever: "tyrePressure", end: "rear", side: "left", by: 5e3 })[0];
    expect(one).not.toContain(safety.alike);
    expect(cards({ lever: "brakeFrontShare", by: 0.02 })[0]).not.toContain(safety.alike);
  });

  it("calls one step the smallest, and says why more are made", () => {
    const bar = { lever: "barPosition", end: "front" } as const;
    expect(cards({ ...bar, by: 1 })[0]).toContain(safety.smallest);
    expect(cards({ ...bar, by: 2 })[0]).toContain(safety.mayDo("2 steps")); // a hole moves 0.2 m/s²
    const spring = cards({ lever: "springRate", end: "front", by: -10e3 })[0];
    expect(spring).toContain(safety.more("2 steps")); // 5 N/mm move less than 0.1 m/s²
    expect(spring.join(" ")).not.toContain("Smallest step first");
  });
});
