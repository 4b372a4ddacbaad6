import { isEntryKind, type LogEntry } from "@rollbook/lib";
import { words } from "../words.js";

/** A kind of entry by its name; one that came after this version by the word that its file has. */
export const kindName = (kind: LogEntry["kind"]): string =>
  isEntryKind(kind) ? words.log.kinds[kind] : words.log.laterKind(kind);
