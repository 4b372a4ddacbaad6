import type { EventEntry, Log, PredictionEntry, ReportEntry, RunEntry, SetUpEntry } from "./log.js";
import { nowStandingFor, standing } from "./standing.js";

/** What stands for the set-up of a run on a phone that does not have the log: the run's number says it. */
export const setUpNamedByRun = (run: number): string => `run-${run}`;
export const isNamedByRun = (setUp: string): boolean => /^run-\d+$/.test(setUp);

/** All that one driver did in one run of the plan, however many phones wrote it. */
export interface DriverRun {
  readonly driver: string;
  readonly run: number;
  readonly entries: readonly RunEntry[];
  readonly reports: readonly ReportEntry[];
  readonly predictions: readonly PredictionEntry[];
}

/** Names are the same when they differ in capitals or space only. */
export const sameName = (a: string, b: string): boolean => keyOf(a) === keyOf(b);
const keyOf = (name: string): string =>
  name.normalize("NFC").trim().replace(/\s+/g, " ").toLowerCase();

/** The runs of a day, by number, then in the order in which drivers come in its list. */
export function driverRuns(log: Log, event: EventEntry): DriverRun[] {
  const runs = runsOf(log, event);
  const keys = [
    ...new Set(runs.map(({ runNumber = 0, driver }) => `${runNumber} ${keyOf(driver)}`)),
  ];
  const all = keys.map((key) => driverRun(log, event, key, runs));
  const place = ({ driver }: DriverRun) => {
    const at = event.drivers.findIndex((name) => sameName(name, driver));
    return at < 0 ? event.drivers.length : at;
  };
  return all.sort((a, b) => a.run - b.run || place(a) - place(b));
}

function driverRun(log: Log, event: EventEntry, key: string, runs: readonly RunEntry[]): DriverRun {
  const entries = runs.filter(
    ({ runNumber = 0, driver }) => `${runNumber} ${keyOf(driver)}` === key,
  );
  const ids = new Set(entries.map(({ id }) => id));
  const { driver = "", runNumber: run = 0 } = entries[0] ?? {};
  const setUp = setUpOfRun(log, event, run)?.id;
  return {
    driver,
    run,
    entries,
    reports: standing(log, "report").filter((report) =>
      ids.has(nowStandingFor(log, "run", report.run)?.id ?? ""),
    ),
    predictions: standing(log, "prediction").filter(
      (one) =>
        sameName(one.by ?? "", driver) &&
        (one.setUp === setUp || one.setUp === setUpNamedByRun(run)),
    ),
  };
}

/** The runs that belong to a day: on a set-up made from its own, or written while it was the latest day. */
export function runsOf(log: Log, event: EventEntry): RunEntry[] {
  const own = setUpsOf(log, event);
  return standing(log, "run").filter(({ setUp, at }) => {
    const filed = nowStandingFor(log, "set-up", setUp);
    if (filed !== undefined) return own.has(rootOf(log, filed).id);
    return dayAt(log, at)?.id === event.id;
  });
}

/** The day that was the latest at a time; the first one before that. */
function dayAt(log: Log, at: string): EventEntry | undefined {
  const days = standing(log, "event").map((event) => ({ event, since: firstAt(log, event) }));
  const sorted = days.sort((a, b) => (a.since < b.since ? -1 : 1));
  return (sorted.filter(({ since }) => since <= at).at(-1) ?? sorted[0])?.event;
}

const firstAt = (log: Log, event: EventEntry): string => versionsBack(log, event).at(-1)?.at ?? "";

/** A day and the versions it stands for, back to the first. */
function versionsBack(log: Log, event: EventEntry): EventEntry[] {
  const versions = [event];
  for (;;) {
    const { replaces } = versions.at(-1) ?? {};
    const older = log.entries.find(({ id }) => id === replaces);
    if (older?.kind !== "event" || versions.includes(older)) return versions;
    versions.push(older);
  }
}

function setUpsOf(log: Log, event: EventEntry): Set<string> {
  const ids = versionsBack(log, event).map(({ setUp }) => setUp);
  return new Set(ids.map((id) => nowStandingFor(log, "set-up", id)?.id ?? id));
}

/** The set-up that a chain of versions starts with. */
export function rootOf(log: Log, setUp: SetUpEntry): SetUpEntry {
  const seen = new Set<string>();
  let first = setUp;
  while (first.follows !== undefined && !seen.has(first.id)) {
    seen.add(first.id);
    first = nowStandingFor(log, "set-up", first.follows) ?? first;
  }
  return first;
}

/** The set-up that was driven in a run of the plan, as filed when the run was begun. */
export function setUpOfRun(log: Log, event: EventEntry, run: number): SetUpEntry | undefined {
  const own = setUpsOf(log, event);
  const filed = standing(log, "run").filter((entry) => entry.runNumber === run);
  const setUps = filed.flatMap(({ setUp }) => nowStandingFor(log, "set-up", setUp) ?? []);
  return setUps.filter((setUp) => own.has(rootOf(log, setUp).id)).at(-1);
}
