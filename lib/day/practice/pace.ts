import { type BalanceStart, type CarBalance, carBalance } from "../../balance/car-balance.js";
import type { HandlingCar } from "../../balance/handling-car.js";
import type { Work } from "../../balance/whole-car.js";
import type { VenueCorner } from "../plan/venue.js";
import { cornerPath } from "./corner-path.js";
import { type Pace, roadOf, type Station, stationsOf } from "./stations.js";

/** A pace, and whether the search for it came to its end. */
export interface FoundPace extends Pace {
  readonly search: "whole" | "cut short";
}

/** Times that all four wheels may be worked out in search of a pace: then the best so far is taken. */
const MOST_WORK = 45_000;

/** Share of what the car can do that a driver uses where it is least – common practice, no source. */
const USED = 0.96;
/** A driver who is near the limit off the pedals too does not ease them for this little more. */
const SLACK = 0.01;
const EFFORTS = [1, 0.8, 0.6, 0.45, 0.3];
const SLOWEST = 2; // m/s
const FASTEST = 120; // m/s
const LOOK_EVERY = 8; // m between places where a driver looks at what is left

/**
 * The pace of a driver who uses nearly all of the grip in the middle, and goes easier on the pedals,
 * then slower, where braking or power would ask for more than there is.
 *
 * @param wanted - m/s in the middle; not more than this
 * @param work - counts how often the wheels were worked out
 */
export function paceOf(
  car: HandlingCar,
  corner: VenueCorner,
  wanted: number = FASTEST,
  work: Work = { done: 0 },
): FoundPace {
  const most = work.done + MOST_WORK;
  const pace = searchedPace(car, corner, wanted, work, () => work.done > most);
  return { ...pace, search: work.done > most ? "cut short" : "whole" };
}

function searchedPace(
  car: HandlingCar,
  corner: VenueCorner,
  wanted: number,
  work: Work,
  isSpent: () => boolean,
): Pace {
  const middle = Math.min(wanted, fastestMiddle(car, corner, work));
  const used = lookAhead(car, corner, work, isSpent);
  const effort = EFFORTS.find((one) => used({ speed: middle, effort: one }) <= USED + SLACK);
  if (effort !== undefined) return { speed: middle, effort };
  const least = Math.min(...EFFORTS);
  return { speed: greatestSpeed(middle, (speed) => used({ speed, effort: least })), effort: least };
}

const ROUNDS = 12;

/** The speed in the middle that uses just what a driver uses, m/s: V² = used·ay·R, ay at that speed. */
function fastestMiddle(car: HandlingCar, corner: VenueCorner, work: Work): number {
  const road = roadOf(corner);
  const { radius: cornerRadius } = corner;
  let found = carBalance(car, { ...road, cornerRadius }, undefined, work);
  let speed = Math.sqrt(USED * found.lateralAcceleration * cornerRadius);
  for (let i = 0; i < ROUNDS; i++) {
    found = carBalance(car, { ...road, speed }, found, work);
    const next = Math.sqrt(USED * found.lateralAcceleration * cornerRadius);
    if (Math.abs(next - speed) < 1e-4) break;
    speed = next;
  }
  return Math.min(FASTEST, speed);
}

/** The greatest speed at which a share of the grip is enough, m/s. */
function greatestSpeed(fastest: number, used: (speed: number) => number): number {
  let [slow, fast] = [Math.min(SLOWEST, fastest), fastest];
  for (let i = 0; i < ROUNDS; i++) {
    const between = (slow + fast) / 2;
    if (used(between) <= USED) slow = between;
    else fast = between;
  }
  return slow;
}

/**
 * The greatest share of its grip that a car uses anywhere in a corner, up to where it is too much;
 * too much itself where nobody may look any more.
 */
function lookAhead(
  car: HandlingCar,
  corner: VenueCorner,
  work: Work,
  isSpent: () => boolean,
): (pace: Pace) => number {
  let last: BalanceStart | undefined;
  return (pace) => {
    let greatest = 0;
    for (const station of stationsOf(corner, cornerPath(corner, pace.speed), pace, LOOK_EVERY)) {
      if (isSpent()) return Infinity;
      const found = carBalance(car, station.driving, last, work);
      last = found;
      greatest = Math.max(greatest, shareOf(station, found));
      if (greatest > 1) break;
    }
    return greatest;
  };
}

/** Share of what a car can do that a place asks for; all of it where it cannot even brake or drive so. */
export function shareOf({ lateralAcceleration }: Station, found: CarBalance): number {
  const share = found.lateralAcceleration > 0 ? lateralAcceleration / found.lateralAcceleration : 1;
  return found.given ? share : Math.max(1, share);
}
