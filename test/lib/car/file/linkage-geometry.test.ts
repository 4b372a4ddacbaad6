import fc from "fast-check";
import { expect, test } from "vitest";
import { geometryOfLinkage } from "../../../../lib/car/file/linkage-geometry.js";
import { type SpaceAxle, standAxle } from "../../../../lib/linkage/axle-in-space.js";
import type { BeamAxle, BeamLink } from "../../../../lib/linkage/beam-axle.js";
import { mirrorCorner } from "../../../../lib/linkage/corner.js";
import type { BodyPosition } from "../../../../lib/linkage/front-view-axle.js";
import { between } from "../../evenly.js";
import { beam, strutCorner, wishbones } from "../../linkage/reference-corners.js";

const SMALL = 1e-4; // m and rad

/** Change of camber, toe and steer of an axle that stands, for each m or rad of its body. */
function slopes(linkage: SpaceAxle, towards: (size: number) => BodyPosition) {
  const at = (size: number) => {
    const { left, right } = standAxle(linkage, towards(size));
    return {
      camber: (left.camber + right.camber) / 2,
      toe: (left.toe + right.toe) / 2,
      steer: (right.toe - left.toe) / 2, // toe-in on the right points left
    };
  };
  const [more, less] = [at(SMALL), at(-SMALL)];
  const slope = (of: keyof typeof more) => (more[of] - less[of]) / (2 * SMALL);
  return { camber: slope("camber"), toe: slope("toe"), steer: slope("steer") };
}

const inBump = (linkage: SpaceAxle) => slopes(linkage, (size) => ({ heave: -size }));
const inRoll = (linkage: SpaceAxle) => slopes(linkage, (size) => ({ rollAngle: size }));

/** The beam with the front ends of both trailing links higher, m. */
function raised(by: number): BeamAxle {
  const up = ({ body, axle }: BeamLink) => ({ axle, body: { ...body, z: body.z + by } });
  return { ...beam, leftLink: up(beam.leftLink), rightLink: up(beam.rightLink) };
}

/** A beam with every joint moved by its own few centimetres: left and right no longer alike. */
const anyBeam: fc.Arbitrary<BeamAxle> = fc
  .array(between(-0.04, 0.04), { minLength: 24, maxLength: 24 })
  .map((moves) => {
    let next = 0;
    const moved = (point: BeamLink["body"]) => ({
      x: point.x + (moves[next++] ?? 0),
      y: point.y + (moves[next++] ?? 0),
      z: point.z + (moves[next++] ?? 0),
    });
    const link = ({ body, axle }: BeamLink) => ({ body: moved(body), axle: moved(axle) });
    return {
      ...beam,
      leftLink: link(beam.leftLink),
      rightLink: link(beam.rightLink),
      upperLink: link(beam.upperLink),
      lateralRod: link(beam.lateralRod),
    };
  });

test("the links of a beam that meet ahead of it steer it by the slope of its roll axis", () => {
  // Side by side the beam is alike left and right, so it rolls about an axis in the middle plane.
  // The trailing links run from (0, ±0.48, 0.22) by (0.5, ∓0.03, 0.03): they meet in the middle at
  // x = 0.48/0.03·0.5 = 8 m, z = 0.22 + 0.48 = 0.70 m. The lateral rod crosses it at x = −0.12 m,
  // z = 0.26 m. Through both the roll axis rises forwards by 0.44/8.12, and a body that goes right
  // side down about it turns its nose left against the beam: the beam turns right, below zero.
  expect(geometryOfLinkage(raised(0)).rollSteer).toBeCloseTo(-0.44 / 8.12, 9);
  expect(geometryOfLinkage(raised(0.03)).rollSteer).toBeCloseTo(-0.92 / 8.12, 9);
  expect(geometryOfLinkage(raised(0.06)).rollSteer).toBeCloseTo(-1.4 / 8.12, 9);
});

test("the roll steer of any beam is what it turns by when it stands under a rolled body", () => {
  fc.assert(
    fc.property(anyBeam, (linkage) => {
      expect(geometryOfLinkage(linkage).rollSteer).toBeCloseTo(inRoll(linkage).steer, 6);
    }),
  );
});

test("a beam keeps its wheels upright in roll, and camber and toe in heave", () => {
  fc.assert(
    fc.property(anyBeam, (linkage) => {
      const { camberGain = Number.NaN, toeGain = Number.NaN } = geometryOfLinkage(linkage);
      expect(camberGain).toBeCloseTo(0, 9);
      expect(toeGain).toBeCloseTo(0, 9);
      expect(inBump(linkage).camber).toBeCloseTo(0, 6);
      expect(inBump(linkage).toe).toBeCloseTo(0, 6);
      const { left, right } = standAxle(linkage, { rollAngle: 0.03 });
      expect(left.camber).toBeCloseTo(0, 9);
      expect(right.camber).toBeCloseTo(0, 9);
    }),
  );
});

test("one gain of independent wheels serves in heave and in roll, left and right unlike too", () => {
  const other = mirrorCorner({ ...wishbones, toeInner: { x: -0.12, y: 0.37, z: 0.24 } });
  const axles: SpaceAxle[] = [wishbones, strutCorner].flatMap((left) => [
    { kind: "independent", left },
    { kind: "independent", left, right: other },
  ]);
  for (const linkage of axles) {
    const { camberGain, toeGain = Number.NaN, rollSteer } = geometryOfLinkage(linkage);
    expect(rollSteer).toBeUndefined();
    expect(inBump(linkage).camber).toBeCloseTo(camberGain ?? Number.NaN, 4);
    expect(inBump(linkage).toe).toBeCloseTo(toeGain, 4);
    const { track } = standAxle(linkage);
    expect(inRoll(linkage).steer).toBeCloseTo((toeGain * track) / 2, 3);
  }
});
