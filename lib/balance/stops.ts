import { requireInRange } from "../check.js";
import type { Sides } from "../load/wheels.js";

/** What the wheels of an axle run into at both ends of their travel. */
export interface WheelStops {
  /** m that each wheel can still rise before its bump stop; Infinity where there is none */
  readonly bumpLeft: Sides<number>;
  /** m that each wheel can still fall before it is held; Infinity where nothing holds it */
  readonly droopLeft: Sides<number>;
  /** N/m²: how fast the bump stop's rate at the wheel grows with how far it is pressed */
  readonly bumpStop: number;
  /** N/m²: the same of what holds it in droop */
  readonly droopStop: number;
}

/** Refuses stops that make no sense, in one sentence. */
export function requireStops(end: "front" | "rear", stops: WheelStops): void {
  for (const side of ["left", "right"] as const) {
    requireInRange(`${end} ${side} travel in bump`, stops.bumpLeft[side], -1, Infinity, "m");
    requireInRange(`${end} ${side} travel in droop`, stops.droopLeft[side], -1, Infinity, "m");
  }
  requireInRange(`${end} bump stop`, stops.bumpStop, 0, 1e12, "N/m²");
  requireInRange(`${end} droop stop`, stops.droopStop, 0, 1e12, "N/m²");
}

/**
 * Force of the stops on a wheel that has moved by a travel, N; above 0 pushes it down.
 *
 * A stop's rate starts at nothing and grows with how far it is pressed: P = ½·c·δ².
 *
 * @param travel - m from rest, above 0 in bump
 * @param bumpLeft - m free before the bump stop
 * @param droopLeft - m free before droop ends
 */
export function stopForce(
  travel: number,
  bumpLeft: number,
  droopLeft: number,
  { bumpStop, droopStop }: WheelStops,
): number {
  if (travel > bumpLeft) return 0.5 * bumpStop * (travel - bumpLeft) ** 2;
  if (-travel > droopLeft) return -0.5 * droopStop * (-travel - droopLeft) ** 2;
  return 0;
}

/** How that force grows with travel, N/m. */
export function stopRate(
  travel: number,
  bumpLeft: number,
  droopLeft: number,
  { bumpStop, droopStop }: WheelStops,
): number {
  if (travel > bumpLeft) return bumpStop * (travel - bumpLeft);
  if (-travel > droopLeft) return droopStop * (-travel - droopLeft);
  return 0;
}
