import { Refusal, type SheetRow, sheetOf } from "@rollbook/lib";
import type { Draft } from "./draft.js";

/** The plan worked out, or why the model cannot. */
export type Worked =
  | { readonly rows: readonly SheetRow[]; readonly fault?: undefined }
  | { readonly rows?: undefined; readonly fault: Refusal };

/** What of a day the model works with: neither names of people and places nor notes. */
export function inputOf({ car, venue, minutes, drivers, cars, leastFelt, steps }: Draft): string {
  const bare = steps.map(({ note: _, ...step }) => step);
  return JSON.stringify([car, venue.corners, minutes, drivers.length, cars, leastFelt, bare]);
}

let last: { input: string; worked: Worked } | undefined;

/** Works the plan out; the last answer is kept, since every view asks for it. */
export function worked(day: Draft): Worked {
  const input = inputOf(day);
  if (last?.input !== input) last = { input, worked: workOut(day) };
  return withStepsOf(day, last.worked);
}

function workOut(day: Draft): Worked {
  try {
    return { rows: sheetOf(day) };
  } catch (error) {
    if (error instanceof Refusal) return { fault: error };
    throw error;
  }
}

/** The same with the steps as they are now: their notes may be other ones. */
function withStepsOf({ steps }: Draft, found: Worked): Worked {
  if (found.rows === undefined) return found;
  return { rows: found.rows.map((row, i) => ({ ...row, step: steps[i] ?? row.step })) };
}
