import { type LogEntry, sameName } from "@rollbook/lib";
import type { Phone } from "./phones.js";

/** Who files: whoever has the desk's secret, or a phone that joined. */
export type Filer = "desk" | Phone;

/** What is known of an entry by its id: the entry, and the phone that filed it. */
export type Known = (id: string) => { readonly entry: LogEntry; readonly by: string } | undefined;

/** Why something is not taken in. */
export type WhyNot =
  | "not an entry"
  | "too long"
  | "kind"
  | "another's name"
  | "another's entry"
  | "id is taken"
  | "closed";

const LONGEST_OF_PHONE = 20_000; // characters of one entry

/** What a driver's phone writes. */
const kindsOfPhone = ["run", "report", "prediction", "vote", "withdrawal"];

/** Why a phone may not file an entry; the desk may file any. Nobody takes an id that stands for something else. */
export function whyNotFiled(
  filer: Filer,
  entry: LogEntry,
  known: Known,
  isClosed: (question: string) => boolean,
): WhyNot | undefined {
  if (filer === "desk") return undefined;
  if (JSON.stringify(entry).length > LONGEST_OF_PHONE) return "too long";
  if (!kindsOfPhone.includes(entry.kind)) return "kind";
  if (known(entry.id) !== undefined) return "id is taken";
  const own = (id: string | undefined) => id === undefined || known(id)?.by === filer.id;
  if (!own(entry.replaces)) return "another's entry";
  if (entry.kind === "vote" && isClosed(entry.question)) return "closed";
  if (entry.kind === "withdrawal") return own(entry.of) ? undefined : "another's entry";
  return namesIn(entry, known).every((name) => filer.names.some((own) => sameName(own, name)))
    ? undefined
    : "another's name";
}

/** Whose words an entry of a phone claims to be. */
function namesIn(entry: LogEntry, known: Known): string[] {
  if (entry.kind === "run") return [entry.driver];
  if (entry.kind === "vote") return [entry.by];
  if (entry.kind === "prediction") return [entry.by ?? entry.author];
  const run = entry.kind === "report" ? known(entry.run)?.entry : undefined;
  return [entry.author, ...(run?.kind === "run" ? [run.driver] : [])];
}

/** What a phone gets to see: the day and how it goes, and of what others say nothing. */
export function isForPhone({ entry, by }: { entry: LogEntry; by: string }, phone: Phone): boolean {
  if (by === phone.id) return true;
  const { kind } = entry;
  return ["event", "run", "happening", "question", "withdrawal"].includes(kind);
}
