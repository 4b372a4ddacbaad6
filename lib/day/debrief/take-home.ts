import type { Car } from "../../car/car.js";
import type { Change } from "../../change/change.js";
import { type DriverRun, driverRuns } from "../log/driver-runs.js";
import type { EventEntry, Expectation, Log, PredictionEntry } from "../log/log.js";
import type { Report } from "../log/report.js";
import { nameKey, sameName } from "../log/same-name.js";
import { type Compared, comparedIn, inOtherCar, onOtherRoad, testedIn } from "./debrief.js";
import { LEAST_FELT_SHIFT } from "./feel.js";
import type { FeltCell } from "./felt.js";

/** What one driver takes home of a day: run by run what was expected, felt and predicted. */
export interface TakeHome {
  readonly driver: string;
  readonly runs: readonly TakeHomeRun[];
}

/** One run of it. */
export interface TakeHomeRun {
  readonly run: number;
  readonly car: number;
  /** The car of the run before and what was changed on it; left out where that is not known. */
  readonly tested?: { readonly before: Car; readonly changes: readonly Change[] };
  readonly predictions: readonly PredictionEntry[];
  readonly reports: readonly Report[];
  /** Felt beside the model, where the two runs can be compared. */
  readonly cells: readonly FeltCell[];
  /** What the model says of those places; left out where there are none. */
  readonly model?: Expectation;
  readonly showed: Showed;
}

/** What a run showed a driver. */
export type Showed =
  /** There is no run before, or none of what was said can be laid beside it. */
  | "nothing-to-compare"
  /** It was taken out of the comparisons. */
  | "left-out"
  /** The run before was on a wet road and this one on a dry one, or the other way. */
  | "other-road"
  /** The driver was in another car before. */
  | "other-car"
  /** Several things were changed at once. */
  | "confounded"
  /** Nothing was changed: it shows how much feeling moves by itself. */
  | "nothing-changed"
  | "as-predicted"
  | "otherwise"
  | "nothing-felt"
  /** None of these three in more than half of the places. */
  | "mixed";

/** What each driver of a day takes home, in the order of its list; those who neither expected nor reported anything nothing. */
export function takeHomesOf(log: Log, event: EventEntry): TakeHome[] {
  const runs = driverRuns(log, event).filter(
    ({ run, reports, predictions }) => run > 0 && reports.length + predictions.length > 0,
  );
  const names = new Map(runs.map(({ driver }) => [nameKey(driver), driver]));
  const inOrder = [...event.drivers, ...names.values()].filter(
    (name, i, all) => names.has(nameKey(name)) && all.findIndex((one) => sameName(one, name)) === i,
  );
  return inOrder.map((driver) => ({
    driver,
    runs: runs
      .filter((one) => sameName(one.driver, driver))
      .map((one) => takeHomeRun(log, event, one)),
  }));
}

function takeHomeRun(log: Log, event: EventEntry, one: DriverRun): TakeHomeRun {
  const { run, car, predictions } = one;
  const own = (name: string) => sameName(name, one.driver);
  const compared = comparedIn(log, event, run, car);
  const cells = compared.find(({ driver }: Compared) => own(driver))?.cells ?? [];
  const tested = testedIn(log, event, run, car);
  const model = wayOf(cells);
  return {
    ...{ run, car, predictions, reports: one.reports.map(({ report }) => report), cells },
    ...(tested && { tested }),
    ...(model && { model }),
    showed: showedBy(cells, {
      leftOut: one.leftOut,
      otherRoad: onOtherRoad(log, event, run, car).some(own),
      otherCar: inOtherCar(log, event, run, car).some(own),
      nothingChanged: tested?.changes.length === 0,
    }),
  };
}

interface Why {
  readonly leftOut: boolean;
  readonly otherRoad: boolean;
  readonly otherCar: boolean;
  readonly nothingChanged: boolean;
}

/** What more than half of the places show. */
function showedBy(cells: readonly FeltCell[], why: Why): Showed {
  if (why.leftOut) return "left-out";
  if (why.otherRoad) return "other-road";
  if (why.otherCar) return "other-car";
  const told = cells.filter(({ verdict }) => verdict !== "no comparison");
  if (told.length === 0) return "nothing-to-compare";
  if (why.nothingChanged) return "nothing-changed";
  const count = (...verdicts: FeltCell["verdict"][]) =>
    told.filter(({ verdict }) => verdicts.includes(verdict)).length;
  if (count("confounded") > 0) return "confounded";
  const [same, nothing] = [count("match"), count("nothing felt")];
  const most = (number: number) => 2 * number > told.length;
  if (most(same)) return "as-predicted";
  if (most(nothing)) return "nothing-felt";
  return most(told.length - same - nothing) ? "otherwise" : "mixed";
}

/** Which way the model moves balance in the mean of the places reported. */
function wayOf(cells: readonly FeltCell[]): Expectation | undefined {
  if (cells.length === 0) return undefined;
  const mean = cells.reduce((sum, { predicted }) => sum + predicted, 0) / cells.length;
  if (Math.abs(mean) < LEAST_FELT_SHIFT) return "no change";
  return mean > 0 ? "front slides first" : "rear slides first";
}
