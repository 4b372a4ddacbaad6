import type { Car } from "../../lib/car/car.js";
import { bandSampler } from "../../lib/certainty/band-sampler.js";
import type { ChangeBand } from "../../lib/certainty/change-bands.js";
import type { MarginBands } from "../../lib/certainty/margin-bands.js";
import type { Phases } from "../../lib/certainty/phase-bands.js";
import type { Change } from "../../lib/change/change.js";
import { whyNotRanked } from "../../lib/change/ranked.js";
import type { SetUpReport } from "./set-up-report.js";

/** How sure the figures of a report are, from sampled cars. */
export interface HowSure {
  readonly seed: number;
  /** Cars that were sampled for the bands. */
  readonly samples: { readonly balance: number; readonly changes: number };
  readonly balance: MarginBands;
  /** Change by change of the report; nothing for those whose order nobody knows. */
  readonly changes: readonly (ChangeBand | undefined)[];
  /** Changes by what they move in the middle, the strongest first, in groups that cannot be told apart. */
  readonly groups: Readonly<Record<"understeer" | "oversteer", readonly Change[][]>>;
}

/** Cars that are sampled for changes when nothing is said: the fewest of which "sure" can be said. */
export const USUAL_SAMPLES = 25;
export const SEED = 1;

const MORE_FOR_BALANCE = 4; // a car alone is worked out in a small part of the time

/**
 * Samples a car and the changes of its report.
 *
 * @param samples - how many for changes, at least 1; for balance four times as many
 * @throws Refusal when no sample could be worked out
 */
export function howSure(
  car: Car,
  { asked: { speed }, changes: rows }: SetUpReport,
  samples = USUAL_SAMPLES,
): HowSure {
  const options = { speed, seed: SEED };
  const alone = bandSampler(car, [], options);
  alone.take(MORE_FOR_BALANCE * samples);
  const ranked = rows.map(({ change }) => change).filter((change) => isOrdered(car, change));
  const changed = bandSampler(car, ranked, options);
  changed.take(samples);
  const bands = changed.changes();
  const groups = (sign: 1 | -1) =>
    changed.ranked(({ middle }: Phases) => sign * middle.understeerMargin);
  return {
    seed: SEED,
    samples: { balance: alone.count, changes: changed.count },
    balance: alone.margins(),
    changes: rows.map(({ change }) => bands.find((band) => band.change === change)),
    groups: { understeer: groups(1), oversteer: groups(-1) },
  };
}

function isOrdered(car: Car, change: Change): boolean {
  return whyNotRanked(car, change) === undefined;
}
