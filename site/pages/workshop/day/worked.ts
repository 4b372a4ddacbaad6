import { Refusal, type SheetRow, sheetOf } from "@rollbook/lib";
import type { Draft } from "./draft.js";

/** The plan worked out, or why the model cannot. */
export type Worked =
  | { readonly rows: readonly SheetRow[]; readonly fault?: undefined }
  | { readonly rows?: undefined; readonly fault: string };

let last: { key: string; worked: Worked } | undefined;

/** Works the plan out; the last answer is kept, since every view asks for it. */
export function worked(day: Draft): Worked {
  const { event: _event, setUp: _setUp, name: _name, ...plan } = day;
  const key = JSON.stringify(plan);
  if (last?.key !== key) last = { key, worked: workOut(day) };
  return last.worked;
}

function workOut(day: Draft): Worked {
  try {
    return { rows: sheetOf(day) };
  } catch (error) {
    if (error instanceof Refusal) return { fault: error.message };
    throw error;
  }
}
