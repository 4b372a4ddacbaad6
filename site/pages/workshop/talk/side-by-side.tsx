import {
  type Compared,
  cellsToldOf,
  type FeltCell,
  type GroupCell,
  groupSummary,
  MARGIN_PER_POINT,
  notAsPredicted,
  type PhaseName,
  type Verdict,
} from "@rollbook/lib";
import { reader } from "@rollbook/page";
import { type ComponentChildren, Fragment } from "preact";
import { feltReasonInWords } from "../../../say/felt.js";
import { signed } from "../../../say/figures.js";
import { formatNumber } from "../../../say/units.js";
import { talk as said } from "../../../say/workshop/talk.js";
import { List } from "../../../ui/list.js";
import { type PlaceRow, PlaceTable } from "../../../ui/place-table.js";
import { ShiftBar, type SureShifts, shiftWithin } from "../../../ui/shift-bars.js";

const { corner, phase, felt, predicted, count, verdict } = said.columns;

interface Sure {
  /** How sure the change that was tested is, once that is known. */
  readonly sure: SureShifts | undefined;
}

/** One driver's cells: felt beside predicted, and below why they may lie as they do. */
export function DriverTable({ cells, sure }: Sure & { readonly cells: readonly FeltCell[] }) {
  const rows = cells.map(({ corner, phase, felt, predicted, verdict }) => {
    const points = felt !== undefined && feltBar(felt, signed(felt, 0));
    return { corner, phase, cells: [points, predictedBar(predicted, phase, sure), mark(verdict)] };
  });
  const columns = [corner, phase, felt, predicted, verdict] as const;
  return <SideBySide columns={columns} rows={rows} why={cells} />;
}

/** The group's cells without names; where few drivers speak only their number is shown. */
export function GroupTable({ compared, sure }: Sure & { readonly compared: readonly Compared[] }) {
  const all = compared.flatMap(({ cells }) => cells);
  const groups = groupSummary(compared.map(({ cells }) => cells));
  const rows = groups.map((cell) =>
    groupRow(
      cell,
      all.find(({ corner, phase }) => corner === cell.corner && phase === cell.phase),
      sure,
    ),
  );
  const columns = [corner, phase, felt, predicted, count, verdict] as const;
  return <SideBySide columns={columns} rows={rows} why={cellsToldOf(groups, compared)} />;
}

function groupRow(
  { corner, phase, count, felt }: GroupCell,
  one: FeltCell | undefined,
  sure: SureShifts | undefined,
): PlaceRow {
  const predicted = one && predictedBar(one.predicted, phase, sure);
  const drivers = String(count);
  if (felt === undefined) return { corner, phase, cells: ["", predicted, drivers, said.tooFew] };
  const spread = said.halfWithin(formatNumber(felt.spread, 1));
  const points = feltBar(
    felt.median,
    <>
      {signed(felt.median, 1)} <small class="quiet">{spread}</small>
    </>,
  );
  return { corner, phase, cells: [points, predicted, drivers, counts(felt.verdicts)] };
}

const counts = (verdicts: NonNullable<GroupCell["felt"]>["verdicts"]) => (
  <ul class="plain">
    {Object.entries(verdicts).map(([verdict, times]) => (
      <li key={verdict}>{said.counted(said.verdicts[verdict as Verdict], times)}</li>
    ))}
  </ul>
);

/** A bar and what it stands for; both bars of a place have one scale. */
const barred = (shift: number, text: ComponentChildren) => (
  <div class="barred">
    <ShiftBar shift={shift} />
    <div>{text}</div>
  </div>
);
const feltBar = (points: number, text: ComponentChildren) =>
  barred(points * MARGIN_PER_POINT, text);
const predictedBar = (shift: number, phase: PhaseName, sure: SureShifts | undefined) =>
  barred(shift, shiftWithin(shift, sure?.[phase].understeerMargin));

const mark = (verdict: Verdict) => (
  <span class={`verdict ${verdict.replaceAll(/[ ,]+/g, "-")}`}>{said.verdicts[verdict]}</span>
);

/** The table, and place by place why it may not have been as predicted; each reason once. */
function SideBySide({
  why,
  ...table
}: Omit<Parameters<typeof PlaceTable>[0], "label"> & { readonly why: readonly FeltCell[] }) {
  const places = notAsPredicted(why);
  return (
    <>
      <p class="quiet">{said.barsHelp}</p>
      <PlaceTable label={said.third} {...table} />
      {places.length > 0 && <h3>{said.columns.reasons}</h3>}
      {places.map(({ corner, phase, reasons }) => {
        const sentences = reasons.map((reason) => feltReasonInWords(reason, reader));
        return (
          <Fragment key={`${corner} ${phase}`}>
            <h4>{said.at(corner, phase)}</h4>
            <List texts={[...new Set(sentences)]} />
          </Fragment>
        );
      })}
    </>
  );
}
