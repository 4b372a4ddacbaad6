import type { PhaseName } from "../../balance/phases.js";
import type { Car } from "../../car/car.js";
import type { Change } from "../../change/change.js";
import type { Eased } from "../../change/eased.js";
import type { CarFigures } from "../../change/figures.js";
import type { NearTipping } from "../../change/near-tipping.js";
import type { OnStop } from "../../change/on-stops.js";
import type { Trade } from "../../change/trade.js";
import type { Wheels } from "../../load/wheels.js";
import type { Refusal } from "../../refusal.js";
import type { Margin } from "../../statics/margins.js";
import type { CellShift } from "../debrief/cells.js";
import type { StageMinutes } from "./minutes.js";
import type { PlanStep } from "./plan.js";

/** Something to know before a run. */
export type PlanWarning =
  /** The model cannot make the change. */
  | { readonly code: "refused"; readonly refusal: Refusal }
  /** At its limit this car tips over before its tyres let go, in these parts of a corner. */
  | { readonly code: "tips-over"; readonly phases: readonly PhaseName[] }
  /** m/s² that the change moves balance at most, and what is likely to be felt */
  | { readonly code: "too-small"; readonly most: number; readonly least: number }
  /** Outside a limit of the class; kept: by the organiser, knowingly. */
  | ({ readonly code: "limit"; readonly kept?: true } & Omit<Margin, "value">)
  /** The rear slides earlier than in the run before, in these parts of a corner. */
  | { readonly code: "towards-the-rear"; readonly phases: readonly PhaseName[] }
  | { readonly code: "brakes-rearwards" }
  /** So many things change at once against the run before. */
  | { readonly code: "several-changes"; readonly count: number }
  /** The first run is not the car as it is. */
  | { readonly code: "no-baseline" }
  /** It ends so many minutes after the day is over. */
  | { readonly code: "too-late"; readonly minutes: number };

/** Shift of balance in each part of a corner, m/s², above 0 towards the front sliding first. */
export type PhaseShifts = Readonly<Record<PhaseName, number>>;

/** One run of the plan, worked out for the car. */
export interface SheetRow {
  readonly step: PlanStep;
  /** 1 is the first run */
  readonly run: number;
  /** Minutes after the start of the day. */
  readonly startsAt: number;
  readonly minutes: StageMinutes;
  /** How often all cars go out, and the minutes between two rounds. */
  readonly rounds: number;
  readonly swap: number;
  /** Minutes of the whole cycle with all rounds driven. */
  readonly lasts: number;
  /** How the car stands before hands go to it: as filed last, else as the plan left it. */
  readonly stood: Car;
  /** The set-up of this run, put back. */
  readonly car: Car;
  /** What the hands do before this run, seats included. */
  readonly toDo: readonly Change[];
  /** Turns of the seats among them, where the car is put back. */
  readonly putBackTurns?: Wheels<number>;
  /** Against the run before; nothing in the first. */
  readonly phases?: PhaseShifts;
  /** Against the run before, corner by corner. */
  readonly cells: readonly CellShift[];
  /** What else moves against the run before. */
  readonly moved?: CarFigures;
  /** How far the car is inside the limits of its class. */
  readonly margins: readonly Margin[];
  /** Parts of a corner in which it tips over before its tyres let go. */
  readonly tips: readonly PhaseName[];
  /** Parts in which it tips over or comes near to it. */
  readonly nearTipping: readonly NearTipping[];
  /** Parts in which it cannot brake or drive as hard as is usual. */
  readonly eased: readonly Eased[];
  /** Wheels on a stop that were not in the run before. */
  readonly onStops: readonly OnStop[];
  /** Parts in which balance is better than in the run before and the car slower. */
  readonly trades: readonly Trade[];
  readonly warnings: readonly PlanWarning[];
  /** Why the step cannot be done; the car is then as in the run before. */
  readonly refused?: Refusal;
}
