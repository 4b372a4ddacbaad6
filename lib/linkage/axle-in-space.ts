import { requireInRange } from "../check.js";
import { Refusal } from "../refusal.js";
import { type BeamAxle, beamCarrier } from "./beam-axle.js";
import type { Carrier, Wheel } from "./carrier.js";
import { type Corner, cornerCarrier, mirrorCorner } from "./corner.js";
import type { BodyPosition } from "./front-view-axle.js";
import { type Road, settle } from "./settle.js";
import { dot, minus } from "./space-vector.js";
import {
  risingTwists,
  type WheelPosition,
  type WheelRates,
  wheelPosition,
  wheelRates,
} from "./wheel-position.js";

/** Two independent corners; the right one mirrors the left when left out. */
export interface IndependentAxle {
  readonly kind: "independent";
  readonly left: Corner;
  readonly right?: Corner;
}

/** Any axle whose linkage can be solved in space. */
export type SpaceAxle = IndependentAxle | BeamAxle;

/** One wheel of an axle that stands on the road. */
export interface AxleWheel extends WheelPosition {
  /** Rates for each metre this wheel rises while the other does not. */
  readonly own: WheelRates;
  /** Rates for each metre the other wheel rises; null when the wheels are independent. */
  readonly other: WheelRates | null;
}

/** An axle standing on the road under a body that has heaved and rolled. */
export interface StandingAxle {
  readonly left: AxleWheel;
  readonly right: AxleWheel;
  /** Distance between the contact patches across the car, m. */
  readonly track: number;
  /** Height above the road at which an even side force acts on the body, m. */
  readonly rollCentreHeight: number;
}

/**
 * Stands an axle on the road under the body and solves its linkage in space.
 *
 * @param axle - design position, ground at z = 0
 * @param position - heave (m, > 0 up) and roll (rad, > 0 right side down) of the body
 * @param rackTravel - travel of the steering rack, m, > 0 to the left
 * @throws Refusal when a value is out of range or the links cannot reach
 */
export function standAxle(
  axle: SpaceAxle,
  position: BodyPosition = {},
  rackTravel = 0,
): StandingAxle {
  const heave = requireInRange("heave", position.heave ?? 0, -0.3, 0.3, "m");
  const roll = requireInRange("rollAngle", position.rollAngle ?? 0, -0.3, 0.3, "rad");
  const up = { x: 0, y: Math.sin(roll), z: Math.cos(roll) };
  const road = { up, heights: [-heave, -heave] };
  const [left, right] = carriersOf(axle, rackTravel).flatMap((one) => standWheels(one, road));
  if (left === undefined || right === undefined)
    throw new Refusal("two-wheels-needed", "An axle needs two wheels.");
  const across = minus(left.contactPatch, right.contactPatch);
  const track = dot(across, { x: 0, y: up.z, z: -up.y });
  return { left, right, track, rollCentreHeight: evenForceHeight(left, right, track) };
}

function carriersOf(axle: SpaceAxle, rackTravel: number): Carrier[] {
  if (axle.kind === "beam axle") return [beamCarrier(axle)];
  const right = axle.right ?? mirrorCorner(axle.left);
  return [cornerCarrier(axle.left, rackTravel), cornerCarrier(right, rackTravel)];
}

function standWheels(carrier: Carrier, road: Road): AxleWheel[] {
  const pose = settle(carrier, road);
  const twists = risingTwists(carrier, road, pose);
  const ratesOf = (wheel: Wheel, i: number) => {
    const twist = twists[i];
    return twist === undefined ? null : wheelRates(wheel, pose, road.up, twist);
  };
  return carrier.wheels.map((wheel, i) => {
    const own = ratesOf(wheel, i);
    if (own === null) throw new Refusal("road-needed", "A wheel needs the road.");
    return { ...wheelPosition(wheel, pose, road.up), own, other: ratesOf(wheel, 1 - i) };
  });
}

/** Half the track times the slope of each patch, both wheels sharing the side force. */
function evenForceHeight(left: AxleWheel, right: AxleWheel, track: number): number {
  const leftSlopes = left.own.sideways - (left.other?.sideways ?? 0);
  const rightSlopes = right.own.sideways - (right.other?.sideways ?? 0);
  return (track / 4) * (leftSlopes - rightSlopes); // h = (t/2)·dy/dz, mean of both wheels
}
