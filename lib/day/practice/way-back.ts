import { LEAST_FELT_SHIFT } from "../debrief/feel.js";
import type { PhaseShifts } from "../plan/sheet-row.js";
import { less, shareAlong, size } from "./shifts.js";

/** How a change leads back to the car that was known, or fails to. */
export type WayBackFact =
  /** Past the known car: by this share of what had moved. */
  | { readonly code: "overshoots"; readonly along: number }
  /** This share of what had moved is gone. */
  | { readonly code: "takes-back"; readonly share: number }
  | { readonly code: "hardly-felt" }
  /** It moves the car further the same way. */
  | { readonly code: "makes-it-worse" }
  /** What it takes back in one part of the corner it adds in another. */
  | { readonly code: "does-not-help" };

/** How far a change leads back to the car that was known. */
export interface WayBack {
  /** Share of what had moved that is gone: 1 all of it, below 0 the car is further off than before. */
  readonly back: number;
  readonly way: WayBackFact;
}

/**
 * How far a change leads back, and in which way it fails to.
 *
 * @param shifts - how far balance had moved from the car that was known, m/s²
 * @param left - how far it is from there after the change, m/s²
 */
export function wayBack(shifts: PhaseShifts, left: PhaseShifts): WayBack {
  const back = 1 - size(left) / size(shifts);
  const undone = less(shifts, left);
  const along = shareAlong(undone, shifts);
  const straight = (along * size(shifts)) / size(undone); // 1 straight back, −1 straight away
  const way = (): WayBackFact => {
    if (along > OVERSHOOTS) return { code: "overshoots", along };
    if (back > NOTHING) return { code: "takes-back", share: back };
    if (size(undone) < LEAST_FELT_SHIFT) return { code: "hardly-felt" };
    return { code: straight < AWAY ? "makes-it-worse" : "does-not-help" };
  };
  return { back, way: way() };
}

const OVERSHOOTS = 1.1; // of what had moved
const NOTHING = 0.005; // of what had moved: less is shown as 0 %
const AWAY = -0.5;
