import { type PhaseName, phaseNames } from "../../balance/phases.js";
import type { StandingCar } from "../../balance/standing-car.js";
import type { Car } from "../../car/car.js";
import type { Report } from "../log/report.js";
import { testedChanges } from "../plan/single.js";
import { cornerNamed, type Venue } from "../plan/venue.js";
import { type Cell, type CellShift, cellsOf, shiftsOf } from "./cells.js";
import { LEAST_FELT_SHIFT } from "./feel.js";
import { type FeltFacts, type FeltReason, reasonsFor, type Verdict } from "./felt-reasons.js";

/** Two runs of one driver, one after the other. */
export interface TwoRuns {
  /** The car as it was in the first run, and in the second. */
  readonly before: StandingCar;
  readonly after: StandingCar;
  readonly venue: Venue;
  readonly reportsBefore: readonly Report[];
  readonly reportsAfter: readonly Report[];
  /** m/s²; `LEAST_FELT_SHIFT` when left out */
  readonly leastFelt?: number;
}

/** Felt beside predicted in one part of one corner. */
export interface FeltCell {
  readonly corner: string;
  readonly phase: PhaseName;
  /** m/s², above 0 towards the front sliding first */
  readonly predicted: number;
  /** Points on the driver's scale, above 0 towards the front; nothing where it cannot be told. */
  readonly felt?: number;
  readonly verdict: Verdict;
  /** Why it may be so. */
  readonly reasons: readonly FeltReason[];
}

/** What one driver felt beside what the model says, for every cell reported after the second run. */
export function feltAgainstPredicted(runs: TwoRuns): FeltCell[] {
  const { before, after, venue, leastFelt = LEAST_FELT_SHIFT } = runs;
  const tested = testedChanges(before, after).length;
  const old = knownCells(before, venue);
  const cells = knownCells(after, venue, old);
  const shifts = shiftsOf(old, cells);
  return shifts.flatMap((shift, i) => {
    const report = reportOn(runs.reportsAfter, shift.corner, shift.phase);
    if (report === undefined) return [];
    const facts = factsOf(runs, shift, cells[i], report, { tested, leastFelt });
    return [feltCell(shift, facts, verdictOf(facts))];
  });
}

const known = new WeakMap<Car, WeakMap<Venue, WeakMap<Car, readonly Cell[]>>>();

/** Cells of a car, worked out once: all drivers of a day drive the same few cars. */
function knownCells(standing: StandingCar, venue: Venue, similar?: readonly Cell[]) {
  const { car, measured } = standing;
  const venues = known.get(car) ?? new WeakMap<Venue, WeakMap<Car, readonly Cell[]>>();
  const cars = venues.get(venue) ?? new WeakMap<Car, readonly Cell[]>();
  const cells = cars.get(measured) ?? cellsOf(standing, venue, similar);
  known.set(car, venues.set(venue, cars.set(measured, cells)));
  return cells;
}

function feltCell({ corner, phase, shift }: CellShift, facts: FeltFacts, verdict: Verdict) {
  const { felt } = facts;
  const cell = { corner, phase, predicted: shift, verdict, reasons: reasonsFor(verdict, facts) };
  return felt === undefined ? cell : { ...cell, felt };
}

function factsOf(
  runs: TwoRuns,
  { corner, phase, shift }: CellShift,
  cell: Cell | undefined,
  report: Report,
  { tested, leastFelt }: { tested: number; leastFelt: number },
): FeltFacts {
  const before = reportOn(runs.reportsBefore, corner, phase);
  const felt = feltShift(runs, corner, phase);
  const surface = cornerNamed(runs.venue, corner)?.surface;
  return {
    tested,
    predicted: shift,
    expected: Math.abs(shift) >= leastFelt ? Math.sign(shift) : 0,
    elsewhere: feltElsewhere(runs, corner, phase),
    nearThreshold: Math.abs(shift) < 2 * leastFelt,
    report,
    lifted: cell !== undefined && (cell.lifted.front || cell.lifted.rear),
    ...(felt !== undefined && { felt }),
    ...(before && { before }),
    ...(surface && { surface }),
  };
}

/** Points by which a driver's report moved; 0 when it is said to be the same. */
function feltShift(runs: TwoRuns, corner: string, phase: PhaseName): number | undefined {
  const after = reportOn(runs.reportsAfter, corner, phase);
  const before = reportOn(runs.reportsBefore, corner, phase);
  if (after?.againstLastRun === "same") return 0;
  if (after?.balance === undefined || before?.balance === undefined) return undefined;
  return after.balance - before.balance;
}

/** Which way the other phases of the corner were felt to move; 0 when they were not, or both ways. */
function feltElsewhere(runs: TwoRuns, corner: string, phase: PhaseName): number {
  const others = phaseNames.filter((name) => name !== phase);
  const signs = others.map((name) => Math.sign(feltShift(runs, corner, name) ?? 0));
  const seen = new Set(signs.filter((sign) => sign !== 0));
  return seen.size === 1 ? ([...seen][0] ?? 0) : 0;
}

function reportOn(reports: readonly Report[], corner: string, phase: PhaseName) {
  return reports.find((report) => report.corner === corner && report.phase === phase);
}

function verdictOf({ tested, felt, expected, elsewhere }: FeltFacts): Verdict {
  if (tested > 1) return "confounded";
  if (felt === undefined) return "no comparison";
  const way = Math.sign(felt);
  if (way === expected) return "match";
  if (way === 0) return elsewhere === expected ? "other phase" : "nothing felt";
  return expected === 0 ? "felt, not predicted" : "opposite";
}
