import { linkTo, puzzleFrom } from "../puzzle/link.js";

/** A round that was played to its end. */
export interface Round {
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

function asRound(value: unknown): Round | undefined {
  if (typeof value !== "object" || value === null) return undefined;
  const { at, link, report, cause, next } = value as Partial<Record<keyof Round, unknown>>;
  if (typeof at !== "number" || !Number.isFinite(at) || Math.abs(at) > 8.64e15) return undefined;
  if (typeof link !== "string" || link.length > 200) return undefined;
  const linked = puzzleFrom(link, 0);
  if (linked === undefined || linked.faults.length > 0) return undefined;
  if (!isShare(report) || !isShare(cause) || !isShare(next)) return undefined;
  return { at, link: linkTo(linked.puzzle), report, cause, next };
}

/** Rounds as they were kept; what is no round is left out. */
export function asHistory(value: unknown): Round[] | undefined {
  return Array.isArray(value) ? value.flatMap((one) => asRound(one) ?? []).slice(-MOST) : undefined;
}

/** The rounds with one more, the oldest let go where there are too many. */
export const withRound = (rounds: readonly Round[], round: Round): Round[] =>
  [...rounds, round].slice(-MOST);

/** A share as points of a hundred. */
export const points = (share: number): number => Math.round(100 * share);

/** The three answers as one. */
export const totalOf = ({ report, cause, next }: Omit<Round, "at" | "link">): number =>
  (report + cause + next) / 3;
