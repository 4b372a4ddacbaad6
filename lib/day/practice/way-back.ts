import { LEAST_FELT_SHIFT } from "../debrief/feel.js";
import type { PhaseShifts } from "../plan/sheet-row.js";
import { less, shareAlong, size } from "./shifts.js";

/** How far a change leads back to the car that was known. */
export interface WayBack {
  /** Share of what had moved that is gone: 1 all of it, below 0 the car is further off than before. */
  readonly back: number;
  readonly told: string;
}

/**
 * How far a change leads back, and in which way it fails to.
 *
 * @param named - the change in words
 * @param shifts - how far balance had moved from the car that was known, m/s²
 * @param left - how far it is from there after the change, m/s²
 */
export function wayBack(named: string, shifts: PhaseShifts, left: PhaseShifts): WayBack {
  const back = 1 - size(left) / size(shifts);
  const undone = less(shifts, left);
  const along = shareAlong(undone, shifts);
  const straight = (along * size(shifts)) / size(undone); // 1 straight back, −1 straight away
  const told = (): string => {
    if (along > OVERSHOOTS)
      return `${named} overshoots: it moves the car back by ${percent(along)} of what had moved, past the one you know.`;
    if (back > NOTHING) return `${named} takes back ${percent(back)} of what had moved.`;
    if (size(undone) < LEAST_FELT_SHIFT) return `${named} can hardly be felt in this corner.`;
    if (straight < AWAY) return `${named} makes it worse: it moves the car further the same way.`;
    return `${named} does not help: what it takes back in one part of the corner it adds in another.`;
  };
  return { back, told: told() };
}

const OVERSHOOTS = 1.1; // of what had moved
const NOTHING = 0.005; // of what had moved: less is shown as 0 %
const AWAY = -0.5;

const percent = (share: number): string => `${Math.round(100 * share)} %`;
