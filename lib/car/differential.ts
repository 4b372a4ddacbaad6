import type { Axle } from "./car.js";

/** A differential as figures take it: a limited-slip one with both its locks, shares 0–1. */
export type KnownDifferential =
  | { readonly kind: "open" | "locked" }
  | { readonly kind: "limited-slip"; readonly power: number; readonly overrun: number };

/** What shares the drive of an axle: as its file says; open where it says nothing. */
export function differentialOf({ differential }: Axle): KnownDifferential {
  const { kind = "open", power = 0, overrun = 0 } = differential ?? {};
  return kind === "limited-slip" ? { kind, power, overrun } : { kind };
}
