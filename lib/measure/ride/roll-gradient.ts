import { DEGREE, GRAVITY } from "../../units.js";
import { curveThrough } from "../curve.js";
import { leastSquares, widened } from "../least-squares.js";
import { inQuadrature, type Measured } from "../measured.js";
import type { SteadyRoll } from "./roll.js";

/** Roll of a corner by one way, with the doubt that it has by itself. */
export interface RollReading extends SteadyRoll {
  /** rad, above 0 */
  readonly spread: number;
}

/** Roll gradient of a ride, rad/(m/s²). */
export interface RollGradient extends Measured {
  readonly balance?: Measured;
  readonly integrated?: Measured;
  /** rad that road and phone lean together, above 0 right side down; nothing without speed */
  readonly lean?: Measured;
  /** How often chance alone sets both ways so far apart, 0–1; 1 where only one is there. */
  readonly byChance: number;
}

/** Share by which turn rates and forces of a phone may be off, as their makers tell: from memory. */
const SCALE = 0.004;

/**
 * Roll gradient over the corners of a ride, by both ways, each weighted by its spread.
 *
 * The balance of accelerations is a straight line over the force felt: its slope is the gradient, and
 * what is left at no force is how road and phone lean, which corners to both sides tell apart. What a
 * phone feels is more than what the road does by the roll itself: f = a·(1 + g·K).
 *
 * @returns nothing where fewer than three corners tell it
 * @see ISO 4138:2021, 10.2 (roll angle gradient), from memory
 */
export function rollGradient(
  balance: readonly RollReading[],
  integrated: readonly RollReading[],
): RollGradient | undefined {
  const line = balance.length < 3 || !bothWays(balance) ? undefined : byBalance(balance);
  const summed = integrated.length < 3 ? undefined : byIntegral(integrated);
  const found = [line?.gradient, summed].filter((one) => one !== undefined);
  if (found.length === 0) return undefined;
  return {
    ...bothTogether(found),
    ...(line && { balance: line.gradient, lean: line.lean }),
    ...(summed && { integrated: summed }),
  };
}

/** Each weighted by its spread; wider by as much as they differ by more than that (Birge's ratio). */
function bothTogether(ways: readonly Measured[]): Measured & { readonly byChance: number } {
  const { found, chiSquare, byChance } = leastSquares(
    ways.map(() => [1]),
    ways,
  );
  const { value, spread } = found[0] ?? { value: 0, spread: Infinity };
  return { value, spread: spread * Math.max(1, Math.sqrt(chiSquare)), byChance };
}

const bothWays = (readings: readonly RollReading[]) =>
  readings.some(({ felt }) => felt > 0) && readings.some(({ felt }) => felt < 0);

/** K of a share s of the force felt that is roll: s = K·g/(1 + K·g). */
const freed = ({ value, spread }: Measured): Measured => ({
  value: value / (1 - GRAVITY * value),
  spread: spread / (1 - GRAVITY * value) ** 2,
});

function byBalance(readings: readonly RollReading[]) {
  const none = { value: 0, spread: Infinity };
  const { found } = curveThrough(
    readings.map(({ roll, felt, spread }) => ({ at: felt, read: { value: roll, spread } })),
    1,
  );
  const [lean = none, slope = none] = found;
  const spread = inQuadrature(slope.spread, SCALE / GRAVITY);
  return { lean, gradient: freed({ value: slope.value, spread }) };
}

function byIntegral(readings: readonly RollReading[]): Measured {
  const { found } = widened(
    leastSquares(
      readings.map(({ felt }) => [felt]),
      readings.map(({ roll, spread }) => ({ value: roll, spread })),
    ),
  );
  const slope = found[0] ?? { value: 0, spread: Infinity };
  return freed({ value: slope.value, spread: inQuadrature(slope.spread, SYSTEMATIC) });
}

/** What is off alike in all corners: pitch that does not go with the force along. */
const SYSTEMATIC = 0.002 * DEGREE; // rad/(m/s²): common practice, no source
