import type { BeamAxle } from "../../../lib/linkage/beam-axle.js";
import type { DoubleWishboneCorner, StrutCorner } from "../../../lib/linkage/corner.js";
import type { FrontViewLinkage } from "../../../lib/linkage/front-view.js";
import type { FrontViewPoint } from "../../../lib/linkage/front-view-vector.js";

const mm = (x: number, y: number, z: number) => ({ x: x / 1000, y: y / 1000, z: z / 1000 });

/** An invented front corner with inclined pivots, caster and a toe link behind the wheel. */
export const wishbones: DoubleWishboneCorner = {
  kind: "double wishbone",
  wheelCentre: mm(0, 750, 300),
  camber: -0.02,
  toe: 0.001,
  upperFront: mm(120, 410, 405),
  upperRear: mm(-130, 400, 390),
  upperOuter: mm(-20, 650, 420),
  lowerFront: mm(150, 350, 180),
  lowerRear: mm(-180, 345, 170),
  lowerOuter: mm(5, 700, 160),
  toeInner: mm(-120, 370, 220),
  toeOuter: mm(-130, 690, 212),
};

/** An invented strut corner. */
export const strutCorner: StrutCorner = {
  kind: "strut",
  wheelCentre: mm(0, 750, 300),
  camber: -0.01,
  toe: 0,
  strutTop: mm(-35, 580, 820),
  strutFoot: mm(-5, 680, 260),
  lowerFront: mm(60, 350, 190),
  lowerRear: mm(-200, 340, 185),
  lowerOuter: mm(5, 700, 170),
  toeInner: mm(-110, 350, 240),
  toeOuter: mm(-125, 680, 228),
};

/** An invented beam with a lateral rod that lies flat in the design position. */
export const beam: BeamAxle = {
  kind: "beam axle",
  wheelCentre: mm(0, 740, 310),
  camber: 0,
  toe: 0,
  leftLink: { body: mm(500, 450, 250), axle: mm(0, 480, 220) },
  rightLink: { body: mm(500, -450, 250), axle: mm(0, -480, 220) },
  upperLink: { body: mm(300, 0, 480), axle: mm(-30, 0, 470) },
  lateralRod: { body: mm(-120, -450, 260), axle: mm(-120, 450, 260) },
};

/** A corner whose pivots run along the car: it can only move as its front view does. */
export function plane(linkage: FrontViewLinkage): DoubleWishboneCorner | StrutCorner {
  const at = (x: number, { y, z }: FrontViewPoint) => ({ x, y, z });
  const shared = {
    wheelCentre: at(0, linkage.wheelCentre),
    camber: 0,
    toe: 0,
    lowerFront: at(0.15, linkage.lowerInner),
    lowerRear: at(-0.15, linkage.lowerInner),
    lowerOuter: at(0, linkage.lowerOuter),
    toeInner: at(-0.1, linkage.lowerInner),
    toeOuter: at(-0.1, linkage.lowerOuter),
  };
  if (linkage.kind === "strut") {
    const { strutTop, strutFoot } = linkage;
    return { kind: "strut", ...shared, strutTop: at(0, strutTop), strutFoot: at(0, strutFoot) };
  }
  return {
    kind: "double wishbone",
    ...shared,
    upperFront: at(0.1, linkage.upperInner),
    upperRear: at(-0.1, linkage.upperInner),
    upperOuter: at(0, linkage.upperOuter),
  };
}
