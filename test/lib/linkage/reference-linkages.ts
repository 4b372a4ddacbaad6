import type { FrontViewDoubleWishbone, FrontViewStrut } from "../../../lib/linkage/front-view.js";
import type { FrontViewPoint } from "../../../lib/linkage/front-view-vector.js";

const mm = (y: number, z: number): FrontViewPoint => ({ y: y / 1000, z: z / 1000 });

const wheel = { wheelCentre: mm(750, 300), contactPatch: mm(750, 0) };

/** Arms that meet at (−1225, 270) mm: line intersection and virtual work agree. */
export const converging: FrontViewDoubleWishbone = {
  kind: "double wishbone",
  upperInner: mm(400, 400),
  upperOuter: mm(650, 420),
  lowerInner: mm(350, 180),
  lowerOuter: mm(700, 160),
  ...wheel,
};

const slope = Math.tan((5 * Math.PI) / 180);

/** Parallel arms that fall 5 degrees outwards. */
export const parallel: FrontViewDoubleWishbone = {
  kind: "double wishbone",
  upperInner: mm(400, 400),
  upperOuter: mm(650, 400 - 250 * slope),
  lowerInner: mm(350, 180),
  lowerOuter: mm(700, 180 - 350 * slope),
  ...wheel,
};

/** A strut with its axis through the lower joint, leaning inwards at the top. */
export const strut: FrontViewStrut = {
  kind: "strut",
  strutTop: mm(580, 820),
  strutFoot: mm(680, 260),
  lowerInner: mm(350, 190),
  lowerOuter: mm(700, 170),
  ...wheel,
};

export const degrees = (angle: number): number => (angle * 180) / Math.PI;
