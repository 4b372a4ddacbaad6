import { type PhaseName, phaseNames } from "../../balance/phases.js";
import type { CarLever } from "../../car/car.js";
import type { FixedRule } from "../../car/class-rules.js";
import { adjusterOf, fittedAdjuster, ruleAgainstChange } from "../../change/adjuster.js";
import type { Change, End, EndLever } from "../../change/change.js";
import { endLenses } from "../../change/levers.js";
import { type NotRanked, whyNotRanked } from "../../change/ranked.js";
import { Refusal } from "../../refusal.js";
import type { Margin } from "../../statics/margins.js";
import { leversToTry } from "../plan/propose.js";
import { stepCountsFor, timesSteps, tryCounts } from "../plan/step-counts.js";
import { type Option, optionOf, type Places } from "./options.js";

/** A lever at one end, or of the whole car. */
export interface LeverPlace {
  readonly lever: EndLever | CarLever;
  readonly end?: End;
}

/** Why a change is not proposed. */
export type WhyNot =
  | { readonly code: "no-adjuster" }
  /** The car could, and its class forbids it. */
  | { readonly code: "fixed-by-class"; readonly rule: FixedRule }
  | { readonly code: "not-ranked"; readonly why: NotRanked }
  | { readonly code: "end-of-range" }
  /** The model cannot work with the car so changed. */
  | { readonly code: "refused"; readonly refusal: Refusal }
  /** Before it is felt there. */
  | { readonly code: "breaks-limit"; readonly margin: Margin }
  | { readonly code: "wrong-way" }
  /** m/s² that it moves balance there at most, and where else it is felt */
  | { readonly code: "too-small"; readonly reach: number; readonly actsIn?: PhaseName }
  /** What it brings in one place it takes in another that was reported. */
  | { readonly code: "takes-elsewhere" }
  /** m/s² that it moves balance there, where less was asked */
  | { readonly code: "too-far"; readonly reach: number };

/** What became of a lever: a change to propose, or why there is none. */
export type Found =
  | { readonly place: LeverPlace; readonly option: Option; readonly why?: undefined }
  | { readonly place: LeverPlace; readonly option?: undefined; readonly why: WhyNot };

/** Every lever that a diagnosis looks at, whether this car has it or not. */
export const leverPlaces: readonly LeverPlace[] = leversToTry.flatMap((lever): LeverPlace[] =>
  Object.hasOwn(endLenses, lever)
    ? [
        { lever, end: "front" },
        { lever, end: "rear" },
      ]
    : [{ lever }],
);

/** The smallest change of a lever that is felt where it was asked for, or why there is none. */
export function searchLever(place: LeverPlace, places: Places, leastFelt: number): Found {
  const { car } = places.before;
  const rule = ruleAgainstChange(car, place as Change);
  if (rule !== undefined && fittedAdjuster(car, place as Change) !== undefined)
    return { place, why: { code: "fixed-by-class", rule } };
  const step = adjusterOf(car, place as Change)?.step;
  if (step === undefined) return { place, why: { code: "no-adjuster" } };
  const unranked = whyNotRanked(car, place);
  if (unranked !== undefined) return { place, why: { code: "not-ranked", why: unranked } };
  const up = searchWay(place, step, places, leastFelt);
  const down = searchWay(place, -step, places, leastFelt);
  const options = [up, down].flatMap(({ option }) => (option === undefined ? [] : [option]));
  const [best] = options.sort((a, b) => b.gain - a.gain);
  if (best !== undefined) return { place, option: best };
  const failed = up.reach >= down.reach ? up : down;
  return { place, why: failed.why?.() ?? { code: "end-of-range" } };
}

interface Way {
  readonly option?: Option;
  /** Where there is no option; of few attempts it is asked. */
  readonly why?: () => WhyNot;
  /** How far it came the way that was asked, m/s². */
  readonly reach: number;
  /** More steps cannot be made either. */
  readonly refused?: true;
}

/** The fewest steps one way that are felt; the least and the most tell whether to look. */
function searchWay(place: LeverPlace, step: number, places: Places, leastFelt: number): Way {
  const one = { ...place, by: step } as Change; // lever and end come from one table of places
  const way = tryCounts(
    stepCountsFor(places.before.car, one),
    (steps) => attemptAt(one, steps, places, leastFelt),
    ({ option, refused }) => option !== undefined || refused === true,
    ({ reach, refused }) => refused !== true && reach < leastFelt,
  );
  return way ?? { reach: -Infinity };
}

function attemptAt(one: Change, steps: number, places: Places, leastFelt: number): Way {
  return orRefused<Way>(
    () => {
      const option = optionOf(timesSteps(one, steps), steps, places);
      const { reach, effect } = option;
      const [broken] = effect.broken;
      if (broken !== undefined)
        return { why: () => ({ code: "breaks-limit", margin: broken }), reach, refused: true };
      if (!isWorthIt(option, places, leastFelt))
        return { why: () => whyNot(option, places, leastFelt), reach };
      void [effect.moved, option.elsewhere]; // a proposal tells of every corner: refused here, if it is
      return { option, reach };
    },
    (refusal) => ({ why: () => ({ code: "refused", refusal }), reach: -Infinity, refused: true }),
  );
}

function orRefused<T>(work: () => T, otherwise: (refusal: Refusal) => T): T {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return otherwise(error);
  }
}

/** Felt in one place at least, and the other places reported take back less than half of it. */
function isWorthIt({ most, gain }: Option, { targets }: Places, leastFelt: number): boolean {
  return most >= leastFelt && gain >= most / (2 * targets.length);
}

const NOTHING = 1e-3; // m/s² to either side: finer than a balance is found

function whyNot(option: Option, { targets }: Places, leastFelt: number): WhyNot {
  const { reach, most } = option;
  if (reach < -NOTHING) return { code: "wrong-way" };
  if (reach < leastFelt)
    return orRefused<WhyNot>(
      () => ({ code: "too-small", reach: Math.max(0, reach), ...actsIn(option, leastFelt) }),
      (refusal) => ({ code: "refused", refusal }),
    );
  if (targets.length > 1 && most >= leastFelt) return { code: "takes-elsewhere" };
  return { code: "too-far", reach };
}

/** Where a change is felt that does next to nothing where it was asked for. */
function actsIn({ effect }: Option, leastFelt: number): { actsIn?: PhaseName } {
  const sizeIn = (name: PhaseName) => Math.abs(effect.moved.phases[name].understeerMargin);
  const top = phaseNames.reduce((a, b) => (sizeIn(b) > sizeIn(a) ? b : a));
  return sizeIn(top) >= leastFelt ? { actsIn: top } : {};
}
