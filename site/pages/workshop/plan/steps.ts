import {
  MOST_STEPS,
  type PlanStep,
  proposePlan,
  Refusal,
  withoutStep,
  withStep,
  withStepMoved,
} from "@rollbook/lib";
import { focusSoon } from "../../../ui/focus.js";
import { say } from "../../../ui/notice.js";
import { afterPaint } from "../../../ui/work-at-rest.js";
import type { Draft } from "../day/draft.js";
import { edit, theDay } from "../day/open-day.js";
import { words } from "../words.js";

const { plan } = words;

const setSteps = (steps: (day: Draft) => readonly PlanStep[]): void =>
  edit((day) => ({ ...day, steps: steps(day) }));

/** Exchanges one step of the open day. */
export function changeStep(index: number, with_: (step: PlanStep) => PlanStep): void {
  setSteps((day) => {
    const step = day.steps[index];
    return step === undefined ? day.steps : withStep(day, index, with_(step)).steps;
  });
}

/** Makes a run one earlier or later; the keyboard goes with it. */
export function moveStep(index: number, by: -1 | 1): void {
  const to = index + by;
  if (to < 0 || to >= (theDay()?.steps.length ?? 0)) return;
  setSteps((day) => withStepMoved(day, index, to).steps);
  focusSoon(`#step-${to}-${by < 0 ? "up" : "down"}`);
}

/** Removes a run, until it is taken back. */
export function removeStep(index: number): void {
  const before = theDay()?.steps ?? [];
  setSteps((day) => withoutStep(day, index).steps);
  focusSoon("#step-add");
  say(plan.removed(plan.run(index + 1)), () => setSteps(() => before));
}

/** Adds a step at the end, where the day has room for it. */
export function appendStep(step: PlanStep): void {
  if ((theDay()?.steps.length ?? 0) >= MOST_STEPS) say(plan.tooManyRuns(MOST_STEPS));
  else setSteps(({ steps }) => [...steps, step]);
}

/** Adds a run: the baseline first, then returns to it. */
export const addRun = (): void =>
  appendStep({ kind: theDay()?.steps.length === 0 ? "baseline" : "return" });

/** Puts a proposal in place of the runs, until it is taken back; leaves them where nothing fits. */
export function propose(): void {
  say(plan.proposing);
  afterPaint(() => {
    const day = theDay();
    if (day === undefined) return;
    const steps = proposed(day);
    if (steps.length === 0) {
      say(plan.nothingFits);
      return;
    }
    setSteps(() => steps);
    say(plan.proposed(steps.length), () => setSteps(() => day.steps));
  });
}

function proposed(day: Draft): readonly PlanStep[] {
  try {
    return proposePlan(day).steps;
  } catch (error) {
    if (error instanceof Refusal) return [];
    throw error;
  }
}
