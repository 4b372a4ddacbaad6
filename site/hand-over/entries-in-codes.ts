import type { EventEntry, LogEntry } from "@rollbook/lib";
import { handOverText } from "./log-text.js";
import { pack } from "./packed.js";

/** Letters in a link that a phone still reads from a screen as one code. */
export const LONGEST_CODE = 1200;

/** Entries in as few codes as can carry them, and those that are too large for any. */
export interface InCodes {
  readonly packed: readonly string[];
  readonly tooLarge: readonly LogEntry[];
}

/** Packs entries, half and half where they are too many for one code; their order does not matter. */
export async function entriesInCodes(
  entries: readonly LogEntry[],
  day?: EventEntry,
  longest = LONGEST_CODE,
): Promise<InCodes> {
  if (entries.length === 0) return { packed: [], tooLarge: [] };
  const packed = await pack(handOverText(entries, day));
  if (packed.length <= longest) return { packed: [packed], tooLarge: [] };
  if (entries.length === 1) return { packed: [], tooLarge: entries };
  const half = Math.ceil(entries.length / 2);
  const parts = [
    await entriesInCodes(entries.slice(0, half), day, longest),
    await entriesInCodes(entries.slice(half), day, longest),
  ];
  return {
    packed: parts.flatMap((part) => part.packed),
    tooLarge: parts.flatMap((part) => part.tooLarge),
  };
}
