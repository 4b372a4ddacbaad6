import type { Adjuster, Car } from "../car/car.js";
import { type FixedRule, ruleAgainst } from "../car/class-rules.js";
import { type Change, type End, type EndChange, type EndLever, isEndChange } from "./change.js";
import { carLenses } from "./levers.js";

/** How far and how finely something can be set on a car; nothing when it cannot or may not be set. */
export function adjusterOf(car: Car, change: Omit<Change, "by">): Adjuster | undefined {
  return ruleAgainstChange(car, change) === undefined ? fittedAdjuster(car, change) : undefined;
}

/** The rule of the class that forbids what the car could do; nothing where none does. */
export function ruleAgainstChange(car: Car, change: Omit<Change, "by">): FixedRule | undefined {
  const { lever } = change;
  return ruleAgainst(car, lever, "end" in change ? (change.end as End) : undefined);
}

/** How far something can be set on a car, whatever its class says. */
export function fittedAdjuster(car: Car, change: Omit<Change, "by">): Adjuster | undefined {
  const asked = change as Change;
  if (isEndChange(asked)) return endAdjuster(car, asked.lever, asked.end);
  return carLenses[asked.lever].get(car) === undefined ? undefined : car.adjusters?.[asked.lever];
}

function endAdjuster(car: Car, lever: EndLever, end: End): Adjuster | undefined {
  const { bar, adjusters } = car[end];
  if (lever !== "barPosition") return adjusters?.[lever];
  return bar === undefined ? undefined : { min: 1, max: bar.positions.length, step: 1 };
}

/** How far the spring seats of an axle may be turned. */
export const seatRange = (car: Car, end: End): Adjuster | undefined =>
  adjusterOf(car, { lever: "seatTurns", end } as Omit<EndChange, "by">);
