import type { Car } from "../../car/car.js";
import { demoCar } from "../../car/demo-car.js";
import { requireInRange } from "../../check.js";
import { randomFrom, seedFrom } from "../../random.js";
import { Refusal } from "../../refusal.js";
import type { VenueCorner } from "../plan/venue.js";
import { type DriverName, driverFor, type Notes, notesOf } from "./driver.js";
import { type Hidden, hide } from "./hide.js";
import type { HelpLevel } from "./puzzle.js";

/** A puzzle: somebody changed something on a car. Seed, level, corner and car make the same one again. */
export interface Practice extends Hidden {
  /** Whole number from 0. */
  readonly seed: number;
  readonly level: HelpLevel;
  readonly corner: VenueCorner;
  /** The car as the learner knows it. */
  readonly car: Car;
  readonly driver: DriverName;
  /** What the driver writes of the changed car against the known one. */
  readonly notes: Notes;
}

/** A corner to start with. */
export const practiceCorner: VenueCorner = {
  name: "Practice corner",
  direction: "left",
  radius: 50,
  speed: 22,
};

const LARGEST_SEED = 2 ** 31 - 1;

/**
 * The puzzle of a seed: something done to the car that is inside all limits. With most help it can
 * be felt for certain; with less, now and then too little was done for anybody to tell.
 *
 * @throws Refusal when the seed is not a whole number from 0, or no change of the car can be felt
 */
export function practiceFrom(
  seed: number,
  corner: VenueCorner = practiceCorner,
  car: Car = demoCar,
  level: HelpLevel = 1,
): Practice {
  requireInRange("seed", seed, 0, LARGEST_SEED);
  if (!Number.isInteger(seed))
    throw new Refusal("not-whole", `seed is ${seed} but must be a whole number.`);
  const found = hide(car, corner, level, randomFrom(seedFrom(`hidden ${seed}`)));
  if (found === undefined)
    throw new Refusal(
      "nothing-felt",
      "Nothing that can be felt in this corner can be changed on this car.",
    );
  const driver = driverFor(seed, level);
  const notes = notesOf(driver, found.shifts, seed);
  return { seed, level, corner, car, driver, notes, ...found };
}
