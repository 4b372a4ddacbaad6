import { standingCar } from "../../balance/standing-car.js";
import { canonical } from "../log/canonical.js";
import { type DriverRun, driverRuns, rootOf, sameName, setUpOfRun } from "../log/driver-runs.js";
import type { EventEntry, Log } from "../log/log.js";
import type { Comparison, Report } from "../log/report.js";
import { testedChanges } from "../plan/single.js";
import { type FeltCell, feltAgainstPredicted } from "./felt.js";
import { type GroupCell, groupSummary } from "./group.js";
import type { Tried } from "./tried.js";

/** What one driver felt in a run beside what the model says of it. */
export interface Compared {
  readonly driver: string;
  readonly cells: readonly FeltCell[];
}

/** One run of a day against the one before. */
export interface RunDebrief {
  /** 1 is the first run of the plan. */
  readonly run: number;
  readonly drivers: readonly Compared[];
  /** Without names. */
  readonly group: readonly GroupCell[];
}

/**
 * Felt beside predicted for every run of a day that some driver can compare with a run before.
 *
 * @example
 * const [event] = standing(exampleLog, "event");
 * debriefOf(exampleLog, event)[0].run // → 2, in the first nobody has a run before
 */
export function debriefOf(log: Log, event: EventEntry): RunDebrief[] {
  return runsWithReports(log, event).flatMap((run) => {
    const drivers = comparedIn(log, event, run);
    if (drivers.length === 0) return [];
    return [{ run, drivers, group: groupSummary(drivers.map(({ cells }) => cells)) }];
  });
}

const said = ({ reports }: DriverRun): Report[] => reports.map(({ report }) => report);

/** The runs of a day in which something was reported, by number. */
export function runsWithReports(log: Log, event: EventEntry): number[] {
  const runs = driverRuns(log, event).filter(({ run, reports }) => run > 0 && reports.length > 0);
  return [...new Set(runs.map(({ run }) => run))];
}

/** Every report of a run; of one driver where a name is given. */
export function reportsOf(log: Log, event: EventEntry, run: number, driver?: string): Report[] {
  return driverRuns(log, event)
    .filter((one) => one.run === run && (driver === undefined || sameName(one.driver, driver)))
    .flatMap(said);
}

/** Felt beside predicted for every driver of a run who drove one before. */
export function comparedIn(log: Log, event: EventEntry, run: number): Compared[] {
  const runs = driverRuns(log, event);
  return runs
    .filter((one) => one.run === run && one.reports.length > 0)
    .flatMap((now) => {
      const before = runs.filter(
        (one) => one.run < run && one.run > 0 && sameName(one.driver, now.driver),
      );
      const cells = comparedWith(log, event, before.at(-1), now);
      return cells === undefined ? [] : [{ driver: now.driver, cells }];
    });
}

function comparedWith(log: Log, event: EventEntry, before: DriverRun | undefined, now: DriverRun) {
  const was = before && setUpOfRun(log, event, before.run);
  const is = setUpOfRun(log, event, now.run);
  if (before === undefined || was === undefined || is === undefined) return undefined;
  const measured = rootOf(log, is).car;
  return feltAgainstPredicted({
    before: standingCar(was.car, measured),
    after: standingCar(is.car, measured),
    venue: event.venue,
    reportsBefore: said(before),
    reportsAfter: said(now),
  });
}

/** What was tested in a run against the one before it: more than one is confounded. */
export function testedIn(log: Log, event: EventEntry, run: number) {
  const [was, is] = [setUpOfRun(log, event, run - 1), setUpOfRun(log, event, run)];
  if (was === undefined || is === undefined) return undefined;
  const measured = rootOf(log, is).car;
  const changes = testedChanges(standingCar(was.car, measured), standingCar(is.car, measured));
  return { before: was.car, changes };
}

/** Single changes that were made from the set-up of a run already, and what most drivers said of them. */
export function triedFrom(log: Log, event: EventEntry, run: number): Tried[] {
  const from = setUpOfRun(log, event, run);
  if (from === undefined) return [];
  const numbers = [...new Set(driverRuns(log, event).map((one) => one.run))];
  return numbers.flatMap((number) => {
    const tested = testedIn(log, event, number);
    const [change, ...others] = tested?.changes ?? [];
    if (tested === undefined || change === undefined || others.length > 0) return [];
    if (canonical(tested.before) !== canonical(from.car)) return [];
    const outcome = mostSaid(reportsOf(log, event, number));
    return outcome === undefined ? [] : [{ change, outcome }];
  });
}

/** What was said most often against the last run. */
function mostSaid(reports: readonly Report[]): Comparison | undefined {
  const counts = new Map<Comparison, number>();
  for (const { againstLastRun } of reports)
    if (againstLastRun !== undefined)
      counts.set(againstLastRun, (counts.get(againstLastRun) ?? 0) + 1);
  return [...counts].sort(([, a], [, b]) => b - a)[0]?.[0];
}
