import type { Driving } from "../../balance/driving.js";
import type { VenueCorner } from "../plan/venue.js";
import { type CornerPath, pedalsAt } from "./corner-path.js";

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
  /** m/s² across the path, into the turn: v² times curvature */
  readonly lateralAcceleration: number;
  readonly driving: Driving;
}

const STEP = 2; // m between stations
const MOST_STATIONS = 250; // further apart where there would be more

/** How hard a corner is driven. */
export interface Pace {
  /** m/s in the middle */
  readonly speed: number;
  /** Share of the usual braking and power, 0–1. */
  readonly effort: number;
}

/** Speeds along a corner that is driven at a pace, with the pedals of `pedalsAt`. */
export function stationsOf(
  corner: VenueCorner,
  path: CornerPath,
  pace: Pace,
  apart: number = STEP,
): Station[] {
  const count = Math.min(MOST_STATIONS, Math.ceil(path.end / apart));
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
  return {
    distance,
    time,
    speed,
    curvature,
    lateralAcceleration: speed ** 2 * curvature,
    driving: {
      ...roadOf(corner, curvature),
      speed,
      longitudinalAcceleration: pedals,
      lateralJerk: jerkAt(path, distance, speed, pedals),
    },
  };
}

/**
 * The road of a corner, as a left one. It leans as much as the line bends: none on the straight, all
 * of it in the middle.
 */
export function roadOf(
  { grade = 0, banking = 0, radius }: VenueCorner,
  curvature: number = 1 / radius,
): Pick<Driving, "grade" | "bank"> {
  return { grade: Math.atan(grade), bank: banking * curvature * radius };
}

/** d(ay)/dt = v·d(ay)/ds, by a small step ahead, m/s³. */
function jerkAt(path: CornerPath, at: number, speed: number, pedals: number) {
  const ahead = 0.1; // m
  const now = speed ** 2 * path.curvature(at);
  const then = Math.max(1, speed ** 2 + 2 * pedals * ahead) * path.curvature(at + ahead);
  return (speed * (then - now)) / ahead;
}
