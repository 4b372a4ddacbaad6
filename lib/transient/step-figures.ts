import { Refusal } from "../refusal.js";

/** A signal sampled at equal steps of time, from the moment the steer angle passed half its step. */
export interface Response {
  /** s between samples */
  readonly step: number;
  readonly values: readonly number[];
}

/** How a car answers a step of steering – ISO 7401:2011. */
export interface StepFigures {
  /** the value it settles to: mean of the last tenth */
  readonly steady: number;
  /** s until it first reaches 90 % of the steady value */
  readonly responseTime: number;
  /** s until its greatest value */
  readonly peakTime: number;
  /** by how much the greatest value exceeds the steady one, as a share of it */
  readonly overshoot: number;
}

/**
 * Response time, peak time and overshoot of a signal after a step of steering.
 *
 * @throws Refusal when there are fewer than ten samples or the signal settles to zero
 * @see ISO 7401:2011, step input
 * @example
 * const values = Array.from({ length: 100 }, (_, i) => 1 - Math.exp(-i / 10));
 * stepFigures({ step: 0.1, values }).responseTime // → 2.30, by hand: ln 10, to 90 % of the end
 */
export function stepFigures({ step, values }: Response): StepFigures {
  if (values.length < 10)
    throw new Refusal("too-few-samples", "response must have at least 10 samples.");
  const tail = values.slice(Math.floor(values.length * 0.9));
  const steady = tail.reduce((sum, value) => sum + value, 0) / tail.length;
  if (steady === 0) throw new Refusal("settles-to-zero", "response must not settle to zero.");
  const shares = values.map((value) => value / steady);
  const peak = Math.max(...shares);
  return {
    steady,
    responseTime: timeToReach({ step, values: shares }, 0.9),
    peakTime: step * vertex(shares, shares.indexOf(peak)),
    overshoot: Math.max(0, peak - 1),
  };
}

/**
 * Time until a signal first reaches a level, s, on a straight line between samples; 0 if never.
 *
 * @example
 * timeToReach({ step: 0.1, values: [0, 1, 2] }, 1.5) // → 0.15
 */
export function timeToReach({ step, values }: Response, level: number): number {
  const i = values.findIndex((value) => value >= level);
  if (i <= 0) return 0;
  const [before, after] = [values[i - 1] ?? 0, values[i] ?? 0];
  return step * (i - 1 + (level - before) / (after - before));
}

/** Place, in samples, of the top of the parabola through a greatest value and its neighbours. */
function vertex(values: readonly number[], i: number): number {
  const [before, top, after] = [values[i - 1], values[i], values[i + 1]];
  if (before === undefined || top === undefined || after === undefined) return i;
  const bend = before - 2 * top + after;
  return bend < 0 ? i + (0.5 * (before - after)) / bend : i;
}
