import type { PhaseName } from "../../balance/phases.js";
import { standingCar } from "../../balance/standing-car.js";
import { canApply } from "../../change/apply.js";
import type { Change } from "../../change/change.js";
import { marginsOf } from "../../statics/margins.js";
import { LEAST_FELT_SHIFT } from "../debrief/feel.js";
import { sameWay } from "../debrief/tried.js";
import { type NeededField, neededFields, type Report } from "../log/report.js";
import type { PhaseShifts } from "../plan/sheet-row.js";
import { carWith, type Practice, shiftsIn } from "./practice.js";
import { less, size, strongest } from "./shifts.js";
import { type WayBackFact, wayBack } from "./way-back.js";

/** How near an answer came, and why. */
export interface Score {
  /** 0–1 */
  readonly score: number;
  readonly reasons: readonly ScoreReason[];
}

/** Why an answer is worth what it is. Changes are of the known car, but those of a way back. */
export type ScoreReason =
  | { readonly code: "not-said"; readonly field: NeededField }
  /** m/s² by which balance moved in that part, as was said */
  | { readonly code: "moved-so"; readonly phase: PhaseName; readonly shift: number }
  /** The balance that was said, −3 to +3, and m/s² by which it moved there */
  | {
      readonly code: "moved-otherwise";
      readonly phase: PhaseName;
      readonly said: number;
      readonly shift: number;
    }
  | { readonly code: "moved-most"; readonly phase: PhaseName; readonly shift: number }
  | { readonly code: "it-was"; readonly change: Change }
  /** From the seat it cannot be told from what was changed. */
  | { readonly code: "feels-alike"; readonly change: Change }
  /** m/s² by which the change would move balance there, and by which it moved */
  | {
      readonly code: "would-move";
      readonly change: Change;
      readonly phase: PhaseName;
      readonly would: number;
      readonly moved: number;
    }
  /** This car cannot be changed so. */
  | { readonly code: "cannot-be-changed" }
  /** A change of the car as it is now, and how it leads back to the known one. */
  | { readonly code: "way-back"; readonly change: Change; readonly way: WayBackFact }
  /** m/s² that are left where most is */
  | { readonly code: "left-most"; readonly phase: PhaseName; readonly shift: number }
  | { readonly code: "breaks-limit" };

/** Where the car changed, and which way: a report for the place that moved most, in the right sign. */
export function scoreReport({ shifts }: Practice, report: Report): Score {
  const missing = neededFields
    .filter((field) => report[field] === undefined)
    .map((field): ScoreReason => ({ code: "not-said", field }));
  const { phase, balance } = report;
  if (phase === undefined || balance === undefined) return { score: 0, reasons: missing };
  const [most, shift] = [strongest(shifts), shifts[phase]];
  const way = Math.sign(balance) === Math.sign(shift) && Math.abs(shift) >= LEAST_FELT_SHIFT;
  const place = Math.abs(shift) / Math.abs(shifts[most]);
  const complete = 1 - missing.length / 4;
  return {
    score: way ? 0.5 + 0.3 * place + 0.2 * complete : 0,
    reasons: [
      ...missing,
      way
        ? { code: "moved-so", phase, shift }
        : { code: "moved-otherwise", phase, said: balance, shift },
      ...(place < 1 ? [{ code: "moved-most", phase: most, shift: shifts[most] } as const] : []),
    ],
  };
}

/** What was changed: the lever itself, or one that from the seat feels alike. */
export function scoreCause({ car, hidden, corner, shifts }: Practice, cause: Change): Score {
  const was: ScoreReason = { code: "it-was", change: hidden };
  if (sameWay(cause, hidden)) return { score: 1, reasons: [was] };
  if (!canApply(car, cause)) return { score: 0, reasons: [cannot, was] };
  const moves = shiftsIn(corner, car, carWith(cause, car, car), car);
  const like = alike(moves, shifts);
  if (like > ALIKE) return { score: 0.8, reasons: [{ code: "feels-alike", change: cause }, was] };
  const phase = differsMost(moves, shifts);
  const [would, moved] = [moves[phase], shifts[phase]];
  const reason: ScoreReason = { code: "would-move", change: cause, phase, would, moved };
  return { score: 0.8 * Math.max(0, like), reasons: [reason, was] };
}

const ALIKE = 0.8;
const cannot: ScoreReason = { code: "cannot-be-changed" };

/** The next change: how much of the way it leads back to the car that was known. */
export function scoreNext({ car, changed, corner, shifts }: Practice, next: Change): Score {
  if (!canApply(changed, next)) return { score: 0, reasons: [cannot] };
  const after = carWith(next, changed, car);
  const left = shiftsIn(corner, car, after, car);
  const { back, way } = wayBack(shifts, left);
  const worst = strongest(left);
  const broken = marginsOf(standingCar(after, car)).some(({ margin }) => margin < 0);
  return {
    score: broken ? 0 : Math.max(0, back),
    reasons: [
      { code: "way-back", change: next, way },
      ...(size(left) < LEAST_FELT_SHIFT
        ? []
        : [{ code: "left-most", phase: worst, shift: left[worst] } as const]),
      ...(broken ? [{ code: "breaks-limit" } as const] : []),
    ],
  };
}

/** 1 for the same shifts in all phases, 0 for nothing in common, below 0 for the opposite. */
function alike(a: PhaseShifts, b: PhaseShifts): number {
  return 1 - size(less(a, b)) / Math.max(size(a), size(b));
}

function differsMost(a: PhaseShifts, b: PhaseShifts): PhaseName {
  return strongest(less(a, b));
}
