import type { StandingCar } from "../balance/standing-car.js";
import { Refusal } from "../refusal.js";
import type { Change } from "./change.js";
import { type Baseline, baselineOf, type EffectWithPutBack, effectOf } from "./effect.js";
import { possibleChanges } from "./steps.js";

/** One row of the change table: what a change does, or why the car cannot be so. */
export type ChangeRow = {
  readonly change: Change;
} & (
  | { readonly effect: EffectWithPutBack; readonly refused?: undefined }
  | { readonly effect?: undefined; readonly refused: Refusal }
);

/**
 * Every single change that a car allows, with what it does to balance in each part of a corner and
 * to all else.
 *
 * @param options - speed (m/s), steps (how many steps of its adjuster a change makes)
 * @throws Refusal when the car itself cannot stand on its springs
 */
export function changeTable(
  standing: StandingCar,
  options: { speed?: number; steps?: number } = {},
): ChangeRow[] {
  const before = baselineOf(standing, options.speed);
  return possibleChanges(standing.car, options.steps).map((change) => rowOf(change, before));
}

function rowOf(change: Change, before: Baseline): ChangeRow {
  try {
    return { change, effect: effectOf(change, before) };
  } catch (error) {
    if (error instanceof Refusal) return { change, refused: error };
    throw error;
  }
}
