import { type EventEntry, formatLog, type LogEntry } from "@rollbook/lib";

/** The day that handed-over entries belong to, as whoever gave them knows it. */
interface DayNamed {
  /** Its entry in the log. */
  readonly id: string;
  readonly name: string;
}

/** Entries as a log in one line, with the day that they belong to where it is known. */
export function handOverText(entries: readonly LogEntry[], day?: EventEntry): string {
  const log = JSON.parse(formatLog({ entries })) as object;
  return JSON.stringify({ ...log, ...(day && { day: { id: day.id, name: day.name } }) });
}

/** How far a day was, beside its entries; each part is read by whoever kept it. */
export interface HowFar {
  readonly clock: unknown;
  readonly vote: unknown;
}

/** A whole day as one log file, with how far it was, so that it goes on elsewhere. */
export function dayText(entries: readonly LogEntry[], day: EventEntry, howFar: HowFar): string {
  const log = JSON.parse(handOverText(entries, day)) as object;
  return `${JSON.stringify({ ...log, howFar }, null, 1)}\n`;
}

/** How far the day of a text was; nothing where it does not say. Never throws. */
export function howFarIn(text: string): HowFar | undefined {
  try {
    const { howFar } = JSON.parse(text) as { howFar?: unknown };
    return typeof howFar === "object" && howFar !== null ? (howFar as HowFar) : undefined;
  } catch {
    return undefined;
  }
}

/** The day that a handed-over text names, if any. Never throws. */
export function dayNamedIn(text: string): DayNamed | undefined {
  try {
    const { id, name } = JSON.parse(text).day as Partial<DayNamed>;
    if (typeof id !== "string" || typeof name !== "string" || name === "") return undefined;
    return { id, name: name.slice(0, LONGEST_NAME) };
  } catch {
    return undefined;
  }
}

const LONGEST_NAME = 200;

/** What each link of a pasted text brings, in letters to unpack; nothing where there is other text beside links. */
export function lettersOfLinks(text: string): readonly string[] | undefined {
  const words = text.split(/\s+/).filter((word) => word !== "");
  const letters = words.map(lettersIn);
  return words.length > 0 && letters.every((one) => one !== undefined) ? letters : undefined;
}

/** What one address brings along, after "?take=". */
export const lettersIn = (address: string): string | undefined =>
  /#[a-z]*\?take=([\w-]+)$/.exec(address)?.[1];
