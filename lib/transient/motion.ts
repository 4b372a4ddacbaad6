import type { HandlingCar } from "../balance/handling-car.js";
import { type MovingState, whatHappens } from "./moving-car.js";

/**
 * m that a tyre rolls to build up most of its side force: cornering stiffness over side stiffness of
 * the published tyre – Pacejka 2012, Table A3.1
 */
export const RELAXATION_LENGTH = 0.5;

/** How fast each number of a state changes at a steer angle, rad. */
export type Motion = (steer: number, numbers: readonly number[]) => number[];

/**
 * The equations of motion of a car at a constant speed, for states as `numbersOf` writes them.
 *
 * @param speed - m/s, above 0
 * @param relaxationLength - m, above 0
 */
export function motionOf(car: HandlingCar, speed: number, relaxationLength: number): Motion {
  const pace = speed / relaxationLength; // how much of the missing force comes in a second
  return (steer, numbers) => {
    const state = stateOf(numbers);
    const now = whatHappens(car, speed, steer, state);
    return [
      now.lateralAcceleration - speed * state.yawRate,
      now.yawAcceleration,
      state.rollRate,
      now.rollAcceleration,
      pace * (now.settledSideForce.front - state.sideForce.front),
      pace * (now.settledSideForce.rear - state.sideForce.rear),
    ];
  };
}

/** A state from its six numbers. */
export function stateOf(numbers: readonly number[]): MovingState {
  const [lateralSpeed = 0, yawRate = 0, rollAngle = 0, rollRate = 0, front = 0, rear = 0] = numbers;
  return { lateralSpeed, yawRate, rollAngle, rollRate, sideForce: { front, rear } };
}

/** A state as six numbers: m/s, rad/s, rad, rad/s, N, N. */
export function numbersOf({ lateralSpeed, yawRate, rollAngle, rollRate, sideForce }: MovingState) {
  return [lateralSpeed, yawRate, rollAngle, rollRate, sideForce.front, sideForce.rear];
}
