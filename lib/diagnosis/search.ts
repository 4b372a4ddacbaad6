import { phaseNames } from "../balance/phases.js";
import type { CarLever } from "../car/car.js";
import { adjusterOf } from "../change/adjuster.js";
import { canApply } from "../change/apply.js";
import type { Change, End, EndLever } from "../change/change.js";
import { endLenses } from "../change/levers.js";
import { parameters } from "../parameters.js";
import type { Margin } from "../statics/margins.js";
import { rearFirst } from "../workshop/feel.js";
import { leversToTry } from "../workshop/propose.js";
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

const MOST_STEPS = 6;

/** The smallest change of a lever that is felt where it was asked for, or why there is none. */
export function searchLever(place: LeverPlace, places: Places, leastFelt: number): Found {
  const step = adjusterOf(places.before.car, place as Change)?.step;
  if (step === undefined) return { place, why: "This car cannot be adjusted there." };
  const up = searchWay(place, step, places, leastFelt);
  const down = searchWay(place, -step, places, leastFelt);
  const options = [up, down].flatMap(({ option }) => (option === undefined ? [] : [option]));
  const [best] = options.sort((a, b) => b.gain - a.gain);
  if (best !== undefined) return { place, option: best };
  return { place, why: tellingOf(up, down) };
}

interface Way {
  readonly option?: Option;
  readonly why: string;
  /** How far it came towards what was asked, m/s². */
  readonly best: number;
}

/** The fewest steps one way that are felt; one step and the most steps tell whether to look. */
function searchWay(place: LeverPlace, step: number, places: Places, leastFelt: number): Way {
  const most = mostSteps(place, step, places);
  if (most === 0) return { why: "It is at the end of its range.", best: -Infinity };
  const attempt = (steps: number) => attemptAt(place, step, steps, places, leastFelt);
  const first = attempt(1);
  if (first.option !== undefined || first.refused || most === 1) return first;
  const last = attempt(most);
  if (last.option === undefined && !last.refused) return last;
  for (let steps = 2; steps < most; steps++) {
    const way = attempt(steps);
    if (way.option !== undefined || way.refused) return way;
  }
  return last;
}

function mostSteps(place: LeverPlace, step: number, { before }: Places): number {
  let steps = 0;
  while (steps < MOST_STEPS && canApply(before.car, changeOf(place, step * (steps + 1))))
    steps += 1;
  return steps;
}

function changeOf(place: LeverPlace, by: number): Change {
  return { ...place, by } as Change; // lever and end come from one table of places
}

function attemptAt(
  place: LeverPlace,
  step: number,
  steps: number,
  places: Places,
  leastFelt: number,
): Way & { refused?: true } {
  try {
    const option = optionOf(changeOf(place, step * steps), steps, places);
    const best = option.gain;
    const [broken] = option.effect.broken;
    if (broken !== undefined) return { why: breaks(broken), best, refused: true };
    if (option.most >= leastFelt && option.gain > 0) return { option, why: "", best };
    return { why: tooSmall(option, leastFelt), best };
  } catch (error) {
    if (error instanceof RangeError) return { why: error.message, best: -Infinity, refused: true };
    throw error;
  }
}

function breaks({ parameter, where }: Margin): string {
  const limit = `the class limit of ${parameters[parameter].name.toLowerCase()} (${where})`;
  return `It breaks ${limit} before it is felt there.`;
}

/** Says where a change acts when it does next to nothing where it was asked for. */
function tooSmall({ gain, most, effect }: Option, leastFelt: number): string {
  if (gain <= 0) return "It moves balance the other way there.";
  const shifts = phaseNames.map((name) => ({
    name,
    size: Math.abs(rearFirst(effect.moved.phases[name].understeerMargin)),
  }));
  const top = shifts.reduce((a, b) => (b.size > a.size ? b : a));
  const small = `It moves balance there by ${most.toPrecision(2)} m/s² at most, too little to feel`;
  return top.size >= leastFelt ? `${small}; it acts in ${top.name}.` : `${small}.`;
}

/** Of two ways, what the better one failed by. */
function tellingOf(up: Way, down: Way): string {
  return up.best >= down.best ? up.why : down.why;
}
