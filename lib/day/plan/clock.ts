import { drivingMinutes, stages } from "./minutes.js";
import type { SheetRow } from "./sheet-row.js";

/** Where a day stands: which run and stage, and how long it is at it. */
export interface Clock {
  /** 1 is the first run */
  readonly run: number;
  /** Place in `stages`; 0 is the first. */
  readonly stage: number;
  /** ms since 1970 at which the clock was started last; left out: it stands still */
  readonly since?: number;
  /** ms of this stage before that */
  readonly spent: number;
  /** ms since 1970 at which the day was begun */
  readonly begun?: number;
}

export const stoppedClock: Clock = { run: 1, stage: 0, spent: 0 };

const MINUTE = 60e3; // ms

/** Milliseconds spent in the stage so far. */
const spentAt = ({ since, spent }: Clock, now: number): number =>
  spent + (since === undefined ? 0 : Math.max(0, now - since));

/**
 * The clock running; a day that begins in the middle of its plan begins on plan.
 *
 * @param due - minutes of the plan before this stage
 */
export function started(clock: Clock, now: number, due = 0): Clock {
  const begun = clock.begun ?? now - due * MINUTE;
  return clock.since === undefined ? { ...clock, since: now, begun } : clock;
}

/** The clock standing still. */
export function paused(clock: Clock, now: number): Clock {
  const { since: _, ...rest } = clock;
  return { ...rest, spent: spentAt(clock, now) };
}

/** The clock at another run, at its first stage, standing still. */
export function atRun(clock: Clock, run: number): Clock {
  const { since: _, ...rest } = clock;
  return { ...rest, run, stage: 0, spent: 0 };
}

/**
 * The clock after the device's own was set: it counts on as if that had not been.
 *
 * @param by - ms that the device's clock was set forward; below 0: back
 */
export function shifted(clock: Clock, by: number): Clock {
  const { since, begun } = clock;
  return {
    ...clock,
    ...(since !== undefined && { since: since + by }),
    ...(begun !== undefined && { begun: begun + by }),
  };
}

/** One stage on or back; after the last stage comes the next run. It runs on if it was running. */
export function moved(clock: Clock, by: 1 | -1, runs: number, now: number): Clock {
  const at = (clock.run - 1) * stages.length + clock.stage + by;
  if (at < 0 || at >= runs * stages.length) return clock;
  const place = { run: Math.floor(at / stages.length) + 1, stage: at % stages.length, spent: 0 };
  return { ...clock, ...place, ...(clock.since !== undefined && { since: now }) };
}

/** What a clock shows. */
export interface ClockReading {
  /** Minutes planned for the stage, all rounds driven. */
  readonly planned: number;
  /** Minutes left, below 0 when it is over. */
  readonly left: number;
  /** Minutes that the day is behind the plan, below 0: ahead of it; nothing before it was begun. */
  readonly behind?: number;
  /** The round that is out, where drivers take turns. */
  readonly round?: RoundReading;
}

/** Which round of a drive is out. */
export interface RoundReading {
  /** 1 is the first */
  readonly round: number;
  readonly of: number;
  /** Minutes left of it; below 0 when the last is over. */
  readonly left: number;
}

/** A run as the clock needs it. */
export type TimedRun = Pick<SheetRow, "minutes" | "startsAt" | "rounds" | "swap">;

/** Reads the clock against the plan. */
export function readClock(clock: Clock, row: TimedRun, now: number): ClockReading {
  const planned = stageMinutes(row)[clock.stage] ?? 0;
  const spent = spentAt(clock, now) / MINUTE;
  const round = stages[clock.stage] === "drive" ? roundAt(spent, row) : {};
  const reading = { planned, left: planned - spent, ...round };
  if (clock.begun === undefined) return reading;
  const due = dueAt(clock, row) + Math.min(spent, planned);
  return { ...reading, behind: (now - clock.begun) / MINUTE - due };
}

/** The round that is out after so many minutes of driving; nothing where there is only one. */
function roundAt(spent: number, { minutes: { drive: each }, rounds, swap }: TimedRun) {
  if (rounds < 2) return {};
  const over = each + swap > 0 ? Math.floor(spent / (each + swap)) : rounds;
  const round = Math.min(rounds, over + 1);
  const left = round * each + (round - 1) * swap - spent;
  return { round: { round, of: rounds, left } };
}

/**
 * Minutes until a round of the run at hand goes out; 0 or less once it is out.
 *
 * @param round - 1 is the first
 */
export function minutesUntilRound(clock: Clock, row: TimedRun, round: number, now: number): number {
  const drive = stages.indexOf("drive");
  const before = stageMinutes(row).slice(clock.stage, drive);
  const toDrive = before.reduce((sum, one) => sum + one, 0);
  const earlier = (round - 1) * (row.minutes.drive + row.swap);
  if (clock.stage > drive) return 0;
  return toDrive + earlier - spentAt(clock, now) / MINUTE;
}

/** The clock at the start of the next round; in the last, and while nobody drives, as it was. */
export function atNextRound(clock: Clock, row: TimedRun, now: number): Clock {
  const { round } = readClock(clock, row, now);
  if (round === undefined || round.round >= round.of) return clock;
  const spent = round.round * (row.minutes.drive + row.swap) * MINUTE;
  return { ...clock, spent, ...(clock.since !== undefined && { since: now }) };
}

/** Minutes of the plan before the stage at hand. */
export function dueAt({ stage }: Pick<Clock, "stage">, row: TimedRun): number {
  const before = stageMinutes(row).slice(0, stage);
  return before.reduce((sum, one) => sum + one, row.startsAt);
}

/**
 * When a round of a run goes out by the plan, minutes after the day was begun.
 *
 * @param round - 1 is the first
 */
export const roundStartsAt = (row: TimedRun, round: number): number =>
  dueAt({ stage: stages.indexOf("drive") }, row) + (round - 1) * (row.minutes.drive + row.swap);

/** Minutes of each stage, all rounds driven. */
export const stageMinutes = ({ minutes, rounds, swap }: TimedRun): number[] =>
  stages.map((stage) =>
    stage === "drive" ? drivingMinutes(minutes.drive, rounds, swap) : minutes[stage],
  );

/** Reads a clock that was kept. */
export function asClock(value: unknown): Clock | undefined {
  const { run, stage, spent, since, begun } = (value ?? {}) as Record<string, unknown>;
  const whole = (it: unknown, least: number, most: number): it is number =>
    Number.isInteger(it) && Number(it) >= least && Number(it) <= most;
  const time = (it: unknown): it is number => Number.isFinite(it) && Number(it) >= 0;
  if (!whole(run, 1, 1000) || !whole(stage, 0, stages.length - 1) || !time(spent)) return undefined;
  return { run, stage, spent, ...(time(since) && { since }), ...(time(begun) && { begun }) };
}
