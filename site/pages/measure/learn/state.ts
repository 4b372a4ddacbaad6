import { computed, signal } from "@preact/signals";
import {
  type Car,
  type Learned,
  learning,
  type Observation,
  Refusal,
  uncertainNumbersOf,
} from "@rollbook/lib";
import { type Before, withAccepted } from "../../../store/measured-sheets.js";
import { measurements } from "../../../store/measurements.js";
import type { Write } from "../model/write.js";
import { carAtHand, sheet } from "../state/sheet.js";
import { write } from "../state/write.js";
import { acceptable, beforeLearning } from "./accept.js";
import { observationsOf } from "./observations.js";

/** What came of learning, of which readings and which car. */
interface Outcome {
  readonly key: string;
  readonly readings: readonly Observation[];
  readonly learned?: Learned;
  readonly refused?: Refusal;
}

const outcome = signal<Outcome | undefined>(undefined);

/** How far the work is: cars worked out, and of how many; nothing while none is under way. */
export const progress = signal<{ readonly done: number; readonly of: number } | undefined>(
  undefined,
);

const accepted = computed(() =>
  Object.values(measurements.now.value.accepted[carAtHand.value.name] ?? {}),
);

/** The car as it was before it learned. */
const base = computed(() => beforeLearning(carAtHand.value, accepted.value));

const keyOf = (car: Car): string => JSON.stringify([car, sheet.value]);

/** What was learned, as long as neither readings nor the car it began from have changed. */
export const learned = computed(() => {
  const last = outcome.value;
  if (last === undefined) return undefined;
  const isStale = last.key !== keyOf(base.value);
  const rows = last.learned
    ? acceptable(carAtHand.value, last.learned.numbers, accepted.value)
    : [];
  return { ...last, isStale, rows };
});

const SLICE = 12; // ms of work between two chances for the page to answer
const ROUNDS = 3; // of `learning`

let job = 0;

/** Learns from all that was read, in slices. */
export function begin(): void {
  const mine = ++job;
  const car = base.value;
  const key = keyOf(car);
  let readings: readonly Observation[] = [];
  try {
    readings = observationsOf(car, sheet.value);
    if (readings.length === 0) {
      outcome.value = { key, readings };
      return;
    }
    const numbers = uncertainNumbersOf(car);
    go(learning(car, readings, numbers), { mine, key, readings, of: ROUNDS * numbers.length });
  } catch (error) {
    refuse(error, key, readings);
  }
}

interface Job {
  readonly mine: number;
  readonly key: string;
  readonly readings: readonly Observation[];
  readonly of: number;
}

function go(work: Generator<void, Learned>, { mine, key, readings, of }: Job, before = 0): void {
  if (mine !== job) return;
  let done = before;
  const end = performance.now() + SLICE;
  try {
    for (let step = work.next(); ; step = work.next()) {
      if (step.done) {
        progress.value = undefined;
        outcome.value = { key, readings, learned: step.value };
        return;
      }
      done += 1;
      if (performance.now() >= end) break;
    }
  } catch (error) {
    refuse(error, key, readings);
    return;
  }
  progress.value = { done, of };
  setTimeout(() => go(work, { mine, key, readings, of }, done));
}

function refuse(error: unknown, key: string, readings: readonly Observation[]): void {
  progress.value = undefined;
  if (!(error instanceof Refusal)) throw error;
  outcome.value = { key, readings, refused: error };
}

/** Takes a learned number over into the car. */
export function takeOver(one: Write, what: string, stood: string): void {
  const car = carAtHand.value.name;
  const note = (before?: Before) => {
    const { path } = one;
    const now = before && { path, value: Number(one.value.toPrecision(6)), before };
    void measurements.set(withAccepted(measurements.now.value, car, path, now));
  };
  void write(one, what, stood, { learned: note, unlearned: () => note() });
}
