import type { Change } from "../../change/change.js";
import type { Tried } from "../debrief/tried.js";
import type { Comparison } from "../log/report.js";
import type { Found, LeverPlace, WhyNot } from "./search.js";

/** A lever that is not proposed, and why. */
export interface NotProposed {
  readonly place: LeverPlace;
  readonly why:
    | WhyNot
    | { readonly code: "tried"; readonly change: Change; readonly outcome: Comparison };
}

/** Why not the others. */
export function notProposed(
  found: readonly Found[],
  failed: (change: Change) => Tried | undefined,
): NotProposed[] {
  return found.flatMap(({ place, option, why }): NotProposed[] => {
    if (option === undefined) return [{ place, why }];
    const before = failed(option.change);
    if (before === undefined) return [];
    const { change } = option;
    return [{ place, why: { code: "tried", change, outcome: before.outcome } }];
  });
}
