import type { Report } from "@rollbook/lib";
import { element } from "@rollbook/page";
import { table } from "../parts/table.js";
import { balanceText } from "../report/balance-scale.js";
import { words } from "../words.js";
import { balancesOf, placesIn, type ReportedPlace } from "./places.js";

const { talk: said } = words;
const { columns } = said;

/** What a group reported, place by place; words only, no names. */
export function reportedByGroup(reports: readonly Report[]): HTMLElement {
  const rows = placesIn(reports).map((place) => [
    ...where(place),
    balancesOf(place.reports).map(balanceText).join("  "),
    wordsIn(place.reports),
  ]);
  const head = [columns.corner, columns.phase, columns.balance, columns.words];
  return table(said.first, head, rows);
}

/** What one driver reported, in the driver's own terms. */
export function reportedByDriver(reports: readonly Report[]): HTMLElement {
  const rows = reports.map((report) => [
    ...where(report),
    report.input ?? "",
    report.balance === undefined ? words.report.noBalance : balanceText(report.balance),
    report.words ?? "",
  ]);
  const head = [columns.corner, columns.phase, columns.input, columns.balance, columns.words];
  return table(said.first, head, rows);
}

const where = ({ corner, phase }: Pick<ReportedPlace, "corner" | "phase">): string[] => [
  corner ?? words.report.nowhere,
  phase ?? words.report.noPhase,
];

function wordsIn(reports: readonly Report[]): HTMLElement | string {
  const all = reports.flatMap(({ words: text }) => (text === undefined ? [] : [text])).sort();
  if (all.length === 0) return "";
  return element("ul", { class: "plain" }, ...all.map((text) => element("li", {}, text)));
}
