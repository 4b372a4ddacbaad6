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

/** One driver's cells: felt beside predicted, and below why they may lie as they do. */
export function driverTable({ cells }: Compared): HTMLElement[] {
  const rows = cells.map((cell) => [
    cell.corner,
    cell.phase,
    cell.felt === undefined ? "" : signed(cell.felt, 0),
    shiftText(cell.predicted),
    mark(cell.verdict),
  ]);
  const { corner, phase, felt, predicted, verdict } = columns;
  return [table(said.third, [corner, phase, felt, predicted, verdict], rows), ...why(cells)];
}

/** The group's cells without names; where few drivers speak only their number is shown. */
export function groupTable(compared: readonly Compared[]): HTMLElement[] {
  const all = compared.flatMap(({ cells }) => cells);
  const groups = groupSummary(compared.map(({ cells }) => cells));
  const rows = groups.map((cell) =>
    groupRow(
      cell,
      all.find((one) => isAt(one, cell)),
    ),
  );
  const { corner, phase, count, felt, spread, predicted, verdict } = columns;
  const head = [corner, phase, count, felt, spread, predicted, verdict];
  const large = groups.filter((cell) => cell.felt !== undefined);
  return [
    table(said.third, head, rows),
    ...why(all.filter((one) => large.some((cell) => isAt(one, cell)))),
  ];
}

type Place = Pick<FeltCell, "corner" | "phase">;
const isAt = (one: Place, other: Place): boolean =>
  one.corner === other.corner && one.phase === other.phase;

function groupRow(cell: GroupCell, here: FeltCell | undefined): (HTMLElement | string)[] {
  const { corner, phase, count, felt } = cell;
  const predicted = here === undefined ? "" : shiftText(here.predicted);
  const place = [corner, phase, String(count)];
  if (felt === undefined) return [...place, "", "", predicted, said.tooFew];
  const spread = `± ${formatNumber(felt.spread, 1)}`;
  return [...place, signed(felt.median, 1), spread, predicted, counts(felt.verdicts)];
}

/** Place by place, why it may not have been as predicted; each reason once. */
function why(cells: readonly FeltCell[]): HTMLElement[] {
  const other = cells.filter(({ verdict }) => verdict !== "match");
  const places = other.filter((cell, i) => other.findIndex((one) => isAt(one, cell)) === i);
  if (places.length === 0) return [];
  const lists = places.flatMap((place) => {
    const here = other.filter((cell) => isAt(cell, place));
    const reasons = [...new Set(here.flatMap((cell) => cell.reasons))];
    return [element("h4", {}, said.at(place.corner, place.phase)), listOf(reasons)];
  });
  return [element("h3", {}, said.columns.reasons), ...lists];
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
