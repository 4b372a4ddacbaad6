import { conflictsOf, isNamedByRun, type LogEntry, looseEndsOf } from "@rollbook/lib";
import { element, saveFile } from "@rollbook/page";
import { conflictInWords, looseEndInWords } from "../../../say/log.js";
import { theLog, unreadableTexts } from "../../../store/log.js";
import { button, listOf } from "../parts/fields.js";
import { words } from "../words.js";

const { log: said } = words;

/** What somebody should look at: texts that cannot be read, ids used twice, references that lead nowhere. */
export function attention(): HTMLElement[] {
  const log = theLog();
  const loose = looseEndsOf({ entries: log.entries.map(tiedUp) });
  const sentences = [...conflictsOf(log).map(conflictInWords), ...loose.map(looseEndInWords)];
  const texts = unreadableTexts();
  if (sentences.length === 0 && texts.length === 0) return [];
  const save = () => saveFile(said.unreadableName, texts.join("\n\n"), "text/plain");
  return [
    element("h3", {}, said.attention),
    ...(texts.length > 0
      ? [
          element("p", { class: "beware" }, said.unreadable(texts.length)),
          button("save-unreadable", said.saveUnreadable, save),
        ]
      : []),
    ...(sentences.length > 0 ? [listOf(sentences)] : []),
  ];
}

/** What names its set-up by the run's number refers to nothing that is missing: here, to itself. */
function tiedUp(entry: LogEntry): LogEntry {
  if (entry.kind !== "run" && entry.kind !== "prediction") return entry;
  return isNamedByRun(entry.setUp) ? { ...entry, setUp: entry.id } : entry;
}
