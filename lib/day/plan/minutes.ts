import type { CarLever } from "../../car/car.js";
import type { Change, EndLever } from "../../change/change.js";

/** Minutes of each stage of a cycle, in the order in which they come. */
export interface StageMinutes {
  readonly teach: number;
  readonly predict: number;
  readonly change: number;
  /** for each round in which all cars are out once */
  readonly drive: number;
  readonly report: number;
  readonly debrief: number;
  readonly log: number;
}

/** One cycle with all cars out once, 29 minutes – common practice, no source. */
export const usualMinutes: StageMinutes = {
  teach: 4,
  predict: 5,
  change: 4,
  drive: 8,
  report: 2,
  debrief: 5,
  log: 1,
};

/** The stages in the order in which they come. */
export const stages = Object.keys(usualMinutes) as (keyof StageMinutes)[];

/**
 * Minutes in which all cars go out so many times, and drivers get out and in between.
 *
 * @param drive - minutes of each round
 * @param swap - minutes between two rounds
 * @example
 * drivingMinutes(8, 3, 2) // → 28, by hand: 3·8 + 2·2
 */
export const drivingMinutes = (drive: number, rounds = 1, swap = 0): number =>
  rounds * drive + (rounds - 1) * swap;

/**
 * Minutes of a whole cycle in which all cars go out so many times.
 *
 * @param swap - minutes between two rounds
 * @example
 * cycleMinutes(usualMinutes, 2) // → 37, by hand: 29 + 8
 */
export function cycleMinutes(minutes: StageMinutes, rounds = 1, swap = 0): number {
  const driving = drivingMinutes(minutes.drive, rounds, swap);
  return stages.reduce((sum, stage) => sum + (stage === "drive" ? driving : minutes[stage]), 0);
}

/** Minutes with hand tools to make a change at one end, both sides – common practice, no source. */
export const minutesToMake: Readonly<Record<EndLever | CarLever, number>> = {
  barPosition: 4,
  tyrePressure: 4,
  damperBump: 3,
  damperRebound: 3,
  seatTurns: 8,
  camber: 12,
  toe: 12,
  springRate: 25,
  rollCentreHeight: 30,
  brakeFrontShare: 2,
  driver: 2,
  passenger: 2,
  fuel: 4,
  ballast: 4,
};

const TURNS_WITHIN = 2; // turns of a seat that those minutes are for
const MINUTES_A_TURN = 2; // for each turn beyond, both sides

/**
 * Minutes to make a change by its size: many turns of a seat take longer than few – common practice,
 * no source.
 *
 * @example
 * minutesOfChange({ lever: "seatTurns", end: "rear", by: -10 }) // → 24, by hand: 8 + (10 − 2)·2
 */
export function minutesOfChange({ lever, by }: Pick<Change, "lever" | "by">): number {
  const beyond = lever === "seatTurns" ? Math.max(0, Math.abs(by) - TURNS_WITHIN) : 0;
  return minutesToMake[lever] + MINUTES_A_TURN * beyond;
}

/**
 * Minutes to make several changes one after the other; left and right of one lever are one job, which
 * takes as long as the larger.
 */
export function minutesFor(changes: readonly Change[]): number {
  const jobs = new Map<string, number>();
  for (const change of changes) {
    const job = `${change.lever} ${"end" in change ? change.end : ""}`;
    jobs.set(job, Math.max(jobs.get(job) ?? 0, minutesOfChange(change)));
  }
  return [...jobs.values()].reduce((sum, minutes) => sum + minutes, 0);
}
