import { standingCar } from "../../balance/standing-car.js";
import { canonical } from "../log/canonical.js";
import { type DriverRun, driverRuns, rootOf, setUpOfRun } from "../log/driver-runs.js";
import type { EventEntry, Log } from "../log/log.js";
import type { Comparison, Report } from "../log/report.js";
import { sameName } from "../log/same-name.js";
import { testedChanges } from "../plan/single.js";
import { type FeltCell, feltAgainstPredicted } from "./felt.js";
import { type GroupCell, groupSummary } from "./group.js";
import type { NamedReport } from "./named-report.js";
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

/** Whose reports: one driver's, those on one car of the plan, or all. */
export interface Whose {
  readonly driver?: string | undefined;
  /** 1 is the first car of the plan, and all that are like it. */
  readonly car?: number | undefined;
}

const isOf = ({ driver, car }: Whose, one: DriverRun): boolean =>
  (driver === undefined || sameName(one.driver, driver)) && (car ?? one.car) === one.car;

/** The reports of a run. */
export const reportsOf = (log: Log, event: EventEntry, run: number, whose: Whose = {}): Report[] =>
  namedReportsOf(log, event, run, whose).map(({ report }) => report);

/** The reports of a run, each with who made it. */
export function namedReportsOf(
  log: Log,
  event: EventEntry,
  run: number,
  whose: Whose = {},
): NamedReport[] {
  return driverRuns(log, event)
    .filter((one) => one.run === run && isOf(whose, one))
    .flatMap((one) => said(one).map((report) => ({ driver: one.driver, report })));
}

/** A driver's run and the one before it in the same car, whether or not they can be laid side by side. */
interface Pair {
  readonly now: DriverRun;
  readonly before: DriverRun | undefined;
}

function pairsIn(log: Log, event: EventEntry, run: number, car?: number): Pair[] {
  const runs = driverRuns(log, event).filter(({ leftOut }) => !leftOut);
  return runs
    .filter((one) => one.run === run && one.reports.length > 0 && isOf({ car }, one))
    .map((now) => {
      const before = runs.filter(
        (one) =>
          one.run < run && one.run > 0 && one.car === now.car && sameName(one.driver, now.driver),
      );
      return { now, before: before.at(-1) };
    });
}

/** A wet road and a dry one, or one that changed, are no test of anything else. */
const onSameRoad = ({ road }: DriverRun, other: DriverRun): boolean =>
  road === other.road && road !== "both";

/** Felt beside predicted for every driver of a run who drove the same car before, on the same road. */
export function comparedIn(log: Log, event: EventEntry, run: number, car?: number): Compared[] {
  return pairsIn(log, event, run, car).flatMap(({ now, before }) => {
    if (before !== undefined && !onSameRoad(now, before)) return [];
    const cells = comparedWith(log, event, before, now);
    return cells === undefined ? [] : [{ driver: now.driver, cells }];
  });
}

/** Drivers of a run whose run before in the same car was on another road: dry against wet. */
export function onOtherRoad(log: Log, event: EventEntry, run: number, car?: number): string[] {
  return pairsIn(log, event, run, car).flatMap(({ now, before }) =>
    before === undefined || onSameRoad(now, before) ? [] : [now.driver],
  );
}

/** Drivers of a run who drove other cars before, and this one never: nothing of theirs can be compared. */
export function inOtherCar(log: Log, event: EventEntry, run: number, car?: number): string[] {
  const runs = driverRuns(log, event);
  return pairsIn(log, event, run, car).flatMap(({ now, before }) => {
    const drove = runs.some((one) => one.run < run && sameName(one.driver, now.driver));
    return before === undefined && drove ? [now.driver] : [];
  });
}

function comparedWith(log: Log, event: EventEntry, before: DriverRun | undefined, now: DriverRun) {
  const was = before && setUpOfRun(log, event, before.run, now.car);
  const is = setUpOfRun(log, event, now.run, now.car);
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

/** What was tested on a car in a run against the one before it: more than one is confounded. */
export function testedIn(log: Log, event: EventEntry, run: number, car = 1) {
  const was = setUpOfRun(log, event, run - 1, car);
  const is = setUpOfRun(log, event, run, car);
  if (was === undefined || is === undefined) return undefined;
  const measured = rootOf(log, is).car;
  const changes = testedChanges(standingCar(was.car, measured), standingCar(is.car, measured));
  return { before: was.car, measured, changes };
}

/**
 * Single changes that were made from the set-up of a run already, and what most drivers said of
 * them; none that rain came with.
 */
export function triedFrom(log: Log, event: EventEntry, run: number, car = 1): Tried[] {
  const from = setUpOfRun(log, event, run, car);
  if (from === undefined) return [];
  const runs = driverRuns(log, event).filter((one) => one.car === car && !one.leftOut);
  const numbers = [...new Set(runs.map((one) => one.run))];
  return numbers.flatMap((number) => {
    const tested = testedIn(log, event, number, car);
    const [change, ...others] = tested?.changes ?? [];
    if (tested === undefined || change === undefined || others.length > 0) return [];
    if (canonical(tested.before) !== canonical(from.car)) return [];
    const elsewhere = onOtherRoad(log, event, number, car);
    const told = runs.filter(
      (one) => one.run === number && !elsewhere.some((name) => sameName(name, one.driver)),
    );
    const outcome = mostSaid(told.flatMap(said));
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
