import {
  asRounds,
  openRungs,
  type PracticeRound,
  type Puzzle,
  type Rung,
  rungOf,
  rungs,
  totalOf,
} from "@rollbook/lib";
import { documentOf } from "@rollbook/page";
import { puzzleFrom, tidyLink } from "./puzzle-link.js";

/** The rounds that were played to their end on this device, the last one last. */
export const rounds = documentOf<readonly PracticeRound[]>({
  key: "practice-rounds",
  empty: [],
  read: (value) => asRounds(value, tidyLink),
});

/** Whether somebody asked for all rungs at once. */
export const allOpen = documentOf<boolean>({
  key: "practice-all-open",
  empty: false,
  read: (value) => (typeof value === "boolean" ? value : undefined),
});

/** How many rungs are open by what was played here. */
export function openNow(): number {
  if (allOpen.now.value) return rungs.length;
  const played = rounds.now.value.flatMap((round) => {
    const puzzle = puzzleFrom(round.link, 0)?.puzzle;
    return puzzle === undefined ? [] : [{ rung: rungOf(puzzle), total: totalOf(round) }];
  });
  return openRungs(played);
}

/** A puzzle on another rung. */
export function onRung({ worked: _, ...puzzle }: Puzzle, { level, worked }: Rung): Puzzle {
  return { ...puzzle, level, ...(worked > 0 && { worked }) };
}
