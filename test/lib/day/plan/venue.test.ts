import fc from "fast-check";
import { expect, test } from "vitest";
import { exampleVenue } from "../../../../lib/day/example/example-venue.js";
import {
  gradeOf,
  lateralAccelerationOf,
  levelRoadAccelerationOf,
  speedClassOf,
  type VenueCorner,
} from "../../../../lib/day/plan/venue.js";
import { faultsOfVenue } from "../../../../lib/day/plan/venue-file.js";
import { orUndefined } from "../../../../lib/refusal.js";
import { between } from "../../evenly.js";

const corner: VenueCorner = { name: "One", direction: "left", radius: 50, speed: 20 };

test("a corner of 50 m at 20 m/s asks for 8 m/s²", () => {
  expect(lateralAccelerationOf(corner)).toBe(8); // by hand: 20²/50
  expect(levelRoadAccelerationOf(corner)).toBeCloseTo(8, 12);
});

test("a road that leans by atan(v²/Rg) into the turn asks nothing of the tyres", () => {
  const banking = Math.atan(8 / 9.80665); // by hand: tan β = v²/(R·g)
  expect(levelRoadAccelerationOf({ ...corner, banking })).toBeCloseTo(0, 12);
});

test("a road that falls away by 2° asks for more than the corner itself", () => {
  const banking = (-2 * Math.PI) / 180;
  // the road turned by 2° under a force that leans by atan(8/g): g·tan(39.2064° + 2°)
  expect(levelRoadAccelerationOf({ ...corner, banking })).toBeCloseTo(
    9.80665 * Math.tan(Math.atan(8 / 9.80665) - banking),
    9,
  );
});

test("more banking always asks less", () => {
  fc.assert(
    fc.property(fc.double({ min: -0.3, max: 0.6, noNaN: true }), (banking) => {
      const less = levelRoadAccelerationOf({ ...corner, banking: banking + 0.01 });
      expect(less).toBeLessThan(levelRoadAccelerationOf({ ...corner, banking }));
    }),
  );
});

test("a road that falls away more than the car leans out is refused, and never said to push inwards", () => {
  const steep = { ...corner, speed: 40, banking: -0.35 };
  // by hand: nothing presses from tan β = −g·R/v² on, −0.297 rad; a hundredth of the weight 0.003 rad before
  expect(() => levelRoadAccelerationOf(steep)).toThrow(
    "One is driven at 40 m/s round 50 m, and its banking is -0.35 rad but must be at least -0.294 rad: " +
      "a road that falls away more does not hold a car so fast.",
  );
  expect(levelRoadAccelerationOf({ ...steep, banking: -0.29 })).toBeGreaterThan(32); // 40²/50 on the level
});

test("off camber a corner asks for more than on the level, or is refused", () => {
  const anyCorner = fc.record({ speed: between(5, 60), radius: between(5, 500) });
  fc.assert(
    fc.property(anyCorner, between(-0.8, 0), (driven, banking) => {
      const off = { ...corner, ...driven, banking };
      const asked = orUndefined(() => levelRoadAccelerationOf(off));
      if (asked !== undefined)
        expect(asked).toBeGreaterThanOrEqual(lateralAccelerationOf(off) - 1e-9);
    }),
  );
});

test.each([
  [19, "slow"],
  [20, "medium"],
  [30, "medium"],
  [31, "fast"],
] as const)("a corner at %d m/s is called %s", (speed, name) => {
  expect(speedClassOf({ ...corner, speed })).toBe(name);
});

test("a road is level up to a grade of two percent", () => {
  expect([-0.03, -0.01, 0.01, 0.03].map((grade) => gradeOf({ ...corner, grade }))).toEqual([
    "downhill",
    "level",
    "level",
    "uphill",
  ]);
});

test("the invented venue has seven corners and no fault", () => {
  expect(exampleVenue.corners).toHaveLength(7);
  expect(faultsOfVenue(exampleVenue)).toEqual([]);
});

test.each<[unknown, string]>([
  [{ name: "V", corners: [] }, "corners must have at least one entry."],
  [
    { name: "V", corners: [{ ...corner, radius: 2 }] },
    "corners.0.radius is 2 m but must be from 5 to 500 m.",
  ],
  [
    { name: "V", corners: [{ ...corner, direction: "up" }] },
    'corners.0.direction is "up" but must be one of: left, right.',
  ],
  [
    { name: "V", corners: [corner, corner] },
    'corners.1.name is "One" but another corner has that name already.',
  ],
])("%j is refused with one sentence: %s", (venue, sentence) => {
  expect(faultsOfVenue(venue)).toEqual([sentence]);
});
