import type { PhaseName } from "../balance/phases.js";
import { type StandingCar, standingCar } from "../balance/standing-car.js";
import { applyChange } from "../change/apply.js";
import {
  type BothCorners,
  cornersOf,
  differenceOf,
  phasesFrom,
  tipsIn,
} from "../change/behaviour.js";
import type { Change } from "../change/change.js";
import { carPutBack } from "../change/effect.js";
import { orUndefined } from "../refusal.js";
import type { Phases } from "./phase-bands.js";

/** A sampled car that changes start from, with no more than bands are made of. */
export interface SampledCar {
  readonly standing: StandingCar;
  /** m/s */
  readonly speed: number;
  readonly corners: BothCorners;
  readonly phases: Phases;
}

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

/** A change, and whether the car is put back after it. */
export interface Made {
  readonly change: Change;
  readonly putBack: boolean;
}

/** Begins where the search ended, so that what a change leaves alone stays the same to the last digit. */
export function sampledCar(standing: StandingCar, speed: number, start: BothCorners): SampledCar {
  const corners = cornersOf(standing.handling, speed, start);
  const phases = phasesFrom(cornersOf(standing.handling, speed, corners));
  return { standing, speed, corners, phases };
}

/**
 * What a sampled car does, and what those changes do on it that can be made on the car itself; with
 * a pause after each change.
 */
export function* sampleFrom(
  before: SampledCar,
  deviations: readonly number[],
  changes: readonly (Made | undefined)[],
): Generator<void, Sample> {
  const moved: (Moved | undefined)[] = [];
  for (const made of changes) {
    moved.push(made && orUndefined(() => movedBy(made, before)));
    yield;
  }
  return { deviations, phases: before.phases, tips: tipsIn(before.corners), moved };
}

/** @throws Refusal when the change cannot be made */
function movedBy({ change, putBack }: Made, before: SampledCar): Moved {
  const { car, measured } = before.standing;
  const changed = standingCar(applyChange(car, change), measured);
  const back = putBack ? carPutBack(changed, before.standing)?.standing : undefined;
  const alone = shiftTo(changed, before);
  return { alone, putBack: back && orUndefined(() => shiftTo(back, before)) };
}

function shiftTo({ handling }: StandingCar, { speed, corners, phases }: SampledCar): Phases {
  return differenceOf(phasesFrom(cornersOf(handling, speed, corners)), phases);
}
