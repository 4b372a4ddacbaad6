import { standingCar } from "../balance/standing-car.js";
import type { Car } from "../car/car.js";
import type { Change } from "../change/change.js";
import { baselineOf } from "../change/effect.js";
import { orUndefined } from "../refusal.js";
import { type ChangeBand, changeBandFrom, meritOf, ownChange } from "./change-bands.js";
import { type MarginBands, marginBandsFrom } from "./margin-bands.js";
import type { Phases } from "./phase-bands.js";
import { rankGroups } from "./rank-groups.js";
import { sampleOf } from "./sample-car.js";
import { type Sample, sampledCar, sampleFrom } from "./sampled-behaviour.js";
import { type SharedDoubts, sharedDoubts } from "./shared-doubts.js";
import type { UncertainNumber } from "./uncertain-number.js";
import { uncertainNumbersOf } from "./uncertain-numbers.js";

/** What to sample, and how. */
export interface BandOptions {
  /** The car whose file gave the heights; the car itself when left out. */
  readonly measured?: Car;
  /** m/s; the usual one when left out */
  readonly speed?: number;
  /** Any whole number: the same seed gives the same samples. */
  readonly seed?: number;
  /** What may be off, and how far; what `uncertainNumbersOf` says when left out. */
  readonly numbers?: readonly UncertainNumber[];
}

/** Bands of a car and of changes on it, from as many samples as there was time for. */
export interface BandSampler {
  /** Samples so far that could be worked out. */
  readonly count: number;
  /** Samples that could not: a car that cannot stand so. */
  readonly lost: number;
  /** Takes so many more. */
  take(samples: number): void;
  /** Takes one more, with a pause after each change; not before the last one was taken to its end. */
  takeOne(): Iterator<void, void>;
  /** @throws Refusal before any sample is taken */
  margins(): MarginBands;
  /** @throws Refusal before any sample is taken */
  changes(): ChangeBand[];
  /** Whose doubts make up those of balance and of what changes move in it. */
  doubts(): SharedDoubts;
  /**
   * Changes by merit, the best first, in groups of what cannot be told apart.
   *
   * @param merit - of what a change moves, put back where that is to be done; more is better
   */
  ranked(merit: (moved: Phases) => number): Change[][];
}

/**
 * Samples cars that differ from one as its file leaves room for, and what they and changes on them
 * do: the more samples, the smaller the errors. A change is made on the very cars that were sampled
 * before it, so that its difference is not blurred by what both have in common.
 *
 * @throws Refusal when the car itself cannot stand on its springs
 */
export function bandSampler(
  car: Car,
  changes: readonly Change[] = [],
  { measured = car, speed, seed = 1, numbers = uncertainNumbersOf(measured) }: BandOptions = {},
): BandSampler {
  const own = baselineOf(standingCar(car, measured), speed);
  const onOwn = changes.map((change) => ownChange(change, own));
  const possible = onOwn.map(ifPossible);
  const paths = numbers.map(({ path }) => path);
  const samples: Sample[] = [];
  let taken = 0;

  function* takeOne(): Generator<void, void> {
    const { of, deviations } = sampleOf(measured, numbers, seed, taken++);
    const before = orUndefined(() =>
      sampledCar(standingCar(of(car), of(measured)), own.speed, own.corners),
    );
    if (before) samples.push(yield* sampleFrom(before, deviations, possible));
  }

  return {
    get count() {
      return samples.length;
    },
    get lost() {
      return taken - samples.length;
    },
    take(more) {
      for (let i = 0; i < more; i++) for (const _ of takeOne());
    },
    takeOne,
    margins() {
      return marginBandsFrom(own.behaviour.phases, samples, paths);
    },
    doubts() {
      return sharedDoubts(samples, changes.length, paths);
    },
    ...aboutChanges(onOwn, samples),
  };
}

/** A change with whether it is to be put back, where it can be made. */
const ifPossible = ({ change, moved }: ReturnType<typeof ownChange>) =>
  moved && { change, putBack: moved.putBack !== undefined };

/** What the samples so far say of changes. */
function aboutChanges(
  onOwn: readonly ReturnType<typeof ownChange>[],
  samples: readonly Sample[],
): Pick<BandSampler, "changes" | "ranked"> {
  return {
    changes() {
      const movedIn = (i: number) => samples.flatMap(({ moved }) => moved[i] ?? []);
      return onOwn.map((change, i) => changeBandFrom(change, movedIn(i)));
    },
    ranked(merit) {
      const merits = onOwn.map((_, i) => samples.map(({ moved }) => meritOf(moved[i], merit)));
      return rankGroups(merits).map((group) =>
        group.flatMap((place) => onOwn[place]?.change ?? []),
      );
    },
  };
}

/**
 * Balance and grip of a car in every part of a corner, with bands.
 *
 * @param options - as for `bandSampler`; samples: how many, 200 when left out
 * @throws Refusal when the car cannot stand on its springs
 */
export function marginBands(
  car: Car,
  { samples = 200, ...options }: BandOptions & { readonly samples?: number } = {},
): MarginBands {
  const sampler = bandSampler(car, [], options);
  sampler.take(samples);
  return sampler.margins();
}

/**
 * What changes do in every part of a corner, with bands.
 *
 * @param options - as for `bandSampler`; samples: how many, 60 when left out
 * @throws Refusal when the car cannot stand on its springs
 */
export function changeBands(
  car: Car,
  changes: readonly Change[],
  { samples = 60, ...options }: BandOptions & { readonly samples?: number } = {},
): ChangeBand[] {
  const sampler = bandSampler(car, changes, options);
  sampler.take(samples);
  return sampler.changes();
}
