import { line, type Mark, type Point, partOf } from "../marks.js";
import { between, type Corner, holds, type Lean } from "./pose.js";
import type { SeenAxle } from "./seen-axle.js";

const LENGTH = 0.62; // m across the car
const ARM = 0.16; // m
const RINGS = 9;
const RING = 0.045; // m, half of one
const MOST = 1.2; // rad that an arm turns

/** An end of the bar: where it turns, where its arm holds on, and how far it has turned, rad. */
interface End {
  readonly pivot: Point;
  readonly link: Point;
  readonly turn: number;
}

function endOf(corner: Corner, axle: SeenAxle, lean: Lean): End {
  const link = holds(corner, axle, lean).damper;
  const turn = (link[1] - (axle.wheelHeight - 0.1)) / ARM;
  const pivot = lean([corner.side * (LENGTH / 2), 0.4]);
  return { link, pivot, turn: Math.max(-MOST, Math.min(MOST, turn)) };
}

/** A ring on the bar, turned as the bar is at its place. */
function ring(left: End, right: End, share: number): Mark {
  const [x, z] = between(left.pivot, right.pivot, share);
  const angle = left.turn + share * (right.turn - left.turn);
  const [across, up] = [RING * Math.sin(angle), RING * Math.cos(angle)];
  const ends: Point[] = [
    [x + across, z - up],
    [x - across, z + up],
  ];
  return line(ends, "springs", { weight: "fine" });
}

/**
 * The bar across the car with an arm at each end: the ends go with the wheels, so one arm turns up
 * and the other down, and the bar between them twists; rings on it show by how much, place by place.
 */
export function twistedBar(corners: readonly Corner[], axle: SeenAxle, lean: Lean): Mark[] {
  const [left, right] = corners.map((corner) => endOf(corner, axle, lean));
  if (left === undefined || right === undefined) return [];
  return partOf("bar", [
    line([left.pivot, right.pivot], "springs", { weight: "heavy" }),
    ...Array.from({ length: RINGS }, (_, i) => ring(left, right, i / (RINGS - 1))),
    ...[left, right].map(({ pivot, link }) => line([link, pivot], "springs")),
  ]);
}
