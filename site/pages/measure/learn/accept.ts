import { type Car, type Content, type LearnedNumber, numberAt, shapeAt } from "@rollbook/lib";
import type { Accepted } from "../../../store/measured-sheets.js";
import { putBack, type Write } from "../model/write.js";

/** A number that was learned, and where in the file of the car it can be written. */
export interface Acceptable {
  readonly learned: LearnedNumber;
  /** Nothing for what several places share. */
  readonly write?: Write;
  /** Whether the car has it already. */
  readonly taken: boolean;
}

/** The place in the file: the rate of a bar is that of its only position. */
function placeOf(car: Car, path: string): string | undefined {
  const [, end] = /^(front|rear)\.bar\.rate$/.exec(path) ?? [];
  if (end !== undefined) {
    const only = car[end as "front" | "rear"].bar?.positions.length === 1;
    return only ? `${end}.bar.positions.0.rate` : undefined;
  }
  return shapeAt(path)?.type === "number" ? path : undefined;
}

/** What was learned, each with its place in the file and whether it was taken. */
export const acceptable = (
  car: Car,
  numbers: readonly LearnedNumber[],
  accepted: readonly Accepted[],
): Acceptable[] =>
  numbers.map((learned) => {
    const path = placeOf(car, learned.path);
    const taken = accepted.some((one) => one.path === path && isStill(car, one));
    return path === undefined
      ? { learned, taken: false }
      : { learned, taken, write: { path, ...learned.after } };
  });

/** Whether a number that was taken over stands in the car as it was taken. */
export function isStill(car: Car, { path, value }: Accepted): boolean {
  const now = numberAt(car, path)?.value;
  return now !== undefined && Math.abs(now - value) <= 1e-5 * Math.max(1e-9, Math.abs(value));
}

/**
 * The car as it was before it took over what readings taught it: from there it learns, so that no
 * reading counts twice. What was changed since stays.
 */
export function beforeLearning(car: Car, accepted: readonly Accepted[]): Car {
  const still = accepted.filter((one) => isStill(car, one)).map(({ before }) => before);
  return putBack(car as unknown as Content, still) as unknown as Car;
}
