import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type StandingAxle, standAxle } from "../../../lib/linkage/axle-in-space.js";
import { type Corner, mirrorCorner } from "../../../lib/linkage/corner.js";
import { mirrorFrontView } from "../../../lib/linkage/front-view.js";
import { frontViewAxle } from "../../../lib/linkage/front-view-axle.js";
import { camberGain } from "../../../lib/linkage/instant-centre.js";
import { moveFrontView } from "../../../lib/linkage/move-front-view.js";
import { rollCentre } from "../../../lib/linkage/roll-centre.js";
import type { Point } from "../../../lib/linkage/space-vector.js";
import { frontViewOf } from "./front-view-of-corner.js";
import { moveCorner } from "./moved-corner.js";
import { beam, plane, strutCorner, wishbones } from "./reference-corners.js";
import { converging, parallel, strut } from "./reference-linkages.js";

const within = (limit: number) => fc.double({ min: -limit, max: limit, noNaN: true });
const frontViews = fc.constantFrom(converging, parallel, strut);

/** Wishbones and struts with every joint up to 15 mm away from the invented ones. */
const corners: fc.Arbitrary<Corner> = fc
  .record({
    base: fc.constantFrom<Corner>(wishbones, strutCorner),
    shifts: fc.array(fc.tuple(within(0.015), within(0.015), within(0.015)), {
      minLength: 12,
      maxLength: 12,
    }),
  })
  .map(({ base, shifts }) => {
    const entries = Object.entries(base).map(([name, value], i) => {
      const [x, y, z] = shifts[i] ?? [0, 0, 0];
      if (typeof value !== "object" || name === "wheelCentre") return [name, value];
      return [name, { x: value.x + x, y: value.y + y, z: value.z + z }];
    });
    return Object.fromEntries(entries) as Corner;
  });

const distance = (a: Point, b: Point) => Math.hypot(a.x - b.x, a.y - b.y, a.z - b.z);

describe("a corner in space whose pivots run along the car", () => {
  it("moves as its front view does", () => {
    fc.assert(
      fc.property(frontViews, within(0.06), (linkage, wheelTravel) => {
        const flat = moveFrontView(linkage, wheelTravel);
        const { wheel, rates } = moveCorner(plane(linkage), { wheelTravel });
        expect(wheel.camber).toBeCloseTo(flat.camberChange, 9);
        expect(wheel.toe).toBeCloseTo(0, 9);
        expect(rates.toe).toBeCloseTo(0, 9);
        expect(rates.forward).toBeCloseTo(0, 9);
      }),
    );
  });

  it("has the roll centre and the camber gain of its front view", () => {
    fc.assert(
      fc.property(frontViews, (linkage) => {
        const axle = standAxle({ kind: "independent", left: plane(linkage) });
        const flat = rollCentre(linkage, mirrorFrontView(linkage));
        expect(axle.rollCentreHeight).toBeCloseTo(flat.height, 9);
        expect(axle.left.own.camber).toBeCloseTo(-camberGain(linkage), 9);
      }),
    );
  });

  it("stands on the road as its front view does when the body heaves and rolls", () => {
    fc.assert(
      fc.property(frontViews, within(0.03), within(0.05), (linkage, heave, rollAngle) => {
        const space = standAxle(
          { kind: "independent", left: plane(linkage) },
          { heave, rollAngle },
        );
        const flat = frontViewAxle(linkage, { heave, rollAngle });
        expect(space.track).toBeCloseTo(flat.track, 9);
        expect(space.left.camber).toBeCloseTo(flat.left.camber, 9);
        expect(space.right.camber).toBeCloseTo(flat.right.camber, 9);
        expect(space.rollCentreHeight).toBeCloseTo(flat.rollCentre.height, 8);
      }),
    );
  });
});

describe("the front view of a corner in space", () => {
  it("gives back the front view that a corner was made from", () => {
    fc.assert(
      fc.property(frontViews, (linkage) => {
        const view = frontViewOf(plane(linkage));
        expect(camberGain(view)).toBeCloseTo(camberGain(linkage), 9);
        expect(view.contactPatch).toEqual(linkage.contactPatch);
      }),
    );
  });

  it("has the roll centre and camber gain of a corner whose pivots are inclined alike", () => {
    // upright and arms then turn about lines of one direction: the toe link cannot steer
    const inclined = { x: 1, y: 0.08, z: -0.06 };
    const along = (p: Point, by: number): Point => ({
      x: p.x + by * inclined.x,
      y: p.y + by * inclined.y,
      z: p.z + by * inclined.z,
    });
    const { upperRear, lowerRear, lowerOuter } = wishbones;
    const left = {
      ...wishbones,
      upperFront: along(upperRear, 0.25),
      lowerFront: along(lowerRear, 0.33),
      toeInner: along(lowerRear, 0.05),
      toeOuter: along(lowerOuter, -0.12),
      camber: 0,
      toe: 0,
    };
    const space = standAxle({ kind: "independent", left });
    const view = frontViewOf(left);
    const flat = rollCentre(view, mirrorFrontView(view));
    expect(space.rollCentreHeight).toBeCloseTo(flat.height, 9);
    expect(space.left.own.camber).toBeCloseTo(-camberGain(view), 9);
  });

  it("is near the corner's own roll centre when its pivots are not", () => {
    const space = standAxle({ kind: "independent", left: strutCorner });
    const view = frontViewOf(strutCorner);
    const flat = rollCentre(view, mirrorFrontView(view));
    expect(Math.abs(space.rollCentreHeight - flat.height)).toBeLessThan(0.002);
  });
});

describe("any corner in space", () => {
  it("keeps every distance between joints of the upright and every link length", () => {
    fc.assert(
      fc.property(corners, within(0.06), within(0.02), (corner, wheelTravel, rackTravel) => {
        const { joints } = moveCorner(corner, { wheelTravel, rackTravel });
        const before = corner as unknown as Record<string, Point>;
        const at = (name: string) => joints[name] ?? { x: Number.NaN, y: 0, z: 0 };
        for (const a of Object.keys(joints))
          for (const b of Object.keys(joints)) {
            const then = distance(before[a] ?? at(a), before[b] ?? at(b));
            expect(Math.abs(distance(at(a), at(b)) - then)).toBeLessThan(1e-9);
          }
        const lower = distance(at("lowerOuter"), corner.lowerFront);
        expect(Math.abs(lower - distance(corner.lowerOuter, corner.lowerFront))).toBeLessThan(1e-9);
        const rack = { ...corner.toeInner, y: corner.toeInner.y + rackTravel };
        const toeLink = distance(at("toeOuter"), rack);
        expect(Math.abs(toeLink - distance(corner.toeOuter, corner.toeInner))).toBeLessThan(1e-9);
      }),
    );
  });

  it("gives rates that agree with its own motion over a small travel", () => {
    fc.assert(
      fc.property(corners, within(0.04), (corner, travel) => {
        const step = 1e-5;
        const up = moveCorner(corner, { wheelTravel: travel + step }).wheel;
        const down = moveCorner(corner, { wheelTravel: travel - step }).wheel;
        const { rates } = moveCorner(corner, { wheelTravel: travel });
        expect(rates.camber).toBeCloseTo((up.camber - down.camber) / (2 * step), 5);
        expect(rates.toe).toBeCloseTo((up.toe - down.toe) / (2 * step), 5);
        const centre = (up.wheelCentre.x - down.wheelCentre.x) / (2 * step);
        expect(rates.centreForward).toBeCloseTo(centre, 5);
      }),
    );
  });

  it("moves on the right as the mirror image of the left", () => {
    fc.assert(
      fc.property(corners, within(0.05), (corner, wheelTravel) => {
        const left = moveCorner(corner, { wheelTravel });
        const right = moveCorner(mirrorCorner(corner), { wheelTravel });
        expect(right.wheel.camber).toBeCloseTo(left.wheel.camber, 9);
        expect(right.wheel.toe).toBeCloseTo(left.wheel.toe, 9);
        expect(right.rates.sideways).toBeCloseTo(-left.rates.sideways, 9);
      }),
    );
  });

  it("starts from the camber and toe it was given", () => {
    expect(moveCorner(wishbones).wheel.camber).toBeCloseTo(-0.02, 12);
    expect(moveCorner(wishbones).wheel.toe).toBeCloseTo(0.001, 12);
    expect(moveCorner(mirrorCorner(wishbones)).wheel.toe).toBeCloseTo(0.001, 12);
  });

  it("steers both wheels to the left when a rack behind the axle moves to the right", () => {
    // toe link behind the wheel: pushing its rear to the right turns its front to the left
    const axle = standAxle({ kind: "independent", left: wishbones }, {}, -0.02);
    expect(axle.left.toe).toBeLessThan(-0.05); // toe out on the left: front to the left
    expect(axle.right.toe).toBeGreaterThan(0.05);
  });
});

describe("a beam axle", () => {
  it("has its roll centre where the flat lateral rod crosses the middle", () => {
    // the axle can only turn about the rod's middle and an axis along the car: common practice
    const level: typeof beam = {
      ...beam,
      leftLink: { ...beam.leftLink, body: { x: 0.5, y: 0.48, z: 0.22 } },
      rightLink: { ...beam.rightLink, body: { x: 0.5, y: -0.48, z: 0.22 } },
      upperLink: { ...beam.upperLink, body: { x: 0.3, y: 0, z: 0.47 } },
    };
    expect(standAxle(level).rollCentreHeight).toBeCloseTo(0.26, 9);
  });

  it("keeps both wheels upright and the track constant on a level road", () => {
    const axle = standAxle(beam, { rollAngle: 0.03 });
    expect(axle.left.camber).toBeCloseTo(0, 3);
    expect(axle.left.camber).toBeCloseTo(-axle.right.camber, 9);
    expect(axle.track).toBeCloseTo(1.48, 5);
  });

  it("moves sideways along the arc of its lateral rod in heave", () => {
    // rod 900 mm long, body end on the right: its axle end sinks or rises by 40 mm
    const axle = standAxle(beam, { heave: 0.04 });
    const middle = (axle.left.contactPatch.y + axle.right.contactPatch.y) / 2;
    expect(middle).toBeCloseTo(Math.sqrt(0.9 ** 2 - 0.04 ** 2) - 0.9, 4);
  });

  it("moves its patches sideways in bump as little as its rod slopes", () => {
    // δW = 0: what both patches move sideways as both wheels rise is what the links lift the body by
    const sideways = ({ left, right }: StandingAxle) =>
      [left.own, left.other, right.own, right.other].reduce(
        (sum, w) => sum + (w?.sideways ?? 0),
        0,
      );
    expect(sideways(standAxle(beam))).toBeCloseTo(0, 9);
    expect(Math.abs(sideways(standAxle(beam, { heave: 0.05 })))).toBeGreaterThan(0.05);
  });
});

describe("forces through the links", () => {
  /** By virtual work: a patch that moves sideways by s for each metre it rises carries −F·s. */
  const lifts = ({ left, right }: StandingAxle, fromLeft: number, fromRight: number) => ({
    left: -fromLeft * left.own.sideways,
    right: -fromRight * right.own.sideways,
  });

  it("agree with the hand formula of jacking", () => {
    const axle = standAxle({ kind: "independent", left: plane(converging) });
    const { left, right } = lifts(axle, 2000, 4000);
    const height = 0.1025316; // m, from two independent methods
    expect(left + right).toBeCloseTo(((4000 - 2000) * 2 * height) / 1.5, 2);
    expect((right - left) / 2).toBeCloseTo((6000 * height) / 1.5, 2);
  });

  it("transfer side force times roll centre height over track when the split is even", () => {
    fc.assert(
      fc.property(corners, within(0.03), within(0.04), (left, heave, rollAngle) => {
        const axle = standAxle({ kind: "independent", left }, { heave, rollAngle });
        const up = lifts(axle, 3000, 3000);
        expect((up.right - up.left) / 2).toBeCloseTo(
          (6000 * axle.rollCentreHeight) / axle.track,
          6,
        );
      }),
    );
  });

  it("of a trailing link in the rear push back as its wheel rises", () => {
    // links rise forwards by 30/500 and 10/330: instant centre ahead of the axle, so anti-squat
    expect(standAxle(beam).left.own.forward).toBeLessThan(0);
  });
});

describe("corners that cannot be", () => {
  it("refuses travel beyond the links with one sentence", () => {
    const short = { ...wishbones, lowerFront: { x: 0.1, y: 0.62, z: 0.18 } };
    expect(() => moveCorner(short, { wheelTravel: 0.28 })).toThrow(RangeError);
  });

  it("names the joint whose coordinate is no number", () => {
    const broken = { ...wishbones, toeInner: { x: 0, y: Number.NaN, z: 0 } };
    expect(() => moveCorner(broken)).toThrow(/toeInner y/);
  });
});

describe("joints anywhere", () => {
  const anyPoint = fc.record({ x: within(0.6), y: within(0.9), z: within(0.6) });
  const anyCorner = fc.record({
    kind: fc.constant("double wishbone" as const),
    wheelCentre: fc.constant({ x: 0, y: 0.75, z: 0.3 }),
    camber: within(0.05),
    toe: within(0.05),
    upperFront: anyPoint,
    upperRear: anyPoint,
    upperOuter: anyPoint,
    lowerFront: anyPoint,
    lowerRear: anyPoint,
    lowerOuter: anyPoint,
    toeInner: anyPoint,
    toeOuter: anyPoint,
  });

  it("give finite numbers or are refused with a sentence", () => {
    fc.assert(
      fc.property(anyCorner, within(0.1), within(0.1), (left, heave, rollAngle) => {
        try {
          const { left: wheel, rollCentreHeight } = standAxle(
            { kind: "independent", left },
            { heave, rollAngle },
          );
          expect(Number.isFinite(rollCentreHeight)).toBe(true);
          expect(Object.values(wheel.own).every(Number.isFinite)).toBe(true);
          expect(Number.isFinite(wheel.camber + wheel.toe)).toBe(true);
        } catch (error) {
          expect(error).toBeInstanceOf(RangeError);
        }
      }),
      { numRuns: 500 },
    );
  });

  it("give finite numbers in the front view, or are refused with a sentence", () => {
    fc.assert(
      fc.property(anyCorner, within(0.1), within(0.1), (corner, heave, rollAngle) => {
        try {
          const axle = frontViewAxle(frontViewOf(corner), { heave, rollAngle });
          const { height, leftHeight, rightHeight } = axle.rollCentre;
          expect(Number.isFinite(height + leftHeight + rightHeight + axle.track)).toBe(true);
          expect(Number.isFinite(axle.left.camber + axle.right.camber)).toBe(true);
        } catch (error) {
          expect(error).toBeInstanceOf(RangeError);
        }
      }),
      { numRuns: 500 },
    );
  });
});
