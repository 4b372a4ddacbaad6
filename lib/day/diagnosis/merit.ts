import type { Car } from "../../car/car.js";
import { adjusterOf } from "../../change/adjuster.js";
import { LEAST_FELT_SHIFT } from "../debrief/feel.js";
import { minutesOfChange } from "../plan/minutes.js";
import type { Option } from "./options.js";

const ELSEWHERE_WEIGHT = 0.5;
const MINUTE_WEIGHT = 0.02;

/**
 * How good a change is for its size: what it brings of what was asked, with grip gained or lost
 * there (at most as much again), less half of what it moves elsewhere, all over what it brings;
 * less two hundredths for each minute of work; less the share of its range that it takes beyond
 * one step, since a large change leaves what is known of the car – common practice, no source.
 */
export function meritOf({ change, steps, gain, grip, elsewhere }: Option, car: Car): number {
  const grips = Math.max(-gain, Math.min(gain, grip));
  const size = Math.max(gain, LEAST_FELT_SHIFT);
  const clean = (gain + grips - ELSEWHERE_WEIGHT * elsewhere) / size;
  const { min = 0, max = 0 } = adjusterOf(car, change) ?? {};
  const taken = max > min ? Math.abs(change.by) / (max - min) : 0;
  return clean - MINUTE_WEIGHT * minutesOfChange(change) - taken * (1 - 1 / steps);
}
