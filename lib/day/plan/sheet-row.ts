import type { PhaseName } from "../../balance/phases.js";
import type { Car } from "../../car/car.js";
import type { Change } from "../../change/change.js";
import type { Eased } from "../../change/eased.js";
import type { CarFigures } from "../../change/figures.js";
import type { NearTipping } from "../../change/near-tipping.js";
import type { OnStop } from "../../change/on-stops.js";
import type { Trade } from "../../change/trade.js";
import type { Wheels } from "../../load/wheels.js";
import type { Margin } from "../../statics/margins.js";
import type { CellShift } from "../debrief/cells.js";
import type { StageMinutes } from "./minutes.js";
import type { PlanStep } from "./plan.js";

/** Something to know before a run. */
export interface PlanWarning {
  readonly kind:
    | "refused"
    | "tips over"
    | "too small to feel"
    | "limit"
    | "towards the rear"
    | "brakes rearwards"
    | "several changes"
    | "order"
    | "time";
  readonly sentence: string;
}

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
  /** Minutes of the whole cycle with all rounds driven. */
  readonly lasts: number;
  /** The set-up of this run, put back. */
  readonly car: Car;
  /** What the hands do before this run, seats included. */
  readonly toDo: readonly Change[];
  /** The same in words and metric units. */
  readonly labels: readonly string[];
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
  readonly refused?: string;
}
