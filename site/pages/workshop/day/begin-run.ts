import {
  type Car,
  canonical,
  type EventEntry,
  nowStandingFor,
  planCarOf,
  type RunEntry,
  runsOf,
  type SetUpEntry,
  type Stint,
  sameName,
  setUpOfRun,
} from "@rollbook/lib";
import { theLog, write } from "../../../store/log.js";
import { type Draft, rootSetUp } from "./draft.js";
import { fileDay, theDay } from "./open-day.js";
import { filedDay } from "./reporter.js";
import { roundsOn, worked } from "./worked.js";

/** What was filed when a run was begun. */
interface Begun {
  readonly setUp: string;
  readonly runs: number;
}

/** A stint with the round that it is in; 1 is the first. */
interface Placed extends Stint {
  readonly round: number;
}

/**
 * Files the set-up of a run of the plan as the car now stands, and a run for each of its drivers.
 *
 * Nothing is filed twice; where the plan was changed since, new versions stand for the old runs.
 *
 * @param car - 1 is the first car of the plan, and all that are like it
 */
export function beginRun(run: number, car = 1): Begun | undefined {
  const day = fileDay();
  const event = filedDay();
  if (day === undefined || event === undefined) return undefined;
  const row = rowOf(day, run, car);
  if (row === undefined) return undefined;
  const stints = stintsOf(day, event, run, car);
  const setUp = setUpWith(row.car, run, car, event);
  const filed = stints.filter((stint) => fileRun(event, run, stint, setUp));
  return { setUp, runs: filed.length };
}

const rowOf = (day: Draft, run: number, car: number) =>
  worked(day).sheets?.find((sheet) => sheet.car === car)?.rows[run - 1];

const stintsOf = (day: Draft, event: EventEntry, run: number, car: number): Placed[] =>
  roundsOn(day, run).flatMap(({ stints }, i) =>
    stints
      .filter((stint) => planCarOf(event, stint.car) === car)
      .map((stint) => ({ ...stint, round: i + 1 })),
  );

/** How the log stands to a run of the plan: nothing filed, all of it, or something else. */
export type FiledFor = "nothing" | "as planned" | "otherwise";

/** Asks that; the plan is worked out for it. */
export function filedFor(run: number, car = 1): FiledFor {
  const [day, event] = [theDay(), filedDay()];
  const row = day && rowOf(day, run, car);
  const setUp = event && setUpOfRun(theLog(), event, run, car);
  if (day === undefined || event === undefined || row === undefined || setUp === undefined)
    return "nothing";
  const runs = runsOf(theLog(), event);
  const all = stintsOf(day, event, run, car).every(
    ({ driver }) => ownRun(runs, run, driver)?.setUp === setUp.id,
  );
  const stands = canonical(setUp.car) === canonical(row.car);
  return stands && all ? "as planned" : "otherwise";
}

/** The set-up of that car: the run's own, the one before, the day's first, or a new version. */
function setUpWith(body: Car, run: number, car: number, event: EventEntry): string {
  const log = theLog();
  const before = lastSetUp(run, car, event);
  const known = [
    setUpOfRun(log, event, run, car),
    before,
    nowStandingFor(log, "set-up", rootSetUp(event, car)),
  ].find((setUp) => setUp !== undefined && canonical(setUp.car) === canonical(body));
  if (known !== undefined) return known.id;
  return write({ kind: "set-up", car: body, ...(before && { follows: before.id }) }).id;
}

function lastSetUp(run: number, car: number, event: EventEntry): SetUpEntry | undefined {
  for (let earlier = run - 1; earlier > 0; earlier--) {
    const setUp = setUpOfRun(theLog(), event, earlier, car);
    if (setUp !== undefined) return setUp;
  }
  return nowStandingFor(theLog(), "set-up", rootSetUp(event, car));
}

/** Files one driver's run where the log does not say the same already. */
function fileRun(
  event: EventEntry,
  run: number,
  { driver, car, round }: Placed,
  setUp: string,
): boolean {
  const old = ownRun(runsOf(theLog(), event), run, driver);
  if (old?.setUp === setUp) return false;
  const { id, at: _, author: _before, ...kept } = old ?? {};
  write({
    ...kept,
    ...{ kind: "run", setUp, driver, runNumber: run, carNumber: car, round },
    ...(id !== undefined && { replaces: id }),
  });
  return true;
}

/** The driver's run as filed here; what a phone filed without the set-up stays beside it. */
function ownRun(runs: readonly RunEntry[], run: number, driver: string): RunEntry | undefined {
  return runs.find(
    (entry) =>
      entry.runNumber === run &&
      sameName(entry.driver, driver) &&
      nowStandingFor(theLog(), "set-up", entry.setUp) !== undefined,
  );
}
