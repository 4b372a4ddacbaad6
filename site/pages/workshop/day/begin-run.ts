import {
  type Car,
  canonical,
  type EventEntry,
  nowStandingFor,
  type RunEntry,
  rotation,
  runsOf,
  type SetUpEntry,
  sameName,
  setUpOfRun,
} from "@rollbook/lib";
import { theLog, write } from "../../../store/log.js";
import { fileDay, theDay } from "./open-day.js";
import { filedDay } from "./reporter.js";
import { worked } from "./worked.js";

/** What was filed when a run was begun. */
interface Begun {
  readonly setUp: string;
  readonly runs: number;
}

/**
 * Files the set-up of a run of the plan as the car now stands, and a run for each driver.
 *
 * Nothing is filed twice; where the plan was changed since, new versions stand for the old runs.
 */
export function beginRun(run: number): Begun | undefined {
  const day = fileDay();
  const event = filedDay();
  const row = day && worked(day).rows?.[run - 1];
  if (event === undefined || row === undefined) return undefined;
  const setUp = setUpWith(row.car, run, event);
  const stints = rotation(event.drivers, event.cars, run).flatMap(({ stints }) => stints);
  const filed = stints.filter(({ driver, car }) => fileRun(event, run, driver, car, setUp));
  return { setUp, runs: filed.length };
}

/** How the log stands to a run of the plan: nothing filed, all of it, or something else. */
export type FiledFor = "nothing" | "as planned" | "otherwise";

/** Asks that; the plan is worked out for it. */
export function filedFor(run: number): FiledFor {
  const [day, event] = [theDay(), filedDay()];
  const row = day && worked(day).rows?.[run - 1];
  const setUp = event && setUpOfRun(theLog(), event, run);
  if (event === undefined || row === undefined || setUp === undefined) return "nothing";
  const stands = canonical(setUp.car) === canonical(row.car);
  const runs = runsOf(theLog(), event);
  const all = event.drivers.every((driver) => ownRun(runs, run, driver)?.setUp === setUp.id);
  return stands && all ? "as planned" : "otherwise";
}

/** The set-up of that car: the run's own, the one before, the day's first, or a new version. */
function setUpWith(car: Car, run: number, event: EventEntry): string {
  const log = theLog();
  const before = lastSetUp(run, event);
  const known = [
    setUpOfRun(log, event, run),
    before,
    nowStandingFor(log, "set-up", event.setUp),
  ].find((setUp) => setUp !== undefined && canonical(setUp.car) === canonical(car));
  if (known !== undefined) return known.id;
  return write({ kind: "set-up", car, ...(before && { follows: before.id }) }).id;
}

function lastSetUp(run: number, event: EventEntry): SetUpEntry | undefined {
  for (let earlier = run - 1; earlier > 0; earlier--) {
    const setUp = setUpOfRun(theLog(), event, earlier);
    if (setUp !== undefined) return setUp;
  }
  return nowStandingFor(theLog(), "set-up", event.setUp);
}

/** Files one driver's run where the log does not say the same already. */
function fileRun(
  event: EventEntry,
  run: number,
  driver: string,
  car: number,
  setUp: string,
): boolean {
  const old = ownRun(runsOf(theLog(), event), run, driver);
  if (old?.setUp === setUp) return false;
  const { id, at: _, author: _before, ...kept } = old ?? {};
  write({
    ...kept,
    kind: "run",
    setUp,
    driver,
    runNumber: run,
    carNumber: car,
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
