import { expectations, type PredictionEntry } from "@rollbook/lib";
import { element } from "@rollbook/page";
import { words } from "../words.js";

const { talk: said } = words;

/** What was expected of a run, counted, with reasons and without names. */
export function predictions(entries: readonly PredictionEntry[]): HTMLElement[] {
  if (entries.length === 0) return [element("p", { class: "quiet" }, said.noPredictions)];
  const items = expectations.map((expects) => {
    const own = entries.filter((one) => one.expects === expects);
    const reasons = own.map(({ reason, confidence = "" }) =>
      element("li", {}, said.reason(reason, confidence)),
    );
    const line = said.predicted(words.report.expects[expects], own.length);
    return element("li", {}, line, element("ul", { class: "plain" }, ...reasons));
  });
  return [element("ul", { class: "plain" }, ...items)];
}
