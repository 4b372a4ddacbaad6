import { requireInRange } from "../check.js";
import type { Axles } from "../load/wheels.js";
import { GRAVITY } from "../units.js";
import { axleMasses, carMass, centreOfGravityHeight, type HandlingCar } from "./handling-car.js";

/** What the car is doing besides turning. */
export interface Driving {
  /** m/s, above 0 */
  readonly speed: number;
  /** m/s², above 0 when gaining speed; 0 when left out */
  readonly longitudinalAcceleration?: number;
  /** m/s³, how fast lateral acceleration grows to the left; 0 when left out: a steady turn */
  readonly lateralJerk?: number;
}

/** Checks what the car is doing and passes it through. */
export function requireDriving(driving: Driving): Driving {
  requireInRange("speed", driving.speed, 0.5, 200, "m/s");
  requireInRange(
    "longitudinal acceleration",
    driving.longitudinalAcceleration ?? 0,
    -50,
    50,
    "m/s²",
  );
  requireInRange("lateral jerk", driving.lateralJerk ?? 0, -500, 500, "m/s³");
  return driving;
}

/** Force that all tyres together push the car forward with, N; below zero when braking. */
export function longitudinalDemand(car: HandlingCar, driving: Driving): number {
  const inertia = carMass(car) * (driving.longitudinalAcceleration ?? 0);
  return inertia + car.dragFactor * driving.speed ** 2;
}

/** How the tyres of the two axles share that force, N: by the brakes or by the drive. */
export function longitudinalForces(car: HandlingCar, driving: Driving): Axles<number> {
  return sharePushOverAxles(car, longitudinalDemand(car, driving));
}

/** A push of the whole car, N, on its axles: by the drive, or by the brakes when below zero. */
export function sharePushOverAxles(car: HandlingCar, push: number): Axles<number> {
  const front = push * (push < 0 ? car.brakeFrontShare : car.driveFrontShare);
  return { front, rear: push - front };
}

/**
 * Load on both tyres of each axle, N: weight, downforce, and what braking or driving moves.
 *
 * Drag is taken to act at the height of the centre of gravity. No load is below zero.
 */
export function axleLoadsWhenDriving(car: HandlingCar, driving: Driving): Axles<number> {
  const masses = axleMasses(car);
  const air = driving.speed ** 2;
  const front = Math.max(0, masses.front * GRAVITY + car.front.downforceFactor * air);
  const rear = Math.max(0, masses.rear * GRAVITY + car.rear.downforceFactor * air);
  const lever = centreOfGravityHeight(car) / car.wheelbase;
  const moved = longitudinalDemand(car, driving) * lever; // ΔF = Fx·h/L – Milliken 1995, ch. 18
  const within = Math.min(front, Math.max(-rear, moved));
  return { front: front - within, rear: rear + within };
}
