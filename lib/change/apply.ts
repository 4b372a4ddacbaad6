import type { Adjuster, Car } from "../car/car.js";
import { requireQuantity } from "../check.js";
import type { Sides } from "../load/wheels.js";
import { type ParameterKey, parameters } from "../parameters.js";
import { orUndefined, Refusal } from "../refusal.js";
import { adjusterOf, ruleAgainstChange } from "./adjuster.js";
import { type Change, type EndChange, isEndChange } from "./change.js";
import { carLenses, endLenses } from "./levers.js";

/**
 * The car with one change made, everything else as it was.
 *
 * @throws Refusal when the car cannot be set so: it has no such adjuster, or not that far
 * @example
 * applyChange(demoCar, { lever: "springRate", end: "front", by: 5e3 }).front.spring.rate // → 65000
 */
export function applyChange(car: Car, change: Change): Car {
  const adjuster = requireAdjuster(car, change);
  if (isEndChange(change)) return changedEnd(car, change, adjuster);
  const { parameter, get, set } = carLenses[change.lever];
  return set(car, within(adjuster, parameter, (get(car) ?? 0) + change.by, ""));
}

/** The car with several changes made, one after the other. */
export function applyChanges(car: Car, changes: readonly Change[]): Car {
  return changes.reduce(applyChange, car);
}

/**
 * Whether a change can be made on a car as it is set now.
 *
 * @example
 * canApply(demoCar, { lever: "springRate", end: "front", by: 100e3 })
 * // → false, its springs end at 90 N/mm
 */
export function canApply(car: Car, change: Change): boolean {
  const adjuster = adjusterOf(car, change);
  if (adjuster === undefined) return false;
  return orUndefined(() => applyChange(car, change)) !== undefined;
}

function changedEnd(car: Car, change: EndChange, adjuster: Adjuster): Car {
  const { end, side, by } = change;
  const { parameter, perSide, get, set } = endLenses[change.lever];
  const now = get(car[end]);
  const moved = (which: keyof Sides<number>) =>
    perSide && side !== undefined && side !== which
      ? now[which]
      : within(adjuster, parameter, now[which] + by, `${end} `);
  const value = { left: moved("left"), right: moved("right") };
  return { ...car, [end]: set(car[end], value) };
}

function requireAdjuster(car: Car, change: Change): Adjuster {
  const adjuster = adjusterOf(car, change);
  if (adjuster !== undefined) return adjuster;
  const where = isEndChange(change) ? `${change.end} ${change.lever}` : change.lever;
  const rule = ruleAgainstChange(car, change);
  if (rule !== undefined)
    throw new Refusal(
      "fixed-by-class",
      `${where} may not be moved: ${rule.name === undefined ? "a rule" : `rule ${rule.name}`} of the class forbids it.`,
    );
  throw new Refusal(
    "no-adjuster",
    `${where} cannot be set on this car: its file gives no adjuster for it.`,
  );
}

/** A value inside an adjuster's range, the ends reached exactly in spite of rounding. */
function within({ min, max, step }: Adjuster, parameter: ParameterKey, value: number, end: string) {
  const slack = step * 1e-6;
  if (value >= min - slack && value <= max + slack) return Math.min(max, Math.max(min, value));
  const { name, quantity } = parameters[parameter];
  return requireQuantity(`${end}${name.toLowerCase()}`, quantity, value, min, max);
}
