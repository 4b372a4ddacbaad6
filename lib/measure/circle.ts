import { requireInRange, requireQuantity } from "../check.js";
import { Refusal } from "../refusal.js";
import { FASTEST, type RunMean } from "./difference.js";
import { inQuadrature, type Measured } from "./measured.js";
import { fromRepeats } from "./repeats.js";

/** A circle driven with a stopwatch. */
export interface Circle {
  /** m from its middle to the middle between the wheel tracks */
  readonly radius: Measured;
  /** s, standard uncertainty of one lap by this stopwatch, above 0 */
  readonly stopwatch: number;
}

/** How far off a lap timed by hand is, s, and a radius by tape, m: common practice, no source. */
export const usualTools = { stopwatch: 0.1, radius: 0.05 } as const;

/**
 * Lateral acceleration of a lap of a circle, m/s²: 4π²·R/T².
 *
 * @param radius - m, 3–200
 * @param time - s, 2–600
 * @throws Refusal when a number is out of its range
 * @see ISO 4138:2021, constant-radius test
 * @example
 * accelerationOfLap(20, 10) // → 7.896, by hand: 4π²·20/100
 */
export function accelerationOfLap(radius: number, time: number): number {
  requireQuantity("radius", "length", radius, 3, 200);
  requireQuantity("lap time", "time", time, 2, 600);
  return (4 * Math.PI ** 2 * radius) / time ** 2;
}

/** m/s² that one lap is off by its stopwatch alone. */
export function stopwatchSpread(circle: Circle, time: number): number {
  requireInRange("spread of the stopwatch", circle.stopwatch, 1e-3, 5, "s");
  return (2 * accelerationOfLap(circle.radius.value, time) * circle.stopwatch) / time; // da/dT = −2a/T
}

/** The hardest turn that a run showed, m/s². */
export type CircleLimit = Measured & RunMean;

/**
 * The limit of a car on a circle, m/s²: the mean of its three fastest clean laps.
 *
 * The spread has the scatter of those laps, that of the stopwatch at the least, and the radius, which
 * all laps share.
 *
 * @param times - s of clean laps driven as fast as the car goes, at least one
 * @throws Refusal without laps, or when a number is out of its range
 * @example
 * circleLimit({ radius: { value: 20, spread: 0.1 }, stopwatch: 0.1 }, [10, 10, 10]).value // → 7.896, by hand: 4π²·20/100
 */
export function circleLimit(circle: Circle, times: readonly number[]): CircleLimit {
  if (times.length === 0) throw new Refusal("no-samples", "at least one clean lap is needed.");
  const { radius } = circle;
  const fastest = [...times].sort((a, b) => a - b).slice(0, FASTEST);
  const turns = fastest.map((time) => accelerationOfLap(radius.value, time));
  const { value, spread, scatter = 0 } = fromRepeats({ values: turns, tool: 0 });
  const watch = stopwatchSpread(circle, fastest[0] ?? 0);
  const byStopwatch = watch / Math.sqrt(turns.length);
  const ofRadius = (value * radius.spread) / radius.value;
  return {
    value,
    spread: inQuadrature(Math.max(spread, byStopwatch), ofRadius),
    laps: turns.length,
    scatter: Math.max(scatter, watch),
    byStopwatch,
  };
}
