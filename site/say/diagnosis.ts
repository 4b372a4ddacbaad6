import type {
  Ask,
  Car,
  DiagnosisOutcome,
  NotProposed,
  NotRanked,
  ProposalReason,
  TurnBack,
} from "@rollbook/lib";
import { acceleration, SHOWN } from "./amount.js";
import { changeLabel } from "./change.js";
import { brokenBy, fixedInWords, shownTo } from "./class-rules.js";
import { signed } from "./figures.js";
import { inList } from "./in-list.js";
import { type Reader, spelt } from "./reader.js";
import { refusalInWords } from "./refusal.js";
import { questionFor } from "./report.js";
import { toShown } from "./units.js";

/**
 * What to ask before tools are taken up.
 *
 * @param who - whose reports it is about, so that they can be found
 * @param run - in which run they were made
 */
export function askInWords(ask: Ask, who: readonly string[], run: number, reader: Reader): string {
  const sentence = spelt(asked(ask, who, run), reader);
  const told = ask.code === "opposite-reports" || who.length === 0;
  return told ? sentence : `${inList(who)}, run ${run}: ${sentence}`;
}

function asked(ask: Ask, who: readonly string[], run: number): string {
  switch (ask.code) {
    case "not-said":
      return questionFor(ask.field);
    case "corner-not-listed":
      return `${ask.corner} is not in the corner list: is it slow, medium or fast?`;
    case "input-or-phase":
      return `It was said of ${ask.phase}, while ${ask.input}: which of the two was it?`;
    case "opposite-reports": {
      const place = ask.phase === undefined ? ask.corner : `${ask.corner}, ${ask.phase}`;
      return `${inList(who)} say opposite things of ${place} in run ${run}: drive it again, both doing the same, and ask before lap times are known.`;
    }
    case "best-pressure":
      return "Which warm pressure do these tyres grip best at? Below it more air helps and above it less: until somebody has measured it and it is in the car's file, no change of pressure is ranked.";
    case "hot-pressures":
      return "Were hot pressures measured, and is each where it should be? Until that is known, pressure comes last.";
  }
}

/**
 * Where a diagnosis leads.
 *
 * @param car - the car as it was driven
 */
export function outcomeInWords(outcome: DiagnosisOutcome, car: Car, reader: Reader): string {
  switch (outcome.code) {
    case "nothing-to-go-by":
      return "No report says where, when, doing what, and what: ask before changing.";
    case "all-well":
      return "Nobody asks for a change: leave the car as it is.";
    case "tips-over":
      return spelt(
        "At its limit there this car tips over before its tyres let go: no change for balance is proposed, and nobody drives it near that.",
        reader,
      );
    case "nothing-felt":
      return "No single change within reach of this car is felt there: drive it again, or look at what cannot be set.";
    case "next-change":
      return outcome.fits
        ? `Next, and nothing else with it: ${changeLabel(outcome.change, car, reader)}.`
        : `Nothing that is felt there fits into the minutes of a change. Between two sessions, and nothing else with it: ${changeLabel(outcome.change, car, reader)}.`;
  }
}

/** What speaks for a change, or against it. */
export function reasonInWords(reason: ProposalReason, reader: Reader): string {
  switch (reason.code) {
    case "nearer":
      return `It brings the reported places ${acceleration(reason.gain, reader)} nearer to balance and moves the rest of those corners by ${acceleration(reason.elsewhere, reader)}.`;
    case "trade":
      return `The car is better balanced there, and ${acceleration(reason.slower, reader)} slower.`;
    case "grip":
      return `The car can turn ${reason.more > 0 ? "+" : ""}${acceleration(reason.more, reader)} there.`;
    case "other-way-was-worse":
      return "The other way was tried and was worse.";
    case "hot-pressure-is-off":
      return "Hot pressure was measured there and is off.";
    case "pressure-last":
      return "Pressure comes last: it moves grip, warm-up and feel together.";
    case "mass-last":
      return "Mass comes last: the car gets slower everywhere else.";
  }
}

/** What to turn back at a wheel, such as "rear left seat +1.5 turns". */
export function putBackInWords({ what, end, side, by }: TurnBack): string {
  const size = what === "seat" ? `${signed(by, 1)} turns` : `${signed(toShown("angle", by), 2)}°`;
  return `${end} ${side} ${what} ${size}`;
}

/**
 * Why a lever is not proposed.
 *
 * @param car - the car as it was driven
 */
export function whyNotInWords(why: NotProposed["why"], car: Car, reader: Reader): string {
  switch (why.code) {
    case "no-adjuster":
      return "This car cannot be adjusted there.";
    case "not-ranked":
      return spelt(notRanked[why.why], reader);
    case "end-of-range":
      return "It is at the end of its range.";
    case "refused":
      return refusalInWords(why.refusal, reader);
    case "fixed-by-class":
      return fixedInWords(why.rule);
    case "breaks-limit":
      return spelt(
        `It breaks the class limit of ${brokenBy(why.margin, shownTo(reader))} before it is felt there.`,
        reader,
      );
    case "wrong-way":
      return "It moves balance the other way there.";
    case "too-small": {
      const amount =
        why.reach < SHOWN ? "by nothing" : `by ${acceleration(why.reach, reader)} at most`;
      const acts = why.actsIn === undefined ? "" : `; it acts in ${why.actsIn}`;
      return `It moves balance there ${amount}, too little to feel${acts}.`;
    }
    case "takes-elsewhere":
      return "What it brings in one place it takes in another that was reported.";
    case "too-far":
      return `It goes too far there: ${acceleration(why.reach, reader)} where less was asked.`;
    case "tried":
      return `${changeLabel(why.change, car, reader)} was tried: ${why.outcome}.`;
  }
}

const notRanked: Readonly<Record<NotRanked, string>> = {
  "best-pressure-not-known":
    "Nobody has put into the car's file at which pressure this tyre grips best, and past that the same change moves grip the other way.",
  dampers:
    "Dampers decide how the car arrives in a turn and over bumps; what they do to balance at the limit is less than anybody feels.",
};
