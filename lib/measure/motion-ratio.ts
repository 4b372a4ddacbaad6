import { requireInRange } from "../check.js";
import { Refusal } from "../refusal.js";
import { studentT } from "../tails.js";
import { curveThrough } from "./curve.js";
import { type Measured, NINE_IN_TEN } from "./measured.js";

/** A height of the wheel's hub, and how much shorter the spring is there than at rest. */
export interface HubStep {
  /** m above rest */
  readonly rise: number;
  /** m shorter than at rest */
  readonly shortening: number;
}

/** The motion ratio of a spring, and how it changes with travel. */
export interface MotionRatio {
  /** spring travel over wheel travel at rest */
  readonly ratio: Measured;
  /** its change for each m that the wheel rises; nothing of fewer than four steps */
  readonly perTravel?: Measured;
  /** Whether the steps show that it changes: beyond what chance makes once in twenty. */
  readonly changes: boolean;
  /** m that one spring length is off, as the steps scatter; nothing where they cannot tell */
  readonly scatter?: number;
}

/**
 * Motion ratio from hub heights and spring lengths, by least squares: a straight line, or a parabola
 * where four steps or more show that the ratio changes with travel.
 *
 * The rest position is one of the steps only where it was read again.
 *
 * @param tool - m, standard uncertainty of one spring length; that of the hub's height counts as well
 * @throws Refusal for fewer than two steps, or where they do not fix a ratio within 0.05 and 3
 */
export function motionRatioFromSteps(steps: readonly HubStep[], tool: number): MotionRatio {
  const [straight, bent] = [1, 2].map((degree) =>
    steps.length > degree + (degree === 2 ? 1 : 0) ? fitted(steps, tool, degree) : undefined,
  );
  if (straight === undefined)
    throw new Refusal("not-determined", "A motion ratio needs two steps at least.");
  const [, , curvature] = bent?.found ?? [];
  const changes = bent !== undefined && curvature !== undefined && isThere(curvature, bent.freedom);
  const [, slope = { value: Number.NaN, spread: 0 }] = (changes ? bent : straight).found;
  requireInRange("motion ratio", slope.value, 0.05, 3);
  const used = changes ? bent : straight;
  return {
    ratio: slope,
    changes,
    ...(curvature && { perTravel: { value: 2 * curvature.value, spread: 2 * curvature.spread } }),
    ...(used.freedom > 0 && { scatter: tool * Math.sqrt(used.chiSquare / used.freedom) }),
  };
}

function fitted(steps: readonly HubStep[], tool: number, degree: number) {
  const readings = steps.map(({ rise, shortening }) => ({
    at: rise,
    read: { value: shortening, spread: tool },
  }));
  return curveThrough(readings, degree);
}

/** Beyond what chance makes once in twenty; a spread is that of a normal doubt, nine times in ten. */
const isThere = ({ value, spread }: Measured, freedom: number) =>
  Math.abs(value) > (spread * NINE_IN_TEN * studentT(0.95, freedom)) / studentT(0.9, freedom);
