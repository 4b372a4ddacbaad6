import { conflictsOf, isNamedByRun, type Log, type LogEntry, looseEndsOf } from "@rollbook/lib";
import { saveFile } from "@rollbook/page";
import { conflictInWords, looseEndInWords } from "../../../say/log.js";
import { log as said } from "../../../say/workshop/log.js";
import { unreadableTexts } from "../../../store/log.js";
import { Button } from "../../../ui/button.js";
import { List } from "../../../ui/list.js";

/** What somebody should look at: texts that cannot be read, ids used twice, references that lead nowhere. */
export function Attention({ log }: { readonly log: Log }) {
  const loose = looseEndsOf({ entries: log.entries.map(tiedUp) });
  const sentences = [...conflictsOf(log).map(conflictInWords), ...loose.map(looseEndInWords)];
  const texts = unreadableTexts();
  if (sentences.length === 0 && texts.length === 0) return null;
  const save = () => saveFile(said.unreadableName, texts.join("\n\n"), "text/plain");
  return (
    <>
      <h3>{said.attention}</h3>
      {texts.length > 0 && (
        <>
          <p class="beware">{said.unreadable(texts.length)}</p>
          <Button id="save-unreadable" work={save}>
            {said.saveUnreadable}
          </Button>
        </>
      )}
      {sentences.length > 0 && <List texts={sentences} />}
    </>
  );
}

/** What names its set-up by the run's number refers to nothing that is missing: here, to itself. */
function tiedUp(entry: LogEntry): LogEntry {
  if (entry.kind !== "run" && entry.kind !== "prediction") return entry;
  return isNamedByRun(entry.setUp) ? { ...entry, setUp: entry.id } : entry;
}
