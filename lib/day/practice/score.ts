import type { PhaseName } from "../../balance/phases.js";
import { standingCar } from "../../balance/standing-car.js";
import { canApply } from "../../change/apply.js";
import type { Change } from "../../change/change.js";
import { formatAlike } from "../../shown-range.js";
import { marginsOf } from "../../statics/margins.js";
import type { UnitSystem } from "../../units.js";
import { LEAST_FELT_SHIFT } from "../debrief/feel.js";
import { sameWay } from "../debrief/tried.js";
import { whatIsMissing } from "../log/missing.js";
import type { Report } from "../log/report.js";
import type { PhaseShifts } from "../plan/sheet-row.js";
import { labelHere } from "./label-here.js";
import { carWith, type Practice, shiftsIn } from "./practice.js";
import { less, size, strongest } from "./shifts.js";
import { wayBack } from "./way-back.js";

/** How near an answer came, and why. */
export interface Score {
  /** 0–1 */
  readonly score: number;
  /** One sentence each. */
  readonly reasons: readonly string[];
}

/** Where the car changed, and which way: a report for the place that moved most, in the right sign. */
export function scoreReport(
  { shifts }: Practice,
  report: Report,
  system: UnitSystem = "metric",
): Score {
  const missing = whatIsMissing(report).filter(({ needed }) => needed);
  const { phase, balance } = report;
  if (phase === undefined || balance === undefined)
    return { score: 0, reasons: missing.map(({ ask }) => `Not said: ${ask}`) };
  const [most, here] = [strongest(shifts), shifts[phase]];
  const way = Math.sign(balance) === Math.sign(here) && Math.abs(here) >= LEAST_FELT_SHIFT;
  const place = Math.abs(here) / Math.abs(shifts[most]);
  const complete = 1 - missing.length / 4;
  return {
    score: way ? 0.5 + 0.3 * place + 0.2 * complete : 0,
    reasons: [
      ...missing.map(({ ask }) => `Not said: ${ask}`),
      way
        ? `Balance moved ${inWords(here, system)} in ${phase}, as you say.`
        : `You say ${inSign(balance)} in ${phase}; there balance moved ${inWords(here, system)}.`,
      ...(place < 1 ? [`It moved most in ${most}: ${inWords(shifts[most], system)}.`] : []),
    ],
  };
}

/** What was changed: the lever itself, or one that from the seat feels alike. */
export function scoreCause(
  practice: Practice,
  cause: Change,
  system: UnitSystem = "metric",
): Score {
  const { car, hidden, corner, shifts } = practice;
  const was = `It was: ${labelHere(hidden, car, system)}.`;
  if (sameWay(cause, hidden)) return { score: 1, reasons: [was] };
  if (!canApply(car, cause)) return { score: 0, reasons: [cannot, was] };
  const moves = shiftsIn(corner, car, carWith(cause, car, car), car);
  const like = alike(moves, shifts);
  const named = labelHere(cause, car, system);
  if (like > ALIKE)
    return {
      score: 0.8,
      reasons: [`${named} would feel alike here: the seat cannot tell them apart.`, was],
    };
  const where = differsMost(moves, shifts);
  const reason = `${named} would move balance ${inWords(moves[where], system)} in ${where}; the car moved ${inWords(shifts[where], system)}.`;
  return { score: 0.8 * Math.max(0, like), reasons: [reason, was] };
}

const ALIKE = 0.8;
const cannot = "This car cannot be changed so.";

/** The next change: how much of the way it leads back to the car that was known. */
export function scoreNext(practice: Practice, next: Change, system: UnitSystem = "metric"): Score {
  const { car, changed, corner, shifts } = practice;
  if (!canApply(changed, next)) return { score: 0, reasons: [cannot] };
  const after = carWith(next, changed, car);
  const left = shiftsIn(corner, car, after, car);
  const { back, told } = wayBack(labelHere(next, changed, system), shifts, left);
  const worst = strongest(left);
  const outside = marginsOf(standingCar(after, car)).filter(({ margin }) => margin < 0);
  return {
    score: outside.length > 0 ? 0 : Math.max(0, back),
    reasons: [
      told,
      ...(size(left) < LEAST_FELT_SHIFT
        ? []
        : [`What is left is most in ${worst}: ${inWords(left[worst], system)}.`]),
      ...(outside.length > 0 ? ["It breaks a limit of the class."] : []),
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

function inWords(shift: number, system: UnitSystem): string {
  if (Math.abs(shift) < 0.005) return "by nothing";
  const size = formatAlike("acceleration", Math.abs(shift), 2, system);
  return `by ${size} towards the ${shift > 0 ? "front" : "rear"} sliding first`;
}

function inSign(balance: number): string {
  if (balance === 0) return "that nothing changed";
  return `that the ${balance > 0 ? "front" : "rear"} slides first`;
}
