import { requireInRange } from "../check.js";
import { type FrontViewLinkage, frontViewMembers } from "./front-view.js";
import { type FrontViewPoint, minus, plus, times, turn, unit } from "./front-view-vector.js";
import { type InstantCentre, instantCentre } from "./instant-centre.js";

/** A straight line to draw: both its ends, m. */
export type Segment = readonly [FrontViewPoint, FrontViewPoint];

/** All that a drawing of one corner needs, in the frame of its linkage. */
export interface FrontViewDrawing {
  /** Arms, upright or strut, by name, in drawing order. */
  readonly members: readonly { readonly name: string; readonly segment: Segment }[];
  /** Corners of the wheel's outline, in order round it. */
  readonly wheel: readonly FrontViewPoint[];
  /** Members extended to the instant centre (cut off at the reach). */
  readonly memberLines: readonly Segment[];
  /** From the contact patch to the instant centre (cut off at the reach). */
  readonly patchLine: Segment;
  readonly instantCentre: InstantCentre;
}

/**
 * Points and lines for a drawing of one corner in the front view.
 *
 * @param linkage - in any position, from {@link FrontViewLinkage} on the left or the right
 * @param wheelWidth - width of the wheel's outline, m, 0.01 … 1
 * @param reach - how far the construction lines run at most, m, 0.1 … 100
 * @example
 * const mm = (y, z) => ({ y: y / 1000, z: z / 1000 });
 * const wheel = { wheelCentre: mm(750, 300), contactPatch: mm(750, 0) };
 * const upper = { upperInner: mm(400, 400), upperOuter: mm(650, 420) };
 * const lower = { lowerInner: mm(350, 180), lowerOuter: mm(700, 160) };
 * const arms = { kind: "double wishbone", ...upper, ...lower, ...wheel };
 * frontViewDrawing(arms).patchLine[0].y // → 0.75, it begins at the contact patch
 */
export function frontViewDrawing(
  linkage: FrontViewLinkage,
  wheelWidth = 0.2,
  reach = 10,
): FrontViewDrawing {
  requireInRange("wheelWidth", wheelWidth, 0.01, 1, "m");
  requireInRange("reach", reach, 0.1, 100, "m");
  const centre = instantCentre(linkage);
  const lineFrom = (start: FrontViewPoint): Segment => [start, endOfLine(start, centre, reach)];
  return {
    members: frontViewMembers(linkage)
      .filter(([name]) => name !== "wheel radius")
      .map(([name, a, b]) => ({ name, segment: [a, b] })),
    wheel: wheelOutline(linkage, wheelWidth),
    memberLines: [lineFrom(linkage.lowerOuter), lineFrom(upperStart(linkage))],
    patchLine: lineFrom(linkage.contactPatch),
    instantCentre: centre,
  };
}

function upperStart(linkage: FrontViewLinkage): FrontViewPoint {
  return linkage.kind === "strut" ? linkage.strutTop : linkage.upperOuter;
}

function endOfLine(start: FrontViewPoint, centre: InstantCentre, reach: number): FrontViewPoint {
  if (centre.point === null) return plus(start, times(centre.toward, reach));
  const way = minus(centre.point, start);
  const length = Math.hypot(way.y, way.z);
  return length <= reach ? centre.point : plus(start, times(way, reach / length));
}

function wheelOutline(linkage: FrontViewLinkage, width: number): FrontViewPoint[] {
  const { contactPatch, wheelCentre } = linkage;
  const up = minus(wheelCentre, contactPatch);
  const aside = times(turn(unit(up), Math.PI / 2), width / 2);
  const top = plus(wheelCentre, up);
  return [
    plus(contactPatch, aside),
    plus(top, aside),
    minus(top, aside),
    minus(contactPatch, aside),
  ];
}
