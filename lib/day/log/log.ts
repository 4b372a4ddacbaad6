import type { PhaseName } from "../../balance/phases.js";
import type { Car } from "../../car/car.js";
import type { Change } from "../../change/change.js";
import type { PollCount, PollLetter } from "../debrief/poll.js";
import type { StageMinutes } from "../plan/minutes.js";
import type { PlanStep } from "../plan/plan.js";
import type { Venue } from "../plan/venue.js";
import type { Confidence, Report } from "./report.js";

/** How wet the road is. */
export const roadStates = ["dry", "damp", "wet", "drying"] as const;
export type RoadState = (typeof roadStates)[number];

/** What it is like outside. */
export interface Conditions {
  readonly road?: RoadState;
  /** Weather, tyres, traffic: whatever else may matter. */
  readonly words?: string;
}

/** One number that somebody measured. */
export interface Measurement {
  /** What was measured, as a code such as "hot-pressure". */
  readonly what: string;
  /** In the SI unit of its quantity. */
  readonly value: number;
  /** What kind of number it is, such as "pressure": never a unit. */
  readonly quantity: string;
  readonly end?: "front" | "rear";
  readonly side?: "left" | "right";
  /** One standard deviation, in the same unit. */
  readonly spread?: number;
  /** Who measured it, where that is not the author. */
  readonly by?: string;
  /** With what, and in which way. */
  readonly how?: string;
}

/** What every entry of a log has, of whatever kind; new knowledge comes as new kinds. */
export interface EntryHead {
  /** Device and number, such as "k3f9-12"; never used twice. */
  readonly id: string;
  /** When it was written, UTC, such as "2031-05-04T09:12:33.000Z". */
  readonly at: string;
  /** Who wrote it: a person, or else a device. */
  readonly author: string;
  /** The entry that this one stands for now; the old one stays in the log. */
  readonly replaces?: string;
  /** Which car of the day it is about; 1 is the first. */
  readonly carNumber?: number;
  /** The set-up that it is about. */
  readonly setUp?: string;
  /** The run that it is about, an entry too. */
  readonly run?: string;
  readonly conditions?: Conditions;
  readonly measurements?: readonly Measurement[];
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
  /** Minutes that the day has in place of the usual ones. */
  readonly usual?: Partial<StageMinutes>;
  /** Minutes to get out and in between two rounds; none when left out. */
  readonly swap?: number;
  /** Cars with a file and runs of their own; a car that is not among them is one like the first. */
  readonly others?: readonly OtherCar[];
}

/** A car of a day that is not like the first. */
export interface OtherCar {
  /** 2 is the second car of the day. */
  readonly carNumber: number;
  /** The set-up that its runs start from. */
  readonly setUp: string;
  readonly steps: readonly PlanStep[];
  /** Minutes for a change of this car. */
  readonly changeMinutes?: number;
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
  readonly runNumber?: number;
  /** In which round of the run; 1 is the first. */
  readonly round?: number;
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

/** A question that phones are asked; the version that closes it stands for the one before. */
export interface QuestionEntry extends EntryHead {
  readonly kind: "question";
  readonly ask: string;
  /** Two to four answers, from A on; nothing tells which is right. */
  readonly choices: readonly string[];
  /** Alone, or again after the talk. */
  readonly vote: 1 | 2;
  /** Closed: nobody votes any more, and everybody may see how many chose what. */
  readonly state: "open" | "closed";
}

/** What one person chose; the last one counts. */
export interface VoteEntry extends EntryHead {
  readonly kind: "vote";
  /** The question, in any of its versions. */
  readonly question: string;
  readonly letter: PollLetter;
  readonly by: string;
}

/** What can happen on a day that no plan knows. */
export const happeningKinds = [
  "change skipped",
  "other change",
  "weather",
  "driver left",
  "driver joined",
  "drivers swapped",
  "run does not count",
  "break",
] as const;
export type HappeningKind = (typeof happeningKinds)[number];

/** Something that happened on the day; taken back like any entry, by a withdrawal. */
export interface HappeningEntry extends EntryHead {
  readonly kind: "happening";
  readonly what: HappeningKind;
  /** The day, an entry. */
  readonly day: string;
  /** The run of the plan that was at hand, or from which on it holds; 1 is the first. */
  readonly runNumber: number;
  /** How far that run was. */
  readonly stage?: keyof StageMinutes;
  /** Who left, joined or swapped; and with whom. */
  readonly driver?: string;
  readonly other?: string;
  /** What was changed instead of what the plan says. */
  readonly change?: Change;
  /** How long a break is. */
  readonly minutes?: number;
}

/** What was measured of a car in a run: laps of a circle, a roll gradient, whatever has a number. */
export interface MeasurementEntry extends EntryHead {
  readonly kind: "measurement";
  /** The day, an entry. */
  readonly day: string;
  /** The run of the plan in which the car was so; 1 is the first. */
  readonly runNumber: number;
  /** Who drove, where somebody did: a driver is compared with himself only. */
  readonly driver?: string;
  readonly measurements: readonly Measurement[];
}

/** Takes an entry back, which stays in the log; taken back itself, it no longer counts either. */
export interface WithdrawalEntry extends EntryHead {
  readonly kind: "withdrawal";
  readonly of: string;
  readonly reason: string;
}

/** An entry of a kind that came after this version: kept as it is, whatever it holds. */
export interface LaterEntry extends EntryHead {
  /** Any other word than the kinds that are known; types cannot say that, so one stands for all. */
  readonly kind: "of a later kind";
}

export type KnownEntry =
  | EventEntry
  | SetUpEntry
  | RunEntry
  | ReportEntry
  | PredictionEntry
  | PollEntry
  | NoteEntry
  | QuestionEntry
  | VoteEntry
  | HappeningEntry
  | MeasurementEntry
  | WithdrawalEntry;

export type LogEntry = KnownEntry | LaterEntry;

/** The kinds that this version knows. */
export const entryKinds = [
  "event",
  "set-up",
  "run",
  "report",
  "prediction",
  "poll",
  "note",
  "question",
  "vote",
  "happening",
  "measurement",
  "withdrawal",
] as const satisfies readonly KnownEntry["kind"][];
export type EntryKind = KnownEntry["kind"];

/** Whether a kind is one that this version knows. */
export const isEntryKind = (kind: unknown): kind is EntryKind =>
  entryKinds.some((known) => known === kind);

/** All that was written, oldest first. Entries are added, never changed or taken out. */
export interface Log {
  readonly entries: readonly LogEntry[];
}

/** A log in which nothing is written yet. */
export const emptyLog: Log = { entries: [] };
