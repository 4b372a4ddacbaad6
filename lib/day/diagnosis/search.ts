import { phaseNames } from "../../balance/phases.js";
import type { CarLever } from "../../car/car.js";
import { adjusterOf } from "../../change/adjuster.js";
import type { Change, End, EndLever } from "../../change/change.js";
import { endLenses } from "../../change/levers.js";
import { type NotRanked, whyNotRanked } from "../../change/ranked.js";
import { parameters } from "../../parameters.js";
import { Refusal } from "../../refusal.js";
import { formatAlike } from "../../shown-range.js";
import type { Margin } from "../../statics/margins.js";
import type { UnitSystem } from "../../units.js";
import { leversToTry } from "../plan/propose.js";
import { stepCountsFor, timesSteps, tryCounts } from "../plan/step-counts.js";
import { type Option, optionOf, type Places } from "./options.js";

/** A lever at one end, or of the whole car. */
export interface LeverPlace {
  readonly lever: EndLever | CarLever;
  readonly end?: End;
}

/** What became of a lever: a change to propose, or why there is none. */
export type Found =
  | { readonly place: LeverPlace; readonly option: Option; readonly why?: undefined }
  | { readonly place: LeverPlace; readonly option?: undefined; readonly why: string };

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
export function searchLever(
  place: LeverPlace,
  places: Places,
  leastFelt: number,
  system: UnitSystem,
): Found {
  const step = adjusterOf(places.before.car, place as Change)?.step;
  if (step === undefined) return { place, why: "This car cannot be adjusted there." };
  const unranked = whyNotRanked(places.before.car, place);
  if (unranked !== undefined) return { place, why: whyUnranked[unranked] };
  const up = searchWay(place, step, places, leastFelt, system);
  const down = searchWay(place, -step, places, leastFelt, system);
  const options = [up, down].flatMap(({ option }) => (option === undefined ? [] : [option]));
  const [best] = options.sort((a, b) => b.gain - a.gain);
  if (best !== undefined) return { place, option: best };
  return { place, why: tellingOf(up, down) };
}

const whyUnranked: Readonly<Record<NotRanked, string>> = {
  "best pressure not known":
    "Nobody has put into the car's file at which pressure this tyre grips best, and past that the same change moves grip the other way.",
  dampers:
    "Dampers decide how the car arrives in a turn and over bumps; what they do to balance at the limit is less than anybody feels.",
};

interface Way {
  readonly option?: Option;
  readonly why: string;
  /** How far it came the way that was asked, m/s². */
  readonly reach: number;
  /** More steps cannot be made either. */
  readonly refused?: true;
}

/** The fewest steps one way that are felt; the least and the most tell whether to look. */
function searchWay(
  place: LeverPlace,
  step: number,
  places: Places,
  leastFelt: number,
  system: UnitSystem,
): Way {
  const one = { ...place, by: step } as Change; // lever and end come from one table of places
  const way = tryCounts(
    stepCountsFor(places.before.car, one),
    (steps) => attemptAt(one, steps, places, leastFelt, system),
    ({ option, refused }) => option !== undefined || refused === true,
    ({ reach, refused }) => refused !== true && reach < leastFelt,
  );
  return way ?? { why: "It is at the end of its range.", reach: -Infinity };
}

function attemptAt(
  one: Change,
  steps: number,
  places: Places,
  leastFelt: number,
  system: UnitSystem,
): Way {
  try {
    const option = optionOf(timesSteps(one, steps), steps, places);
    const { reach } = option;
    const [broken] = option.effect.broken;
    if (broken !== undefined) return { why: breaks(broken), reach, refused: true };
    if (isWorthIt(option, places, leastFelt)) return { option, why: "", reach };
    return { why: whyNot(option, places, leastFelt, system), reach };
  } catch (error) {
    if (error instanceof Refusal) return { why: error.message, reach: -Infinity, refused: true };
    throw error;
  }
}

/** Felt in one place at least, and the other places reported take back less than half of it. */
function isWorthIt({ most, gain }: Option, { targets }: Places, leastFelt: number): boolean {
  return most >= leastFelt && gain >= most / (2 * targets.length);
}

function breaks({ parameter, where }: Margin): string {
  const limit = `the class limit of ${parameters[parameter].name.toLowerCase()} (${where})`;
  return `It breaks ${limit} before it is felt there.`;
}

function whyNot(
  option: Option,
  { targets }: Places,
  leastFelt: number,
  system: UnitSystem,
): string {
  const { reach, most } = option;
  if (reach <= 0) return "It moves balance the other way there.";
  if (reach < leastFelt) return tooSmall(option, leastFelt, system);
  if (targets.length > 1 && most >= leastFelt)
    return "What it brings in one place it takes in another that was reported.";
  return `It goes too far there: ${formatAlike("acceleration", reach, 2, system)} where less was asked.`;
}

/** Says where a change acts when it does next to nothing where it was asked for. */
function tooSmall({ reach, effect }: Option, leastFelt: number, system: UnitSystem): string {
  const shifts = phaseNames.map((name) => ({
    name,
    size: Math.abs(effect.moved.phases[name].understeerMargin),
  }));
  const top = shifts.reduce((a, b) => (b.size > a.size ? b : a));
  const amount =
    reach < 0.005 ? "by nothing" : `by ${formatAlike("acceleration", reach, 2, system)} at most`;
  const small = `It moves balance there ${amount}, too little to feel`;
  return top.size >= leastFelt ? `${small}; it acts in ${top.name}.` : `${small}.`;
}

/** Of two ways, what the better one failed by. */
function tellingOf(up: Way, down: Way): string {
  return up.reach >= down.reach ? up.why : down.why;
}
