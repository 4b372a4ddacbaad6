import { type PlanWarning, type SheetRow, undoOf } from "@rollbook/lib";
import { acceleration } from "./amount.js";
import { changeLabel } from "./change.js";
import { brokenBy, shownTo } from "./class-rules.js";
import { type Reader, spelt } from "./reader.js";
import { refusalInWords } from "./refusal.js";

/** What the hands do before a run. */
export const toDoInWords = ({ toDo, stood }: SheetRow, reader: Reader): string[] =>
  toDo.map((change) => changeLabel(change, stood, reader));

/** How what was done before a run is taken back. */
export const undoInWords = ({ toDo, car }: SheetRow, reader: Reader): string[] =>
  [...toDo].reverse().map((change) => changeLabel(undoOf(change), car, reader));

/** What to know before a run of a plan. */
export const warningInWords = (warning: PlanWarning, reader: Reader): string =>
  spelt(told(warning, reader), reader);

function told(warning: PlanWarning, reader: Reader): string {
  switch (warning.code) {
    case "refused":
      return refusalInWords(warning.refusal, reader);
    case "tips-over":
      return `At its limit this car tips over before its tyres let go (${warning.phases.join(", ")}): nobody drives it near that, and no set-up for balance cures it.`;
    case "too-small":
      return `It moves balance by at most ${acceleration(warning.most, reader)}, less than the ${acceleration(warning.least, reader)} that is likely to be felt: make a larger change.`;
    case "limit":
      return `It breaks the class limit of ${brokenBy(warning, shownTo(reader))}${warning.kept ? ", which the organiser keeps knowingly" : ""}.`;
    case "towards-the-rear":
      return `The rear slides earlier than in the run before (${warning.phases.join(", ")}): first lap slowly.`;
    case "brakes-rearwards":
      return "It moves the brakes rearwards, and rear wheels that lock first turn a car round: never on a road car, on any car only by its maker's instructions, tried in a straight line first.";
    case "several-changes":
      return `${warning.count} things change at once: against the run before nobody can say which of them was felt.`;
    case "no-baseline":
      return "The first run should be the car as it is: the baseline.";
    case "too-late":
      return `It ends ${warning.minutes} minutes after the day is over.`;
  }
}
