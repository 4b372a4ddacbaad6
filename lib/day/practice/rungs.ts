import type { HelpLevel, Puzzle, WorkedSteps } from "./puzzle.js";

/** One step of the way from a worked puzzle to one without help. */
export interface Rung {
  readonly level: HelpLevel;
  readonly worked: WorkedSteps;
}

/** Help fades: first all is worked, then the last answer is the learner's, then two, then all – common practice, no source. */
export const rungs: readonly Rung[] = [
  { level: 1, worked: 3 },
  { level: 1, worked: 2 },
  { level: 1, worked: 1 },
  { level: 1, worked: 0 },
  { level: 2, worked: 0 },
  { level: 3, worked: 0 },
  { level: 4, worked: 0 },
];

/** The place of a puzzle among the rungs, from 0; a mixture that is none counts as the rung of its level. */
export function rungOf({ level, worked = 0 }: Pick<Puzzle, "level" | "worked">): number {
  const exact = rungs.findIndex((rung) => rung.level === level && rung.worked === worked);
  return exact >= 0 ? exact : rungs.map((rung) => rung.level).lastIndexOf(level);
}

/** A round that was played: on which rung, and 0–1, or nothing where all was worked. */
export interface Played {
  readonly rung: number;
  readonly total: number | undefined;
}

/** What a sure round is worth, 0–1, and how many make a rung sure – common practice, no source. */
export const SURE = 0.8;
export const SURE_ROUNDS = 2;

/** How many rungs are open: one more than are sure, counted from the highest that is. */
export function openRungs(played: readonly Played[]): number {
  const isSure = (rung: number): boolean => {
    const there = played.filter((round) => round.rung === rung);
    if (rung === 0) return there.length > 0;
    return there.filter(({ total = 0 }) => total >= SURE).length >= SURE_ROUNDS;
  };
  const sure = rungs.map((_, rung) => isSure(rung)).lastIndexOf(true);
  return Math.min(rungs.length, sure + 2);
}
