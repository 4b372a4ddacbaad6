import {
  type Compared,
  type FeltCell,
  formatNumber,
  type GroupCell,
  groupSummary,
  MARGIN_PER_POINT,
  type Verdict,
} from "@rollbook/lib";
import { element, reader, spell } from "@rollbook/page";
import { feltReasonInWords } from "../../../say/felt.js";
import { signed } from "../../../say/figures.js";
import { listOf } from "../parts/fields.js";
import { type PlaceRow, placeTable } from "../parts/place-table.js";
import { shiftBar, shiftText } from "../parts/shift-bars.js";
import { words } from "../words.js";

const { talk: said } = words;
const { columns } = said;

const mark = (verdict: Verdict): HTMLElement =>
  element(
    "span",
    { class: `verdict ${verdict.replaceAll(/[ ,]+/g, "-")}` },
    said.verdicts[verdict],
  );

/** A bar and what it stands for; both bars of a place have one scale. */
const barred = (shift: number, ...text: (Node | string)[]): HTMLElement =>
  element("div", { class: "barred" }, shiftBar(shift), element("div", {}, ...text));
const feltBar = (points: number, ...text: (Node | string)[]): HTMLElement =>
  barred(points * MARGIN_PER_POINT, ...text);
const predictedBar = (shift: number): HTMLElement => barred(shift, shiftText(shift));

/** One driver's cells: felt beside predicted, and below why they may lie as they do. */
export function driverTable({ cells }: Compared): HTMLElement[] {
  const rows = cells.map(({ corner, phase, felt, predicted, verdict }) => {
    const points = felt === undefined ? "" : feltBar(felt, signed(felt, 0));
    return { corner, phase, cells: [points, predictedBar(predicted), mark(verdict)] };
  });
  const { corner, phase, felt, predicted, verdict } = columns;
  const head = [corner, phase, felt, predicted, verdict] as const;
  return [barsHelp(), placeTable(said.third, head, rows), ...why(cells)];
}

const barsHelp = (): HTMLElement => element("p", { class: "quiet" }, said.barsHelp);

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
  const { corner, phase, felt, predicted, count, verdict } = columns;
  const head = [corner, phase, felt, predicted, count, verdict] as const;
  const large = groups.filter((cell) => cell.felt !== undefined);
  return [
    barsHelp(),
    placeTable(said.third, head, rows),
    ...why(all.filter((one) => large.some((cell) => isAt(one, cell)))),
  ];
}

type Place = Pick<FeltCell, "corner" | "phase">;
const isAt = (one: Place, other: Place): boolean =>
  one.corner === other.corner && one.phase === other.phase;

function groupRow(cell: GroupCell, here: FeltCell | undefined): PlaceRow {
  const { corner, phase, count, felt } = cell;
  const predicted = here === undefined ? "" : predictedBar(here.predicted);
  const drivers = String(count);
  if (felt === undefined) return { corner, phase, cells: ["", predicted, drivers, said.tooFew] };
  const spread = said.halfWithin(formatNumber(felt.spread, 1));
  const small = element("small", { class: "quiet" }, spread);
  const points = feltBar(felt.median, signed(felt.median, 1), " ", small);
  const cells = [points, predicted, drivers, counts(felt.verdicts)];
  return { corner, phase, cells };
}

const reasonsIn = ({ reasons }: FeltCell): string[] =>
  reasons.map((reason) => feltReasonInWords(reason, reader));

/** Place by place, why it may not have been as predicted; each reason once. */
function why(cells: readonly FeltCell[]): HTMLElement[] {
  const other = cells.filter(({ verdict }) => verdict !== "match");
  const places = other.filter((cell, i) => other.findIndex((one) => isAt(one, cell)) === i);
  if (places.length === 0) return [];
  const lists = places.flatMap((place) => {
    const here = other.filter((cell) => isAt(cell, place));
    const reasons = [...new Set(here.flatMap(reasonsIn))];
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
