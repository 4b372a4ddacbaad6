import { type EntryHead, type Log, parseReports, readLog } from "@rollbook/lib";

/** What a file holds, or what is wrong with it; then also what in it is sound. */
export type Taken =
  | { readonly log: Log; readonly faults?: undefined }
  | { readonly faults: readonly string[]; readonly sound: Log };

/** Larger files are no logs, bytes. */
export const LARGEST_FILE = 50_000_000;

/** Reads a log or a table of reports, whichever the text is. Never throws. */
export function readFile(text: string, fresh: () => Pick<EntryHead, "id" | "at">): Taken {
  if (/^\s*[[{]/.test(text)) {
    const { log, faults = [], sound = { entries: [] } } = readLog(text);
    return log === undefined ? { faults, sound } : { log };
  }
  const { entries, faults } = parseReports(text, numbering(fresh()));
  return entries === undefined ? { faults, sound: { entries: [] } } : { log: { entries } };
}

/** One head after the other, from the first. */
function numbering({ id, at }: Pick<EntryHead, "id" | "at">): () => Pick<EntryHead, "id" | "at"> {
  const [name = "", first] = id.split("-");
  let number = Number(first) - 1;
  return () => {
    number += 1;
    return { id: `${name}-${number}`, at };
  };
}
