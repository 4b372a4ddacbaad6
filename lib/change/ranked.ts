import type { Car } from "../car/car.js";
import type { Change } from "./change.js";

/**
 * Why changes of a lever cannot be put in an order of what they do for balance.
 *
 * - "best-pressure-not-known": past the pressure at which a tyre grips best, the same change moves
 *   its grip the other way
 * - "dampers": they decide how a car arrives in a turn; what they do to balance at the limit is less
 *   than anybody feels
 */
export type NotRanked = "best-pressure-not-known" | "dampers";

/** Why a lever of a car is not ranked; nothing where it is. */
export function whyNotRanked(
  car: Car,
  place: Pick<Change, "lever"> & { readonly end?: "front" | "rear" },
): NotRanked | undefined {
  const { lever, end } = place;
  if (lever === "damperBump" || lever === "damperRebound") return "dampers";
  if (lever !== "tyrePressure" || end === undefined) return undefined;
  return car[end].tyre.bestPressure === undefined ? "best-pressure-not-known" : undefined;
}
