import { requireInRange } from "../check.js";
import type { Axles } from "../load/wheels.js";
import { findPeak, findRoot } from "../solve.js";
import { type Driving, requireDriving } from "./driving.js";
import { carForces } from "./four-wheels.js";
import { carMass, type HandlingCar } from "./handling-car.js";
import { axlesAt, tipsOverAt } from "./loads-in-turn.js";
import { mirrorCar } from "./mirror-car.js";
import { mirrorDriving } from "./mirror-driving.js";

/** A car held at a side-slip and a steer angle: what it wants to do. */
export interface HeldCar {
  /** m/s² that the tyres make, above 0 to the left */
  readonly lateralAcceleration: number;
  /** N·m about the centre of gravity, above 0 turning the nose to the left */
  readonly yawMoment: number;
}

/** How a car is held. */
export interface Attitude {
  /** rad, ISO 8855, above 0 when the car moves to its left, at most 0.5 */
  readonly sideSlip: number;
  /** rad of the front wheels, above 0 to the left, at most 0.8 */
  readonly steer: number;
  /** N that the wheels of each axle push with, below 0 braking; left out: they roll freely */
  readonly push?: Axles<number>;
}

/**
 * The yaw moment a car makes when held at a side-slip and a steer angle at a constant speed.
 *
 * Side force sets the lateral acceleration, lateral acceleration sets loads and yaw rate, and both
 * set the side force: solved together. Where the moment is zero the car is in trim.
 *
 * @throws RangeError when a number is out of range, or the car tips over
 * @see Milliken 1995, ch. 8 (the moment method)
 */
export function yawMomentOf(car: HandlingCar, driving: Driving, attitude: Attitude): HeldCar {
  requireDriving(driving);
  requireInRange("side-slip", attitude.sideSlip, -0.5, 0.5, "rad");
  requireInRange("steer", attitude.steer, -0.8, 0.8, "rad");
  const mass = carMass(car);
  const left = tipsOverAt(car, driving);
  const right = -tipsOverAt(mirrorCar(car), mirrorDriving(driving));
  const excess = (ay: number) => heldForces(car, driving, attitude, ay).side - mass * ay;
  if (excess(left) > 0 || excess(right) < 0)
    throw new RangeError("side-slip and steer make the car tip over.");
  const lateralAcceleration = findRoot(excess, right, left, 1e-9);
  const { yawMoment } = heldForces(car, driving, attitude, lateralAcceleration);
  return { lateralAcceleration, yawMoment };
}

const freeRolling = { front: 0, rear: 0 };

/** Forces with the loads and the yaw rate of some lateral acceleration. */
function heldForces(
  car: HandlingCar,
  driving: Driving,
  { sideSlip, steer, push = freeRolling }: Attitude,
  ay: number,
): { side: number; yawMoment: number } {
  if (ay < 0) {
    const over = { sideSlip: -sideSlip, steer: -steer, push };
    const { side, yawMoment } = heldForces(mirrorCar(car), mirrorDriving(driving), over, -ay);
    return { side: -side, yawMoment: -yawMoment };
  }
  return carForces(car, axlesAt(car, driving, ay), {
    speed: driving.speed,
    sideSlip,
    steer,
    push,
    yawRate: (ay * Math.cos(sideSlip)) / driving.speed,
    lateralAcceleration: ay,
  });
}

/** What a car still can do when an end has given up. */
export interface LimitMoment extends HeldCar {
  readonly attitude: Attitude;
}

/**
 * The greatest lateral acceleration a car can be held at, in trim or not, with its yaw moment.
 *
 * Above zero there: the nose still turns in, the rear gives up first. Below zero: the front does,
 * and the car ploughs on.
 *
 * @see Milliken 1995, ch. 8
 */
export function limitYawMoment(car: HandlingCar, driving: Driving): LimitMoment {
  const held = (sideSlip: number, steer: number) =>
    yawMomentOf(car, driving, { sideSlip, steer }).lateralAcceleration;
  const bestSteer = (sideSlip: number) =>
    findPeak((steer) => held(sideSlip, steer), 0, WIDEST_STEER, COARSE).at;
  const sideSlip = findPeak((angle) => held(angle, bestSteer(angle)), -WIDEST_SLIP, 0, COARSE).at;
  const attitude = { sideSlip, steer: bestSteer(sideSlip) };
  return { ...yawMomentOf(car, driving, attitude), attitude };
}

const WIDEST_STEER = 0.35; // rad
const WIDEST_SLIP = 0.3; // rad
const COARSE = 1e-3; // rad: the top is flat
