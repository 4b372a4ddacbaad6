import { stages } from "../plan/minutes.js";
import type { EventEntry, HappeningEntry, Log, RoadState } from "./log.js";
import { nowStandingFor, standing } from "./standing.js";

/** What happened on a day and was not taken back, by time. */
export const happeningsOf = (log: Log, event: Pick<EventEntry, "id">): HappeningEntry[] =>
  standing(log, "happening").filter(
    ({ day }) => day === event.id || nowStandingFor(log, "event", day)?.id === event.id,
  );

/** How the road was in a run; in the run in which that changed, it is both. */
export type RoadOfRun = "dry" | "wet" | "both";

/** How the road was by what is said of one driver's run; wet is all that is not dry. */
export const roadOfState = (road: RoadState): RoadOfRun => (road === "dry" ? "dry" : "wet");

/**
 * How the road was in a run, by what happened: dry until somebody says otherwise.
 *
 * Weather that turns while drivers are out makes their run both; before, that run is of the new
 * weather; after it, only the next one.
 */
export function roadInRun(happened: readonly HappeningEntry[], run: number): RoadOfRun {
  let road: RoadOfRun = "dry";
  for (const { what, runNumber, stage = "teach", conditions } of happened) {
    if (what !== "weather" || conditions?.road === undefined) continue;
    const now = roadOfState(conditions.road);
    const place = stages.indexOf(stage) - stages.indexOf("drive");
    if (runNumber === run && place === 0 && now !== road) road = "both";
    else if (runNumber < run || (runNumber === run && place < 0)) road = now;
  }
  return road;
}

/** Whether a run of a car was taken out of the day's comparisons. */
export const isLeftOut = (happened: readonly HappeningEntry[], run: number, car: number): boolean =>
  happened.some(
    ({ what, runNumber, carNumber = car }) =>
      what === "run does not count" && runNumber === run && carNumber === car,
  );
