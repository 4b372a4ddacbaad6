import type { Car } from "../../car/car.js";
import { namedReportsOf, triedFrom, type Whose } from "../debrief/debrief.js";
import type { NamedReport } from "../debrief/named-report.js";
import type { Tried } from "../debrief/tried.js";
import { rootOf, setUpOfRun } from "../log/driver-runs.js";
import type { EventEntry, Log } from "../log/log.js";
import type { Report } from "../log/report.js";
import { sameName } from "../log/same-name.js";
import type { Venue } from "../plan/venue.js";

/** What the log has of a run for a diagnosis: which of its reports to go by is for somebody to choose. */
export interface Case {
  readonly car: Car;
  readonly measured: Car;
  readonly venue: Venue;
  readonly reports: readonly Report[];
  readonly tried: readonly Tried[];
  /** All that was said of this car in the run, whoever was asked for. */
  readonly named: readonly NamedReport[];
  /** Minutes that whoever leads the day gives a change on this car; left out: not said. */
  readonly changeMinutes?: number;
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
  const named = namedReportsOf(log, event, run, { car });
  const changeMinutes = changeMinutesOf(event, car);
  return {
    car: setUp.car,
    measured: rootOf(log, setUp).car,
    venue: event.venue,
    reports: named.filter(isOf(whose)).map(({ report }) => report),
    tried: triedFrom(log, event, run, car),
    named,
    ...(changeMinutes !== undefined && { changeMinutes }),
  };
}

const isOf =
  ({ driver }: Whose) =>
  (one: NamedReport): boolean =>
    driver === undefined || sameName(one.driver, driver);

const changeMinutesOf = ({ usual, others = [] }: EventEntry, car: number): number | undefined =>
  others.find(({ carNumber }) => carNumber === car)?.changeMinutes ?? usual?.change;
