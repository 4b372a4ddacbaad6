import { type NeededField, neededFields, type Report } from "./report.js";

/** A question to ask a driver, and the field that its answer fills. */
export interface Question {
  readonly field: keyof Report;
  readonly ask: string;
  /** Without an answer nothing follows from the report. */
  readonly needed: boolean;
}

const needed: Readonly<Record<NeededField, string>> = {
  corner: "Where: in which corner?",
  phase: "When: braking in, turning in, in the middle, or with power on?",
  input: "Doing what: braking, releasing the brake, steering, steady, lifting off, or on throttle?",
  balance: "What: which end slides first, and how much, from −3 (rear) to +3 (front)?",
};

const helpful: readonly (readonly [keyof Report, string])[] = [
  ["howOften", "How often: once, sometimes, most laps, or every lap?"],
  ["againstLastRun", "Against your last run: better, same, worse, or cannot tell?"],
  ["confidence", "How sure are you: a guess, fairly sure, or certain?"],
];

/** The questions that a report leaves open, the needed ones first. */
export function whatIsMissing(report: Report): Question[] {
  const must = neededFields
    .filter((field) => report[field] === undefined)
    .map((field) => ({ field, ask: needed[field], needed: true }));
  const may = helpful
    .filter(([field]) => report[field] === undefined)
    .map(([field, ask]) => ({ field, ask, needed: false }));
  return [...must, ...may];
}
