import { requireInRange } from "../../check.js";
import { Refusal } from "../../refusal.js";

/** Three numbers along three axes at right angles. */
export type Three = readonly [number, number, number];

/**
 * What a phone felt at one moment, in its own axes. Whether a browser turns all signs of the force
 * round, or gives turn rates in another order, does not matter: it is found.
 */
export interface Felt {
  /** s, later than the moment before */
  readonly time: number;
  /** m/s² of acceleration and of what holds it up against gravity together: specific force */
  readonly force: Three;
  /** rad/s about the same axes */
  readonly turn: Three;
}

/** What satellites told at one moment. */
export interface Fix {
  /** s on the same clock, as it came: it may be late */
  readonly time: number;
  /** m/s over ground, at least 0 */
  readonly speed: number;
  /** rad of the direction of travel, clockwise from north; nothing where it is not told */
  readonly course?: number;
}

/** What a phone that was fixed in a car took down. */
export interface Ride {
  readonly felt: readonly Felt[];
  /** None where position was not allowed. */
  readonly fixes: readonly Fix[];
}

const LONGEST = 3 * 3600; // s
const SHORTEST = 10; // s
const SLOWEST = 15; // samples a second: roll of a body goes at 1 to 3 Hz

/**
 * Passes a ride through that can be worked with.
 *
 * @throws Refusal for a ride too short, too long, with times that go back, numbers that are none, or
 * fewer than 15 samples a second in the mean
 */
export function requireRide(ride: Ride): Ride {
  const { felt, fixes } = ride;
  const [first, last] = [felt[0]?.time ?? 0, felt.at(-1)?.time ?? 0];
  requireInRange("length of the ride", last - first, SHORTEST, LONGEST, "s");
  requireInRange("samples a second", (felt.length - 1) / (last - first), SLOWEST, 2000);
  for (const [i, { time, force, turn }] of felt.entries()) {
    if (![time, ...force, ...turn].every(Number.isFinite))
      throw new Refusal("not-a-number", `Sample ${i + 1} of the ride holds what is no number.`);
    if (i > 0 && !(time > (felt[i - 1]?.time ?? 0)))
      throw new Refusal("out-of-range", `The time of sample ${i + 1} is not after the one before.`);
  }
  for (const { time, speed } of fixes) {
    requireInRange("speed of satellites", speed, 0, 150, "m/s");
    requireInRange("time of a speed", time, -Infinity, Infinity, "s");
  }
  return ride;
}
