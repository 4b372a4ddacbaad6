import {
  axleDistances,
  carMass,
  type HandlingAxle,
  type HandlingCar,
} from "../balance/handling-car.js";
import type { Axles, Sides } from "../load/wheels.js";
import { GRAVITY } from "../units.js";
import { axleInMotion, type TransferParts, tyreLoads } from "./moving-loads.js";
import { settledForces } from "./moving-tyres.js";
import { freeRollInertia, type RollingBody, type RollingEnd, rollingBody } from "./rolling-body.js";

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
  /** rad that each axle leans on its tyres, above 0 right side down */
  readonly tyreAngle: Axles<number>;
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
 * the roll rate; tyres give at once. A turn that lasts ends as `rollEquilibrium` has it.
 */
export function whatHappens(
  car: HandlingCar,
  speed: number,
  steer: number,
  state: MovingState,
): Happening {
  const { front: a, rear: b } = axleDistances(car);
  const body = rollingBody(car);
  const how = accelerations(car, body, state);
  const { front: forceFront, rear: forceRear } = state.sideForce;
  const wheelsFront = wheelAcceleration(how, body.front, a);
  const wheelsRear = wheelAcceleration(how, body.rear, -b);
  const front = axleInMotion(car.front, body.front, forceFront, wheelsFront, state);
  const rear = axleInMotion(car.rear, body.rear, forceRear, wheelsRear, state);
  const weight = carMass(car) * GRAVITY;
  const air = speed ** 2;
  const downFront = (weight * b) / car.wheelbase + car.front.downforceFactor * air;
  const downRear = (weight * a) / car.wheelbase + car.rear.downforceFactor * air;
  const loadFront = tyreLoads(car.front, Math.max(0, downFront), front.transfer);
  const loadRear = tyreLoads(car.rear, Math.max(0, downRear), rear.transfer);
  const gaveFront = car.front.complianceSteer * forceFront; // rad out of the turn
  const gaveRear = car.rear.complianceSteer * forceRear;
  const slipFront = steer - gaveFront - Math.atan2(state.lateralSpeed + a * state.yawRate, speed);
  const slipRear = -gaveRear - Math.atan2(state.lateralSpeed - b * state.yawRate, speed);
  const { rollAngle } = state;
  const tyresFront = settledForces(car.front, loadFront, slipFront, rollAngle, front.tyreAngle);
  const tyresRear = settledForces(car.rear, loadRear, slipRear, rollAngle, rear.tyreAngle);
  const aligning = tyresFront.aligningMoment + tyresRear.aligningMoment;
  return {
    lateralAcceleration: how.lateralAcceleration,
    yawAcceleration: how.yawAcceleration + aligning / car.yawInertia,
    rollAcceleration: how.rollAcceleration,
    transfer: { front: front.transfer, rear: rear.transfer },
    tyreAngle: { front: front.tyreAngle, rear: rear.tyreAngle },
    load: { front: loadFront, rear: loadRear },
    settledSideForce: { front: tyresFront.sideForce, rear: tyresRear.sideForce },
  };
}

/** m/s² across the car of the wheels of an axle, which swing with the body as far as they lean. */
function wheelAcceleration(how: Accelerations, end: RollingEnd, ahead: number): number {
  const atAxis = how.lateralAcceleration + ahead * how.yawAcceleration;
  return atAxis - end.wheelSwing * how.rollAcceleration;
}

/**
 * ΣFy = m·ay − l·φ̈, Iz·ṙ = Σ x·Fy, I·φ̈ + C·φ̇ + K·φ = l·ay + what the axles hand on of the moment of
 * links and wheels by giving way on their tyres; l = Σ ms·d and the wheels that lean
 * – Abe, Vehicle Handling Dynamics, ch. 6, with axles on tyres.
 */
function accelerations(car: HandlingCar, body: RollingBody, state: MovingState): Accelerations {
  const { front: a, rear: b } = axleDistances(car);
  const mass = carMass(car);
  const { front, rear } = state.sideForce;
  const yawAcceleration = (a * front - b * rear) / car.yawInertia;
  const [handedFront, handedRear] = [
    handedOn(car.front, body.front, front),
    handedOn(car.rear, body.rear, rear),
  ];
  const wheels = handedFront.wheels + handedRear.wheels; // kg·m for each m/s² of the wheels
  const lever = body.lever + wheels;
  const yawLever = body.yawLever + handedFront.wheels * a - handedRear.wheels * b;
  const swing =
    handedFront.wheels * body.front.wheelSwing + handedRear.wheels * body.rear.wheelSwing;
  const moment =
    (lever * (front + rear)) / mass +
    yawLever * yawAcceleration +
    handedFront.sideForce +
    handedRear.sideForce -
    body.damping * state.rollRate -
    body.stiffness * state.rollAngle;
  const inertia = freeRollInertia(car, body) - (wheels * body.lever) / mass + swing;
  const rollAcceleration = moment / inertia;
  const lateralAcceleration = (front + rear + body.lever * rollAcceleration) / mass;
  return { lateralAcceleration, yawAcceleration, rollAcceleration };
}

/** What an axle hands on to the body by giving way under the moment of its links and wheels. */
function handedOn(axle: HandlingAxle, { gives }: RollingEnd, sideForce: number) {
  const { rollCentreHeight, unsprungMass, unsprungHeight, ownForceShare = 1 } = axle;
  return {
    /** N·m of side force on the links */
    sideForce: gives * sideForce * rollCentreHeight,
    /** kg·m: N·m for each m/s² of the wheels */
    wheels: gives * unsprungMass * (ownForceShare * unsprungHeight - rollCentreHeight),
  };
}
