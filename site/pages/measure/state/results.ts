import type { Car } from "@rollbook/lib";
import { type FormPlace, formAt } from "../model/input.js";
import type { Result } from "../model/result.js";
import { resultOf } from "../model/results.js";
import { carAtHand, sheet } from "./sheet.js";

interface Remembered {
  readonly car: Car;
  readonly key: string;
  readonly result: Result;
}

const remembered = new Map<string, Remembered>();

/** Whether a form looks at a place: its own, and the four scales, which others begin from. */
const bears = ({ spec }: FormPlace, place: string): boolean =>
  place.startsWith(`${spec.id}.`) || place.startsWith("four-scales.");

/** What the readings of a form come to now; not worked out again while its own stay as they are. */
export function resultAt(form: FormPlace): Result {
  const car = carAtHand.value;
  const own = Object.entries(sheet.value).filter(([place]) => bears(form, place));
  const key = JSON.stringify(own);
  const last = remembered.get(formAt(form));
  if (last?.car === car && last.key === key) return last.result;
  const result = resultOf({ car, sheet: sheet.value, form });
  remembered.set(formAt(form), { car, key, result });
  return result;
}
