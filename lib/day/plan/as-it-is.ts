import type { EventEntry, HappeningEntry, RunEntry } from "../log/log.js";
import { sameName } from "../log/same-name.js";
import type { PlanStep } from "./plan.js";
import { crewOf, type Round, roundsOfCrew, type Stint } from "./rotation.js";

/**
 * The runs of a car as they were really made: a change that was skipped is none, and one that was
 * made in its place is that one.
 *
 * @param car - 1 is the first car of the day, and all that are like it
 */
export function stepsAsMade(
  steps: readonly PlanStep[],
  happened: readonly HappeningEntry[],
  car: number,
): PlanStep[] {
  return steps.map((step, i) => {
    const last = happened
      .filter(({ what }) => what === "change skipped" || what === "other change")
      .filter(({ runNumber, carNumber = 1 }) => runNumber === i + 1 && carNumber === car)
      .at(-1);
    if (last === undefined) return step;
    const { minutes, note } = step;
    const kept = { ...(minutes && { minutes }), ...(note !== undefined && { note }) };
    return last.change === undefined
      ? { ...kept, kind: "no change" }
      : { ...kept, kind: "change", change: last.change };
  });
}

/** Who drives which car in a run: those who left are gone, those who joined are in the car with the fewest. */
export function crewInRun(
  { drivers, cars }: Pick<EventEntry, "drivers" | "cars">,
  happened: readonly HappeningEntry[],
  run: number,
): Stint[] {
  let crew = crewOf(drivers, cars);
  for (const { what, driver = "", carNumber, runNumber } of happened) {
    if (runNumber > run) continue;
    if (what === "driver left") crew = crew.filter((one) => !sameName(one.driver, driver));
    if (what !== "driver joined" || crew.some((one) => sameName(one.driver, driver))) continue;
    crew = [...crew, { driver, car: carNumber ?? carWithFewest(crew, cars) }];
  }
  return crew;
}

function carWithFewest(crew: readonly Stint[], cars: number): number {
  const numbers = Array.from({ length: cars }, (_, i) => i + 1);
  const count = (car: number) => crew.filter((one) => one.car === car).length;
  return numbers.reduce((best, car) => (count(car) < count(best) ? car : best), 1);
}

/**
 * Who drives when in a run of the day: as filed for each car whose run was begun, else by the
 * rotation with all that happened.
 *
 * @param filed - runs of that number that were filed with their round
 */
export function roundsInRun(
  day: Pick<EventEntry, "drivers" | "cars">,
  happened: readonly HappeningEntry[],
  run: number,
  filed: readonly RunEntry[] = [],
): Round[] {
  const begun = new Set(filed.map(({ carNumber }) => carNumber));
  const driven = placedIn([...filed, ...lateComers(happened, run, filed)]);
  const crew = roundsOfCrew(crewInRun(day, happened, run), day.cars, run);
  const planned = swapped(placesOf(crew), happened, run);
  return roundsOf([...driven, ...planned.filter(({ car }) => !begun.has(car))], day.drivers);
}

/** Two who swap in a run trade their places. */
function swapped(
  places: readonly Place[],
  happened: readonly HappeningEntry[],
  run: number,
): readonly Place[] {
  const swaps = happened.filter((one) => one.what === "drivers swapped" && one.runNumber === run);
  return swaps.reduce((before, { driver = "", other = "" }) => {
    const named = (name: string) =>
      sameName(name, driver) ? other : sameName(name, other) ? driver : name;
    return before.map((place) => ({ ...place, driver: named(place.driver) }));
  }, places);
}

/** A stint and its round; 1 is the first. */
interface Place extends Stint {
  readonly round: number;
}

const placesOf = (rounds: readonly Round[]): Place[] =>
  rounds.flatMap(({ stints }, i) => stints.map((stint) => ({ ...stint, round: i + 1 })));

const placedIn = (filed: readonly Pick<RunEntry, "driver" | "carNumber" | "round">[]): Place[] =>
  filed.flatMap(({ driver, carNumber, round }) =>
    carNumber === undefined || round === undefined ? [] : [{ driver, car: carNumber, round }],
  );

/** @param order - in which those who wait are named */
function roundsOf(places: readonly Place[], order: readonly string[]): Round[] {
  const count = Math.max(0, ...places.map(({ round }) => round));
  const place = (name: string) => (order.includes(name) ? order.indexOf(name) : order.length);
  return Array.from({ length: count }, (_, i) => {
    const own = places.filter(({ round }) => round === i + 1).sort((a, b) => a.car - b.car);
    const out = new Set(own.map(({ driver }) => driver));
    const waiting = places.map(({ driver }) => driver).filter((name) => !out.has(name));
    waiting.sort((a, b) => place(a) - place(b));
    return { stints: own.map(({ car, driver }) => ({ car, driver })), waiting };
  });
}

/** Those who joined a run that was filed already: each in a round after the others of the car. */
function lateComers(
  happened: readonly HappeningEntry[],
  run: number,
  filed: readonly RunEntry[],
): Pick<RunEntry, "driver" | "carNumber" | "round">[] {
  if (filed.length === 0) return [];
  const joined = happened.filter(
    ({ what, runNumber, driver = "" }) =>
      what === "driver joined" &&
      runNumber === run &&
      !filed.some((one) => sameName(one.driver, driver)),
  );
  return joined.map(({ driver = "", carNumber = 1 }, i) => {
    const rounds = filed.filter((one) => one.carNumber === carNumber).map(({ round = 0 }) => round);
    return { driver, carNumber, round: Math.max(0, ...rounds) + 1 + i };
  });
}

/** The day's runs of a number that were filed with who drives in which round. */
export const filedRuns = (runs: readonly RunEntry[], run: number): RunEntry[] =>
  runs.filter(({ runNumber, round }) => runNumber === run && round !== undefined);

/** Which car of the plan a car of the day is: its own, or the first, which it is like. */
export const planCarOf = (
  { others }: { readonly others?: readonly { readonly carNumber: number }[] },
  carNumber = 1,
): number => (others?.some((other) => other.carNumber === carNumber) ? carNumber : 1);
