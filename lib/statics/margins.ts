import type { Car, ClassLimits } from "../car/car.js";
import { totalMassOf } from "../car/masses.js";
import type { Wheels } from "../load/wheels.js";
import type { ParameterKey } from "../parameters.js";
import type { CarAtRest, Rest } from "./rest.js";

/** How far a car is inside one limit of its class. */
export interface Margin {
  /** Which row of the parameter table the numbers belong to: its unit and decimals. */
  readonly parameter: ParameterKey;
  /** "front left" and so on, or "car". */
  readonly where: string;
  readonly value: number;
  readonly limit: number;
  readonly kind: "least" | "greatest";
  /** Distance to the limit in SI, > 0 inside, 0 on it, < 0 outside. */
  readonly margin: number;
}

/** Distances below this are left over from rounding; no gauge tells a nanometre or a nanoradian. */
const ROUNDING = 1e-9; // SI

/**
 * How far a car at rest is inside each limit of its class, wheel by wheel, unrounded but for a car
 * that stands on a limit: its margin is 0.
 */
export function marginsOf({ car, rest }: CarAtRest): Margin[] {
  const limits = car.limits ?? {};
  const mass = limitMargin("mass", "car", totalMassOf(car).mass, limits.leastMass, "least");
  return [...mass, ...wheelMargins(car, rest, limits)];
}

function wheelMargins(car: Car, rest: Rest, limits: ClassLimits): Margin[] {
  const pressure = { front: car.front.tyre.pressure, rear: car.rear.tyre.pressure };
  const { leastRideHeight, leastPressure, greatestPressure, leastCamber } = limits;
  return [
    ...eachWheelMargin("rideHeight", rest.rideHeight, leastRideHeight, "least"),
    ...eachWheelMargin("tyrePressure", pressure, leastPressure, "least"),
    ...eachWheelMargin("tyrePressure", pressure, greatestPressure, "greatest"),
    ...eachWheelMargin("camber", rest.camber, leastCamber, "least"),
  ];
}

function eachWheelMargin(
  parameter: ParameterKey,
  { front, rear }: Wheels<number>,
  limit: number | undefined,
  kind: "least" | "greatest",
): Margin[] {
  return [
    ...limitMargin(parameter, "front left", front.left, limit, kind),
    ...limitMargin(parameter, "front right", front.right, limit, kind),
    ...limitMargin(parameter, "rear left", rear.left, limit, kind),
    ...limitMargin(parameter, "rear right", rear.right, limit, kind),
  ];
}

function limitMargin(
  parameter: ParameterKey,
  where: string,
  value: number,
  limit: number | undefined,
  kind: "least" | "greatest",
): Margin[] {
  if (limit === undefined) return [];
  const distance = kind === "least" ? value - limit : limit - value;
  const margin = Math.abs(distance) < ROUNDING ? 0 : distance;
  return [{ parameter, where, value, limit, kind, margin }];
}

/** The tightest margin of each kind of limit. */
export function tightestOfEach(margins: readonly Margin[]): Margin[] {
  const kinds = new Map<string, Margin>();
  for (const margin of margins) {
    const kind = `${margin.parameter} ${margin.kind}`;
    const known = kinds.get(kind);
    if (known === undefined || margin.margin < known.margin) kinds.set(kind, margin);
  }
  return [...kinds.values()];
}
