import { type CarBalance, carBalance } from "../balance/car-balance.js";
import type { Driving } from "../balance/driving.js";
import type { HandlingCar } from "../balance/handling-car.js";
import { GRAVITY } from "../units.js";
import { levelRoadAccelerationOf, type VenueCorner } from "../workshop/venue.js";
import { type CornerPath, cornerPath, pedalsAt } from "./corner-path.js";

/** One place of the driven line and what the car is to do there. */
export interface Station {
  /** m from where braking begins */
  readonly distance: number;
  /** s from there */
  readonly time: number;
  /** m/s */
  readonly speed: number;
  /** 1/m */
  readonly curvature: number;
  /** m/s² that the tyres are asked for across the car, into the turn */
  readonly lateralAcceleration: number;
  readonly driving: Driving;
}

const STEP = 2; // m between stations

/** How hard a corner is driven. */
export interface Pace {
  /** m/s in the middle */
  readonly speed: number;
  /** Share of the usual braking and power, 0–1. */
  readonly effort: number;
}

/** Speeds along a corner that is driven at a pace, with the pedals of `pedalsAt`. */
export function stationsOf(corner: VenueCorner, path: CornerPath, pace: Pace): Station[] {
  const count = Math.ceil(path.end / STEP);
  const at = (i: number) => (path.end * i) / count;
  const squares = speedSquares(path, pace, count);
  let time = 0;
  return squares.map((square, i) => {
    const now = Math.sqrt(square);
    if (i > 0) time += (at(i) - at(i - 1)) / ((now + Math.sqrt(squares[i - 1] ?? square)) / 2);
    return stationAt(corner, path, at(i), now, time, pace.effort);
  });
}

/** v² at each station: v·dv/ds = a, from the middle backwards and forwards. */
function speedSquares(path: CornerPath, { speed, effort }: Pace, count: number): number[] {
  const step = path.end / count;
  const gain = (i: number) => 2 * step * pedalsAt(path, (i + 0.5) * step, effort);
  const start = Array.from({ length: count }, (_, i) => i)
    .filter((i) => (i + 0.5) * step < path.middleFrom)
    .reduce((square, i) => square - gain(i), speed ** 2);
  const squares = [start];
  for (let i = 0; i < count; i++) squares.push(Math.max(1, (squares[i] ?? start) + gain(i)));
  return squares;
}

function stationAt(
  corner: VenueCorner,
  path: CornerPath,
  distance: number,
  speed: number,
  time: number,
  effort: number,
): Station {
  const curvature = path.curvature(distance);
  const pedals = pedalsAt(path, distance, effort);
  const uphill = GRAVITY * Math.sin(Math.atan(corner.grade ?? 0));
  return {
    distance,
    time,
    speed,
    curvature,
    lateralAcceleration: acrossAt(corner, curvature, speed),
    driving: {
      speed,
      longitudinalAcceleration: pedals + uphill,
      lateralJerk: jerkAt(corner, path, distance, speed, pedals),
    },
  };
}

/** The road leans as much as the line bends: none on the straight, all of it in the middle. */
function acrossAt(corner: VenueCorner, curvature: number, speed: number): number {
  if (curvature === 0) return 0;
  const banking = (corner.banking ?? 0) * curvature * corner.radius;
  return Math.max(0, levelRoadAccelerationOf({ ...corner, speed, radius: 1 / curvature, banking }));
}

/** d(ay)/dt = v·d(ay)/ds, by a small step ahead, m/s³. */
function jerkAt(corner: VenueCorner, path: CornerPath, at: number, speed: number, pedals: number) {
  const ahead = 0.1; // m
  const faster = Math.sqrt(Math.max(1, speed ** 2 + 2 * pedals * ahead));
  const now = acrossAt(corner, path.curvature(at), speed);
  const then = acrossAt(corner, path.curvature(at + ahead), faster);
  return (speed * (then - now)) / ahead;
}

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
