import type { Ending } from "../sandbox/sandbox.js";
import { words } from "../words.js";
import type { Fault } from "./results.js";
import { type Place, placeInStack, type RunScript, type UnreadableCell } from "./script.js";

/** What went wrong, in a sentence, and where in the cells where that is known. */
export interface Told {
  readonly sentence: string;
  readonly cell?: number;
  readonly line?: number;
}

function told(ids: readonly string[], message: string, place: Partial<Place> | undefined): Told {
  const id = place?.cell === undefined ? undefined : ids[place.cell];
  if (!place || id === undefined) return { sentence: message };
  return { sentence: words.at(id, place.line, message), ...place };
}

/** An exception of edited cells, at the innermost line of theirs. */
export const faultTold = (
  ids: readonly string[],
  { message, stack }: Fault,
  script: RunScript,
): Told => told(ids, message, placeInStack(stack, script));

export const unreadableTold = (ids: readonly string[], { place, message }: UnreadableCell): Told =>
  told(ids, message, place);

/** Why a sandbox was taken away. */
export function endingTold(
  ids: readonly string[],
  ending: Ending,
  script: RunScript,
  seconds: number,
): Told {
  switch (ending.why) {
    case "silent":
      if (ending.cell === undefined) return { sentence: words.neverStarted };
      return told(ids, words.silent(seconds), { cell: ending.cell });
    case "broken":
      return told(ids, ending.message.replace(/^Uncaught /, ""), script.placeOf(ending.line));
    case "unasked":
      return { sentence: words.unasked };
    case "rested":
      return { sentence: words.rested };
    case "hidden":
      return { sentence: words.hidden };
    case "left":
      return { sentence: words.stopped };
  }
}
