import type { Log, LogEntry } from "@rollbook/lib";
import { log as said } from "../../../say/workshop/log.js";
import { LateFold } from "../../../ui/fold.js";
import { kindName } from "./kind-name.js";
import { timeOf } from "./time.js";

/** Every entry in the order in which it was written, those that no longer count too. */
export function Versions({ log }: { readonly log: Log }) {
  return (
    <LateFold id="all-entries" title={said.versions}>
      <Lines log={log} />
    </LateFold>
  );
}

function Lines({ log }: { readonly log: Log }) {
  return (
    <ol class="plain">
      {log.entries.map((entry, i) => (
        <li key={i}>{lineOf(entry)}</li>
      ))}
    </ol>
  );
}

function lineOf(entry: LogEntry): string {
  const of = entry.kind === "withdrawal" ? `${entry.of}: ${entry.reason}` : "";
  const stands = entry.replaces === undefined ? "" : said.replaced(entry.replaces);
  const parts = [timeOf(entry.at), entry.id, kindName(entry.kind), of, stands];
  return parts.filter((part) => part !== "").join(" · ");
}
