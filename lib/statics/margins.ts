import { barRateOf } from "../car/axle.js";
import type { Car, ClassLimits } from "../car/car.js";
import { isRange, type RangeKind, type RangeRule } from "../car/class-rules.js";
import { totalMassOf } from "../car/masses.js";
import type { Sides } from "../load/wheels.js";
import type { ParameterKey } from "../parameters.js";
import type { CarAtRest } from "./rest.js";

/** How far a car is inside one limit of its class. */
export interface Margin {
  /** Which row of the parameter table the numbers belong to: its unit and decimals. */
  readonly parameter: ParameterKey;
  /** "front left", "rear" and so on, or "car". */
  readonly where: string;
  readonly value: number;
  readonly limit: number;
  readonly kind: "least" | "greatest";
  /** Distance to the limit in SI, > 0 inside, 0 on it, < 0 outside. */
  readonly margin: number;
  /** What the rule book calls it, where a class file says so. */
  readonly rule?: string;
}

/** Distances below this are left over from rounding; no gauge tells a nanometre or a nanoradian. */
const ROUNDING = 1e-9; // SI

/**
 * How far a car at rest is inside each limit of its class, wheel by wheel, unrounded but for a car
 * that stands on a limit: its margin is 0. The limits are those of the class rules that it runs in,
 * and those of its own file that the rules do not speak of.
 */
export function marginsOf(at: CarAtRest): Margin[] {
  const { classRules = [], limits = {} } = at.car;
  const ranges = classRules.filter(isRange);
  const own = ownLimits(limits).filter(({ kind }) => !ranges.some((rule) => rule.kind === kind));
  return [...own, ...ranges].flatMap((rule) => marginsFor(rule, at));
}

/** Whether a class limits any number of a car. */
export const isLimited = ({ limits, classRules = [] }: Car): boolean =>
  limits !== undefined || classRules.some(isRange);

function ownLimits(limits: ClassLimits): RangeRule[] {
  const { leastMass, leastRideHeight, leastPressure, greatestPressure, leastCamber } = limits;
  const least = (kind: RangeKind, value: number | undefined): RangeRule[] =>
    value === undefined ? [] : [{ kind, least: value }];
  return [
    ...least("mass", leastMass),
    ...least("rideHeight", leastRideHeight),
    ...least("tyrePressure", leastPressure),
    ...(greatestPressure === undefined
      ? []
      : [{ kind: "tyrePressure" as const, greatest: greatestPressure }]),
    ...least("camber", leastCamber),
  ];
}

function marginsFor({ kind, name, end, least, greatest }: RangeRule, at: CarAtRest): Margin[] {
  const values = numbersOf(kind, at).filter(([where]) => !end || where.startsWith(end));
  const each = (which: Margin["kind"], limit: number | undefined) =>
    limit === undefined
      ? []
      : values.map(([where, value]) => ({
          ...{ parameter: kind, where, value, limit, kind: which },
          margin: distance(which === "least" ? value - limit : limit - value),
          ...(name !== undefined && { rule: name }),
        }));
  return [...each("least", least), ...each("greatest", greatest)];
}

const distance = (margin: number): number => (Math.abs(margin) < ROUNDING ? 0 : margin);

type Placed = readonly [where: string, value: number];

/** The numbers of a car that a kind of rule limits, each with its place; a car without a bar has no bar rate. */
function numbersOf(kind: RangeKind, { car, rest }: CarAtRest): Placed[] {
  switch (kind) {
    case "mass":
      return [["car", totalMassOf(car).mass]];
    case "wheelbase":
      return [["car", car.wheelbase]];
    case "track":
      return eachEnd((end) => car[end].track);
    case "springRate":
      return eachEnd((end) => car[end].spring.rate);
    case "barRate":
      return eachEnd((end) => car[end].bar && barRateOf(car[end].bar));
    case "rideHeight":
    case "camber":
    case "toe":
      return eachWheel((end) => rest[kind][end]);
    case "tyrePressure":
      return eachWheel((end) => car[end].tyre.pressure);
    case "seatTurns":
      return eachWheel((end) => car[end].spring.seatTurns);
  }
}

type End = "front" | "rear";
const ends: readonly End[] = ["front", "rear"];

const eachEnd = (value: (end: End) => number | undefined): Placed[] =>
  ends.flatMap((end) => {
    const found = value(end);
    return found === undefined ? [] : [[end, found] as const];
  });

const eachWheel = (sides: (end: End) => Sides<number>): Placed[] =>
  ends.flatMap((end): Placed[] => {
    const { left, right } = sides(end);
    return [
      [`${end} left`, left],
      [`${end} right`, right],
    ];
  });

/** The tightest margin of each kind of limit. */
export function tightestOfEach(margins: readonly Margin[]): Margin[] {
  const kinds = new Map<string, Margin>();
  for (const margin of margins) {
    const kind = `${margin.parameter} ${margin.kind} ${margin.rule ?? ""}`;
    const known = kinds.get(kind);
    if (known === undefined || margin.margin < known.margin) kinds.set(kind, margin);
  }
  return [...kinds.values()];
}
