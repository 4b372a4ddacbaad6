import type { LogEntry } from "@rollbook/lib";
import { element } from "@rollbook/page";
import { theLog } from "../../../store/log.js";
import { words } from "../words.js";
import { kindName } from "./kind-name.js";
import { timeOf } from "./time.js";

const { log: said } = words;

/** Every entry in the order in which it was written, those that no longer count too. */
export function versions(): HTMLElement {
  const list = element("ol", { class: "plain" });
  const fold = element(
    "details",
    { id: "all-entries" },
    element("summary", {}, said.versions),
    list,
  );
  fold.addEventListener("toggle", () => {
    if (fold.open) list.replaceChildren(...theLog().entries.map(line));
  });
  return fold;
}

function line(entry: LogEntry): HTMLElement {
  const of = entry.kind === "withdrawal" ? `${entry.of}: ${entry.reason}` : "";
  const stands = entry.replaces === undefined ? "" : said.replaced(entry.replaces);
  const parts = [timeOf(entry.at), entry.id, kindName(entry.kind), of, stands];
  return element("li", {}, parts.filter((part) => part !== "").join(" · "));
}
