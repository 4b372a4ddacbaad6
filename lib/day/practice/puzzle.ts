import { fromHandy } from "../../units.js";
import type { VenueCorner } from "../plan/venue.js";

/** How much help there is: 1 most, 3 least, and in 4 two things were changed at once. */
export const helpLevels = [1, 2, 3, 4] as const;
export type HelpLevel = (typeof helpLevels)[number];

/** How many answers are worked before the learner's own ones: report, cause, next change. */
export type WorkedSteps = 0 | 1 | 2 | 3;

/** A corner without its name. */
export type UnnamedCorner = Omit<VenueCorner, "name">;

/** What makes a puzzle the same on every device. */
export interface Puzzle {
  /** Whole number from 0. */
  readonly seed: number;
  readonly level: HelpLevel;
  /** How many of the three answers are worked for the learner, the first ones; none when left out. */
  readonly worked?: WorkedSteps;
  readonly place: UnnamedCorner;
  /** Mark of a car that is not the workbook's own. */
  readonly car?: string;
}

/** The largest number that a puzzle is made of by hand or by chance. */
export const LARGEST_PUZZLE = 999_999;

function corner(
  radius: number,
  speed: number,
  grade: number,
  direction: UnnamedCorner["direction"],
): UnnamedCorner {
  return { direction, radius, speed: fromHandy("speed", speed), grade: fromHandy("share", grade) };
}

/** Corners to choose from: m, km/h, percent – invented. */
export const practiceCorners = {
  practice: corner(50, 80, 0, "left"),
  tight: corner(18, 48, 0, "right"),
  sweep: corner(140, 134, 0, "right"),
  downhill: corner(40, 71, -6, "left"),
} as const;

export type PracticeCornerName = keyof typeof practiceCorners;

const near = (a = 0, b = 0): boolean => Math.abs(a - b) < 1e-6;

/** Which of the corners to choose from this is, if any. */
export function practiceCornerName(place: UnnamedCorner): PracticeCornerName | undefined {
  const { direction, radius, speed, grade } = place;
  const names = Object.keys(practiceCorners) as PracticeCornerName[];
  return names.find((name) => {
    const known = practiceCorners[name];
    const same = near(radius, known.radius) && near(speed, known.speed) && near(grade, known.grade);
    return same && direction === known.direction;
  });
}

/** A number nobody has thought of. */
export const freshSeed = (random: () => number = Math.random): number =>
  1 + Math.floor(random() * LARGEST_PUZZLE);
