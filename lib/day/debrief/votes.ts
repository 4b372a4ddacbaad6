import type { Log, QuestionEntry, VoteEntry } from "../log/log.js";
import { nameKey } from "../log/same-name.js";
import { nowStandingFor, standing } from "../log/standing.js";
import type { PollCount, PollLetter } from "./poll.js";

/** The question that phones were asked last. */
export const lastQuestion = (log: Log): QuestionEntry | undefined =>
  standing(log, "question").at(-1);

/** The vote of each person on a question: one each, the last. */
export function votesOn(log: Log, question: QuestionEntry): VoteEntry[] {
  const all = standing(log, "vote").filter(
    (vote) =>
      vote.question === question.id ||
      nowStandingFor(log, "question", vote.question)?.id === question.id,
  );
  return [...new Map(all.map((vote) => [nameKey(vote.by), vote])).values()];
}

/** How many chose each answer. */
export function countOfVotes(votes: readonly VoteEntry[]): PollCount {
  const count = (letter: PollLetter) => votes.filter((vote) => vote.letter === letter).length;
  return { a: count("a"), b: count("b"), c: count("c"), d: count("d") };
}

/** What became of those who were wrong at first. */
export interface GainByPerson {
  /** Persons who voted both times and were wrong at first. */
  readonly wrong: number;
  /** Of these, who are right now. */
  readonly gained: number;
  /** Who were right at first and are not now. */
  readonly lost: number;
}

/** Compares two votes person by person; who voted once says nothing. */
export function gainByPerson(
  first: readonly VoteEntry[],
  second: readonly VoteEntry[],
  right: PollLetter,
): GainByPerson {
  const pairs = first.flatMap((before) => {
    const now = second.find(({ by }) => nameKey(by) === nameKey(before.by));
    return now === undefined ? [] : [{ was: before.letter === right, is: now.letter === right }];
  });
  return {
    wrong: pairs.filter(({ was }) => !was).length,
    gained: pairs.filter(({ was, is }) => !was && is).length,
    lost: pairs.filter(({ was, is }) => was && !is).length,
  };
}
