import { type PhaseName, phaseNames } from "../../lib/balance/phases.js";
import type { Car } from "../../lib/car/car.js";
import type { ChangeBand } from "../../lib/certainty/change-bands.js";
import type { BandedPhase } from "../../lib/certainty/phase-bands.js";
import type { Trade } from "../../lib/change/trade.js";
import { LEAST_FELT_SHIFT } from "../../lib/day/debrief/feel.js";
import {
  dampersNote,
  easedClauses,
  leanNote,
  nearTippingClauses,
  onStopClauses,
  pressureNote,
  tradeClauses,
} from "../say/balance-notes.js";
import { changeLabel } from "../say/change.js";
import { brokenBy } from "../say/class-rules.js";
import { movedInWords, signed } from "../say/figures.js";
import type { Reader } from "../say/reader.js";
import { refusalInWords } from "../say/refusal.js";
import { DASH } from "./balance-text.js";
import type { HowSure } from "./how-sure.js";
import type { SetUpReport } from "./set-up-report.js";
import { bandsNote, verdictInWords } from "./sure-text.js";
import { textTable } from "./text-table.js";
import type { Writer } from "./writer.js";

type Row = SetUpReport["changes"][number];
type Moved = NonNullable<Row["moved"]>;

/** What every single change does to balance and grip, and what else it moves. */
export function changes(
  { changes: rows, balance, notKnown }: SetUpReport,
  car: Car,
  reader: Reader,
  write: Writer,
  sure?: HowSure,
): string {
  const named = rows.map((row, i) => ({
    ...row,
    label: changeLabel(row.change, car, reader),
    band: sure?.changes[i],
  }));
  const lines = named.flatMap((row) => shifts(row, balance.tips, write));
  const levers = new Set(rows.map(({ change }) => change.lever));
  const tipping = lines.some((line) => line.includes(DASH));
  return [
    `Single changes: shift of the margin in each part of a corner, and of the car's own limit in the middle, ${write.unit("acceleration")}`,
    `Above 0: towards understeer, and more grip. ${FELT}: a margin shifts by ${write.value("acceleration", LEAST_FELT_SHIFT, 2)} or more, likely to be felt.`,
    ...(sure ? [bandsNote(sure.samples.changes, sure.seed)] : []),
    ...(lines.some((line) => line.some((cell) => cell.includes(TRADE))) ? [TRADES] : []),
    ...(tipping ? [TIPS] : []),
    ...(levers.has("tyrePressure") ? pressureNote(notKnown.bestPressure) : []),
    ...(levers.has("camber") ? leanNote(notKnown.costOfLean) : []),
    ...(levers.has("damperBump") || levers.has("damperRebound") ? [dampersNote] : []),
    textTable([["", ...phaseNames, "limit", "", ...(sure ? ["which way"] : [])], ...lines]),
    ...(sure ? ["", ...groupsInWords(sure, named)] : []),
    "",
    "What else each change moves",
    BELOW_LIMIT,
    ...named.map((row) => alsoMoved(row, balance, reader, write)),
  ].join("\n");
}

const FELT = "*";
const TRADE = "†";
const TRADES = `${TRADE}: better balanced in a part of a corner, but slower there: where, and by how much, stands below.`;
const BELOW_LIMIT =
  "Understeer gradient and yaw response are those near straight ahead: there toe, camber and steering of the axles in roll decide, at the limit the loads do, and the two may go opposite ways.";
const TIPS = `${DASH}: before or after the change the car tips over there before its tyres let go, so there is no balance to shift.`;

type Named = Row & { readonly label: string; readonly band?: ChangeBand | undefined };

/** The change alone and, where the seats can bring the body back, with them turned. */
function shifts(
  { label, moved, tips = [], trades = [], putBack, band }: Named,
  tipped: readonly PhaseName[],
  write: Writer,
): string[][] {
  if (moved === undefined) return [[label]];
  const alone = [label, ...cells(moved, trades, [...tipped, ...tips], write, band?.phases)];
  if (putBack === undefined) return [alone];
  const tipsBack = [...tipped, ...putBack.tips];
  const bandBack = band?.phases && band.putBack;
  return [alone, [PUT_BACK, ...cells(putBack.moved, putBack.trades, tipsBack, write, bandBack)]];
}

type Bands = Readonly<Record<PhaseName, BandedPhase>>;

/** Shifts of the margins, a dash where the car tips over; of the limit; and whether it can be felt. */
function cells(
  { phases }: Moved,
  trades: readonly Trade[],
  tips: readonly PhaseName[],
  { change }: Writer,
  bands?: Bands,
): string[] {
  const told = phaseNames.filter((name) => !tips.includes(name));
  const felt = told.some((name) => likelyFelt(phases[name].understeerMargin));
  const shift = (name: PhaseName, key: keyof BandedPhase) =>
    change("acceleration", phases[name][key], 2, bands?.[name][key].band);
  const shown = told.filter((name) => /[1-9]/.test(shift(name, "understeerMargin")));
  return [
    ...phaseNames.map((name) => (told.includes(name) ? shift(name, "understeerMargin") : DASH)),
    shift("middle", "lateralAcceleration"),
    `${felt ? FELT : ""}${trades.length > 0 ? TRADE : ""}`,
    ...(bands && shown.length > 0 ? [verdictInWords(bands, shown)] : []),
  ];
}

/** What moves balance in the middle for certain and enough to matter, in groups, the strongest first. */
function groupsInWords({ groups }: HowSure, rows: readonly Named[]): string[] {
  const told = (["understeer", "oversteer"] as const).flatMap((way) => {
    const sign = way === "understeer" ? 1 : -1;
    const lines = groups[way].flatMap((group) => {
      const labels = rows
        .filter((row) => group.includes(row.change) && movesMiddle(row, sign))
        .map(({ label }) => label);
      return labels.length === 0 ? [] : [labels.join(" = ")];
    });
    if (lines.length === 0) return [];
    return [`  towards ${way}`, ...lines.map((line, i) => `    ${i + 1}  ${line}`)];
  });
  return told.length === 0 ? [] : [GROUPS, ...told];
}

const GROUPS =
  "The strongest in the middle, seats put back where they can be; joined by = what cannot be told apart";

function movesMiddle({ band, moved, putBack }: Named, sign: 1 | -1): boolean {
  const { middle } = (band?.phases && (band.putBack ?? band.phases)) ?? {};
  const shift = (putBack?.moved ?? moved)?.phases.middle.understeerMargin ?? 0;
  return (
    middle !== undefined &&
    middle.understeerMargin.sign.verdict !== "cannot say" &&
    sign * shift >= LEAST_FELT_SHIFT / 2
  );
}

/** Judged in the hundredths that the table shows. */
const likelyFelt = (shift: number): boolean =>
  Number(Math.abs(shift).toFixed(2)) >= LEAST_FELT_SHIFT;

const PUT_BACK = "  … with the seats put back";

function alsoMoved(row: Row, before: Before, reader: Reader, write: Writer): string {
  if (row.moved === undefined) return `  ${row.label}: ${refusalInWords(row.refusal, reader)}`;
  const parts = [
    ...movedInWords(row.moved.figures, reader),
    ...seats(row),
    ...inTurns(row, before, write),
    ...broken(row, write),
  ];
  return `  ${row.label}: ${parts.length === 0 ? "nothing else" : parts.join("; ")}.`;
}

type Before = SetUpReport["balance"];

/** What is new at the limit besides the shifts; with the seats put back, where they can. */
function inTurns(row: Row, before: Before, { value }: Writer): string[] {
  const { trades = [], onStops = [], eased = [], nearTipping = [], tips = [] } = row.putBack ?? row;
  return [
    ...tradeClauses(trades, value),
    ...onStopClauses(onStops, "comes to be"),
    ...easedClauses(newIn(eased, before.eased), value),
    ...nearTippingClauses(newIn(nearTipping, before.nearTipping), tips),
  ];
}

/** Those in parts of a corner that were not among the parts before. */
function newIn<T extends { readonly phase: PhaseName }>(now: readonly T[], before: readonly T[]) {
  return now.filter(({ phase }) => !before.some((old) => old.phase === phase));
}

function seats({ putBack }: Row): string[] {
  if (putBack === undefined) return [];
  const { front, rear } = putBack.turns;
  const four = [front.left, front.right, rear.left, rear.right].map((turns) => signed(turns, 1));
  return [`put back with seat turns ${four.join(" / ")}`];
}

function broken({ broken: margins = [] }: Row, { value }: Writer): string[] {
  return margins.map((margin) => `BREAKS ${brokenBy(margin, value)}`);
}
