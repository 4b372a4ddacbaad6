import type { DayPlan } from "./cars.js";
import { cycleMinutes, type StageMinutes } from "./minutes.js";
import type { PlanStep } from "./plan.js";
import type { SheetRow } from "./sheet-row.js";

/** A way to bring a late day to its end in time. */
export type Remedy = "drop the last runs" | "shorter stints" | "reports only";

/** A remedy as a whole: the plan with it, and when the day is then over. */
export interface Remedied {
  readonly remedy: Remedy;
  readonly day: DayPlan;
  /** When it is over, minutes after the day was begun. */
  readonly ends: number;
  /** Whether that is in time. */
  readonly inTime: boolean;
  /** How many runs it drops; minutes of a stint, where those are shorter. */
  readonly dropped?: number;
  readonly stint?: number;
}

/** Where a day stands against its plan. */
export interface Standing {
  /** The run at hand; 1 is the first. */
  readonly run: number;
  /** Minutes behind the plan. */
  readonly behind: number;
}

/** Minutes that a stint needs at least: out, two laps, and in – common practice, no source. */
export const SHORTEST_STINT = 3;

/** When the day is over if nothing is done, minutes after it was begun. */
export const endsNow = (rows: readonly SheetRow[], { behind }: Standing): number => {
  const last = rows.at(-1);
  return last === undefined ? 0 : last.startsAt + last.lasts + behind;
};

/**
 * Three ways to be over in time, each as a whole. The run at hand stays as it is; the last runs are
 * dropped from the end, stints become shorter alike in all runs to come, and with reports only nobody
 * teaches or talks between the runs to come.
 *
 * @param rows - the runs with their times, of any of the cars
 */
export function remediesFor(day: DayPlan, rows: readonly SheetRow[], now: Standing): Remedied[] {
  const late = { day, rows, now };
  return [dropped(late), shorter(late), reportsOnly(late)].flatMap((one) => one ?? []);
}

interface Late {
  readonly day: DayPlan;
  readonly rows: readonly SheetRow[];
  readonly now: Standing;
}

function dropped({ day, rows, now }: Late): Remedied | undefined {
  const fits = (runs: number) => endsNow(rows.slice(0, runs), now) <= day.minutes;
  let runs = rows.length - 1;
  while (runs > now.run && !fits(runs)) runs -= 1;
  if (runs < now.run) return undefined;
  const cut = withSteps(day, (steps) => steps.slice(0, runs));
  const ends = endsNow(rows.slice(0, runs), now);
  return told("drop the last runs", cut, ends, { dropped: rows.length - runs });
}

function shorter({ day, rows, now }: Late): Remedied | undefined {
  const longest = Math.max(...rows.slice(now.run).map(({ minutes }) => minutes.drive));
  if (!(longest > SHORTEST_STINT)) return undefined;
  const endWith = (stint: number) =>
    endAfter(rows, now, ({ drive }) => ({ drive: Math.min(drive, stint) }));
  let stint = Math.ceil(longest) - 1;
  while (stint > SHORTEST_STINT && endWith(stint) > day.minutes) stint -= 1;
  const cut = withMinutesFrom(day, rows, now.run, ({ drive }) => ({
    drive: Math.min(drive, stint),
  }));
  return told("shorter stints", cut, endWith(stint), { stint });
}

const noTalk = (): Partial<StageMinutes> => ({ teach: 0, debrief: 0 });

function reportsOnly({ day, rows, now }: Late): Remedied | undefined {
  const ends = endAfter(rows, now, noTalk);
  if (ends === endsNow(rows, now)) return undefined;
  return told("reports only", withMinutesFrom(day, rows, now.run, noTalk), ends);
}

function told(
  remedy: Remedy,
  day: DayPlan,
  ends: number,
  more: Pick<Remedied, "dropped" | "stint"> = {},
): Remedied {
  return { remedy, day, ends, inTime: ends <= day.minutes, ...more };
}

type Shorten = (minutes: StageMinutes) => Partial<StageMinutes>;

function endAfter(rows: readonly SheetRow[], now: Standing, shorten: Shorten): number {
  return rows.reduce((end, { minutes, rounds, swap, lasts }, i) => {
    if (i < now.run) return end + lasts;
    return end + cycleMinutes({ ...minutes, ...shorten(minutes) }, rounds, swap);
  }, now.behind);
}

const withSteps = (
  day: DayPlan,
  with_: (steps: readonly PlanStep[]) => readonly PlanStep[],
): DayPlan => ({
  ...day,
  steps: with_(day.steps),
  ...(day.others && {
    others: day.others.map((other) => ({ ...other, steps: with_(other.steps) })),
  }),
});

const withMinutesFrom = (
  day: DayPlan,
  rows: readonly SheetRow[],
  run: number,
  shorten: Shorten,
): DayPlan =>
  withSteps(day, (steps) =>
    steps.map((step, i) => {
      const row = rows[i];
      if (i < run || row === undefined) return step;
      return { ...step, minutes: { ...step.minutes, ...shorten(row.minutes) } };
    }),
  );
