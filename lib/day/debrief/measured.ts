import { type StandingCar, standingCar } from "../../balance/standing-car.js";
import type { Change } from "../../change/change.js";
import { figuresOf } from "../../change/figures.js";
import { backToBase, type PlacedRun } from "../../measure/back-to-base.js";
import { circleLimit, usualTools } from "../../measure/circle.js";
import { circleDifference, type TwoSetUps } from "../../measure/circle-difference.js";
import { predictedCircle } from "../../measure/circle-predicted.js";
import { combined } from "../../measure/combined.js";
import {
  type Changed,
  changedFrom,
  type Difference,
  type RunMean,
} from "../../measure/difference.js";
import { lapTimeDifference, lapTimeOf as lapTimeOfRun } from "../../measure/lap-difference.js";
import type { Measured } from "../../measure/measured.js";
import { orUndefined } from "../../refusal.js";
import { canonical } from "../log/canonical.js";
import { driverRuns, rootOf, setUpOfRun } from "../log/driver-runs.js";
import { happeningsOf, isLeftOut, roadInRun } from "../log/happenings.js";
import type { EventEntry, Log, MeasurementEntry } from "../log/log.js";
import { measurable, measuredOn, valuesOf } from "../log/measured-entries.js";
import { nameKey } from "../log/same-name.js";
import { testedChanges } from "../plan/single.js";

/** What was measured of a change, beside what the model says of the same. */
export interface MeasuredChange {
  /** The run with it; it is held against the set-up of the run before. */
  readonly run: number;
  /** 1 is the first car of the plan. */
  readonly car: number;
  /** What was tested: nothing in a run without a change, more than one is confounded. */
  readonly changes: readonly Change[];
  /** m/s² of the hardest turn on the circle. */
  readonly circle?: { readonly difference: Difference; readonly predicted?: number };
  /** s of a lap; the model drives no laps. */
  readonly lapTime?: { readonly difference: Difference };
  /** rad/(m/s²) */
  readonly rollGradient?: { readonly difference: Changed; readonly predicted?: number };
}

/** Runs of one car of a day: with the set-up before, and with the one that is tested. */
interface Sides {
  readonly log: Log;
  readonly event: EventEntry;
  readonly car: number;
  readonly before: readonly number[];
  readonly after: readonly number[];
}

/**
 * What was measured of what was tested in a run, from all runs of the day with the one set-up and the
 * other on the same road: laps of a driver are held against that driver's own only.
 *
 * Where a driver went back to the one set-up, what drifted between is told and taken off.
 *
 * Nothing where the set-ups are not both in the log, or nothing was measured on both.
 */
export function measuredIn(
  log: Log,
  event: EventEntry,
  run: number,
  car = 1,
): MeasuredChange | undefined {
  const [was, is] = [run - 1, run].map((one) => setUpOfRun(log, event, one, car));
  if (was === undefined || is === undefined) return undefined;
  const measured = rootOf(log, is).car;
  const [before, after] = [standingCar(was.car, measured), standingCar(is.car, measured)];
  const sides = sidesOf(log, event, run, car);
  const found = {
    ...given("circle", circleOf(sides, before, after)),
    ...given("lapTime", lapTimeOf(sides)),
    ...given("rollGradient", rollGradientOf(sides, before, after)),
  };
  if (Object.keys(found).length === 0) return undefined;
  return { run, car, changes: testedChanges(before, after), ...found };
}

/** All that was measured of the changes of a day, by run and car. */
export function measuredOfDay(log: Log, event: EventEntry): MeasuredChange[] {
  const entries = measuredOn(log, event);
  const lapped = driverRuns(log, event).filter(({ entries }) => entries.some(hasLaps));
  const runs = [...entries.map(({ runNumber }) => runNumber), ...lapped.map((one) => one.run)];
  const cars = [1, ...(event.others ?? []).map(({ carNumber }) => carNumber)];
  return [...new Set(runs)]
    .sort((a, b) => a - b)
    .flatMap((run) => cars.flatMap((car) => measuredIn(log, event, run, car) ?? []));
}

const hasLaps = ({ lapTimes = [] }: { readonly lapTimes?: readonly number[] }) =>
  lapTimes.length > 0;

const given = <Name extends string, T>(name: Name, value: T | undefined) =>
  (value === undefined ? {} : { [name]: value }) as { readonly [key in Name]?: T };

/** The runs that may be held against each other: one without a change only against the one before. */
function sidesOf(log: Log, event: EventEntry, run: number, car: number): Sides {
  const happened = happeningsOf(log, event);
  const road = roadInRun(happened, run);
  const set = (one: number) => {
    const setUp = setUpOfRun(log, event, one, car);
    return setUp === undefined ? "" : canonical(setUp.car);
  };
  const last = Math.max(0, ...driverRuns(log, event).map((one) => one.run));
  const all = Array.from({ length: Math.max(last, run) }, (_, i) => i + 1).filter(
    (one) => !isLeftOut(happened, one, car) && roadInRun(happened, one) === road && road !== "both",
  );
  const [was, is] = [set(run - 1), set(run)];
  const only = was === is;
  const like = (setUp: string, own: number) =>
    all.filter((one) => (only ? one === own : set(one) === setUp));
  return { log, event, car, before: like(was, run - 1), after: like(is, run) };
}

/** Laps of a run by who drove them. */
type Driven = ReadonlyMap<string, readonly number[]>;

/** All runs of both in the order of the day, each by whom it was driven. */
function placedRuns(
  { before, after }: Sides,
  lapsOf: (run: number) => Driven,
  meanOf: (laps: readonly number[]) => RunMean,
): PlacedRun[] {
  return [...before, ...after].flatMap((run) =>
    [...lapsOf(run)].map(([driver, laps]) => ({
      ...{ driver, run, tested: after.includes(run) },
      ...meanOf(laps),
    })),
  );
}

/** Runs side by side, each driver's own only, in the order in which they were driven. */
function pairedRuns({ before, after }: Sides, lapsOf: (run: number) => Driven): TwoSetUps {
  const [was, is] = [before, after].map((runs) => runs.map(lapsOf));
  const drivers = new Set((was ?? []).flatMap((run) => [...run.keys()]));
  const own = (runs: readonly Driven[] = [], driver: string) =>
    runs.flatMap((run) => (run.has(driver) ? [run.get(driver) ?? []] : []));
  const pairs = [...drivers].flatMap((driver) => {
    const [a, b] = [own(was, driver), own(is, driver)];
    return a.slice(0, b.length).map((laps, i) => [laps, b[i] ?? []] as const);
  });
  return { before: pairs.map(([laps]) => laps), after: pairs.map(([, laps]) => laps) };
}

const entriesIn = ({ log, event, car }: Sides, run: number): MeasurementEntry[] =>
  measuredOn(log, event).filter(
    ({ runNumber, carNumber = 1 }) => runNumber === run && carNumber === car,
  );

function circleOf(sides: Sides, before: StandingCar, after: StandingCar) {
  const lapsOf = (run: number): Driven => {
    const laps = new Map<string, readonly number[]>();
    for (const entry of entriesIn(sides, run)) {
      const times = valuesOf(entry, measurable.circleLap);
      const key = nameKey(entry.driver ?? "");
      if (times.length > 0) laps.set(key, [...(laps.get(key) ?? []), ...times]);
    }
    return laps;
  };
  const radius = [...sides.before, ...sides.after]
    .flatMap((run) => entriesIn(sides, run))
    .flatMap((entry) => valuesOf(entry, measurable.circleRadius))
    .at(-1);
  if (radius === undefined) return undefined;
  const circle = {
    radius: { value: radius, spread: usualTools.radius },
    stopwatch: usualTools.stopwatch,
  };
  const meanOf = (laps: readonly number[]) => circleLimit(circle, laps);
  const difference =
    orUndefined(() => backToBase(placedRuns(sides, lapsOf, meanOf))) ??
    orUndefined(() => circleDifference(circle, pairedRuns(sides, lapsOf)));
  const predicted = orUndefined(() => {
    const [was, is] = [before, after].map(({ handling }) => predictedCircle(handling, radius));
    return (is?.limit ?? 0) - (was?.limit ?? 0);
  });
  return difference && { difference, ...given("predicted", predicted) };
}

function lapTimeOf(sides: Sides) {
  const { log, event, car } = sides;
  const driven = driverRuns(log, event).filter((one) => one.car === car);
  const lapsOf = (run: number): Driven => {
    const own = driven.filter((one) => one.run === run && one.entries.some(hasLaps));
    return new Map(
      own.map(({ driver, entries }) => [
        nameKey(driver),
        entries.flatMap(({ lapTimes = [] }) => lapTimes),
      ]),
    );
  };
  const meanOf = (laps: readonly number[]) => lapTimeOfRun(laps, usualTools.stopwatch);
  const difference =
    orUndefined(() => backToBase(placedRuns(sides, lapsOf, meanOf))) ??
    orUndefined(() => lapTimeDifference(pairedRuns(sides, lapsOf), usualTools.stopwatch));
  return difference && { difference };
}

function rollGradientOf(sides: Sides, before: StandingCar, after: StandingCar) {
  const found = (runs: readonly number[]): Measured | undefined => {
    const read = runs
      .flatMap((run) => entriesIn(sides, run))
      .flatMap(({ measurements }) => measurements)
      .filter(({ what, spread = 0 }) => what === measurable.rollGradient.what && spread > 0);
    return read.length === 0
      ? undefined
      : combined(read.map(({ value, spread = 0 }) => ({ value, spread })));
  };
  const [was, is] = [found(sides.before), found(sides.after)];
  if (was === undefined || is === undefined) return undefined;
  const predicted = orUndefined(
    () => figuresOf(after).rollGradient - figuresOf(before).rollGradient,
  );
  return { difference: changedFrom(was, is), ...given("predicted", predicted) };
}
