import {
  bestWayBack,
  type Car,
  type Change,
  carWith,
  causesFor,
  type Drives,
  driveKnown,
  driveOther,
  honestReport,
  type PhaseShifts,
  type Practice,
  type PracticeRound,
  type Puzzle,
  practiceFrom,
  type Said,
  type Score,
  scoreCause,
  scoreNext,
  scoreReport,
  shiftsIn,
  totalOf,
} from "@rollbook/lib";
import { cornerOf } from "../../say/practice/puzzle.js";

/** The answers that are scored: those that were worked for the learner are not. */
export interface Scores {
  readonly report?: Score;
  readonly cause?: Score;
  readonly next?: Score;
}

/** A puzzle and all that the learner has done about it so far. */
export interface Round {
  readonly puzzle: Puzzle;
  readonly practice: Practice;
  readonly drives?: Drives;
  readonly report?: Said;
  /** The causes to choose from, once they are worked out. */
  readonly causes?: readonly Change[];
  /** What the learner takes for the cause. */
  readonly named?: readonly Change[];
  readonly next?: Change;
  /** How far balance is from the known car after the next change, m/s². */
  readonly left?: PhaseShifts;
  readonly scores: Scores;
  /** Whether it is over: nothing more is asked, and what was hidden is shown. */
  readonly over?: true;
}

/** A round as it begins. */
export const roundOf = (puzzle: Puzzle, car: Car): Round => ({
  puzzle,
  practice: practiceFrom(puzzle.seed, cornerOf(puzzle.place), car, puzzle.level),
  scores: {},
});

/** The next drive that the learner asked for: the known car, then the changed one. */
export function driven(round: Round): Round {
  const { practice, drives } = round;
  if (drives === undefined) return { ...round, drives: { known: driveKnown(practice) } };
  const changed = driveOther(practice.changed, practice, drives.known);
  return withWorked({ ...round, drives: { ...drives, changed } });
}

/** How many of the answers are worked for the learner. */
export const workedIn = ({ puzzle }: Round): number => puzzle.worked ?? 0;

/** The first answers, as many as the puzzle gives. */
function withWorked(round: Round): Round {
  const { practice } = round;
  const steps = workedIn(round);
  if (steps === 0) return round;
  const reported = withCauses({ ...round, report: honestReport(practice) });
  if (steps === 1) return reported;
  const named = { ...reported, named: practice.hidden };
  const next = steps === 3 ? bestWayBack(practice) : undefined;
  return next === undefined ? named : finished(named, next);
}

/** The round with its report filed and scored; whoever cannot tell is told. */
export function reported(round: Round, report: Said): Round {
  const scores = { report: scoreReport(round.practice, report) };
  const filed = { ...round, report, scores };
  return report === "cannot tell" ? { ...filed, over: true } : filed;
}

/** The round with its report answered: what the cause may be. */
export const withCauses = (round: Round): Round => ({
  ...round,
  causes: causesFor(round.practice),
});

/** The round with its cause named and scored. */
export const withNamed = (round: Round, named: readonly Change[]): Round => ({
  ...round,
  named,
  scores: { ...round.scores, cause: scoreCause(round.practice, named) },
});

/** The round with its next change made, driven and, where it is the learner's, scored. */
export function finished(round: Round, next: Change): Round {
  const { practice, drives, scores } = round;
  if (drives === undefined) return round;
  const after = carWith(next, practice.changed, practice.car);
  const again = driveOther(after, practice, drives.known);
  const left = shiftsIn(practice.corner, practice.car, after);
  const own = workedIn(round) < 3 ? { next: scoreNext(practice, next) } : {};
  const over = { over: true } as const;
  return {
    ...round,
    next,
    left,
    drives: { ...drives, again },
    scores: { ...scores, ...own },
    ...over,
  };
}

/** What each answer was worth. */
const sharesOf = ({ report, cause, next }: Scores) => ({
  ...(report && { report: report.score }),
  ...(cause && { cause: cause.score }),
  ...(next && { next: next.score }),
});

export const totalScore = (scores: Scores): number | undefined => totalOf(sharesOf(scores));

/** A round as it is kept. */
export const keptRound = (scores: Scores, link: string, at: number): PracticeRound => ({
  at,
  link,
  ...sharesOf(scores),
});
