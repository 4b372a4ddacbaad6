import { runsOf } from "./driver-runs.js";
import type { EventEntry, Log, RunEntry } from "./log.js";

/**
 * When a car went out in a run of the plan, by the log: the first time that the run was filed for it,
 * whatever of it was corrected since.
 *
 * @param carNumber - the car as it is counted on the day: 1 is the first
 * @returns a time as entries carry it, UTC; nothing where no run of that car was filed, or it was withdrawn
 */
export function runBegunAt(
  log: Log,
  event: EventEntry,
  run: number,
  carNumber: number,
): string | undefined {
  const driven = runsOf(log, event).filter((entry) => isOf(entry, run, carNumber));
  const times = driven.flatMap((entry) => versionsOfRun(log, entry, run, carNumber));
  return times.map(({ at }) => at).sort()[0];
}

/** What a phone filed without knowing the car says when it was reported, not when it was driven. */
const isOf = (entry: RunEntry, run: number, carNumber: number): boolean =>
  entry.runNumber === run && entry.carNumber === carNumber;

/** The entry and those it stands for, as long as they are of that run and car. */
function versionsOfRun(log: Log, entry: RunEntry, run: number, carNumber: number): RunEntry[] {
  const versions = [entry];
  for (;;) {
    const { replaces } = versions.at(-1) ?? {};
    const older = log.entries.find(({ id }) => id === replaces);
    if (older?.kind !== "run" || versions.includes(older) || !isOf(older, run, carNumber))
      return versions;
    versions.push(older);
  }
}
