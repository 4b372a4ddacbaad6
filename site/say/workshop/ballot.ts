import type { GainByPerson } from "@rollbook/lib";

/** What is said of votes by phone. */
export const ballot = {
  title: "Vote by phone",
  help: "Alone first, then again after the talk. Nobody sees who chose what, and how many chose it only once it is revealed.",
  ask: (vote: number) => (vote === 1 ? "Ask the phones: alone" : "Ask again, after the talk"),
  asked: (vote: number) => (vote === 1 ? "The phones are asked." : "The phones are asked again."),
  reveal: "Reveal",
  voted: (count: number, of: number) =>
    of > 0 ? `${count} of ${of} have voted.` : `${count} have voted.`,
  revealed: "Revealed:",
  count: (letter: string, count: number) => `${letter}: ${count}`,
  gain: ({ wrong, gained, lost }: GainByPerson) =>
    wrong === 0
      ? "Nobody who voted twice was wrong at first."
      : `Of the ${wrong} who were wrong at first, ${gained} ${gained === 1 ? "has" : "have"} it now${lost > 0 ? `; ${lost} lost it` : ""}.`,
  nothingAsked: "Choose a question first, or write one with its answers.",
  mine: "Your answer",
  alone: "Alone, without looking at others:",
  again: "Once more, after the talk:",
  in: "Your vote is in; it can be changed until it is revealed.",
  closed: "The vote is closed.",
  ofThisRun: (what: string) =>
    `${what}. Which end slides earlier than before, by that change alone?`,
  atHand: "The question of this run",
  which: "About which change",
  withCards: "With cards: open Vote below and count them there.",
  thisRun: (what: string) => `This run’s change: ${what}`,
  ways: {
    front: "the front, where anything is felt",
    nothing: "neither: too little to be felt",
    rear: "the rear, where anything is felt",
    both: "the front in one part of the corner, the rear in another",
  },
  because: {
    front: "In every part of a corner where it is felt it moves balance towards the front.",
    nothing: "It moves balance by less than is likely to be felt, in every part.",
    rear: "In every part of a corner where it is felt it moves balance towards the rear.",
    both: "It is felt towards the front in one part and towards the rear in another.",
  },
} as const;
