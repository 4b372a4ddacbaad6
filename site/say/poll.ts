import type { PollAdvice } from "@rollbook/lib";

type Advice = PollAdvice["advice"];

const firstVote: Readonly<Record<Advice, string>> = {
  "teach again": "Few have it: teach it once more with the slider, then vote again.",
  discuss: "Let each convince a neighbour for two minutes, then vote again.",
  "move on": "Most have it: say why it is right, why the others are not, and move on.",
};

const secondVote: Readonly<Record<Advice, string>> = {
  "teach again": "Still few: show the slider state that refutes the common answer, then the twin.",
  discuss: "Let one of each answer give a reason, show the slider, then ask the twin.",
  "move on": "Say why it is right, then ask the twin.",
};

/** What to do after a vote with cards. */
export const pollAdviceInWords = ({ advice }: PollAdvice, vote: 1 | 2 = 1): string =>
  (vote === 1 ? firstVote : secondVote)[advice];
