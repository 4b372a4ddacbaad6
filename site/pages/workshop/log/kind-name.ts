import { isEntryKind, type LogEntry } from "@rollbook/lib";
import { log as said } from "../../../say/workshop/log.js";

/** A kind of entry by its name; one that came after this version by the word that its file has. */
export const kindName = (kind: LogEntry["kind"]): string =>
  isEntryKind(kind) ? said.kinds[kind] : said.laterKind(kind);
