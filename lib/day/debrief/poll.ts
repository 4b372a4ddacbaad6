import { requireInRange } from "../../check.js";
import { Refusal } from "../../refusal.js";

/** How many cards of each letter were up. */
export interface PollCount {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
}

export type PollLetter = keyof PollCount;

/** What to do after a vote. */
export interface PollAdvice {
  readonly advice: "teach again" | "discuss" | "move on";
  /** 0–1 of the cards that were up */
  readonly rightShare: number;
}

/** Between these shares neighbours teach each other best: Smith 2009, Lasry 2008. */
const DISCUSS_BETWEEN = { least: 0.35, most: 0.7 } as const;

const MOST_CARDS = 10_000;

/**
 * What to do after a vote with cards, by the share of right answers.
 *
 * @throws Refusal when a count is not a whole number from 0, or no card was up
 * @example
 * pollAdvice({ a: 5, b: 5, c: 0, d: 0 }, "a").advice // → "discuss", half of them are right
 */
export function pollAdvice(count: PollCount, right: PollLetter): PollAdvice {
  const cards = cardsIn(count);
  const rightShare = count[right] / cards;
  return { advice: adviceFor(rightShare), rightShare };
}

function cardsIn(count: PollCount): number {
  for (const [letter, cards] of Object.entries(count)) {
    requireInRange(`cards ${letter.toUpperCase()}`, cards, 0, MOST_CARDS);
    if (!Number.isInteger(cards))
      throw new Refusal(
        "not-whole",
        `cards ${letter.toUpperCase()} is ${cards} but must be a whole number.`,
      );
  }
  return requireInRange("cards up", count.a + count.b + count.c + count.d, 1, 4 * MOST_CARDS);
}

function adviceFor(share: number): PollAdvice["advice"] {
  if (share < DISCUSS_BETWEEN.least) return "teach again";
  return share <= DISCUSS_BETWEEN.most ? "discuss" : "move on";
}

/**
 * Share of those who were wrong at first and right after they had talked, 0–1; below 0 when fewer
 * are right than before; 0 when nobody was wrong – Hake 1998.
 *
 * @example
 * pollGain({ a: 10, b: 10, c: 0, d: 0 }, { a: 16, b: 4, c: 0, d: 0 }, "a")
 * // → 0.6, by hand: (0.8 − 0.5)/(1 − 0.5)
 */
export function pollGain(first: PollCount, second: PollCount, right: PollLetter): number {
  const [before, after] = [first[right] / cardsIn(first), second[right] / cardsIn(second)];
  return before === 1 ? after - 1 : (after - before) / (1 - before);
}
