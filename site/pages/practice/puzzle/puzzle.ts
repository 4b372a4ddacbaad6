import { fromShown, type VenueCorner } from "@rollbook/lib";
import { words } from "../words.js";

export const levels = [1, 2, 3] as const;
/** How much help there is: 1 most, 3 least. */
export type Level = (typeof levels)[number];

/** A corner without its name. */
export type Place = Omit<VenueCorner, "name">;

/** What makes a puzzle the same on every device. */
export interface Puzzle {
  /** Whole number from 0. */
  readonly seed: number;
  readonly level: Level;
  readonly place: Place;
  /** Mark of a car that is not the workbook's own. */
  readonly car?: string;
}

export const LARGEST_SEED = 999_999;

function place(radius: number, speed: number, grade: number, direction: Place["direction"]): Place {
  return { direction, radius, speed: fromShown("speed", speed), grade: fromShown("share", grade) };
}

/** Corners to choose from: m, km/h, percent – invented. */
export const presets = {
  practice: place(50, 80, 0, "left"),
  tight: place(18, 48, 0, "right"),
  sweep: place(140, 134, 0, "right"),
  downhill: place(40, 71, -6, "left"),
} as const;

export type PresetName = keyof typeof presets;

const near = (a = 0, b = 0): boolean => Math.abs(a - b) < 1e-6;

/** Which of the corners to choose from this is, if any. */
export function presetOf({ direction, radius, speed, grade }: Place): PresetName | undefined {
  const names = Object.keys(presets) as PresetName[];
  return names.find((name) => {
    const known = presets[name];
    const same = near(radius, known.radius) && near(speed, known.speed) && near(grade, known.grade);
    return same && direction === known.direction;
  });
}

/** The corner with its name. */
export function cornerOf(at: Place): VenueCorner {
  const preset = presetOf(at);
  return { name: preset ? words.corners[preset] : words.ownCorner, ...at };
}

/** A number nobody has thought of. */
export const freshSeed = (random: () => number = Math.random): number =>
  1 + Math.floor(random() * LARGEST_SEED);
