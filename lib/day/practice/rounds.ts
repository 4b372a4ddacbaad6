/** A round that was played to its end. */
export interface PracticeRound {
  /** ms since 1970 */
  readonly at: number;
  /** The end of the puzzle's address. */
  readonly link: string;
  /** 0–1 each; left out where it was worked for the learner, or not asked any more. */
  readonly report?: number;
  readonly cause?: number;
  readonly next?: number;
}

const MOST = 200; // rounds kept

const isShare = (value: unknown): value is number | undefined =>
  value === undefined || (typeof value === "number" && value >= 0 && value <= 1);

/** A link as it is written now; nothing where it is none. */
type Tidied = (link: string) => string | undefined;

function asRound(value: unknown, tidied: Tidied): PracticeRound | undefined {
  if (typeof value !== "object" || value === null) return undefined;
  const { at, link, report, cause, next } = value as Partial<Record<keyof PracticeRound, unknown>>;
  if (typeof at !== "number" || !Number.isFinite(at) || Math.abs(at) > 8.64e15) return undefined;
  if (typeof link !== "string" || link.length > 200) return undefined;
  const tidy = tidied(link);
  if (tidy === undefined) return undefined;
  if (!isShare(report) || !isShare(cause) || !isShare(next)) return undefined;
  return {
    ...{ at, link: tidy },
    ...(report !== undefined && { report }),
    ...(cause !== undefined && { cause }),
    ...(next !== undefined && { next }),
  };
}

/** Rounds as they were kept; what is no round is left out. */
export function asRounds(value: unknown, tidied: Tidied): PracticeRound[] | undefined {
  if (!Array.isArray(value)) return undefined;
  return value.flatMap((one) => asRound(one, tidied) ?? []).slice(-MOST);
}

/** The rounds with one more, the oldest let go where there are too many. */
export const withRound = (
  rounds: readonly PracticeRound[],
  round: PracticeRound,
): PracticeRound[] => [...rounds, round].slice(-MOST);

/** A share as points of a hundred. */
export const pointsOf = (share: number): number => Math.round(100 * share);

/** The learner's own answers as one, 0–1; nothing where all were worked. */
export function totalOf(answers: Omit<PracticeRound, "at" | "link">): number | undefined {
  const own = [answers.report, answers.cause, answers.next].filter((share) => share !== undefined);
  return own.length === 0 ? undefined : own.reduce((sum, share) => sum + share, 0) / own.length;
}
