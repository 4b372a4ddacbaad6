import type { Adjuster, Car } from "../car/car.js";
import { type Change, type End, type EndLever, isEndChange } from "./change.js";
import { carLenses } from "./levers.js";

/** How far and how finely something can be set on a car; nothing when it cannot be set. */
export function adjusterOf(car: Car, change: Omit<Change, "by">): Adjuster | undefined {
  const asked = change as Change;
  if (isEndChange(asked)) return endAdjuster(car, asked.lever, asked.end);
  return carLenses[asked.lever].get(car) === undefined ? undefined : car.adjusters?.[asked.lever];
}

function endAdjuster(car: Car, lever: EndLever, end: End): Adjuster | undefined {
  const { bar, adjusters } = car[end];
  if (lever !== "barPosition") return adjusters?.[lever];
  return bar === undefined ? undefined : { min: 1, max: bar.positions.length, step: 1 };
}
