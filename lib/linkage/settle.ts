import { type Matrix, solveLinear } from "../linear.js";
import { Refusal } from "../refusal.js";
import type { Carrier, Link, Slider, Wheel } from "./carrier.js";
import { atDesign, moved, type Pose, speedRow, step, turned, twistFrom } from "./pose.js";
import { dot, minus, type Point, plus, times, unit, without } from "./space-vector.js";

/** The road in the frame of the body: unit vector up from it, and where each wheel stands. */
export interface Road {
  readonly up: Point;
  /** Product of up and the contact patch, m, one a wheel. */
  readonly heights: readonly number[];
}

/** What one constraint misses, m, and how a small motion changes that. */
interface Condition {
  readonly miss: number;
  readonly row: number[];
}

const CLOSE_ENOUGH = 1e-13; // m
const ACCEPTED = 1e-11; // m
const MOST_STEPS = 25;

/**
 * Finds where a carrier stands: all link lengths kept, its wheels on the road.
 *
 * Newton's iteration on the misses of the constraints, with a stiff body at every step.
 *
 * @throws Refusal when the links cannot reach, or do not hold the carrier
 */
export function settle(carrier: Carrier, road: Road): Pose {
  let pose = atDesign;
  for (let i = 0; i < MOST_STEPS; i++) {
    const conditions = conditionsAt(carrier, road, pose);
    const worst = Math.max(...conditions.map(({ miss }) => Math.abs(miss)));
    if (worst < CLOSE_ENOUGH || (i > 10 && worst < ACCEPTED)) return requireUpright(pose);
    const six = solveLinear(
      conditions.map(({ row }) => row),
      conditions.map(({ miss }) => -miss),
    );
    pose = step(pose, twistFrom(six));
  }
  throw new Refusal(
    "travel-out-of-reach",
    "The travel is more than the links can reach: choose less travel.",
  );
}

/** Refuses a carrier that has turned over: a solution on paper, which no wheel can reach. */
function requireUpright(pose: Pose): Pose {
  if (Math.min(pose.x.x, pose.y.y, pose.z.z) > 0.4) return pose;
  throw new Refusal(
    "wheel-turned-over",
    "The links turn the wheel over in this position: choose less travel.",
  );
}

/** How the constraints change with a small motion: six rows, the wheels last. */
export function constraintRows(carrier: Carrier, road: Road, pose: Pose): Matrix {
  return conditionsAt(carrier, road, pose).map(({ row }) => row);
}

function conditionsAt(carrier: Carrier, road: Road, pose: Pose): Condition[] {
  return [
    ...carrier.links.map((one) => linkCondition(one, pose)),
    ...carrier.sliders.flatMap((one) => sliderConditions(one, pose)),
    ...carrier.wheels.map((one, i) => wheelCondition(one, pose, road.up, road.heights[i] ?? 0)),
  ];
}

function linkCondition({ body, carrier, length }: Link, pose: Pose): Condition {
  const joint = moved(pose, carrier);
  const way = minus(joint, body);
  const distance = Math.hypot(way.x, way.y, way.z);
  return { miss: distance - length, row: speedRow(joint, times(way, 1 / distance)) };
}

function sliderConditions({ mount, foot, square }: Slider, pose: Pose): Condition[] {
  const way = minus(moved(pose, foot), mount);
  return square.map((direction) => {
    const across = turned(pose, direction);
    return { miss: dot(across, way), row: speedRow(mount, across) };
  });
}

function wheelCondition(wheel: Wheel, pose: Pose, up: Point, height: number): Condition {
  const patch = contactPatch(wheel, pose, up);
  return { miss: dot(patch, up) - height, row: speedRow(patch, up) };
}

/** Lowest point of the wheel's disc over the road. */
export function contactPatch(wheel: Wheel, pose: Pose, up: Point): Point {
  const upInWheel = unit(without(up, turned(pose, wheel.axis)));
  return plus(moved(pose, wheel.centre), times(upInWheel, -wheel.radius));
}
