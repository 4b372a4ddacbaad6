import { type Given, isRight } from "./given.js";
import type { IdeaName } from "./ideas.js";
import { misconceptions } from "./misconceptions.js";

/** What became of one misconception between the two checks. */
export type GainOutcome = "learned" | "known" | "lost" | "not yet";

/** One misconception before and after. */
export interface Gain {
  readonly asked: IdeaName;
  readonly before?: Given;
  readonly after?: Given;
  /** There once both have been answered. */
  readonly outcome?: GainOutcome;
  /** The twin was met elsewhere before the second check, which then says less. */
  readonly twinMet: boolean;
}

/** How many came out how, of those answered in both checks. */
export interface GainCounts {
  readonly both: number;
  readonly rightBefore: number;
  readonly rightAfter: number;
  readonly outcomes: Readonly<Record<GainOutcome, number>>;
  /** Wrong and certain: what one would have acted on. */
  readonly certainAndWrong: { readonly before: number; readonly after: number };
}

/** Every misconception before and after the course, in the order of the check. */
export function gainsOf(answers: readonly Given[]): Gain[] {
  return misconceptions.map(({ idea: asked }) => {
    const own = answers.filter((given) => given.asked === asked);
    const before = own.filter(({ occasion }) => occasion === "before").at(-1);
    const after = own.filter(({ occasion }) => occasion === "after").at(-1);
    const place = after ? own.indexOf(after) : own.length;
    const twinMet = own
      .slice(0, place)
      .some(({ form, occasion }) => form === "twin" && occasion !== "after");
    return {
      asked,
      twinMet,
      ...(before && { before }),
      ...(after && { after }),
      ...(before && after && { outcome: outcomeOf(before, after) }),
    };
  });
}

function outcomeOf(before: Given, after: Given): GainOutcome {
  if (isRight(after)) return isRight(before) ? "known" : "learned";
  return isRight(before) ? "lost" : "not yet";
}

const certain = 2;

/** Counts over those answered in both checks. */
export function countsOf(gains: readonly Gain[]): GainCounts {
  const both = gains.filter(({ outcome }) => outcome !== undefined);
  const count = (wanted: (gain: Gain) => boolean) => both.filter(wanted).length;
  const outcome = (name: GainOutcome) => count((gain) => gain.outcome === name);
  const sureOfWrong = (given?: Given) =>
    given !== undefined && !isRight(given) && given.confidence === certain;
  return {
    both: both.length,
    rightBefore: outcome("known") + outcome("lost"),
    rightAfter: outcome("known") + outcome("learned"),
    outcomes: {
      learned: outcome("learned"),
      known: outcome("known"),
      lost: outcome("lost"),
      "not yet": outcome("not yet"),
    },
    certainAndWrong: {
      before: count(({ before }) => sureOfWrong(before)),
      after: count(({ after }) => sureOfWrong(after)),
    },
  };
}

/** One misconception over several members: how many answered both checks, how many were right. */
export interface GroupGain {
  readonly asked: IdeaName;
  readonly both: number;
  readonly rightBefore: number;
  readonly rightAfter: number;
}

/** Several members' answers, counted by misconception. */
export function groupGainsOf(members: readonly (readonly Given[])[]): GroupGain[] {
  const all = members.map(gainsOf);
  return misconceptions.map(({ idea: asked }, index) => {
    const counts = countsOf(all.flatMap((gains) => gains[index] ?? []));
    const { both, rightBefore, rightAfter } = counts;
    return { asked, both, rightBefore, rightAfter };
  });
}
