import type { PracticeRound, Puzzle } from "@rollbook/lib";
import {
  type Car,
  type Change,
  carWith,
  causesFor,
  type Drives,
  driveKnown,
  driveOther,
  type PhaseShifts,
  type Practice,
  practiceFrom,
  type Report,
  type Score,
  scoreCause,
  scoreNext,
  scoreReport,
  shiftsIn,
  totalOf,
} from "@rollbook/lib";
import { cornerOf } from "../../say/practice/puzzle.js";

/** The three answers, scored. */
export interface Scores {
  readonly report: Score;
  readonly cause: Score;
  readonly next: Score;
}

/** A puzzle and all that the learner has done about it so far. */
export interface Round {
  readonly puzzle: Puzzle;
  readonly practice: Practice;
  readonly drives?: Drives;
  readonly report?: Report;
  /** The causes to choose from, once they are worked out. */
  readonly causes?: readonly Change[];
  readonly cause?: Change;
  readonly next?: Change;
  /** How far balance is from the known car after the next change, m/s². */
  readonly left?: PhaseShifts;
  readonly scores?: Scores;
}

/** A round as it begins. */
export const roundOf = (puzzle: Puzzle, car: Car): Round => ({
  puzzle,
  practice: practiceFrom(puzzle.seed, cornerOf(puzzle.place), car),
});

/** The next drive that the learner asked for: the known car, then the changed one. */
export function driven(round: Round): Round {
  const { practice, drives } = round;
  if (drives === undefined) return { ...round, drives: { known: driveKnown(practice) } };
  const changed = driveOther(practice.changed, practice, drives.known);
  return { ...round, drives: { ...drives, changed } };
}

/** The round with its report answered: what the cause may be. */
export const withCauses = (round: Round): Round => ({
  ...round,
  causes: causesFor(round.practice, round.puzzle.level),
});

/** The round with its next change made, driven and scored. */
export function finished(round: Round, next: Change): Round {
  const { practice, drives, report, cause } = round;
  if (drives === undefined || report === undefined || cause === undefined) return round;
  const after = carWith(next, practice.changed, practice.car);
  const again = driveOther(after, practice, drives.known);
  const scores = {
    report: scoreReport(practice, report),
    cause: scoreCause(practice, cause),
    next: scoreNext(practice, next),
  };
  const left = shiftsIn(practice.corner, practice.car, after, practice.car);
  return { ...round, next, left, scores, drives: { ...drives, again } };
}

/** What each answer was worth. */
export const sharesOf = ({ report, cause, next }: Scores) => ({
  report: report.score,
  cause: cause.score,
  next: next.score,
});

export const totalScore = (scores: Scores): number => totalOf(sharesOf(scores));

/** A round as it is kept. */
export const keptRound = (scores: Scores, link: string, at: number): PracticeRound => ({
  at,
  link,
  ...sharesOf(scores),
});
