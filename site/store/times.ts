import { type Recall, recallAfter, type TimeAsked } from "@rollbook/lib";

/** One time that something was asked of the reader, as it is kept. */
export type Time = TimeAsked;

export function isTime(kept: unknown): kept is Time {
  const { day, isRight } = (kept ?? {}) as Partial<Time>;
  return Number.isInteger(day) && typeof isRight === "boolean";
}

/** Where something stands that was asked so; nothing where it never was. */
export const recallOf = (times: readonly Time[]): Recall | undefined =>
  times.reduce<Recall | undefined>(recallAfter, undefined);

/** Whether it is to be asked again on this day. */
export function isDue(times: readonly Time[], day: number): boolean {
  const due = recallOf(times)?.due;
  return due !== undefined && due <= day;
}
