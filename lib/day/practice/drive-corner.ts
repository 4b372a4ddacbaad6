import { type CarBalance, carBalance } from "../../balance/car-balance.js";
import type { HandlingCar } from "../../balance/handling-car.js";
import { handlingCarOf } from "../../balance/handling-car-of.js";
import { mirrorCar } from "../../balance/mirror-car.js";
import { mirrorTrim } from "../../balance/mirror-trim.js";
import type { PhaseName } from "../../balance/phases.js";
import { trim } from "../../balance/trim.js";
import type { Trim } from "../../balance/trimmed-car.js";
import type { Work } from "../../balance/whole-car.js";
import type { Car } from "../../car/car.js";
import { eachAxle, type Wheels } from "../../load/wheels.js";
import { Refusal } from "../../refusal.js";
import { GRAVITY } from "../../units.js";
import type { VenueCorner } from "../plan/venue.js";
import { cornerPath, phaseAt } from "./corner-path.js";
import { paceOf, shareOf } from "./pace.js";
import { type Pace, type Station, stationsOf } from "./stations.js";

/** One place of a driven corner: what the car did, and what the driver had to do. */
export interface CornerMoment {
  /** m from where braking begins */
  readonly distance: number;
  /** s from there */
  readonly time: number;
  readonly phase: PhaseName;
  /** m/s */
  readonly speed: number;
  /** m/s², above 0 gaining speed; a hill counts as gaining speed */
  readonly longitudinalAcceleration: number;
  /** m/s² across the path, above 0 to the left */
  readonly lateralAcceleration: number;
  /** rad of the steering wheel, above 0 to the left */
  readonly steeringWheel: number;
  /** rad, above 0 when the car goes to the left of where it points (ISO 8855) */
  readonly sideSlip: number;
  /** N under each wheel */
  readonly load: Wheels<number>;
  /** m/s² between the ends at the limit, above 0 the front slides first */
  readonly balance: number;
  /** Share of what the car can do here, 0–1. */
  readonly used: number;
  /** m along and across the direction of the start, and rad of the car's path: for a plan view */
  readonly x: number;
  readonly y: number;
  readonly heading: number;
}

/** A corner as it was driven. */
export interface DrivenCorner extends Pace {
  /**
   * "cut short" where finding out took more work than is allowed: the driver may then be slower than
   * the car, and `balance` and `used` of a place those of a place before
   */
  readonly search: "whole" | "cut short";
  /** s from the start of braking to the end */
  readonly time: number;
  readonly moments: readonly CornerMoment[];
}

/**
 * A corner driven from braking-in to power-on by a driver who knows what the car can do.
 *
 * Brakes and throttle are those of `phases`, eased where the car cannot take them; speed is set so
 * that the car is near its limit in the middle. At each place the car is in steady balance with all four wheels at work: no yaw
 * acceleration, no delay but that of the dampers.
 *
 * @param options - measured: the car whose file gave the heights, the car itself when left out;
 * wanted: m/s in the middle, the driver goes no faster, and slower when the car must
 * @throws Refusal when the car cannot stand, or cannot be driven through
 */
export function driveCorner(
  car: Car,
  corner: VenueCorner,
  options: { measured?: Car; wanted?: number } = {},
): DrivenCorner {
  const straight = handlingCarOf(car, options.measured ?? car);
  const handling = corner.direction === "left" ? straight : mirrorCar(straight);
  const work: Work = { done: 0 };
  let pace = paceOf(handling, corner, options.wanted, work);
  const most = work.done + MOST_WORK;
  for (let i = 0; i < SLOWER && work.done < most; i++) {
    const moments = momentsAt(handling, car, corner, pace, { work, most });
    const search = work.done > most ? "cut short" : pace.search;
    if (moments !== undefined) return { ...pace, search, time: moments.at(-1)?.time ?? 0, moments };
    pace = { ...pace, speed: pace.speed * 0.98 };
  }
  throw new Refusal("cannot-be-driven", `The car cannot be driven through ${corner.name}.`);
}

const SLOWER = 15;
const MOST_WORK = 45_000; // times that all four wheels may be worked out, besides those for the pace

function momentsAt(
  handling: HandlingCar,
  car: Car,
  corner: VenueCorner,
  pace: Pace,
  { work, most }: { work: Work; most: number },
) {
  const path = cornerPath(corner, pace.speed);
  const stations = stationsOf(corner, path, pace);
  const trims = trimsAt(handling, stations, work);
  if (trims === undefined) return undefined;
  const moments: CornerMoment[] = [];
  let found: CarBalance | undefined;
  stations.forEach((station, i) => {
    const before = stations[i - 1];
    const isNew = before === undefined || !isAlike(before, station);
    if (found === undefined || (isNew && work.done < most))
      found = carBalance(handling, station.driving, found, work);
    const plan = nextPlace(moments.at(-1), station, corner);
    const phase = phaseAt(path, station.distance);
    moments.push({ ...momentOf(station, trims[i] as Trim, found, car, corner), phase, ...plan });
  });
  return moments;
}

/** Whether the car does the same at two places, as all through the middle. */
function isAlike({ driving: a }: Station, { driving: b }: Station): boolean {
  const same = a.speed === b.speed && a.lateralJerk === b.lateralJerk && a.bank === b.bank;
  return same && a.longitudinalAcceleration === b.longitudinalAcceleration;
}

/** The steady balance at every station; nothing where there is none at one of them. */
function trimsAt(
  handling: HandlingCar,
  stations: readonly Station[],
  work: Work,
): Trim[] | undefined {
  const trims: Trim[] = [];
  for (const { driving, lateralAcceleration } of stations) {
    const found = trim(handling, driving, lateralAcceleration, trims.at(-1), work);
    if (found === undefined) return undefined;
    trims.push(found);
  }
  return trims;
}

function momentOf(station: Station, left: Trim, found: CarBalance, car: Car, corner: VenueCorner) {
  const { distance, time, speed, driving } = station;
  const { longitudinalAcceleration = 0, grade = 0 } = driving;
  const state = corner.direction === "left" ? left : mirrorTrim(left);
  return {
    distance,
    time,
    speed,
    longitudinalAcceleration: longitudinalAcceleration + GRAVITY * Math.sin(grade),
    lateralAcceleration: state.lateralAcceleration,
    steeringWheel: state.steer * car.steeringRatio,
    sideSlip: state.sideSlip,
    load: eachAxle(state.wheels, (sides) => ({ left: sides.left.load, right: sides.right.load })),
    balance: found.understeerMargin,
    used: shareOf(station, found),
  };
}

/** Where the path leads from one station to the next, by the mean heading between them. */
function nextPlace(last: CornerMoment | undefined, station: Station, { direction }: VenueCorner) {
  if (last === undefined) return { x: 0, y: 0, heading: 0 };
  const step = station.distance - last.distance;
  const turn = (direction === "left" ? 1 : -1) * station.curvature * step;
  const between = last.heading + turn / 2;
  return {
    x: last.x + step * Math.cos(between),
    y: last.y + step * Math.sin(between),
    heading: last.heading + turn,
  };
}
