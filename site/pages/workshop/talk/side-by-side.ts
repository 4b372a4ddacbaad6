import {
  type FeltCell,
  formatNumber,
  type GroupCell,
  groupSummary,
  signed,
  type Verdict,
} from "@rollbook/lib";
import { element, spell } from "@rollbook/page";
import { listOf } from "../parts/fields.js";
import { shiftText } from "../parts/shift-bars.js";
import { table } from "../parts/table.js";
import { words } from "../words.js";
import type { Compared } from "./compare.js";

const { talk: said } = words;
const { columns } = said;

const mark = (verdict: Verdict): HTMLElement =>
  element(
    "span",
    { class: `verdict ${verdict.replaceAll(/[ ,]+/g, "-")}` },
    said.verdicts[verdict],
  );

/** One driver's cells: felt, predicted, and why they may lie as they do. */
export function driverTable({ cells }: Compared): HTMLElement {
  const rows = cells.map((cell) => [
    cell.corner,
    cell.phase,
    cell.felt === undefined ? "" : signed(cell.felt, 0),
    shiftText(cell.predicted),
    mark(cell.verdict),
    listOf(cell.reasons),
  ]);
  const { corner, phase, felt, predicted, verdict, reasons } = columns;
  return table(said.third, [corner, phase, felt, predicted, verdict, reasons], rows);
}

/** The group's cells without names; where few drivers speak only their number is shown. */
export function groupTable(compared: readonly Compared[]): HTMLElement {
  const all = compared.map(({ cells }) => cells);
  const rows = groupSummary(all).map((cell) => groupRow(cell, all.flat()));
  const { corner, phase, count, felt, spread, predicted, verdict, reasons } = columns;
  const head = [corner, phase, count, felt, spread, predicted, verdict, reasons];
  return table(said.third, head, rows);
}

function groupRow(cell: GroupCell, all: readonly FeltCell[]): (HTMLElement | string)[] {
  const { corner, phase, count, felt } = cell;
  const here = all.filter((one) => one.corner === corner && one.phase === phase);
  const predicted = here[0] === undefined ? "" : shiftText(here[0].predicted);
  const place = [corner, phase, String(count)];
  if (felt === undefined) return [...place, "", "", predicted, said.tooFew, ""];
  const spread = `± ${formatNumber(felt.spread, 1)}`;
  const median = signed(felt.median, 1);
  return [...place, median, spread, predicted, counts(felt.verdicts), reasonsOf(here)];
}

/** Reasons where it was not as predicted, each once. */
function reasonsOf(cells: readonly FeltCell[]): HTMLElement | string {
  const other = cells.filter(({ verdict }) => verdict !== "match");
  const reasons = [...new Set(other.flatMap((cell) => cell.reasons))];
  return reasons.length === 0 ? "" : listOf(reasons);
}

function counts(verdicts: NonNullable<GroupCell["felt"]>["verdicts"]): HTMLElement {
  const items = Object.entries(verdicts).map(([verdict, count]) =>
    element("li", {}, said.counted(said.verdicts[verdict as Verdict], count)),
  );
  return element("ul", { class: "plain" }, ...items);
}

/** What was tested, marked where it is more than one thing. */
export function testedLine(labels: readonly string[]): HTMLElement {
  const changes = labels.map((label) => spell(label)).join("; ");
  if (labels.length === 0) return element("p", {}, said.nothingTested);
  if (labels.length === 1) return element("p", {}, said.tested(changes));
  return element("p", { class: "beware confounded" }, said.confounded(changes));
}
