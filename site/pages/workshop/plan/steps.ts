import { signal } from "@preact/signals";
import {
  type Forbidding,
  MOST_STEPS,
  type PlanStep,
  type ProposedDay,
  proposeDay,
  Refusal,
  runsOf,
  runsOfDay,
  type StageMinutes,
  withoutStep,
  withStepMoved,
} from "@rollbook/lib";
import { theLog } from "../../../store/log.js";
import { focusSoon } from "../../../ui/focus.js";
import { say } from "../../../ui/notice.js";
import { afterPaint } from "../../../ui/work-at-rest.js";
import { type Draft, isFiled } from "../day/draft.js";
import { change, edit, fileDay, theDay } from "../day/open-day.js";
import { filedDay } from "../day/reporter.js";
import { clock } from "../run/state.js";
import { words } from "../words.js";

const { plan } = words;

/** The car of the plan whose runs are edited; 1 is the first, and all that are like it. */
export const editedCar = signal(1);

/** The runs of the car that is edited. */
export const stepsOf = ({ steps, others = [] }: Draft): readonly PlanStep[] =>
  others.find(({ carNumber }) => carNumber === editedCar.value)?.steps ?? steps;

const setSteps = (with_: (steps: readonly PlanStep[]) => readonly PlanStep[]): void =>
  edit((day) => withSteps(day, editedCar.value, with_));

function withSteps(
  day: Draft,
  car: number,
  with_: (steps: readonly PlanStep[]) => readonly PlanStep[],
): Draft {
  const { others = [] } = day;
  if (!others.some(({ carNumber }) => carNumber === car))
    return { ...day, steps: with_(day.steps) };
  return {
    ...day,
    others: others.map((other) =>
      other.carNumber === car ? { ...other, steps: with_(other.steps) } : other,
    ),
  };
}

/** Exchanges one step of the open day. */
export function changeStep(index: number, with_: (step: PlanStep) => PlanStep): void {
  setSteps((steps) => steps.map((step, i) => (i === index ? with_(step) : step)));
}

/** A step that was put into the plan. */
export interface Inserted {
  readonly run: number;
  takeBack(): void;
}

/**
 * Puts a step next: after the run at hand, and after the last one that was begun. It has the minutes
 * of the run before. A plan that was filed is filed with it, so that phones and other desks follow.
 * Nothing where the day has no room for it.
 */
export function insertNext(step: PlanStep, cars: readonly number[] = [1]): Inserted | undefined {
  const day = theDay();
  if (day === undefined || runsOfDay(day) >= MOST_STEPS) return undefined;
  const at = Math.max(clock.now.value.run, lastBegun());
  const filed = isFiled(day, theLog());
  const put = (changed: Draft) => {
    change(changed);
    if (filed) fileDay();
  };
  put(cars.reduce((now, car) => withSteps(now, car, (steps) => withNext(steps, step, at)), day));
  return { run: Math.min(at, runsOfDay(day)) + 1, takeBack: () => put(day) };
}

function withNext(steps: readonly PlanStep[], step: PlanStep, at: number): PlanStep[] {
  const minutes = steps[at - 1]?.minutes;
  const own = { ...step, ...(minutes && { minutes: { ...minutes, ...step.minutes } }) };
  return [...steps.slice(0, at), own, ...steps.slice(at)];
}

/** The last run of the plan that was begun; 0 before the first. */
function lastBegun(): number {
  const event = filedDay();
  const runs = event === undefined ? [] : runsOf(theLog(), event);
  return runs.reduce((last, { runNumber = 0 }) => Math.max(last, runNumber), 0);
}

/** Makes a run one earlier or later; the keyboard goes with it. */
export function moveStep(index: number, by: -1 | 1): void {
  const day = theDay();
  const to = index + by;
  if (day === undefined || to < 0 || to >= stepsOf(day).length) return;
  setSteps((steps) => withStepMoved({ ...day, steps }, index, to).steps);
  focusSoon(`#step-${to}-${by < 0 ? "up" : "down"}`);
}

/** Removes a run, until it is taken back. */
export function removeStep(index: number): void {
  const day = theDay();
  const before = day === undefined ? [] : stepsOf(day);
  setSteps((steps) => (day === undefined ? steps : withoutStep({ ...day, steps }, index).steps));
  focusSoon("#step-add");
  say(plan.removed(plan.run(index + 1)), () => setSteps(() => before));
}

/** Adds a step at the end, where the day has room for it. */
export function appendStep(step: PlanStep): void {
  const day = theDay();
  if (day === undefined) return;
  if (stepsOf(day).length >= MOST_STEPS) say(plan.tooManyRuns(MOST_STEPS));
  else setSteps((steps) => [...steps, step]);
}

/** Adds a run: the baseline first, then returns to it. */
export function addRun(): void {
  const day = theDay();
  if (day !== undefined) appendStep({ kind: stepsOf(day).length === 0 ? "baseline" : "return" });
}

/** What forbids that the last proposal tests more; nothing before one was asked for. */
export const forbidding = signal<readonly Forbidding[]>([]);

/** Puts a proposal in place of the runs, until it is taken back; leaves them where nothing fits. */
export function propose(): void {
  say(plan.proposing);
  afterPaint(() => {
    const day = theDay();
    if (day === undefined) return;
    const { day: found, forbids } = proposed(day);
    forbidding.value = forbids;
    if (found.steps.length === 0) return say(plan.nothingFits);
    change(found as Draft); // the open day with other runs
    say(plan.proposed(runsOfDay(found)), () => change(day));
  });
}

/** Changes what forbids more, and proposes anew. */
export function proposeWith(usual: Forbidding["usual"]): void {
  edit((day) => withUsual(day, usual));
  propose();
}

/** The day with other minutes in place of the usual ones; those of a change are each car's. */
export function withUsual(day: Draft, usual: Partial<StageMinutes>): Draft {
  const { others } = day;
  const { change: changeMinutes } = usual;
  const cast = others?.map((other) =>
    changeMinutes === undefined ? other : { ...other, changeMinutes },
  );
  return { ...day, usual: { ...day.usual, ...usual }, ...(cast && { others: cast }) };
}

function proposed(day: Draft): ProposedDay {
  try {
    return proposeDay(day);
  } catch (error) {
    if (error instanceof Refusal) return { day: { ...day, steps: [] }, forbids: [] };
    throw error;
  }
}
