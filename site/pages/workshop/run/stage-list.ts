import { type SheetRow, stages } from "@rollbook/lib";
import { element } from "@rollbook/page";
import { words } from "../words.js";

/** The stages of a run with their minutes; the one at hand is marked. */
export function stageList(row: SheetRow, rounds: number, current: number): HTMLElement {
  const items = stages.map((stage, i) => {
    const minutes = row.minutes[stage] * (stage === "drive" ? rounds : 1);
    return element(
      "li",
      { "aria-current": i === current && "step" },
      element("span", {}, words.stages[stage]),
      element("span", { class: "number" }, words.minutes(minutes)),
    );
  });
  return element("ol", { class: "stages" }, ...items);
}
