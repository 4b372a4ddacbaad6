import { phaseNames } from "../../balance/phases.js";
import type { StandingCar } from "../../balance/standing-car.js";
import type { Car, CarLever } from "../../car/car.js";
import type { Change, End, EndLever } from "../../change/change.js";
import { type Baseline, baselineOf, standingEffectOf } from "../../change/effect.js";
import { whyNotRanked } from "../../change/ranked.js";
import { possibleChanges } from "../../change/steps.js";
import { Refusal } from "../../refusal.js";
import { LEAST_FELT_SHIFT } from "../debrief/feel.js";
import type { Plan, PlanStep, StepKind } from "./plan.js";
import { type Looker, lookerFor, sheetOf } from "./sheet.js";
import { stepCountsFor, timesSteps, tryCounts } from "./step-counts.js";
import { isBrakesRearwards } from "./warnings.js";

/** A change that is large enough to feel, and what it does to balance, m/s², above 0 front first. */
export interface Candidate {
  readonly change: Change;
  /** Steps of the adjuster. */
  readonly steps: number;
  /** The phase that moves most, seats put back. */
  readonly shift: number;
}

/** Levers worth a run, in the order of the course: quick and clear ones first. */
export const leversToTry: readonly (EndLever | CarLever)[] = [
  "barPosition",
  "brakeFrontShare",
  "springRate",
  "tyrePressure",
  "camber",
  "rollCentreHeight",
  "damperRebound",
  "damperBump",
  "seatTurns",
  "toe",
  "ballast",
];

/**
 * The smallest change of each lever, each way, that is likely to be felt and breaks no limit; none
 * of a lever that cannot be ranked, as `whyNotRanked` says.
 *
 * @param speed - m/s at which balance is compared
 */
export function candidatesFor(
  standing: StandingCar,
  speed?: number,
  leastFelt = LEAST_FELT_SHIFT,
): Candidate[] {
  const before = baselineOf(standing, speed);
  return singleStepsOf(standing.car).flatMap((step) => smallestFelt(step, before, leastFelt) ?? []);
}

function smallestFelt(one: Change, before: Baseline, leastFelt: number): Candidate | undefined {
  const isFelt = (shift: number | undefined) => shift !== undefined && Math.abs(shift) >= leastFelt;
  const found = tryCounts(
    stepCountsFor(before.car, one),
    (steps) => ({ steps, shift: shiftOf(timesSteps(one, steps), before) }),
    ({ shift }) => shift === undefined || isFelt(shift),
    ({ shift }) => shift !== undefined && !isFelt(shift),
  );
  if (found?.shift === undefined || !isFelt(found.shift)) return undefined;
  return { change: timesSteps(one, found.steps), steps: found.steps, shift: found.shift };
}

/** The greatest shift in any phase with the seats put back; nothing when a limit is broken. */
function shiftOf(change: Change, before: Baseline): number | undefined {
  try {
    const effect = standingEffectOf(change, before);
    const { moved, broken } = effect.putBack ?? effect;
    if (broken.length > 0) return undefined;
    const shifts = phaseNames.map((name) => moved.phases[name].understeerMargin);
    return shifts.reduce((most, shift) => (Math.abs(shift) > Math.abs(most) ? shift : most));
  } catch (error) {
    if (error instanceof Refusal) return undefined;
    throw error;
  }
}

/**
 * A sequence of runs for a car, a venue and the time there is.
 *
 * The baseline first; a change towards the front sliding first; back to the baseline; a change the
 * other way; a run in which nothing is changed, announced; then more changes, one at a time. With
 * less time the end is left out, but never the return; where three changes fit only without the run
 * in which nothing is changed, that one is.
 */
export function proposePlan(plan: Omit<Plan, "steps">): Plan {
  const look = lookerFor(plan);
  const whole = proposed(plan, sequence, look);
  if (isEnough(whole.steps)) return whole;
  const short = proposed(plan, shortSequence, look);
  return isEnough(short.steps) ? short : whole;
}

/** Whether a plan tests something: at least three changes, and a return to the baseline. */
export const isEnough = (steps: readonly PlanStep[]): boolean =>
  steps.filter(({ kind }) => kind === "change").length >= 3 &&
  steps.some(({ kind }) => kind === "return");

function proposed(plan: Omit<Plan, "steps">, kinds: readonly StepKind[], look: Looker): Plan {
  let steps: PlanStep[] = [];
  for (const kind of kinds) {
    const step = kind === "change" ? nextChange({ ...plan, steps }, look) : { kind };
    if (step === undefined) continue;
    const longer = { ...plan, steps: [...steps, step] };
    if (endOf(longer, look) > plan.minutes) break;
    steps = [...longer.steps];
  }
  return { ...plan, steps };
}

const shortSequence = ["baseline", "change", "return", "change", "change"] as const;
const sequence = [
  "baseline",
  "change",
  "return",
  "change",
  "no change",
  "change",
  "change",
  "change",
] as const;

function endOf(plan: Plan, look: Looker): number {
  const last = sheetOf(plan, look).at(-1);
  return last === undefined ? 0 : last.startsAt + last.lasts;
}

/**
 * The next change: a lever not yet tried, the other way than the last one. Brakes are never proposed
 * rearwards: that belongs to the maker.
 */
function nextChange(plan: Plan, look: Looker): PlanStep | undefined {
  const car = sheetOf(plan, look).at(-1)?.car ?? plan.car;
  const tried = plan.steps.flatMap((step) => (step.kind === "change" ? [step.change] : []));
  const towards = tried.length % 2 === 0 ? 1 : -1;
  const before = look(car).baseline;
  for (const one of singleStepsOf(car)) {
    if (tried.some((old) => sameLever(old, one)) || isBrakesRearwards(one)) continue;
    const found = smallestFelt(one, before, plan.leastFelt ?? LEAST_FELT_SHIFT);
    if (found && Math.sign(found.shift) === towards)
      return { kind: "change", change: found.change };
  }
  return undefined;
}

/** One step of each lever, each way, in the order in which they are worth a run. */
function singleStepsOf(car: Car): Change[] {
  return possibleChanges(car)
    .filter((change) => leversToTry.includes(change.lever))
    .filter((change) => whyNotRanked(car, change) === undefined)
    .sort((a, b) => rankOf(a) - rankOf(b));
}

function rankOf({ lever }: Change): number {
  return leversToTry.indexOf(lever);
}

function sameLever(a: Change, b: Change): boolean {
  return a.lever === b.lever && endOfCar(a) === endOfCar(b);
}

const endOfCar = (change: Change): End | undefined => ("end" in change ? change.end : undefined);
