import type { Report } from "@rollbook/lib";

type Field = Exclude<keyof Report, "speedClass" | "grade" | "words">;

const questions: Readonly<Record<Field, string>> = {
  corner: "Where: in which corner?",
  phase: "When: braking in, turning in, in the middle, or with power on?",
  input: "Doing what: braking, releasing the brake, steering, steady, lifting off, or on throttle?",
  balance: "What: which end slides first, and how much, from −3 (rear) to +3 (front)?",
  howOften: "How often: once, sometimes, most laps, or every lap?",
  againstLastRun: "Against your last run: better, same, worse, or cannot tell?",
  confidence: "How sure are you: a guess, fairly sure, or certain?",
};

/** The question that a field of a report answers. */
export const questionFor = (field: Field): string => questions[field];
