import { solveLinear } from "../linear.js";
import type { Carrier, Wheel } from "./carrier.js";
import { moved, type Pose, type Twist, turned, twistFrom, velocityAt } from "./pose.js";
import { constraintRows, contactPatch, type Road } from "./settle.js";
import { cross, dot, type Point } from "./space-vector.js";

/** Where a wheel stands and how it is aligned to the road. */
export interface WheelPosition {
  /** Contact patch in the frame of the body, m. */
  readonly contactPatch: Point;
  readonly wheelCentre: Point;
  /** Camber against the road, rad, > 0 when the top leans away from the car. */
  readonly camber: number;
  /** Toe along the road, rad, > 0 when the front of the wheel points to the middle. */
  readonly toe: number;
}

/** How the wheel moves at this moment for each metre that a contact patch rises. */
export interface WheelRates {
  /** Contact patch along the road to the left, m/m: half the track times it is the roll centre. */
  readonly sideways: number;
  /** Contact patch forward, wheel locked to its carrier, m/m: for brakes on the carrier. */
  readonly forward: number;
  /** Wheel centre forward, m/m: for drive or brakes that act through a shaft from the body. */
  readonly centreForward: number;
  /** Camber, rad/m. */
  readonly camber: number;
  /** Toe, rad/m: bump steer. */
  readonly toe: number;
}

const forward: Point = { x: 1, y: 0, z: 0 };

/** Where a wheel of a carrier is in a given pose. */
export function wheelPosition(wheel: Wheel, pose: Pose, up: Point): WheelPosition {
  const axis = turned(pose, wheel.axis);
  const heading = cross(axis, up);
  const steer = Math.atan2(dot(heading, cross(up, forward)), dot(heading, forward));
  return {
    contactPatch: contactPatch(wheel, pose, up),
    wheelCentre: moved(pose, wheel.centre),
    camber: -wheel.side * Math.asin(dot(axis, up)),
    toe: -wheel.side * steer,
  };
}

/** The small motion of a carrier while one of its wheels rises by a metre, the others not. */
export function risingTwists(carrier: Carrier, road: Road, pose: Pose): Twist[] {
  const rows = constraintRows(carrier, road, pose);
  const held = rows.length - carrier.wheels.length;
  return carrier.wheels.map((_, i) =>
    twistFrom(
      solveLinear(
        rows,
        rows.map((_row, j) => (j === held + i ? 1 : 0)),
      ),
    ),
  );
}

/** Rates of a wheel during a small motion of its carrier. */
export function wheelRates(wheel: Wheel, pose: Pose, up: Point, twist: Twist): WheelRates {
  const left = cross(up, forward);
  const axis = turned(pose, wheel.axis);
  const patch = velocityAt(twist, contactPatch(wheel, pose, up));
  const axisTurn = cross(twist.rotation, axis);
  const flat = dot(axis, left) ** 2 + dot(axis, forward) ** 2;
  const steer = dot(axis, forward) * dot(axisTurn, left) - dot(axis, left) * dot(axisTurn, forward);
  return {
    sideways: dot(patch, left),
    forward: dot(patch, forward),
    centreForward: dot(velocityAt(twist, moved(pose, wheel.centre)), forward),
    camber: (-wheel.side * dot(axisTurn, up)) / Math.sqrt(flat),
    toe: (-wheel.side * steer) / flat,
  };
}
