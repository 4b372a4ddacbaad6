import { axleLoadsOf, axleWeightsOf, demoCar, drive, handlingCarOf } from "@rollbook/lib";
import { describe, expect, test } from "vitest";
import { axleSeenThrough } from "../../../site/cells/living/axle.js";
import { ENLARGED } from "../../../site/cells/living/pose.js";
import { axleAt, carInTurn, type SeenAxle } from "../../../site/cells/living/seen-axle.js";
import type { AreaMark, ArrowMark, LineMark, Mark } from "../../../site/cells/marks.js";
import { otherCars } from "../../../site/chapter/other-cars.js";

const still: SeenAxle = {
  ...{ track: 1.4, wheelHeight: 0.3, rollCentreHeight: 0.1, hasBar: true, isBeam: false },
  springRatio: 0.66,
  ...{ rollAngle: 0, tyreAngle: 0, time: 0, load: { left: 2500, right: 2500 } },
  transfer: { geometric: 0, unsprung: 0, elastic: 0, damper: 0 },
};
const turning: SeenAxle = {
  ...still,
  ...{ rollAngle: 0.05, tyreAngle: 0.01, load: { left: 1500, right: 3500 } },
  transfer: { geometric: 200, unsprung: 100, elastic: 600, damper: 100 },
};

const areas = (marks: readonly Mark[]) =>
  marks.filter((mark): mark is AreaMark => mark.kind === "area");
const road = (marks: readonly Mark[], name: string) => {
  const points = areas(marks).find((mark) => mark.name === name)?.points ?? [];
  const heights = points.map(([, z]) => z);
  return Math.max(...heights) - Math.min(...heights);
};
const linesIn = (marks: readonly Mark[], tone: string) =>
  marks.filter((mark): mark is LineMark => mark.kind === "line" && mark.tone === tone);

describe("an axle seen through", () => {
  test("has roads as wide as what goes over them, and none where nothing does", () => {
    const marks = axleSeenThrough(turning);
    // by hand: 600 N, 300 N and 100 N of 5000 N at 0.3 m for all
    expect(road(marks, "springs, bar")).toBeCloseTo(0.036, 9);
    expect(road(marks, "links, wheels")).toBeCloseTo(0.018, 9);
    expect(road(marks, "dampers")).toBeCloseTo(0.006, 9);
    for (const name of ["springs, bar", "links, wheels", "dampers"])
      expect(road(axleSeenThrough(still), name)).toBe(0);
  });

  test("leans about its roll centre, enlarged, to the right where the right side is down", () => {
    const top = (axle: SeenAxle) =>
      linesIn(axleSeenThrough(axle), "ink")
        .flatMap(({ points }) => points)
        .reduce((a, b) => (b[1] > a[1] ? b : a));
    const after = top(turning);
    // by hand: a point 1.06 m above the roll centre, 0.3 m left, turned by 0.15 rad
    expect(after[0]).toBeCloseTo(-0.3 * Math.cos(0.15) + 1.06 * Math.sin(0.15), 9);
    expect(ENLARGED).toBe(3);
  });

  test("twists its bar as its wheels move apart, and has none where the car has none", () => {
    const rings = (axle: SeenAxle) =>
      linesIn(axleSeenThrough(axle), "springs")
        .filter(({ points, weight }) => points.length === 2 && weight === "fine")
        .map(({ points: [a, b] }) =>
          Math.atan2((b?.[0] ?? 0) - (a?.[0] ?? 0), (b?.[1] ?? 0) - (a?.[1] ?? 0)),
        );
    const twist = (axle: SeenAxle) => Math.abs((rings(axle)[0] ?? 0) - (rings(axle).at(-1) ?? 0));
    expect(rings(still)).toHaveLength(9);
    expect(twist(still)).toBeCloseTo(0, 9);
    expect(twist(turning)).toBeGreaterThan(0.1);
    expect(twist({ ...turning, rollAngle: 0.1 })).toBeGreaterThan(twist(turning));
    expect(rings({ ...turning, hasBar: false })).toEqual([]);
  });

  test("lifts a wheel without load clear of the road, and presses the other flat", () => {
    const lifted = { ...turning, tyreAngle: 0.05, load: { left: 0, right: 5000 } };
    const [, left, right] = areas(axleSeenThrough(lifted)).map(({ points }) =>
      Math.min(...points.map(([, z]) => z)),
    );
    // by hand: 3 · 0.05 rad · 0.7 m
    expect(left).toBeCloseTo(0.105, 9);
    expect(right).toBe(0);
  });

  test("has arrows as long as the loads", () => {
    const [left, right] = axleSeenThrough(turning).filter(
      (mark): mark is ArrowMark => mark.kind === "arrow",
    );
    const length = (mark?: ArrowMark) => (mark ? mark.to[1] - mark.from[1] : Number.NaN);
    expect(length(left) / length(right)).toBeCloseTo(1500 / 3500, 9);
  });

  test("of any car at any moment is made of numbers alone", () => {
    for (const car of [demoCar, ...otherCars]) {
      const handling = handlingCarOf(car);
      for (const moment of drive(handling, {
        speed: 20,
        duration: 1,
        step: 0.05,
        steer: () => 0.02,
      }))
        for (const end of ["front", "rear"] as const) {
          const marks = axleSeenThrough(axleAt(car, end, moment));
          expect(JSON.stringify(marks)).not.toMatch(/null|NaN/);
        }
    }
  });

  test("is drawn part by part, on one side or both, each mark with its part", () => {
    const spring = axleSeenThrough(still, { only: ["springs"], side: 1 });
    expect(spring.map(({ part }) => part)).toEqual([undefined, "springs"]); // on the road
    const parts = axleSeenThrough(still, { only: ["tyres", "bar", "loads"] });
    expect(new Set(parts.map(({ part }) => part))).toEqual(
      new Set([undefined, "tyres", "bar", "loads"]),
    );
  });

  test("lifts a wheel that stands on a bump, with the road under it, and lets the bar sleep when both do", () => {
    const rings = (bump: { left: number; right: number }) =>
      linesIn(axleSeenThrough({ ...still, bump }, { only: ["bar"] }), "springs")
        .filter(({ weight }) => weight === "fine")
        .map(({ points: [a, b] }) =>
          Math.atan2((b?.[0] ?? 0) - (a?.[0] ?? 0), (b?.[1] ?? 0) - (a?.[1] ?? 0)),
        );
    const twist = (bump: { left: number; right: number }) =>
      Math.abs((rings(bump)[0] ?? 0) - (rings(bump).at(-1) ?? 0));
    expect(twist({ left: 0.03, right: 0.03 })).toBeCloseTo(0, 9);
    expect(twist({ left: 0, right: 0.03 })).toBeGreaterThan(0.1);
    const [left, right] = areas(
      axleSeenThrough({ ...still, bump: { left: 0, right: 0.03 } }, { only: ["tyres"] }),
    ).map(({ points }) => Math.min(...points.map(([, z]) => z)));
    expect([left, right]).toEqual([0, 3 * 0.03]); // by hand: three times as far
  });

  test("of a whole car carries what both its axles carry", () => {
    const turn = axleLoadsOf(demoCar, 7);
    const { load, transfer } = carInTurn(demoCar, turn);
    const weight = axleWeightsOf(demoCar);
    expect(load.left + load.right).toBeCloseTo(weight.front + weight.rear, 6);
    expect((load.right - load.left) / 2).toBeCloseTo(turn.total, 6);
    expect(transfer.geometric + transfer.unsprung + transfer.elastic).toBeCloseTo(turn.total, 6);
  });
});
