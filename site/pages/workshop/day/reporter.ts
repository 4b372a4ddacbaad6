import {
  crewInRun,
  type DriverRun,
  driverRuns,
  type EventEntry,
  happeningsOf,
  nowStandingFor,
  planCarOf,
  type RunEntry,
  sameName,
  setUpNamedByRun,
  setUpOfRun,
  standing,
} from "@rollbook/lib";
import { theLog, write } from "../../../store/log.js";
import { dayAtDesk, isPhone } from "../paddock/place.js";
import { theDay } from "./open-day.js";

/** The open day as it is filed; on a phone that joined a desk, the desk's. */
export function filedDay(): EventEntry | undefined {
  const event = isPhone() ? dayAtDesk.now.value : (theDay()?.event ?? "");
  return nowStandingFor(theLog(), "event", event);
}

/** What a driver did in a run so far, with a day or without one. */
export function driverRun(driver: string, run: number): DriverRun | undefined {
  const event = filedDay();
  if (event !== undefined)
    return driverRuns(theLog(), event).find(
      (one) => one.run === run && sameName(one.driver, driver),
    );
  const log = theLog();
  const own = (setUp: string) => setUp === setUpNamedByRun(run);
  const entries = standing(log, "run").filter(
    (entry) => own(entry.setUp) && sameName(entry.driver, driver),
  );
  const ids = new Set(entries.map(({ id }) => id));
  const reports = standing(log, "report").filter((report) => ids.has(report.run));
  const predictions = standing(log, "prediction").filter(
    ({ by = "", setUp }) => sameName(by, driver) && own(setUp),
  );
  const unknown = { car: 1, road: "dry", leftOut: false } as const;
  return { ...unknown, driver, run, entries, reports, predictions };
}

/** The set-up of a driver's run by its entry, or by the run's number where this device does not have it. */
export function setUpFor(driver: string, run: number): string {
  const event = filedDay();
  const filed = event && setUpOfRun(theLog(), event, run, carOf(event, driver, run));
  return filed?.id ?? setUpNamedByRun(run);
}

/** The car of the plan that a driver is in. */
function carOf(event: EventEntry, driver: string, run: number): number {
  const known = driverRun(driver, run)?.car;
  const crew = crewInRun(event, happeningsOf(theLog(), event), run);
  return known ?? planCarOf(event, crew.find((one) => sameName(one.driver, driver))?.car);
}

/** The run that a driver's reports belong to; written now where it is not in the log. */
export function runFor(driver: string, run: number): Pick<RunEntry, "id"> {
  const [known] = driverRun(driver, run)?.entries ?? [];
  return (
    known ??
    write({ kind: "run", setUp: setUpFor(driver, run), author: driver, driver, runNumber: run })
  );
}
