/** A round that was played to its end. */
export interface PracticeRound {
  /** ms since 1970 */
  readonly at: number;
  /** The end of the puzzle's address. */
  readonly link: string;
  /** 0–1 each */
  readonly report: number;
  readonly cause: number;
  readonly next: number;
}

const MOST = 200; // rounds kept

const isShare = (value: unknown): value is number =>
  typeof value === "number" && value >= 0 && value <= 1;

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
  return { at, link: tidy, report, cause, next };
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

/** The three answers as one. */
export const totalOf = ({ report, cause, next }: Omit<PracticeRound, "at" | "link">): number =>
  (report + cause + next) / 3;
