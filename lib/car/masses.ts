import type { Axles } from "../load/wheels.js";
import { GRAVITY } from "../units.js";
import type { Car, PlacedMass } from "./car.js";

/**
 * Several masses as one, at their common centre of gravity.
 *
 * @example
 * const light = { mass: 1, behindFrontAxle: 0, leftOfCentre: 0, height: 1 };
 * const heavy = { mass: 3, behindFrontAxle: 4, leftOfCentre: 0, height: 1 };
 * together([light, heavy]).behindFrontAxle // → 3, by hand: 3·4/(1 + 3)
 */
export function together(masses: readonly PlacedMass[]): PlacedMass {
  const mass = masses.reduce((sum, part) => sum + part.mass, 0);
  const mean = (where: "behindFrontAxle" | "leftOfCentre" | "height") =>
    mass === 0 ? 0 : masses.reduce((sum, part) => sum + part.mass * part[where], 0) / mass;
  return {
    mass,
    behindFrontAxle: mean("behindFrontAxle"),
    leftOfCentre: mean("leftOfCentre"),
    height: mean("height"),
  };
}

/** Everything on the springs: body, driver, passenger, fuel and ballast. */
export function sprungMassOf({ body, driver, passenger, fuel, ballast }: Car): PlacedMass {
  const parts = [body, driver, passenger, fuel, ballast];
  return together(parts.filter((part) => part !== undefined));
}

/** The wheels of both axles and what moves with them. */
export function unsprungMassesOf({ front, rear, wheelbase }: Car): Axles<PlacedMass> {
  const axle = ({ unsprungMass, unsprungHeight }: Car["front"], behindFrontAxle: number) => ({
    mass: unsprungMass,
    behindFrontAxle,
    leftOfCentre: 0,
    height: unsprungHeight,
  });
  return { front: axle(front, 0), rear: axle(rear, wheelbase) };
}

/**
 * The whole car with everything in it.
 *
 * @example
 * totalMassOf(demoCar).height // → 0.49463, by hand: 534.2 kg·m/1080 kg
 */
export function totalMassOf(car: Car): PlacedMass {
  const unsprung = unsprungMassesOf(car);
  return together([sprungMassOf(car), unsprung.front, unsprung.rear]);
}

/** Share of a placed mass that the front axle carries, 0–1 when it lies between the axles. */
export function frontShareOf({ behindFrontAxle }: PlacedMass, wheelbase: number): number {
  return 1 - behindFrontAxle / wheelbase; // moments about the rear axle
}

/**
 * Weight on each axle at rest, N.
 *
 * @example
 * axleWeightsOf(demoCar).front // → 5505.2, by hand: 561.375·9.80665
 */
export function axleWeightsOf(car: Car): Axles<number> {
  const total = totalMassOf(car);
  const front = total.mass * GRAVITY * frontShareOf(total, car.wheelbase);
  return { front, rear: total.mass * GRAVITY - front };
}
