import { requireInRange } from "../../check.js";
import { Refusal } from "../../refusal.js";

/** One car in one round: who drives, who sits out. */
export interface Stint {
  /** 1 is the first car */
  readonly car: number;
  readonly driver: string;
}

/** All cars out together, once. */
export interface Round {
  readonly stints: readonly Stint[];
  /** Those who do not drive: they watch a corner, write, or hold the clock. */
  readonly waiting: readonly string[];
}

/**
 * Who drives which car when, for one run of the plan.
 *
 * Each driver keeps one car for the whole day, so that runs can be compared; who goes first moves
 * on by one from run to run, so that nobody always has the fresh tyres.
 *
 * @param drivers - names, each once
 * @param cars - how many cars
 * @param run - 1 is the first run
 * @throws Refusal when there is no driver, no car, or a name stands twice
 * @example
 * rotation(["Ash", "Birch", "Cedar"], 2)[0].stints.map(({ driver }) => driver)
 * // → ["Ash", "Birch"]
 */
export function rotation(drivers: readonly string[], cars: number, run = 1): Round[] {
  requireInRange("number of drivers", drivers.length, 1, 200);
  requireInRange("number of cars", cars, 1, 50);
  requireInRange("run", run, 1, 1000);
  const twice = drivers.find((name, i) => drivers.indexOf(name) !== i);
  if (twice !== undefined)
    throw new Refusal("driver-twice", `driver ${JSON.stringify(twice)} stands twice.`);
  return roundsOfCrew(crewOf(drivers, cars), cars, run);
}

/** Each driver with the car that they keep: one after the other, so that all cars have about as many. */
export const crewOf = (drivers: readonly string[], cars: number): Stint[] =>
  drivers.map((driver, i) => ({ driver, car: (i % cars) + 1 }));

/** Who drives when, for one run, where it is known who drives which car. */
export function roundsOfCrew(crew: readonly Stint[], cars: number, run: number): Round[] {
  const queues = Array.from({ length: cars }, (_, i) => {
    const own = crew.filter(({ car }) => car === i + 1).map(({ driver }) => driver);
    return shifted(own, run - 1);
  });
  const drivers = crew.map(({ driver }) => driver);
  const rounds = Math.max(0, ...queues.map(({ length }) => length));
  return Array.from({ length: rounds }, (_, round) => roundOf(queues, round, drivers));
}

function roundOf(queues: readonly string[][], round: number, drivers: readonly string[]): Round {
  const stints = queues.flatMap((queue, i) => {
    const driver = queue[round];
    return driver === undefined ? [] : [{ car: i + 1, driver }];
  });
  const waiting = drivers.filter((name) => stints.every(({ driver }) => driver !== name));
  return { stints, waiting };
}

function shifted<T>(items: readonly T[], by: number): T[] {
  const first = items.length === 0 ? 0 : by % items.length;
  return [...items.slice(first), ...items.slice(0, first)];
}
