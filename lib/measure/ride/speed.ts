import { atTime, integral, type Row, STEP, stepsIn } from "./evenly.js";
import type { InCar } from "./in-car.js";
import { latenessOf } from "./lateness.js";
import type { Fix } from "./ride.js";

/** How fast the car went, from satellites and from what it felt along. */
export interface Speed {
  /** s by which satellites tell their speed late */
  readonly lag: number;
  /** m/s at each step, at least 0 */
  readonly at: Row;
  /** m/s, standard deviation of one reading about it */
  readonly scatter: number;
  /** Whether readings lie near enough to a step. */
  readonly known: (step: number) => boolean;
}

const NEAR = 3; // s
const REACH = 1.2; // s: readings count by their distance in time, as a normal curve has it

/**
 * Speed at each step: what was felt along, summed up, and laid on the satellites' readings once these
 * are moved back by their lag, which is the one at which both go together best.
 *
 * @returns nothing for fewer than ten readings, or where they do not go with what was felt
 * @see Gustafsson, Statistical Sensor Fusion, ch. 7 (fusing by complementary bands), from memory
 */
export function speedOf(car: InCar, fixes: readonly Fix[]): Speed | undefined {
  const gained = integral(car.along);
  const { lag } = latenessOf(gained, car.start, fixes) ?? {};
  if (lag === undefined) return undefined;
  const times = fixes.map(({ time }) => time - lag);
  const missing = fixes.map(({ speed }, k) => speed - atTime(gained, car.start, times[k] ?? 0));
  const added = laidOn(car, times, missing);
  const at = gained.map((value, i) => Math.max(0, value + (added[i] ?? 0)));
  const off = missing.map((value, k) => value - atTime(added, car.start, times[k] ?? 0));
  const scatter = Math.sqrt(off.reduce((sum, one) => sum + one ** 2, 0) / (0.6 * off.length)); // the line takes up the rest
  const near = new Uint8Array(car.count);
  for (const time of times) {
    const middle = Math.round((time - car.start) / STEP);
    near.fill(1, Math.max(0, middle - stepsIn(NEAR)), Math.max(0, middle + stepsIn(NEAR)));
  }
  return { lag, at, scatter, known: (step) => near[step] === 1 };
}

/** Straight lines through the readings near each step, weighted by how near. */
function laidOn(car: InCar, times: readonly number[], missing: readonly number[]): Row {
  const coarse = 10; // steps between lines; in between all is nearly straight
  const places = Math.ceil(car.count / coarse) + 1;
  const lines = new Float64Array(places);
  let first = 0;
  for (let j = 0; j < places; j++) {
    const time = car.start + j * coarse * STEP;
    while (first < times.length - 1 && (times[first] ?? 0) < time - 8 * REACH) first++;
    lines[j] = lineAt(time, times, missing, first);
  }
  return Float64Array.from({ length: car.count }, (_, i) => {
    const [j, part] = [Math.floor(i / coarse), (i % coarse) / coarse];
    return (lines[j] ?? 0) * (1 - part) + (lines[j + 1] ?? 0) * part;
  });
}

function lineAt(
  time: number,
  times: readonly number[],
  values: readonly number[],
  first: number,
): number {
  let [w, wx, wxx, wy, wxy] = [0, 0, 0, 0, 0];
  for (let k = first; k < times.length; k++) {
    const x = (times[k] ?? 0) - time;
    if (x > 8 * REACH) break;
    const weight = Math.exp(-0.5 * (x / REACH) ** 2) + 1e-9;
    const y = values[k] ?? 0;
    w += weight;
    wx += weight * x;
    wxx += weight * x * x;
    wy += weight * y;
    wxy += weight * x * y;
  }
  if (w === 0) return values[first] ?? 0;
  const spread = w * wxx - wx * wx;
  return spread > 0.1 * w * w ? (wxx * wy - wx * wxy) / spread : wy / w;
}
