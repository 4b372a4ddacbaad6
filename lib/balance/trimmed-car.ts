import type { Axles, Wheels } from "../load/wheels.js";
import type { HeldNumbers } from "./held-numbers.js";

/** One wheel at work. */
export interface WheelAtWork {
  /** N */
  readonly load: number;
  /** rad, above 0 leaning to the left */
  readonly inclination: number;
  /** rad, above 0 makes a force to the left */
  readonly slipAngle: number;
  /** wheel speed above road speed as a share of road speed, above 0 driving */
  readonly slip: number;
  /** N along the wheel, above 0 driving */
  readonly longitudinalForce: number;
  /** N across the wheel, above 0 to the left */
  readonly sideForce: number;
  /** N·m about its vertical, above 0 turns it to the left */
  readonly aligningMoment: number;
  /** m from rest, above 0 in bump */
  readonly travel: number;
}

/** A car in steady balance: what the driver and each wheel must do for this motion. */
export interface Trim {
  /** m/s² across the path, above 0 to the left */
  readonly lateralAcceleration: number;
  /** m/s */
  readonly speed: number;
  /** rad of both front wheels without toe, above 0 to the left */
  readonly steer: number;
  /** rad from where the car points to where it goes, above 0 to the left (ISO 8855) */
  readonly sideSlip: number;
  /** rad/s, above 0 to the left */
  readonly yawRate: number;
  /** N that brakes or drive are asked for, below 0 braking */
  readonly push: number;
  readonly wheels: Wheels<WheelAtWork>;
  /** rad of the body at each axle, above 0 right side down */
  readonly rollAngle: Axles<number>;
  /** axles whose inner tyre is off the ground */
  readonly lifted: Axles<boolean>;
  /** the same place by four numbers, mirrored in a right turn: for a quick start next time */
  readonly numbers: HeldNumbers;
}
