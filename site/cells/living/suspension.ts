import { line, type Mark, type Point, partOf } from "../marks.js";
import { between, type Corner, holds, inner, type Lean } from "./pose.js";
import type { SeenAxle } from "./seen-axle.js";

const UPPER_ARM = 0.12; // m above the wheel centre

/** What carries a wheel: its two arms, or its half of a beam. */
export function links(corner: Corner, axle: SeenAxle, lean: Lean): Mark[] {
  const { low, inside } = holds(corner, axle, lean);
  const high = lean([corner.side * 0.3, axle.wheelHeight + UPPER_ARM]);
  const arms = [
    line([inside, low], "links"),
    line([high, inner(corner, axle, UPPER_ARM)], "links"),
  ];
  return partOf("links", axle.isBeam ? [line([inside, low], "links", { weight: "heavy" })] : arms);
}

export function spring(corner: Corner, axle: SeenAxle, lean: Lean): Mark[] {
  const { spring: foot } = holds(corner, axle, lean);
  const seat = lean([foot[0] - corner.side * 0.04, 0.7]);
  return partOf("springs", [line(coil(foot, seat), "springs")]);
}

export function damper(corner: Corner, axle: SeenAxle, lean: Lean): Mark[] {
  const foot = holds(corner, axle, lean).damper;
  const top = lean([corner.side * 0.3, 0.68]);
  const middle = between(foot, top, 0.5);
  return partOf("dampers", [
    line([foot, middle], "dampers", { weight: "heavy" }),
    line([middle, top], "dampers", { weight: "fine" }),
  ]);
}

const TURNS = 7;

/** A coil between two points, as wide however long. */
export function coil(from: Point, to: Point): Point[] {
  const [dx, dz] = [to[0] - from[0], to[1] - from[1]];
  const length = Math.hypot(dx, dz);
  const [across, up] = [(-dz / length) * 0.055, (dx / length) * 0.055];
  const zigzag = Array.from({ length: 2 * TURNS }, (_, i): Point => {
    const [x, z] = between(from, to, (i + 0.5) / (2 * TURNS));
    const way = i % 2 === 0 ? 1 : -1;
    return [x + way * across, z + way * up];
  });
  return [from, ...zigzag, to];
}
