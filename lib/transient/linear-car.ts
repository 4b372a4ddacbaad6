import { requireInRange } from "../check.js";
import type { Axles } from "../load/wheels.js";
import { Refusal } from "../refusal.js";

/** A car with its two tyres of each axle taken together, for small angles at a constant speed. */
export interface LinearCar {
  /** kg */
  readonly mass: number;
  /** kg·m² about the vertical through the centre of gravity */
  readonly yawInertia: number;
  /** m from the centre of gravity to each axle, both above 0 */
  readonly distance: Axles<number>;
  /** N/rad of both tyres of each axle */
  readonly corneringStiffness: Axles<number>;
  /** m that the side force of each axle acts behind its wheels; 0 when left out */
  readonly trail?: Axles<number>;
  /** m/s */
  readonly speed: number;
}

/** Turning of a car: how it drifts and how it yaws. */
export interface YawMotion {
  /** rad, above 0 when the car goes to the left of where it points (ISO 8855) */
  readonly sideSlip: number;
  /** rad/s, above 0 to the left */
  readonly yawRate: number;
}

/** How a disturbed car settles. */
export interface YawMode {
  /** rad/s; 0 for a car that does not settle */
  readonly naturalFrequency: number;
  /** share of critical damping: below 1 it swings */
  readonly dampingRatio: number;
}

/** d/dt of side-slip and yaw rate: their coefficients, and those of the steer angle. */
interface System {
  readonly a: readonly [number, number, number, number];
  readonly b: readonly [number, number];
}

/** The two equations of motion, in side-slip and yaw rate – Abe, Vehicle Handling Dynamics, ch. 3. */
function systemOf(car: LinearCar): System {
  const m = requireInRange("mass", car.mass, 1, 1e5, "kg");
  const I = requireInRange("yaw inertia", car.yawInertia, 1, 1e6, "kg·m²");
  const V = requireInRange("speed", car.speed, 0.1, 200, "m/s");
  const { front: lf, rear: lr } = car.distance;
  const { front: Cf, rear: Cr } = car.corneringStiffness;
  const [armFront, armRear] = [lf - (car.trail?.front ?? 0), lr + (car.trail?.rear ?? 0)];
  const turning = lf * Cf - lr * Cr;
  const yawing = armFront * Cf - armRear * Cr;
  return {
    a: [
      -(Cf + Cr) / (m * V),
      -1 - turning / (m * V * V),
      -yawing / I,
      -(armFront * lf * Cf + armRear * lr * Cr) / (I * V),
    ],
    b: [Cf / (m * V), (armFront * Cf) / I],
  };
}

/**
 * Natural frequency and damping of the yaw motion – Abe, Vehicle Handling Dynamics, ch. 3.
 *
 * @example
 * const distance = { front: 1.1, rear: 1.6 };
 * const corneringStiffness = { front: 110e3, rear: 120e3 };
 * const car = { mass: 1500, yawInertia: 2500, distance, corneringStiffness, speed: 140 / 3.6 };
 * yawMode({ ...car, speed: 60 / 3.6 }).naturalFrequency
 * // → 10.9899, Abe, Vehicle Handling Dynamics, ex. 3.7
 */
export function yawMode(car: LinearCar): YawMode {
  const [a11, a12, a21, a22] = systemOf(car).a;
  const product = a11 * a22 - a12 * a21; // ωn²
  if (!(product > 0)) return { naturalFrequency: 0, dampingRatio: 0 };
  const naturalFrequency = Math.sqrt(product);
  return { naturalFrequency, dampingRatio: -(a11 + a22) / (2 * naturalFrequency) };
}

/**
 * Steady turn after the front wheels were turned by a steer angle, rad.
 *
 * @throws Refusal at or above the critical speed, where there is none
 * @example
 * steadyTurn(car, 0.04).yawRate // → 0.21547, Abe, Vehicle Handling Dynamics, ex. 3.6
 */
export function steadyTurn(car: LinearCar, steer: number): YawMotion {
  const { a, b } = systemOf(car);
  const [a11, a12, a21, a22] = a;
  const product = a11 * a22 - a12 * a21;
  if (!(product > 0))
    throw new Refusal("critical-speed", "speed must be below the critical speed of the car.");
  return {
    sideSlip: ((a12 * b[1] - a22 * b[0]) / product) * steer, // −A⁻¹·B·δ
    yawRate: ((a21 * b[0] - a11 * b[1]) / product) * steer,
  };
}

/**
 * Motion at a time after the front wheels were turned all at once, in closed form:
 * x(t) = (1 − e^At)·x(∞).
 *
 * @param time - s, at least 0
 * @example
 * linearStepSteer(car, 0.04, 0.329).yawRate // → 0.2715, Abe, Vehicle Handling Dynamics, ex. 3.6
 */
export function linearStepSteer(car: LinearCar, steer: number, time: number): YawMotion {
  requireInRange("time", time, 0, 1e3, "s");
  const [a11, a12, a21, a22] = systemOf(car).a;
  const end = steadyTurn(car, steer);
  const mean = (a11 + a22) / 2;
  const squared = mean * mean - (a11 * a22 - a12 * a21); // of half the distance of the roots
  const { even, odd } = swing(squared, time);
  const decay = Math.exp(mean * time);
  const left = (own: number, x: number, cross: number, y: number) =>
    decay * (even * x + odd * ((own - mean) * x + cross * y)); // a row of e^At
  return {
    sideSlip: end.sideSlip - left(a11, end.sideSlip, a12, end.yawRate),
    yawRate: end.yawRate - left(a22, end.yawRate, a21, end.sideSlip),
  };
}

/** cosh qt and sinh(qt)/q for q² of either sign. */
function swing(squared: number, time: number): { even: number; odd: number } {
  const q = Math.sqrt(Math.abs(squared));
  if (q * time < 1e-9) return { even: 1, odd: time };
  if (squared > 0) return { even: Math.cosh(q * time), odd: Math.sinh(q * time) / q };
  return { even: Math.cos(q * time), odd: Math.sin(q * time) / q };
}
