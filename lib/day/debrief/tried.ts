import type { Change } from "../../change/change.js";
import type { Comparison } from "../log/report.js";

/** A change that was made from this set-up before, and what was said of it. */
export interface Tried {
  readonly change: Change;
  readonly outcome: Comparison;
}

/** Whether two changes move the same lever at the same end. */
export function sameLever(a: Change, b: Change): boolean {
  return a.lever === b.lever && endOf(a) === endOf(b);
}

/** Whether two changes move the same lever the same way. */
export function sameWay(a: Change, b: Change): boolean {
  return sameLever(a, b) && Math.sign(a.by) === Math.sign(b.by);
}

function endOf(change: Change): string | undefined {
  return "end" in change ? change.end : undefined;
}
