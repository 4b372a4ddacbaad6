import type { UnitSystem } from "../units.js";
import { type FeltCell, feltAgainstPredicted } from "./felt.js";
import { type GroupCell, groupSummary } from "./group.js";
import type { Log, RunEntry } from "./log.js";
import type { Report } from "./report.js";
import { nowStandingFor, standing } from "./standing.js";
import type { Venue } from "./venue.js";
import { type Version, versionsOf } from "./versions.js";

/** What one driver felt from one run to the next. */
export interface DriverDebrief {
  readonly driver: string;
  readonly run: RunEntry;
  readonly before: RunEntry;
  readonly cells: readonly FeltCell[];
}

/** One run of the plan against the one before. */
export interface RunDebrief {
  /** 1 is the first run of the plan. */
  readonly run: number;
  /** The set-up that was driven; nothing when its entry is missing. */
  readonly version?: Version;
  readonly drivers: readonly DriverDebrief[];
  /** Without names. */
  readonly group: readonly GroupCell[];
}

/**
 * Felt against predicted for every run of a log that some driver can compare with a run before.
 *
 * Each driver is compared with the last run of their own; runs without a number are left out.
 */
export function debriefOf(log: Log, venue: Venue, system: UnitSystem = "metric"): RunDebrief[] {
  const versions = versionsOf(log, system);
  const drivers = standing(log, "run").flatMap((run, i, runs) => {
    const before = runs
      .slice(0, i)
      .filter(({ driver }) => driver === run.driver)
      .at(-1);
    return before === undefined ? [] : debriefOfDriver(log, venue, versions, before, run);
  });
  const numbers = [...new Set(drivers.flatMap(({ run }) => run.run ?? []))].sort((a, b) => a - b);
  return numbers.map((number) => {
    const here = drivers.filter(({ run }) => run.run === number);
    const version = versions.find(({ entry }) => entry.id === here[0]?.run.setUp);
    const group = groupSummary(here.map(({ cells }) => cells));
    return { run: number, ...(version && { version }), drivers: here, group };
  });
}

function debriefOfDriver(
  log: Log,
  venue: Venue,
  versions: readonly Version[],
  before: RunEntry,
  run: RunEntry,
): DriverDebrief[] {
  const versionOf = ({ setUp }: RunEntry) => versions.find(({ entry }) => entry.id === setUp);
  const [old, now] = [versionOf(before), versionOf(run)];
  if (old === undefined || now === undefined) return [];
  const cells = feltAgainstPredicted({
    before: old.entry.car,
    after: now.entry.car,
    measured: now.measured,
    venue,
    reportsBefore: reportsOn(log, before),
    reportsAfter: reportsOn(log, run),
  });
  return [{ driver: run.driver, run, before, cells }];
}

/** The reports that were filed on a run. */
export function reportsOn(log: Log, run: RunEntry): Report[] {
  return standing(log, "report")
    .filter((entry) => nowStandingFor(log, "run", entry.run)?.id === run.id)
    .map(({ report }) => report);
}
