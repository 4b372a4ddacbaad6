import { axleDistances, carMass, type HandlingCar } from "../balance/handling-car.js";
import type { Axles, Sides } from "../load/wheels.js";
import { GRAVITY } from "../units.js";
import { type TransferParts, transferParts, tyreLoads } from "./moving-loads.js";
import { settledSideForce } from "./moving-tyres.js";
import { type RollingBody, rollingBody } from "./rolling-body.js";

/** A car that drifts, yaws and rolls at a constant speed. All to the left; roll: right side down. */
export interface MovingState {
  /** m/s across the car, at the height of the roll axis under the centre of gravity */
  readonly lateralSpeed: number;
  /** rad/s */
  readonly yawRate: number;
  /** rad */
  readonly rollAngle: number;
  /** rad/s */
  readonly rollRate: number;
  /** N of both tyres of each axle: tyres need some way to build it up */
  readonly sideForce: Axles<number>;
}

/** How a car accelerates. */
export interface Accelerations {
  /** m/s² across the car */
  readonly lateralAcceleration: number;
  /** rad/s² */
  readonly yawAcceleration: number;
  /** rad/s² */
  readonly rollAcceleration: number;
}

/** What happens to a car in a state, at a steer angle. */
export interface Happening extends Accelerations {
  readonly transfer: Axles<TransferParts>;
  /** N under each tyre */
  readonly load: Axles<Sides<number>>;
  /** N that the tyres of each axle would make if they kept their slip angles */
  readonly settledSideForce: Axles<number>;
}

/**
 * Accelerations, load transfer by cause, and tyre forces of a car in motion.
 *
 * Body on a fixed roll axis, small roll angles, no push, constant speed. Load through the links
 * follows the side force at once, load through the springs the roll angle, load through the dampers
 * the roll rate.
 */
export function whatHappens(
  car: HandlingCar,
  speed: number,
  steer: number,
  state: MovingState,
): Happening {
  const { front: a, rear: b } = axleDistances(car);
  const how = accelerations(car, rollingBody(car, a, b), state);
  const { front: forceFront, rear: forceRear } = state.sideForce;
  const ayFront = how.lateralAcceleration + a * how.yawAcceleration;
  const ayRear = how.lateralAcceleration - b * how.yawAcceleration;
  const partsFront = transferParts(car.front, forceFront, ayFront, state);
  const partsRear = transferParts(car.rear, forceRear, ayRear, state);
  const weight = carMass(car) * GRAVITY;
  const air = speed ** 2;
  const downFront = (weight * b) / car.wheelbase + car.front.downforceFactor * air;
  const downRear = (weight * a) / car.wheelbase + car.rear.downforceFactor * air;
  const loadFront = tyreLoads(car.front, Math.max(0, downFront), partsFront);
  const loadRear = tyreLoads(car.rear, Math.max(0, downRear), partsRear);
  const slipFront = steer - Math.atan2(state.lateralSpeed + a * state.yawRate, speed);
  const slipRear = -Math.atan2(state.lateralSpeed - b * state.yawRate, speed);
  return {
    lateralAcceleration: how.lateralAcceleration,
    yawAcceleration: how.yawAcceleration,
    rollAcceleration: how.rollAcceleration,
    transfer: { front: partsFront, rear: partsRear },
    load: { front: loadFront, rear: loadRear },
    settledSideForce: {
      front: settledSideForce(car.front, loadFront, slipFront, state.rollAngle),
      rear: settledSideForce(car.rear, loadRear, slipRear, state.rollAngle),
    },
  };
}

/**
 * ΣFy = m·ay − ms·d·φ̈, Iz·ṙ = Σ x·Fy, (Ix + ms·d²)·φ̈ + C·φ̇ + (K − ms·g·d)·φ = ms·d·ay
 * – Abe, Vehicle Handling Dynamics, ch. 6.
 */
function accelerations(car: HandlingCar, body: RollingBody, state: MovingState): Accelerations {
  const { front: a, rear: b } = axleDistances(car);
  const mass = carMass(car);
  const { front, rear } = state.sideForce;
  const yawAcceleration = (a * front - b * rear) / car.yawInertia;
  const moment =
    (body.lever * (front + rear)) / mass +
    body.yawLever * yawAcceleration -
    body.damping * state.rollRate -
    body.stiffness * state.rollAngle;
  const rollAcceleration = moment / (body.inertia - body.lever ** 2 / mass);
  const lateralAcceleration = (front + rear + body.lever * rollAcceleration) / mass;
  return { lateralAcceleration, yawAcceleration, rollAcceleration };
}
