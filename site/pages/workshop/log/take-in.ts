import {
  type EntryHead,
  type Faulty,
  type Log,
  parseReports,
  readLog,
  type TableDay,
} from "@rollbook/lib";

/** What a file holds, or what is wrong with it; then also what in it is sound. */
type Taken = { readonly log: Log; readonly faults?: undefined } | Faulty;

/** Larger files are no logs, bytes. */
export const LARGEST_FILE = 50_000_000;

/**
 * Reads a log or a table of reports, whichever the text is. Never throws.
 *
 * @param day - where a table's runs and drivers are looked up
 */
export function readFile(
  text: string,
  fresh: () => Pick<EntryHead, "id" | "at">,
  day?: TableDay,
): Taken {
  if (/^\s*[[{]/.test(text)) return readLog(text); // a byte order mark counts as space
  return parseReports(text, numbering(fresh()), day);
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
