import { atTime, type Row } from "./evenly.js";
import type { Fix } from "./ride.js";

/** How satellites' speeds go with what is felt along an axis. */
export interface Lateness {
  /** s by which they are told late */
  readonly lag: number;
  /** −1 where they go up as the axis is pushed backwards. */
  readonly sign: 1 | -1;
}

export const FEWEST = 10; // readings
const LATEST = 3; // s
const STEP = 0.05; // s
const APART = 2; // s over which gains of speed are held together: over less they are mostly scatter
const GOES = 0.75; // correlation: of speeds that are later than that, or of another drive, it is less

/** Readings two seconds apart, whatever their rate, none over a hole. */
function pairsOf(fixes: readonly Fix[]): (readonly [Fix, Fix])[] {
  let j = 0;
  return fixes.flatMap((a) => {
    while (j < fixes.length && (fixes[j]?.time ?? 0) < a.time + APART - STEP) j++;
    const b = fixes[j];
    return b !== undefined && b.time < a.time + 2 * APART ? [[a, b] as const] : [];
  });
}

/** How far two lists go together about their means, −1 to 1. */
function correlation(a: readonly number[], b: readonly number[]): number {
  const mean = (list: readonly number[]) => list.reduce((sum, one) => sum + one, 0) / list.length;
  const [middleA, middleB] = [mean(a), mean(b)];
  let [ab, aa, bb] = [0, 0, 0];
  for (const [i, one] of a.entries()) {
    const [x, y] = [one - middleA, (b[i] ?? 0) - middleB];
    ab += x * y;
    aa += x * x;
    bb += y * y;
  }
  return aa > 0 && bb > 0 ? ab / Math.sqrt(aa * bb) : 0;
}

/**
 * The lag at which gains of speed are most like what was felt, summed up.
 *
 * @param gained - m/s, the integral of what was felt along the axis
 * @returns nothing for fewer than ten readings, and where they go with it at no lag up to three seconds
 */
export function latenessOf(
  gained: Row,
  start: number,
  fixes: readonly Fix[],
): Lateness | undefined {
  if (fixes.length < FEWEST) return undefined;
  const pairs = pairsOf(fixes);
  const told = pairs.map(([a, b]) => b.speed - a.speed);
  const alike = Array.from({ length: Math.round(LATEST / STEP) + 1 }, (_, k) => {
    const felt = pairs.map(
      ([a, b]) =>
        atTime(gained, start, b.time - k * STEP) - atTime(gained, start, a.time - k * STEP),
    );
    return correlation(felt, told);
  });
  const sizes = alike.map(Math.abs);
  const best = sizes.indexOf(Math.max(...sizes));
  if (!((sizes[best] ?? 0) > GOES) || best === sizes.length - 1) return undefined;
  return { lag: topOf(sizes, best) * STEP, sign: (alike[best] ?? 0) > 0 ? 1 : -1 };
}

/** Where the parabola through the highest of a row and its neighbours has its top. */
function topOf(row: readonly number[], best: number): number {
  const [a, b = 0, c] = [row[best - 1], row[best], row[best + 1]];
  if (a === undefined || c === undefined) return best;
  const bend = a - 2 * b + c;
  return best + (bend < 0 ? (a - c) / (2 * bend) : 0);
}
