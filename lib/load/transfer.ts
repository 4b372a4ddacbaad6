import { requireInRange } from "../check.js";
import { GRAVITY } from "../units.js";

/** What moves load from one side to the other. */
export interface LateralCase {
  /** kg, above 0 */
  readonly mass: number;
  /** m/s², above 0 to the left: a left turn */
  readonly lateralAcceleration: number;
  /** m above the ground, at least 0 */
  readonly centreOfGravityHeight: number;
  /** m between the tyre centres of an axle, above 0 */
  readonly track: number;
}

/**
 * Load that a turn moves from the left wheels to the right ones, N.
 *
 * Holds for any springs and bars: they decide only how the axles share it.
 *
 * @returns above 0 in a left turn: each right wheel pair gains it, each left pair loses it
 * @throws Refusal when a number is outside the range given with it
 * @example
 * lateralLoadTransfer({ mass: 1000, lateralAcceleration: 5, centreOfGravityHeight: 0.5, track: 1.5 })
 * // → 1666.7, by hand: 1000·5·0.5/1.5
 */
export function lateralLoadTransfer(car: LateralCase): number {
  const m = requireInRange("mass", car.mass, 0, Infinity, "kg");
  const ay = requireInRange("lateral acceleration", car.lateralAcceleration, -1e3, 1e3, "m/s²");
  const { h, t } = heightAndTrack(car);
  return (m * ay * h) / t; // moment of the side force about the ground – Milliken 1995, ch. 18
}

/**
 * Load that braking or driving moves from the front axle to the rear one, N.
 *
 * @param car - mass (kg), longitudinalAcceleration (m/s², above 0 forward, so braking is below),
 * centreOfGravityHeight (m), wheelbase (m, above 0)
 * @returns above 0 when driving: the rear axle gains it; below 0 when braking
 * @throws Refusal when a number is outside its range
 * @example
 * longitudinalLoadTransfer({ mass: 1000, longitudinalAcceleration: -6, centreOfGravityHeight: 0.5, wheelbase: 2.5 })
 * // → -1200, by hand: −1000·6·0.5/2.5
 */
export function longitudinalLoadTransfer(car: {
  mass: number;
  longitudinalAcceleration: number;
  centreOfGravityHeight: number;
  wheelbase: number;
}): number {
  const m = requireInRange("mass", car.mass, 0, Infinity, "kg");
  const ax = requireInRange(
    "longitudinal acceleration",
    car.longitudinalAcceleration,
    -1e3,
    1e3,
    "m/s²",
  );
  const h = requireInRange("centre of gravity height", car.centreOfGravityHeight, 0, 10, "m");
  const L = requireInRange("wheelbase", car.wheelbase, 0.1, 20, "m");
  return (m * ax * h) / L; // – Milliken 1995, ch. 18
}

/**
 * Half the track over the height of the centre of gravity, without unit.
 *
 * @see NHTSA rollover ratings (static stability factor)
 * @example
 * staticStabilityFactor({ track: 1.5, centreOfGravityHeight: 0.5 }) // → 1.5, by hand: 1.5/(2·0.5)
 */
export function staticStabilityFactor(car: {
  track: number;
  centreOfGravityHeight: number;
}): number {
  const { h, t } = heightAndTrack(car);
  requireInRange("centre of gravity height", h, 0.01, 10, "m");
  return t / (2 * h); // – NHTSA, static stability factor T/2h
}

/**
 * Lateral acceleration at which the inside wheels of a rigid car leave the ground, m/s².
 *
 * @example
 * wheelLiftAcceleration({ track: 1.5, centreOfGravityHeight: 0.5 })
 * // → 14.710, by hand: 1.5·9.80665
 */
export function wheelLiftAcceleration(car: {
  track: number;
  centreOfGravityHeight: number;
}): number {
  return staticStabilityFactor(car) * GRAVITY;
}

function heightAndTrack(car: { centreOfGravityHeight: number; track: number }) {
  const h = requireInRange("centre of gravity height", car.centreOfGravityHeight, 0, 10, "m");
  const t = requireInRange("track", car.track, 0.1, 10, "m");
  return { h, t };
}
