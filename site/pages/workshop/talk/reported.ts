import type { Report } from "@rollbook/lib";
import { element } from "@rollbook/page";
import { placeTable } from "../parts/place-table.js";
import { balanceText } from "../report/balance-scale.js";
import { words } from "../words.js";
import { balancesOf, placesIn, type ReportedPlace } from "./places.js";

const { talk: said } = words;
const { columns } = said;

/** What a group reported, place by place; words only, no names. */
export function reportedByGroup(reports: readonly Report[]): HTMLElement {
  const rows = placesIn(reports).map((place) => ({
    ...where(place),
    cells: [balancesOf(place.reports).map(balanceText).join("  "), wordsIn(place.reports)],
  }));
  const head = [columns.corner, columns.phase, columns.balance, columns.words] as const;
  return placeTable(said.first, head, rows);
}

/** What one driver reported, in the driver's own terms. */
export function reportedByDriver(reports: readonly Report[]): HTMLElement {
  const rows = reports.map((report) => {
    const { input = "", balance, words: text = "" } = report;
    const shown = balance === undefined ? words.report.noBalance : balanceText(balance);
    return { ...where(report), cells: [input, shown, text] };
  });
  const { corner, phase, input, balance, words: own } = columns;
  return placeTable(said.first, [corner, phase, input, balance, own], rows);
}

const where = ({ corner, phase }: Pick<ReportedPlace, "corner" | "phase">) => ({
  corner: corner ?? words.report.nowhere,
  phase: phase ?? words.report.noPhase,
});

function wordsIn(reports: readonly Report[]): HTMLElement | string {
  const all = reports.flatMap(({ words: text }) => (text === undefined ? [] : [text])).sort();
  if (all.length === 0) return "";
  return element("ul", { class: "plain" }, ...all.map((text) => element("li", {}, text)));
}
