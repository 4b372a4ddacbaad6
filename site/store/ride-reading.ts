import type { Typed } from "./car-draft.js";
import type { Measurements } from "./measured-sheets.js";
import { type Stamp, withReading, withStamp } from "./measured-sheets.js";

/** A roll gradient as a form of readings takes it: its value, and how far it may be off. */
export interface RideReading {
  readonly gradient: Typed;
  readonly spread: Typed;
}

/** The form of readings that rides fill, line by line, and its columns. */
export const rideForm = {
  id: "ride",
  gradient: "rideGradient",
  spread: "rideSpread",
  lines: 10,
} as const;

const placeOf = (key: string, line: number) => `${rideForm.id}.${key}.${line}`;

/** The readings of a car with one more ride; nothing where there is no room. */
export function withRide(
  all: Measurements,
  car: string,
  { gradient, spread }: RideReading,
  stamp: Stamp,
): Measurements | undefined {
  const sheet = all.sheets[car] ?? {};
  const isFree = (line: number) =>
    [rideForm.gradient, rideForm.spread].every((key) => sheet[placeOf(key, line)] === undefined);
  const line = Array.from({ length: rideForm.lines }, (_, i) => i).find(isFree);
  if (line === undefined) return undefined;
  const first = withReading(all, car, placeOf(rideForm.gradient, line), gradient);
  const both = withReading(first, car, placeOf(rideForm.spread, line), spread);
  return withStamp(both, car, rideForm.id, stamp);
}
