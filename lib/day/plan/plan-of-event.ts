import type { EventEntry, Log } from "../log/log.js";
import { nowStandingFor } from "../log/standing.js";
import type { Plan } from "./plan.js";

/** The plan of a day in a log; nothing when the set-up it starts from is not there. */
export function planOfEvent(log: Log, event: EventEntry): Plan | undefined {
  const start = nowStandingFor(log, "set-up", event.setUp);
  if (start === undefined) return undefined;
  const { venue, minutes, drivers, cars, steps } = event;
  return { car: start.car, venue, minutes, drivers, cars, steps };
}
