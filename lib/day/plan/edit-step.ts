import type { Car } from "../../car/car.js";
import { adjusterOf, seatRange } from "../../change/adjuster.js";
import type { Change } from "../../change/change.js";
import { possibleChanges } from "../../change/steps.js";
import type { StageMinutes } from "./minutes.js";
import type { PlanStep, StepKind } from "./plan.js";

/** A step that changes something. */
export type ChangeStep = Extract<PlanStep, { kind: "change" }>;
type Place = Omit<Change, "by">;

/** Lever and end as one word, for a list to choose from. */
export const placeKey = (place: Place): string =>
  "end" in place ? `${place.lever} ${place.end}` : place.lever;

/** Every lever of a car, and the one that is chosen even where this car has it not. */
export function leversToChoose(car: Car, chosen: Change): Change[] {
  const all = [...possibleChanges(car), chosen];
  return all.filter((one, i) => all.findIndex((other) => placeKey(other) === placeKey(one)) === i);
}

/** Levers that move how the car stands on its springs, the seats themselves apart. */
const movesStance: readonly Change["lever"][] = [
  "springRate",
  "tyrePressure",
  "driver",
  "passenger",
  "fuel",
  "ballast",
];

/** Whether a change can move how the car stands, and the car has seats to turn it back with. */
export function seatsMatter({ lever }: Place, car: Car): boolean {
  const seats = seatRange(car, "front") !== undefined && seatRange(car, "rear") !== undefined;
  return seats && movesStance.includes(lever);
}

/** How many steps of its adjuster a change makes. */
export function adjusterStepsIn(change: Change, car: Car): number {
  const step = adjusterOf(car, change)?.step ?? Math.abs(change.by);
  return Number((change.by / step).toFixed(2));
}

/** The step with its change larger or smaller by so many steps of the adjuster; never none at all. */
export function withMoreSteps(step: ChangeStep, by: number, car: Car): ChangeStep {
  const { change } = step;
  const size = adjusterOf(car, change)?.step ?? Math.abs(change.by);
  const next = adjusterStepsIn(change, car) + by;
  const count = next === 0 ? by : next;
  return { ...step, change: { ...change, by: Number((count * size).toPrecision(12)) } };
}

/** The step as another kind of step, with its note and minutes. */
export function asStepOfKind(step: PlanStep, kind: StepKind, car: Car): PlanStep {
  const { minutes, note, on } = step;
  const kept = {
    ...(minutes && { minutes }),
    ...(note !== undefined && { note }),
    ...(on && { on }),
  };
  if (kind !== "change") return { kind, ...kept };
  const [change] = possibleChanges(car);
  return change === undefined ? step : { kind, change, ...kept };
}

/** The step with another note; an empty one is none. */
export function withNote({ note: _, ...step }: PlanStep, note: string): PlanStep {
  return note === "" ? (step as PlanStep) : ({ ...step, note } as PlanStep);
}

/** The step driven on the circle, or at the corners of the venue. */
export function withPlace({ on: _, ...step }: PlanStep, on: PlanStep["on"]): PlanStep {
  return (on === undefined ? step : { ...step, on }) as PlanStep;
}

/** The step with other minutes for one stage. */
export function withMinutes(step: PlanStep, stage: keyof StageMinutes, minutes: number): PlanStep {
  return { ...step, minutes: { ...step.minutes, [stage]: minutes } };
}
