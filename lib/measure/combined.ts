import { requireInRange } from "../check.js";
import { type LeastSquares, leastSquares, SELDOM, widened } from "./least-squares.js";
import type { Measured } from "./measured.js";

/** Several values of one number, found in different ways, as one. */
export interface Combined extends Measured {
  /** How often chance alone makes them differ so much, 0–1; 1 for a single one. */
  readonly byChance: number;
  /** How far each is off from it, in its own spreads. */
  readonly residuals: readonly number[];
  /** Which one does not go with the others, from 0; nothing where they agree, or only two do not. */
  readonly odd?: number;
}

/**
 * Values of one number as one, each weighted by its spread: the misfit told, the odd one named, and
 * the spread widened where they differ by more than they should.
 *
 * A value is odd where all differ by more than chance makes once in twenty, and the others without it
 * do not.
 *
 * @throws Refusal without values, or where a spread is not above 0
 * @see JCGM 100:2008 (GUM), 5.1; Bevington and Robinson 2003, ch. 4.1
 * @example
 * combined([{ value: 10, spread: 1 }, { value: 13, spread: 2 }]).value // → 10.6, by hand: (10/1 + 13/4)/(1 + ¼)
 */
export function combined(values: readonly Measured[]): Combined {
  for (const { spread } of values) requireInRange("spread", spread, Number.MIN_VALUE, Infinity);
  const fit = fitted(values);
  const odd = fit.byChance < SELDOM ? oddOne(values) : undefined;
  const [found = { value: Number.NaN, spread: 0 }] = widened(fit).found;
  const { byChance, residuals } = fit;
  return { ...found, byChance, residuals, ...(odd !== undefined && { odd }) };
}

const fitted = (values: readonly Measured[]): LeastSquares =>
  leastSquares(
    values.map(() => [1]),
    values,
  );

/** The one without which the others agree best, where they do at all. */
function oddOne(values: readonly Measured[]): number | undefined {
  if (values.length < 3) return undefined;
  const without = values.map((_, i) => fitted(values.filter((_, j) => j !== i)).byChance);
  const best = Math.max(...without);
  return best < SELDOM ? undefined : without.indexOf(best);
}
