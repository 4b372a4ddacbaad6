import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type FrontViewLinkage,
  frontViewMembers,
  mirrorFrontView,
} from "../../../lib/linkage/front-view.js";
import { frontViewAxle } from "../../../lib/linkage/front-view-axle.js";
import { frontViewDrawing } from "../../../lib/linkage/front-view-drawing.js";
import type { FrontViewPoint } from "../../../lib/linkage/front-view-vector.js";
import {
  camberGain,
  frontViewSwingArm,
  instantCentre,
} from "../../../lib/linkage/instant-centre.js";
import { moveFrontView } from "../../../lib/linkage/move-front-view.js";
import { rollCentre } from "../../../lib/linkage/roll-centre.js";
import { converging, degrees, parallel, strut } from "./reference-linkages.js";

const point = (spread: number) =>
  fc.record({
    y: fc.double({ min: -spread, max: spread, noNaN: true }),
    z: fc.double({ min: -spread, max: spread, noNaN: true }),
  });

const shifted = (a: FrontViewPoint, b: FrontViewPoint) => ({ y: a.y + b.y, z: a.z + b.z });

/** Wishbones and struts with every joint up to 25 mm away from the reference ones. */
const linkages: fc.Arbitrary<FrontViewLinkage> = fc
  .record({
    base: fc.constantFrom<FrontViewLinkage>(converging, parallel, strut),
    shifts: fc.array(point(0.025), { minLength: 4, maxLength: 4 }),
  })
  .map(({ base, shifts }) => {
    const names = Object.keys(base).filter((name) => /Inner|Outer|strut/.test(name));
    const entries = names.map((name, i) => [
      name,
      shifted(
        base[name as keyof FrontViewLinkage] as unknown as FrontViewPoint,
        shifts[i] ?? { y: 0, z: 0 },
      ),
    ]);
    return { ...base, ...Object.fromEntries(entries) } as FrontViewLinkage;
  });

const both = (linkage: FrontViewLinkage) => rollCentre(linkage, mirrorFrontView(linkage));

/** Central difference of the moved contact patch or camber. */
function rates(linkage: FrontViewLinkage, step = 1e-5) {
  const up = moveFrontView(linkage, step);
  const down = moveFrontView(linkage, -step);
  return {
    sideways: (up.contactPatch.y - down.contactPatch.y) / (2 * step),
    camber: (up.camberChange - down.camberChange) / (2 * step),
  };
}

describe("front view of a double wishbone", () => {
  it("finds the instant centre and roll centre of converging arms", () => {
    // line intersection and virtual work, two independent methods
    const { point } = instantCentre(converging);
    expect(point?.y).toBeCloseTo(-1.225, 6);
    expect(point?.z).toBeCloseTo(0.27, 6);
    expect(both(converging).height).toBeCloseTo(0.1025316, 6);
    expect(both(converging).point?.z).toBeCloseTo(0.1025316, 6);
    expect(both(converging).point?.y).toBeCloseTo(0, 9);
  });

  it("loses camber by one radian for each swing arm length of bump", () => {
    expect(frontViewSwingArm(converging)).toBeCloseTo(1.975, 9); // 750 + 1225 mm
    expect(degrees(camberGain(converging)) / 1000).toBeCloseTo(0.0290105, 7);
  });

  it("takes the roll centre of parallel arms from their direction", () => {
    expect(instantCentre(parallel).point).toBeNull();
    expect(both(parallel).height).toBeCloseTo(0.0656165, 7); // 750 mm · tan 5°
    expect(camberGain(parallel)).toBe(0);
    expect(frontViewSwingArm(parallel)).toBe(Number.POSITIVE_INFINITY);
  });

  it("puts the roll centre on the ground when the arms lie flat", () => {
    const flat = { ...parallel, upperOuter: { y: 0.65, z: 0.4 }, lowerOuter: { y: 0.7, z: 0.18 } };
    expect(both(flat).height).toBeCloseTo(0, 12);
    expect(both(flat).point).toEqual({ y: 0, z: 0 });
  });
});

describe("front view of a strut", () => {
  it("finds the instant centre on the square through the top mount", () => {
    // by hand: square to the axis (−100, 560) through (580, 820) is z = 820 + 100/560 (y − 580);
    // lower arm z = 190 − 20/350 (y − 350); they meet at y = (190 + 20 − 820 + 580/5.6)/(1/5.6 + 2/35)
    const y = (210 - 820 + 580 / 5.6) / (1 / 5.6 + 2 / 35);
    expect(instantCentre(strut).point?.y).toBeCloseTo(y / 1000, 9);
    expect(instantCentre(strut).point?.z).toBeCloseTo((210 - (2 / 35) * y) / 1000, 9);
  });
});

describe("identities of any linkage", () => {
  it("has its roll centre at half the track times the slope of the patch's path", () => {
    fc.assert(
      fc.property(linkages, (linkage) => {
        const slope = rates(linkage).sideways; // h = (t/2)·dy/dz
        expect(both(linkage).height).toBeCloseTo(linkage.contactPatch.y * slope, 7);
      }),
    );
  });

  it("gains camber at one over the swing arm length", () => {
    fc.assert(
      fc.property(linkages, (linkage) => {
        expect(rates(linkage).camber).toBeCloseTo(-camberGain(linkage), 6);
      }),
    );
  });

  it("leans against the road in roll by 1 − half track / swing arm of the roll angle", () => {
    fc.assert(
      fc.property(linkages, (linkage) => {
        const roll = 1e-5;
        const [a, b] = [
          frontViewAxle(linkage, { rollAngle: roll }),
          frontViewAxle(linkage, { rollAngle: -roll }),
        ];
        const lean = (a.right.camber - b.right.camber) / (2 * roll); // right is outside
        expect(lean).toBeCloseTo(1 - linkage.contactPatch.y * camberGain(linkage), 6);
      }),
    );
  });

  it("keeps the length of every rigid member over the whole travel", () => {
    fc.assert(
      fc.property(
        linkages,
        fc.double({ min: -0.06, max: 0.06, noNaN: true }),
        (linkage, travel) => {
          const moved = moveFrontView(linkage, travel).linkage;
          expect(moved.contactPatch.z).toBeCloseTo(travel, 11);
          const before = frontViewMembers(linkage);
          frontViewMembers(moved).forEach(([name, a, b], i) => {
            const [, p, q] = before[i] ?? [name, a, b];
            if (name === "strut") return; // a strut telescopes
            const length = Math.hypot(a.y - b.y, a.z - b.z);
            expect(length).toBeCloseTo(Math.hypot(p.y - q.y, p.z - q.z), 10);
          });
        },
      ),
    );
  });

  it("keeps the top mount on the axis of the strut", () => {
    fc.assert(
      fc.property(fc.double({ min: -0.08, max: 0.08, noNaN: true }), (travel) => {
        const { strutTop, strutFoot, lowerOuter } = moveFrontView(strut, travel).linkage;
        const offset = (s: typeof strut) => {
          const axis = { y: s.strutTop.y - s.strutFoot.y, z: s.strutTop.z - s.strutFoot.z };
          const arm = { y: s.lowerOuter.y - s.strutFoot.y, z: s.lowerOuter.z - s.strutFoot.z };
          return (axis.y * arm.z - axis.z * arm.y) / Math.hypot(axis.y, axis.z);
        };
        expect(offset({ ...strut, strutTop, strutFoot, lowerOuter })).toBeCloseTo(
          offset(strut),
          10,
        );
      }),
    );
  });

  it("gives the right side as the mirror image of the left", () => {
    fc.assert(
      fc.property(
        linkages,
        fc.double({ min: -0.05, max: 0.05, noNaN: true }),
        (linkage, travel) => {
          const left = moveFrontView(linkage, travel);
          const right = moveFrontView(mirrorFrontView(linkage), travel);
          expect(right.camberChange).toBeCloseTo(left.camberChange, 10);
          expect(right.contactPatch.y).toBeCloseTo(-left.contactPatch.y, 10);
        },
      ),
    );
  });
});

describe("an axle on the road", () => {
  it("stands both wheels on the ground, whatever the body does", () => {
    const position = fc.record({
      heave: fc.double({ min: -0.04, max: 0.04, noNaN: true }),
      rollAngle: fc.double({ min: -0.05, max: 0.05, noNaN: true }),
    });
    fc.assert(
      fc.property(linkages, position, (linkage, at) => {
        const { left, right } = frontViewAxle(linkage, at);
        expect(left.linkage.contactPatch.z).toBeCloseTo(0, 10);
        expect(right.linkage.contactPatch.z).toBeCloseTo(0, 10);
      }),
    );
  });

  it("presses the right wheel into bump when the body rolls to the right", () => {
    const { left, right } = frontViewAxle(converging, { rollAngle: 0.03 });
    expect(right.wheelTravel).toBeGreaterThan(0.02);
    expect(left.wheelTravel).toBeLessThan(-0.02);
  });

  it("lowers the roll centre with the body", () => {
    const low = frontViewAxle(converging, { heave: -0.03 }).rollCentre;
    const high = frontViewAxle(converging, { heave: 0.03 }).rollCentre;
    expect(low.height).toBeLessThan(both(converging).height);
    expect(high.height).toBeGreaterThan(both(converging).height);
  });

  it("mirrors the roll centre when the roll changes sides", () => {
    const one = frontViewAxle(converging, { rollAngle: 0.03 }).rollCentre;
    const other = frontViewAxle(converging, { rollAngle: -0.03 }).rollCentre;
    expect(one.height).toBeCloseTo(other.height, 9);
    expect(one.point?.y).toBeCloseTo(-(other.point?.y ?? Number.NaN), 8);
  });
});

describe("a drawing of a corner", () => {
  it("names each member and runs its lines to the instant centre", () => {
    const drawing = frontViewDrawing(converging, 0.2);
    expect(drawing.members.map(({ name }) => name)).toEqual(["lower arm", "upper arm", "upright"]);
    expect(drawing.patchLine[1]).toEqual(instantCentre(converging).point);
    expect(drawing.wheel).toHaveLength(4);
  });

  it("cuts its lines off at the reach when the arms are parallel", () => {
    const [from, to] = frontViewDrawing(parallel, 0.2, 2).patchLine;
    expect(Math.hypot(to.y - from.y, to.z - from.z)).toBeCloseTo(2, 9);
    expect(to.y).toBeLessThan(from.y);
  });
});

describe("bad linkages", () => {
  it("refuses travel beyond the arms with one sentence", () => {
    expect(() => moveFrontView({ ...converging, lowerInner: { y: 0.6, z: 0.18 } }, 0.25)).toThrow(
      /more than the arms can reach/,
    );
    expect(() => moveFrontView(converging, 0.4)).toThrow(/wheelTravel is 0.4 m but must be/);
    expect(() => moveFrontView(converging, Number.NaN)).toThrow(RangeError);
  });

  it("refuses an arm without length and a point that is no number", () => {
    expect(() => moveFrontView({ ...converging, lowerInner: converging.lowerOuter }, 0)).toThrow(
      /length of the lower arm/,
    );
    expect(() => moveFrontView({ ...converging, lowerInner: { y: Number.NaN, z: 0 } }, 0)).toThrow(
      /lowerInner y/,
    );
  });

  it("refuses the sides in the wrong order", () => {
    expect(() => rollCentre(mirrorFrontView(converging), converging)).toThrow(/left linkage/);
  });
});
