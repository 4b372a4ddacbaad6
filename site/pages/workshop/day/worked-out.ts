import {
  type CarPlan,
  type CarSheet,
  carPlansOf,
  type EventEntry,
  filedRuns,
  type HappeningEntry,
  happeningsOf,
  type Log,
  type Looker,
  lookerFor,
  nowStandingFor,
  Refusal,
  type Round,
  roundsInRun,
  runsOf,
  runsOfDay,
  type SheetRow,
  setUpOfRun,
  sheetsOf,
  stepsAsMade,
} from "@rollbook/lib";
import type { Draft } from "./draft.js";

/** The plan worked out, or why the model cannot. */
export type Worked =
  | {
      /** The runs of the first car, with the times of all. */
      readonly rows: readonly SheetRow[];
      readonly sheets: readonly CarSheet[];
      readonly fault?: undefined;
    }
  | { readonly rows?: undefined; readonly sheets?: undefined; readonly fault: Refusal };

/** The open day as it is filed. */
export const eventOf = (day: Draft, log: Log): EventEntry | undefined =>
  day.event === undefined ? undefined : nowStandingFor(log, "event", day.event);

/** What happened on a day so far. */
export function happenedOn(day: Draft, log: Log): readonly HappeningEntry[] {
  const event = eventOf(day, log);
  return event === undefined ? [] : happeningsOf(log, event);
}

/** Who drives when in a run of the day, as filed where it was begun. */
export function roundsOn(day: Draft, run: number, log: Log): Round[] {
  const event = eventOf(day, log);
  const filed = event === undefined ? [] : filedRuns(runsOf(log, event), run);
  return roundsInRun(day, happenedOn(day, log), run, filed);
}

/** The day with its runs as they were really made so far. */
function asItIs(day: Draft, log: Log): readonly CarPlan[] {
  const event = eventOf(day, log);
  const happened = happenedOn(day, log);
  const runs = Array.from({ length: runsOfDay(day) }, (_, i) => i + 1);
  const rounds = runs.map((run) => Math.max(1, roundsOn(day, run, log).length));
  return carPlansOf(day).map(({ car, plan }) => ({
    car,
    plan: {
      ...plan,
      rounds,
      steps: stepsAsMade(plan.steps, happened, car),
      filed: runs.map((run) => event && setUpOfRun(log, event, run, car)?.car),
    },
  }));
}

/** What of a day the model works with: neither names of people and places nor notes. */
export function inputOf(day: Draft, log: Log): string {
  const plans = asItIs(day, log).map(({ car, plan }) => {
    const { venue, minutes, drivers = [], cars, leastFelt, steps, usual, swap, rounds } = plan;
    const bare = steps.map(({ note: _, ...step }) => step);
    const { car: measured, filed } = plan;
    const time = { minutes, usual, swap, rounds, drivers: drivers.length, cars };
    return [car, measured, venue.corners, time, leastFelt, bare, filed];
  });
  return JSON.stringify(plans);
}

let last: { input: string; worked: Worked } | undefined;

/** Works the plan out as the day is; the last answer is kept, since every view asks for it. */
export function workedOut(day: Draft, log: Log): Worked {
  const input = inputOf(day, log);
  if (last?.input !== input) last = { input, worked: workOut(day, log) };
  return withStepsOf(day, log, last.worked);
}

/** What each car was looked at with last: the cars of a day stay the same for hours. */
const lookers = new Map<number, { readonly key: string; readonly look: Looker }>();

function lookerOf({ car, plan }: CarPlan): Looker {
  const key = JSON.stringify([plan.car, plan.venue.corners]);
  const known = lookers.get(car);
  if (known?.key === key) return known.look;
  const look = lookerFor(plan);
  lookers.set(car, { key, look });
  return look;
}

function workOut(day: Draft, log: Log): Worked {
  try {
    const sheets = sheetsOf(asItIs(day, log), lookerOf);
    return { sheets, rows: sheets[0]?.rows ?? [] };
  } catch (error) {
    if (error instanceof Refusal) return { fault: error };
    throw error;
  }
}

/** The same with the steps as they are now: their notes may be other ones. */
function withStepsOf(day: Draft, log: Log, found: Worked): Worked {
  if (found.sheets === undefined) return found;
  const plans = asItIs(day, log);
  const sheets = found.sheets.map((sheet) => {
    const { steps = [] } = plans.find(({ car }) => car === sheet.car)?.plan ?? {};
    return { ...sheet, rows: sheet.rows.map((row, i) => ({ ...row, step: steps[i] ?? row.step })) };
  });
  return { sheets, rows: sheets[0]?.rows ?? [] };
}
