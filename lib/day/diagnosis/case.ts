import type { Car } from "../../car/car.js";
import { reportsOf, triedFrom, type Whose } from "../debrief/debrief.js";
import type { Tried } from "../debrief/tried.js";
import { rootOf, setUpOfRun } from "../log/driver-runs.js";
import type { EventEntry, Log } from "../log/log.js";
import type { Report } from "../log/report.js";
import type { Venue } from "../plan/venue.js";

/** What the log has of a run for a diagnosis: which of its reports to go by is for somebody to choose. */
export interface Case {
  readonly car: Car;
  readonly measured: Car;
  readonly venue: Venue;
  readonly reports: readonly Report[];
  readonly tried: readonly Tried[];
}

/**
 * The case of a run, of one driver or one car where that is given; nothing where its set-up is not in
 * the log.
 */
export function caseOf(
  log: Log,
  event: EventEntry,
  run: number,
  whose: Whose = {},
): Case | undefined {
  const { car = 1 } = whose;
  const setUp = setUpOfRun(log, event, run, car);
  if (setUp === undefined) return undefined;
  return {
    car: setUp.car,
    measured: rootOf(log, setUp).car,
    venue: event.venue,
    reports: reportsOf(log, event, run, { ...whose, car }),
    tried: triedFrom(log, event, run, car),
  };
}
