import type { PhaseName } from "../balance/phases.js";
import { tipsIn } from "../change/behaviour.js";
import type { Change } from "../change/change.js";
import { type Baseline, effectOf } from "../change/effect.js";
import type { Phases } from "./phase-bands.js";

/** What one sampled car does, and what changes do on it. */
export interface Sample {
  /** How far each number is off, in standard deviations. */
  readonly deviations: readonly number[];
  readonly phases: Phases;
  readonly tips: readonly PhaseName[];
  /** Change by change; undefined where it cannot be made on this car. */
  readonly moved: readonly (Moved | undefined)[];
}

/** What a change moves by itself, and with the car put back to where it stood. */
export interface Moved {
  readonly alone: Phases;
  readonly putBack: Phases | undefined;
}

/** What a sampled car does, and what those changes do on it that can be made on the car itself. */
export function sampleFrom(
  before: Baseline,
  deviations: readonly number[],
  changes: readonly (Change | undefined)[],
): Sample {
  const { behaviour, corners } = before;
  const moved = changes.map((change) => change && orUndefined(() => movedBy(change, before)));
  return { deviations, phases: behaviour.phases, tips: tipsIn(corners), moved };
}

/** @throws RangeError when the change cannot be made */
export function movedBy(change: Change, before: Baseline): Moved {
  const { moved, putBack } = effectOf(change, before);
  return { alone: moved.phases, putBack: putBack?.moved.phases };
}

/** What comes of some work, or nothing when the car cannot be so. */
export function orUndefined<T>(work: () => T): T | undefined {
  try {
    return work();
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}
