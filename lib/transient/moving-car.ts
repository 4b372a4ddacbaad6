import {
  axleDistances,
  carMass,
  type HandlingAxle,
  type HandlingCar,
} from "../balance/handling-car.js";
import type { Axles, Sides } from "../load/wheels.js";
import { slipAngleRange } from "../tyre/magic-formula-61.js";
import { sideForce61 } from "../tyre/magic-formula-61-side.js";
import { clampTo, isLoaded } from "../tyre/valid-range.js";
import { GRAVITY } from "../units.js";

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

/** What one axle moves from its left to its right tyre, N, by cause. */
export interface TransferParts {
  /** through the links, as soon as there is side force */
  readonly geometric: number;
  /** of the wheels themselves, at once too */
  readonly unsprung: number;
  /** through springs, bar and tyres, with the roll angle */
  readonly elastic: number;
  /** through the dampers, while the body rolls */
  readonly damper: number;
}

/** What happens to a car in a state, at a steer angle. */
export interface Happening {
  /** m/s² across the car */
  readonly lateralAcceleration: number;
  /** rad/s² */
  readonly yawAcceleration: number;
  /** rad/s² */
  readonly rollAcceleration: number;
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
 * the roll rate. Momentum: ΣFy = m·ay − ms·d·φ̈, yaw: Iz·ṙ = Σ x·Fy, roll about its axis:
 * (Ix + ms·d²)·φ̈ + C·φ̇ + (K − ms·g·d)·φ = ms·d·ay – Abe, Vehicle Handling Dynamics, ch. 6.
 */
export function whatHappens(
  car: HandlingCar,
  speed: number,
  steer: number,
  state: MovingState,
): Happening {
  const at = axleDistances(car);
  const sprungFront = car.sprungMass * car.sprungFrontShare;
  const armFront = car.sprungHeight - car.front.rollCentreHeight;
  const armRear = car.sprungHeight - car.rear.rollCentreHeight;
  const leverFront = sprungFront * armFront; // ms·d of each end, kg·m
  const leverRear = (car.sprungMass - sprungFront) * armRear;
  const lever = leverFront + leverRear;
  const { front: Ff, rear: Fr } = state.sideForce;
  const yawAcceleration = (at.front * Ff - at.rear * Fr) / car.yawInertia;
  const inertia =
    car.rollInertia + sprungFront * armFront ** 2 + (car.sprungMass - sprungFront) * armRear ** 2;
  const mass = carMass(car);
  const damping = car.front.rollDamping + car.rear.rollDamping;
  const stiffness = car.front.rollStiffness + car.rear.rollStiffness - lever * GRAVITY;
  const pushed =
    (lever * (Ff + Fr)) / mass +
    (leverFront * at.front - leverRear * at.rear) * yawAcceleration -
    damping * state.rollRate -
    stiffness * state.rollAngle;
  const rollAcceleration = pushed / (inertia - lever ** 2 / mass);
  const lateralAcceleration = (Ff + Fr + lever * rollAcceleration) / mass;
  const ayFront = lateralAcceleration + at.front * yawAcceleration;
  const ayRear = lateralAcceleration - at.rear * yawAcceleration;
  const transfer = {
    front: transferParts(car.front, Ff, ayFront, state),
    rear: transferParts(car.rear, Fr, ayRear, state),
  };
  const load = {
    front: tyreLoads(car.front, (mass * GRAVITY * at.rear) / car.wheelbase, speed, transfer.front),
    rear: tyreLoads(car.rear, (mass * GRAVITY * at.front) / car.wheelbase, speed, transfer.rear),
  };
  const slipFront = steer - Math.atan2(state.lateralSpeed + at.front * state.yawRate, speed);
  const slipRear = -Math.atan2(state.lateralSpeed - at.rear * state.yawRate, speed);
  const settledSideForce = {
    front: axleForce(car.front, load.front, slipFront, state.rollAngle),
    rear: axleForce(car.rear, load.rear, slipRear, state.rollAngle),
  };
  return {
    lateralAcceleration,
    yawAcceleration,
    rollAcceleration,
    transfer,
    load,
    settledSideForce,
  };
}

function transferParts(
  axle: HandlingAxle,
  sideForce: number,
  ay: number,
  { rollAngle, rollRate }: MovingState,
): TransferParts {
  const { track, unsprungMass } = axle;
  const throughLinks = sideForce - unsprungMass * ay; // what the tyres do beyond their own wheels
  return {
    geometric: (throughLinks * axle.rollCentreHeight) / track,
    unsprung: (unsprungMass * ay * axle.unsprungHeight) / track,
    elastic: (axle.rollStiffness * rollAngle) / track,
    damper: (axle.rollDamping * rollRate) / track,
  };
}

/** The sum of all parts, N. */
export function totalTransfer({ geometric, unsprung, elastic, damper }: TransferParts): number {
  return geometric + unsprung + elastic + damper;
}

function tyreLoads(
  axle: HandlingAxle,
  weight: number,
  speed: number,
  parts: TransferParts,
): Sides<number> {
  const load = Math.max(0, weight + axle.downforceFactor * speed ** 2);
  const left = load / 2 + axle.leftExcessLoad - totalTransfer(parts);
  const onLeft = Math.min(load, Math.max(0, left)); // a tyre can neither pull nor carry more than all
  return { left: onLeft, right: load - onLeft };
}

function axleForce(
  axle: HandlingAxle,
  load: Sides<number>,
  slipAngle: number,
  rollAngle: number,
): number {
  const bumpPerRoll = axle.suspensionRollShare * (axle.track / 2);
  const taken = axle.independent ? 1 : 1 - axle.suspensionRollShare;
  const lean = -(taken + axle.camberGain * bumpPerRoll) * rollAngle;
  const turned = axle.toeGain * bumpPerRoll * rollAngle;
  const left = tyreForce(axle, "left", load.left, slipAngle - axle.toe.left + turned, lean);
  return left + tyreForce(axle, "right", load.right, slipAngle + axle.toe.right + turned, lean);
}

function tyreForce(
  { tyre, camber, pressure }: HandlingAxle,
  side: "left" | "right",
  load: number,
  slipAngle: number,
  lean: number,
): number {
  if (!isLoaded(load)) return 0;
  const inclination = (side === "left" ? camber.left : -camber.right) + lean;
  const angle = clampTo(slipAngleRange, slipAngle);
  return sideForce61(
    tyre,
    angle,
    clampTo(tyre.valid.load, load),
    clampTo(tyre.valid.pressure, side === "left" ? pressure.left : pressure.right),
    clampTo(tyre.valid.inclination, inclination),
  );
}
