import { phaseNames } from "../balance/phases.js";
import { allShares, type DoubtShare, meanShares } from "./doubt-shares.js";
import { type Phases, seriesOf } from "./phase-bands.js";
import type { Sample } from "./sampled-behaviour.js";

/** Which part of the doubt of balance, and of what changes move in it, each number has. */
export interface SharedDoubts {
  /** Mean over the parts of a corner. */
  readonly balance: readonly DoubtShare[];
  /** The same of each change, put back where that is to be done. */
  readonly changes: readonly (readonly DoubtShare[])[];
}

/**
 * Whose doubts make up those of balance and changes, every number with its share: for sums over what
 * one measurement makes surer.
 *
 * @param count - of changes
 */
export function sharedDoubts(
  samples: readonly Sample[],
  count: number,
  paths: readonly string[],
): SharedDoubts {
  const own = samples.map(({ deviations, phases }) => ({ deviations, phases }));
  const ofChange = (i: number) =>
    samples.flatMap(({ deviations, moved }) => {
      const one = moved[i];
      return one === undefined ? [] : [{ deviations, phases: one.putBack ?? one.alone }];
    });
  return {
    balance: sharesIn(own, paths),
    changes: Array.from({ length: count }, (_, i) => sharesIn(ofChange(i), paths)),
  };
}

function sharesIn(
  sampled: readonly { readonly deviations: readonly number[]; readonly phases: Phases }[],
  paths: readonly string[],
): DoubtShare[] {
  const deviations = sampled.map((sample) => sample.deviations);
  const phases = sampled.map((sample) => sample.phases);
  const independent = Math.ceil(sampled.length / 2); // they come in opposite pairs
  return meanShares(
    phaseNames.map((name) => {
      const figures = seriesOf(phases, name, "understeerMargin");
      return allShares({ paths, deviations, figures, independent });
    }),
  );
}
