import { element } from "@rollbook/page";
import { logNow, theLog } from "../../../store/log.js";
import { refill } from "../parts/refill.js";
import { words } from "../words.js";
import { attention } from "./attention.js";
import { files } from "./files.js";
import { forget } from "./forget.js";
import { reports } from "./reports.js";
import { runs } from "./runs.js";
import { setUps } from "./set-ups.js";
import { spoken } from "./spoken.js";
import { versions } from "./versions.js";

const { log: said } = words;

/** Fills the log's section: the entries follow the log, the files' part stays as it is. */
export function logView(section: HTMLElement): () => void {
  const holds = element("p", { class: "quiet" });
  const entries = element("div", {});
  const fill = () => {
    holds.textContent = said.holds(theLog().entries.length);
    refill(
      entries,
      ...attention(),
      ...setUps(),
      runs(fill),
      reports(fill),
      ...spoken(fill),
      versions(),
      ...forget(fill),
    );
  };
  logNow.subscribe(() => {
    if (!section.hidden) fill();
  });
  return () => {
    refill(section, element("h2", { tabindex: -1 }, words.views.log), holds, ...files(), entries);
    fill();
  };
}
