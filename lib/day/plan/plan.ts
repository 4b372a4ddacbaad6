import type { Car } from "../../car/car.js";
import type { Change } from "../../change/change.js";
import type { StageMinutes } from "./minutes.js";
import type { Venue } from "./venue.js";

/** Runs that a day has room for. */
export const MOST_STEPS = 100;

/** What is done to the car before a run. */
export type StepKind = "baseline" | "change" | "return" | "no change";

/**
 * One run of a plan. A change is made to the car as it was in the run before, so each run differs
 * from the last by one thing; a return takes everything back.
 */
export type PlanStep = {
  /** Minutes that differ from the usual ones. */
  readonly minutes?: Partial<StageMinutes>;
  readonly note?: string;
  /** Where it is driven; left out: at the venue's corners. */
  readonly on?: "circle";
} & (
  | { readonly kind: "baseline" | "return" | "no change" }
  | {
      readonly kind: "change";
      readonly change: Change;
      /** Turn the seats so that the car stands as before; "seats" when left out. */
      readonly putBack?: "seats" | "nothing";
      /** The organiser keeps it though it breaks the class. */
      readonly outsideClass?: "kept";
    }
);

/** A day on a car at a venue. */
export interface Plan {
  readonly car: Car;
  readonly venue: Venue;
  /** Minutes from the first word to the last. */
  readonly minutes: number;
  /** Names; one driver when left out. */
  readonly drivers?: readonly string[];
  /** How many cars; one when left out. */
  readonly cars?: number;
  /** m/s² from which a shift counts as felt; `LEAST_FELT_SHIFT` when left out */
  readonly leastFelt?: number;
  /** Minutes that the day has in place of the usual ones. */
  readonly usual?: Partial<StageMinutes>;
  /** Minutes to get out and in between two rounds; none when left out. */
  readonly swap?: number;
  /** How often all cars go out in each run, from the first; as often as all drivers need when left out. */
  readonly rounds?: readonly number[];
  /** The car of each run as it was filed, from the first; where nothing was filed the plan says it. */
  readonly filed?: readonly (Car | undefined)[];
  readonly steps: readonly PlanStep[];
}

/** The plan with a step put in before another. */
export function withStepBefore(plan: Plan, index: number, step: PlanStep): Plan {
  return { ...plan, steps: [...plan.steps.slice(0, index), step, ...plan.steps.slice(index)] };
}

/** The plan without one step. */
export function withoutStep(plan: Plan, index: number): Plan {
  return { ...plan, steps: plan.steps.filter((_, i) => i !== index) };
}

/** The plan with one step moved to another place. */
export function withStepMoved(plan: Plan, from: number, to: number): Plan {
  const step = plan.steps[from];
  return step === undefined ? plan : withStepBefore(withoutStep(plan, from), to, step);
}
