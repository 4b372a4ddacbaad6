import type { PhaseName } from "../../balance/phases.js";
import { phaseNames } from "../../balance/phases.js";
import { standingCar } from "../../balance/standing-car.js";
import type { Car } from "../../car/car.js";
import { canApply } from "../../change/apply.js";
import { type Change, undoOf } from "../../change/change.js";
import { marginsOf } from "../../statics/margins.js";
import { LEAST_FELT_SHIFT, pointsFelt } from "../debrief/feel.js";
import { sameWay } from "../debrief/tried.js";
import { type NeededField, neededFields, type Report } from "../log/report.js";
import type { PhaseShifts } from "../plan/sheet-row.js";
import type { Notes } from "./driver.js";
import { carWith, shiftsIn } from "./known-car.js";
import type { Practice } from "./practice.js";
import { atSizeOf, less, size, strongest } from "./shifts.js";
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
  /** Nobody could tell: m/s² by which balance moved where it moved most. */
  | { readonly code: "nobody-could-tell"; readonly phase: PhaseName; readonly shift: number }
  /** It was there to be told: points, −3 to +3, where most was seen. */
  | { readonly code: "could-be-told"; readonly phase: PhaseName; readonly points: number }
  | { readonly code: "it-was"; readonly changes: readonly Change[] }
  /** This is one of the two things that were done. */
  | { readonly code: "one-of-them"; readonly change: Change }
  /** From the seat it cannot be told from what was changed. */
  | { readonly code: "feels-alike"; readonly changes: readonly Change[] }
  /** m/s² by which the changes would move balance there, and by which it moved */
  | {
      readonly code: "would-move";
      readonly changes: readonly Change[];
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

/** What a learner says of the changed car: a report, or that nothing can be told. */
export type Said = Report | "cannot tell";

/** What there was to see, part by part, in points: the driver's notes, or on the level without them the traces. */
export function seenIn({ level, notes, shifts }: Practice): Notes {
  if (level !== 2) return notes;
  const points = phaseNames.map((phase) => [phase, pointsFelt(shifts[phase])]);
  return Object.fromEntries(points) as Record<PhaseName, number>;
}

/** The report that says no more and no less than what was to be seen. */
export function honestReport(practice: Practice): Said {
  const seen = seenIn(practice);
  const most = Math.abs(seen[strongest(seen)]);
  if (most === 0) return "cannot tell";
  const { shifts } = practice;
  const phase = phaseNames
    .filter((name) => Math.abs(seen[name]) === most)
    .reduce((a, b) => (Math.abs(shifts[b]) > Math.abs(shifts[a]) ? b : a));
  const input = inputIn[phase];
  return { corner: practice.corner.name, phase, input, balance: seen[phase] };
}

/** What a driver does in each part of a corner. */
const inputIn = {
  "braking in": "braking",
  "turn-in": "releasing the brake",
  middle: "steady",
  "power on": "throttle",
} as const satisfies Record<PhaseName, Report["input"]>;

/**
 * Where the car changed, and which way, measured against what there was to see: whoever reports the
 * place where most was seen, in its sign, is right, and so is whoever reads the traces closer.
 */
export function scoreReport(practice: Practice, said: Said): Score {
  const { shifts } = practice;
  const seen = seenIn(practice);
  const [most, plainest] = [strongest(shifts), strongest(seen)];
  const nothing = seen[plainest] === 0;
  const moved = { phase: most, shift: shifts[most] };
  if (said === "cannot tell")
    return nothing
      ? { score: 1, reasons: [{ code: "nobody-could-tell", ...moved }] }
      : { score: 0, reasons: [toldBy(seen), { code: "moved-most", ...moved }] };
  const missing = neededFields
    .filter((field) => said[field] === undefined)
    .map((field): ScoreReason => ({ code: "not-said", field }));
  const { phase, balance } = said;
  if (phase === undefined || balance === undefined) return { score: 0, reasons: missing };
  if (nothing && balance === 0)
    return { score: 1, reasons: [...missing, { code: "nobody-could-tell", ...moved }] };
  const shift = shifts[phase];
  const way = balance !== 0 && Math.sign(balance) === wayAt(phase, seen, shifts);
  const place = Math.max(
    Math.abs(seen[phase] / (seen[plainest] || 1)),
    Math.abs(shift / shifts[most]),
  );
  const complete = 1 - missing.length / neededFields.length;
  return {
    score: way ? 0.5 + 0.3 * place + 0.2 * complete : 0,
    reasons: [
      ...missing,
      way
        ? { code: "moved-so", phase, shift }
        : { code: "moved-otherwise", phase, said: balance, shift },
      ...(place < 1 ? [{ code: "moved-most", ...moved } as const] : []),
    ],
  };
}

function toldBy(seen: Notes): ScoreReason {
  const phase = strongest(seen);
  return { code: "could-be-told", phase, points: seen[phase] };
}

/** Which way the car moved in a part of the corner, by what was seen there, or else by the traces. */
function wayAt(phase: PhaseName, seen: Notes, shifts: PhaseShifts): number {
  if (seen[phase] !== 0) return Math.sign(seen[phase]);
  return Math.abs(shifts[phase]) >= LEAST_FELT_SHIFT ? Math.sign(shifts[phase]) : 0;
}

/** What was changed: the levers themselves, or others that from the seat feel alike. */
export function scoreCause({ car, hidden, corner, shifts }: Practice, causes: readonly Change[]) {
  const was: ScoreReason = { code: "it-was", changes: hidden };
  const found = causes.filter((cause) => hidden.some((change) => sameWay(cause, change)));
  if (found.length === hidden.length && causes.length === hidden.length)
    return { score: 1, reasons: [was] };
  const part = found.length / Math.max(hidden.length, causes.length);
  const named = found.map((change): ScoreReason => ({ code: "one-of-them", change }));
  const after = withAll(causes, car);
  if (after === undefined) return { score: part / 2, reasons: [...named, cannot, was] };
  const moves = atSizeOf(shifts, shiftsIn(corner, car, after));
  const like = alike(moves, shifts);
  if (like > ALIKE)
    return { score: 0.8, reasons: [{ code: "feels-alike", changes: causes }, was] as const };
  const phase = differsMost(moves, shifts);
  const told = { changes: causes, phase, would: moves[phase], moved: shifts[phase] };
  return {
    score: Math.max(part / 2, 0.8 * Math.max(0, like)),
    reasons: [...named, { code: "would-move", ...told } as const, was],
  };
}

/** The known car with all of some changes made; nothing where it cannot be. */
function withAll(changes: readonly Change[], car: Car): Car | undefined {
  return changes.reduce<Car | undefined>(
    (now, change) => now && (canApply(now, change) ? carWith(change, now, car) : undefined),
    car,
  );
}

const ALIKE = 0.8;
const cannot: ScoreReason = { code: "cannot-be-changed" };

/** What takes back most of what was done, in one change. */
export function bestWayBack(practice: Practice): Change | undefined {
  const undos = practice.hidden.map(undoOf).filter((undo) => canApply(practice.changed, undo));
  const backs = undos.map((undo) => backBy(practice, undo).back);
  return undos[backs.indexOf(Math.max(...backs))];
}

function backBy({ car, changed, corner, shifts }: Practice, next: Change) {
  const after = carWith(next, changed, car);
  const left = shiftsIn(corner, car, after);
  return { ...wayBack(shifts, left), after, left };
}

/** The next change: how much of the way it leads back to the car that was known, beside the best there is. */
export function scoreNext(practice: Practice, next: Change): Score {
  const { car, changed, hidden } = practice;
  if (!canApply(changed, next)) return { score: 0, reasons: [cannot] };
  const { back, way, after, left } = backBy(practice, next);
  const best = hidden.length > 1 ? bestWayBack(practice) : undefined;
  const most = best === undefined ? 1 : backBy(practice, best).back;
  const worst = strongest(left);
  const broken = marginsOf(standingCar(after, car)).some(({ margin }) => margin < 0);
  return {
    score: broken ? 0 : Math.max(0, Math.min(1, back / Math.max(most, LEAST_BACK))),
    reasons: [
      { code: "way-back", change: next, way },
      ...(size(left) < LEAST_FELT_SHIFT
        ? []
        : [{ code: "left-most", phase: worst, shift: left[worst] } as const]),
      ...(broken ? [{ code: "breaks-limit" } as const] : []),
    ],
  };
}

const LEAST_BACK = 0.2; // of the way, so that hardly anything is never called all there was

/** 1 for the same shifts in all phases, 0 for nothing in common, below 0 for the opposite. */
function alike(a: PhaseShifts, b: PhaseShifts): number {
  return 1 - size(less(a, b)) / Math.max(size(a), size(b));
}

function differsMost(a: PhaseShifts, b: PhaseShifts): PhaseName {
  return strongest(less(a, b));
}
