import { crewInRun, planCarOf } from "../plan/as-it-is.js";
import { happeningsOf, isLeftOut, type RoadOfRun, roadInRun, roadOfState } from "./happenings.js";
import type {
  EventEntry,
  HappeningEntry,
  Log,
  PredictionEntry,
  ReportEntry,
  RunEntry,
  SetUpEntry,
} from "./log.js";
import { nameKey, sameName } from "./same-name.js";
import { nowStandingFor, standing } from "./standing.js";

/** What stands for the set-up of a run on a phone that does not have the log: the run's number says it. */
export const setUpNamedByRun = (run: number): string => `run-${run}`;
export const isNamedByRun = (setUp: string): boolean => /^run-\d+$/.test(setUp);

/** All that one driver did in one run of the plan, however many phones wrote it. */
export interface DriverRun {
  readonly driver: string;
  readonly run: number;
  /** The car of the plan: 1 is the first, and all that are like it. */
  readonly car: number;
  /** How the road was. */
  readonly road: RoadOfRun;
  /** Whether the run does not count. */
  readonly leftOut: boolean;
  readonly entries: readonly RunEntry[];
  /** The last one for each place of the lap. */
  readonly reports: readonly ReportEntry[];
  readonly predictions: readonly PredictionEntry[];
}

/** The runs of a day, by number, then in the order in which drivers come in its list. */
export function driverRuns(log: Log, event: EventEntry): DriverRun[] {
  const runs = runsOf(log, event);
  const keys = [
    ...new Set(runs.map(({ runNumber = 0, driver }) => `${runNumber} ${nameKey(driver)}`)),
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
    ({ runNumber = 0, driver }) => `${runNumber} ${nameKey(driver)}` === key,
  );
  const ids = new Set(entries.map(({ id }) => id));
  const { driver = "", runNumber: run = 0 } = entries[0] ?? {};
  const happened = happeningsOf(log, event);
  const car = carDriven(log, event, entries, happened);
  const setUp = setUpOfRun(log, event, run, car)?.id;
  return {
    ...{ driver, run, car, entries },
    road: roadDriven(entries, happened),
    leftOut: isLeftOut(happened, run, car),
    reports: lastOfEachPlace(
      standing(log, "report").filter((report) =>
        ids.has(nowStandingFor(log, "run", report.run)?.id ?? ""),
      ),
    ),
    predictions: standing(log, "prediction").filter(
      (one) =>
        sameName(one.by ?? "", driver) &&
        (one.setUp === setUp || one.setUp === setUpNamedByRun(run)),
    ),
  };
}

/** The car of a driver's run: by the set-up that was filed, by its number, else by who drives what. */
function carDriven(
  log: Log,
  event: EventEntry,
  entries: readonly RunEntry[],
  happened: readonly HappeningEntry[],
): number {
  for (const { setUp } of entries) {
    const filed = nowStandingFor(log, "set-up", setUp);
    const car = filed && carOfSetUp(log, event, filed);
    if (car !== undefined) return car;
  }
  const [{ driver = "", runNumber = 0 } = {}] = entries;
  const named = entries.find(({ carNumber }) => carNumber !== undefined)?.carNumber;
  const crew = crewInRun(event, happened, runNumber);
  return planCarOf(event, named ?? crew.find((one) => sameName(one.driver, driver))?.car);
}

function roadDriven(entries: readonly RunEntry[], happened: readonly HappeningEntry[]): RoadOfRun {
  const said = entries.find(({ conditions }) => conditions?.road !== undefined)?.conditions?.road;
  return said === undefined ? roadInRun(happened, entries[0]?.runNumber ?? 0) : roadOfState(said);
}

/** One driver's reports of a run on the same part of the same corner are one: the last one stands. */
function lastOfEachPlace(reports: readonly ReportEntry[]): ReportEntry[] {
  const placeOf = ({ report: { corner, phase } }: ReportEntry) =>
    corner === undefined || phase === undefined ? undefined : `${nameKey(corner)}\n${phase}`;
  const last = new Map(reports.map((entry) => [placeOf(entry) ?? entry.id, entry]));
  return reports.filter((entry) => last.get(placeOf(entry) ?? entry.id) === entry);
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
  const versions = versionsBack(log, event);
  return now(log, [
    ...versions.map(({ setUp }) => setUp),
    ...versions.flatMap(({ others = [] }) => others.map(({ setUp }) => setUp)),
  ]);
}

const now = (log: Log, ids: readonly string[]): Set<string> =>
  new Set(ids.map((id) => nowStandingFor(log, "set-up", id)?.id ?? id));

/** The car of the plan that a set-up belongs to; nothing where it is of another day. */
function carOfSetUp(log: Log, event: EventEntry, setUp: SetUpEntry): number | undefined {
  const root = rootOf(log, setUp).id;
  const versions = versionsBack(log, event);
  if (
    now(
      log,
      versions.map((version) => version.setUp),
    ).has(root)
  )
    return 1;
  const others = versions.flatMap((version) => version.others ?? []);
  return others.find((other) => now(log, [other.setUp]).has(root))?.carNumber;
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

/**
 * The set-up that was driven in a run of the plan, as filed when the run was begun.
 *
 * @param car - 1 is the first car of the plan, and all that are like it
 */
export function setUpOfRun(
  log: Log,
  event: EventEntry,
  run: number,
  car = 1,
): SetUpEntry | undefined {
  const filed = standing(log, "run").filter((entry) => entry.runNumber === run);
  const setUps = filed.flatMap(({ setUp }) => nowStandingFor(log, "set-up", setUp) ?? []);
  return setUps.filter((setUp) => carOfSetUp(log, event, setUp) === car).at(-1);
}
