import type { PhaseName } from "../../balance/phases.js";
import type { Car } from "../../car/car.js";
import type { PollCount, PollLetter } from "../debrief/poll.js";
import type { PlanStep } from "../plan/plan.js";
import type { Venue } from "../plan/venue.js";
import type { Confidence, Report } from "./report.js";

/** What every entry of a log has. */
export interface EntryHead {
  /** Device and number, such as "k3f9-12"; never used twice. */
  readonly id: string;
  /** When it was written, UTC, such as "2031-05-04T09:12:33.000Z". */
  readonly at: string;
  /** The entry that this one stands for now; the old one stays in the log. */
  readonly replaces?: string;
}

/** A day: who drives where, and what is planned. */
export interface EventEntry extends EntryHead {
  readonly kind: "event";
  readonly name: string;
  readonly venue: Venue;
  /** Minutes from the first word to the last. */
  readonly minutes: number;
  readonly drivers: readonly string[];
  readonly cars: number;
  readonly steps: readonly PlanStep[];
  /** The set-up that the plan starts from. */
  readonly setUp: string;
}

/** One version of a set-up; the first of a chain is the car as it was measured. */
export interface SetUpEntry extends EntryHead {
  readonly kind: "set-up";
  readonly car: Car;
  /** The version it was made from. */
  readonly follows?: string;
  readonly note?: string;
}

/** One driver, one set-up, some laps. */
export interface RunEntry extends EntryHead {
  readonly kind: "run";
  readonly setUp: string;
  readonly driver: string;
  /** Which run of the plan; 1 is the first. */
  readonly run?: number;
  /** Which car; 1 is the first. */
  readonly car?: number;
  /** Weather, tyres, traffic: whatever may matter. */
  readonly conditions?: string;
  /** s */
  readonly lapTimes?: readonly number[];
}

/** What a driver reported after a run, about one place of the lap. */
export interface ReportEntry extends EntryHead {
  readonly kind: "report";
  /** The run it is about. */
  readonly run: string;
  readonly report: Report;
}

/** What somebody expects of a set-up before it is driven. */
export interface PredictionEntry extends EntryHead {
  readonly kind: "prediction";
  readonly setUp: string;
  readonly by?: string;
  readonly corner?: string;
  readonly phase?: PhaseName;
  readonly expects: Expectation;
  readonly reason: string;
  readonly confidence?: Confidence;
}

/** Which way balance is expected to go. */
export const expectations = ["front slides first", "no change", "rear slides first"] as const;
export type Expectation = (typeof expectations)[number];

/** A vote with cards. */
export interface PollEntry extends EntryHead {
  readonly kind: "poll";
  readonly question: string;
  readonly right: PollLetter;
  readonly vote: 1 | 2;
  readonly count: PollCount;
}

/** Anything in words. */
export interface NoteEntry extends EntryHead {
  readonly kind: "note";
  readonly words: string;
  /** The entry it is about. */
  readonly about?: string;
}

/** An entry that no longer counts; it stays in the log. */
export interface WithdrawalEntry extends EntryHead {
  readonly kind: "withdrawal";
  readonly of: string;
  readonly reason: string;
}

export type LogEntry =
  | EventEntry
  | SetUpEntry
  | RunEntry
  | ReportEntry
  | PredictionEntry
  | PollEntry
  | NoteEntry
  | WithdrawalEntry;

export type EntryKind = LogEntry["kind"];

/** All that was written, oldest first. Entries are added, never changed or taken out. */
export interface Log {
  readonly entries: readonly LogEntry[];
}

/** A log in which nothing is written yet. */
export const emptyLog: Log = { entries: [] };
