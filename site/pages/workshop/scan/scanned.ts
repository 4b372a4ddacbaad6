import type { Log, LogEntry } from "@rollbook/lib";
import { lettersIn } from "../../../hand-over/log-text.js";
import { unpack } from "../../../hand-over/packed.js";
import { answered, fresh, takeIn, theLog } from "../../../store/log.js";
import { whichDay } from "../handing/which-day.js";
import { readFile } from "../log/take-in.js";
import { words } from "../words.js";

const { scan: said } = words;

/** What a code was: taken in, all here already, of another day, or no code of the workbook. */
export interface Scanned {
  readonly kind: "new" | "known" | "other day" | "no code";
  readonly sentence: string;
}

/** Takes in what the text of a code brings, without asking. */
export async function takeCode(text: string): Promise<Scanned> {
  const letters = lettersIn(text);
  const brought = letters === undefined ? undefined : await unpack(letters);
  const { log } = brought === undefined ? {} : readFile(brought, fresh);
  if (brought === undefined || log === undefined) return { kind: "no code", sentence: said.noCode };
  const { sentence = "", here } = whichDay(brought, log);
  if (!here) return { kind: "other day", sentence };
  const who = whoIn(log, theLog());
  const added = takeIn(log);
  if (!(await answered())) return { kind: "no code", sentence: words.log.tookInUnkept(who) };
  return added === 0
    ? { kind: "known", sentence: said.known(who) }
    : { kind: "new", sentence: said.added(who, added) };
}

/** Whose runs a log is about, such as "Ada, run 2"; the kinds of what it brings where that is not known. */
function whoIn({ entries }: Log, here: Log): string {
  const runOf = (entry: LogEntry): LogEntry | undefined =>
    entry.kind === "run" ? entry : [...entries, ...here.entries].find(({ id }) => id === entry.run);
  const runs = entries.flatMap((entry) => {
    const run = runOf(entry);
    return run?.kind === "run" ? [said.run(run.driver, run.runNumber ?? 0)] : [];
  });
  const days = entries.flatMap((entry) => (entry.kind === "event" ? [entry.name] : []));
  const all = [...new Set([...days, ...runs])];
  return all.length > 0 ? all.join("; ") : said.something;
}
