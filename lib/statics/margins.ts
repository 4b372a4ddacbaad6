import type { Car, ClassLimits } from "../car/car.js";
import { totalMassOf } from "../car/masses.js";
import { requireInRange } from "../check.js";
import type { Wheels } from "../load/wheels.js";
import type { ParameterKey } from "../parameters.js";
import { type Rest, restOf } from "./rest.js";

/** How far a car is inside one limit of its class. */
export interface Margin {
  /** Which row of the parameter table the numbers belong to: its unit and decimals. */
  readonly parameter: ParameterKey;
  /** "front left" and so on, or "car". */
  readonly where: string;
  readonly value: number;
  readonly limit: number;
  readonly kind: "least" | "greatest";
  /** Distance to the limit in SI, > 0 inside, < 0 outside. */
  readonly margin: number;
}

/**
 * How far a car at rest is inside each limit of its class, wheel by wheel, unrounded.
 *
 * @param car - the car as it is set now
 * @param measured - the car as it was measured; the car itself when left out
 */
export function marginsOf(car: Car, measured: Car = car): Margin[] {
  const limits = car.limits ?? {};
  const rest = restOf(car, measured);
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
  const margin = kind === "least" ? value - limit : limit - value;
  return [{ parameter, where, value, limit, kind, margin }];
}

/** What a rounded display can say about a limit. */
export interface Reading {
  /** Least and greatest true value that shows as this. */
  readonly least: number;
  readonly greatest: number;
  /** What follows: inside or outside for sure, or not to be told from this display. */
  readonly verdict: "inside" | "outside" | "cannot tell";
}

/**
 * What a rounded display hides: "100 mm" in steps of 1 mm may be anything from 99.5 to 100.5 mm.
 *
 * @param shown - the value on the display
 * @param step - the step of its last digit, above zero, in the unit of the value
 * @param limit - the limit of the class, in the same unit
 * @throws RangeError when a number is not finite or the step is not above zero
 */
export function readingAgainst(
  shown: number,
  step: number,
  limit: number,
  kind: "least" | "greatest",
): Reading {
  requireInRange("shown value", shown, -Infinity, Infinity);
  requireInRange("step of the display", step, Number.MIN_VALUE, Infinity);
  requireInRange("limit", limit, -Infinity, Infinity);
  const [least, greatest] = [shown - step / 2, shown + step / 2];
  const [worst, best] =
    kind === "least" ? [least - limit, greatest - limit] : [limit - greatest, limit - least];
  const verdict = worst >= 0 ? "inside" : best < 0 ? "outside" : "cannot tell";
  return { least, greatest, verdict };
}
