import type { PhaseName } from "../balance/phases.js";
import type { Change } from "../change/change.js";
import { type Baseline, effectOf } from "../change/effect.js";
import { Refusal } from "../refusal.js";
import { type BandedPhase, bandedPhases, type Phases } from "./phase-bands.js";
import type { Moved } from "./sampled-behaviour.js";

/** What a change does in each part of a corner, with bands; or why it cannot be made. */
export type ChangeBand =
  | {
      readonly change: Change;
      readonly phases: Readonly<Record<PhaseName, BandedPhase>>;
      /** The same with the car put back to where it stood, where that is to be done. */
      readonly putBack?: Readonly<Record<PhaseName, BandedPhase>>;
      readonly refused?: undefined;
    }
  | { readonly change: Change; readonly phases?: undefined; readonly refused: string };

/** A change on the car as its file has it: what it moves, or why it cannot be made. */
export type OwnChange = { readonly change: Change } & (
  | { readonly moved: Moved; readonly refused?: undefined }
  | { readonly moved?: undefined; readonly refused: string }
);

/** What a change does to the car as its file has it. */
export function ownChange(change: Change, own: Baseline): OwnChange {
  try {
    const { moved, putBack } = effectOf(change, own);
    return { change, moved: { alone: moved.phases, putBack: putBack?.moved.phases } };
  } catch (error) {
    if (error instanceof Refusal) return { change, refused: error.message };
    throw error;
  }
}

/**
 * The bands of a change from what it does in the samples.
 *
 * @throws Refusal without samples
 */
export function changeBandFrom(own: OwnChange, samples: readonly Moved[]): ChangeBand {
  const { change, moved } = own;
  if (moved === undefined) return { change, refused: own.refused };
  const alone = samples.map((sample) => sample.alone);
  const back = samples.flatMap(({ putBack }) => putBack ?? []);
  return {
    change,
    phases: bandedPhases(moved.alone, alone),
    ...(moved.putBack && back.length > 0 && { putBack: bandedPhases(moved.putBack, back) }),
  };
}

/** What a change is worth in a sample, put back where that is to be done; NaN where it cannot be made. */
export const meritOf = (moved: Moved | undefined, merit: (moved: Phases) => number): number =>
  moved === undefined ? Number.NaN : merit(moved.putBack ?? moved.alone);
