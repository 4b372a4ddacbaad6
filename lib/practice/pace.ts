import { type CarBalance, carBalance } from "../balance/car-balance.js";
import type { HandlingCar } from "../balance/handling-car.js";
import { GRAVITY } from "../units.js";
import type { VenueCorner } from "../workshop/venue.js";
import { cornerPath } from "./corner-path.js";
import { acrossAt, type Pace, stationsOf } from "./stations.js";

/** Share of what the car can do that a driver uses where it is least – common practice, no source. */
const USED = 0.96;
/** A driver who is near the limit off the pedals too does not ease them for this little more. */
const SLACK = 0.01;
const EFFORTS = [1, 0.8, 0.6, 0.45, 0.3];
const SLOWEST = 2; // m/s
const FASTEST = 120; // m/s

/**
 * The pace of a driver who uses nearly all of the grip in the middle, and goes easier on the pedals,
 * then slower, where braking or power would ask for more than there is.
 *
 * @param wanted - m/s in the middle; not more than this
 */
export function paceOf(car: HandlingCar, corner: VenueCorner, wanted: number = FASTEST): Pace {
  const middle = greatestSpeed(wanted, (speed) => usedInMiddle(car, corner, speed));
  const fits = (effort: number) => usedAt(car, corner, { speed: middle, effort }) <= USED + SLACK;
  const effort = EFFORTS.find(fits);
  if (effort !== undefined) return { speed: middle, effort };
  const least = Math.min(...EFFORTS);
  const slower = (speed: number) => usedAt(car, corner, { speed, effort: least });
  return { speed: greatestSpeed(middle, slower), effort: least };
}

/** The greatest speed at which a share of the grip is enough, m/s. */
function greatestSpeed(wanted: number, used: (speed: number) => number): number {
  let [slow, fast] = [Math.min(SLOWEST, wanted), wanted];
  if (used(fast) <= USED) return fast;
  for (let i = 0; i < 20; i++) {
    const between = (slow + fast) / 2;
    if (used(between) <= USED) slow = between;
    else fast = between;
  }
  return slow;
}

function usedInMiddle(car: HandlingCar, corner: VenueCorner, speed: number): number {
  const uphill = GRAVITY * Math.sin(Math.atan(corner.grade ?? 0));
  const found = carBalance(car, { speed, longitudinalAcceleration: uphill });
  return shareOf(acrossAt(corner, 1 / corner.radius, speed), found);
}

/** The greatest share of its grip that a car uses anywhere in a corner. */
function usedAt(car: HandlingCar, corner: VenueCorner, pace: Pace): number {
  let last: CarBalance | undefined;
  let greatest = 0;
  for (const station of stationsOf(corner, cornerPath(corner, pace.speed), pace)) {
    last = carBalance(car, station.driving, last);
    greatest = Math.max(greatest, shareOf(station.lateralAcceleration, last));
  }
  return greatest;
}

/** Share of what a car can do that a turn asks for; all of it where the car can do nothing. */
export function shareOf(lateralAcceleration: number, found: CarBalance): number {
  return found.lateralAcceleration > 0 ? lateralAcceleration / found.lateralAcceleration : 1;
}
