import {
  type Banded,
  type BandedPhase,
  type PhaseName,
  type PhaseShifts,
  phaseNames,
} from "@rollbook/lib";
import { reader } from "@rollbook/page";
import { digitsFor } from "../say/digits.js";
import { signed } from "../say/figures.js";
import { decimalsIn } from "../say/shown-range.js";
import { shiftWords as words } from "../say/ui.js";
import { toShown, unitOf } from "../say/units.js";

/** Shift at which a bar is as long as it gets, m/s². */
const FULL = 0.5;

/** A shift of balance as text, such as "+0.20 m/s²". */
export function shiftText(
  shift: number,
  decimals = decimalsIn("acceleration", 2, reader.units),
): string {
  const unit = unitOf("acceleration", reader.units);
  return `${signed(toShown("acceleration", shift, reader.units), decimals)}\u00a0${unit}`;
}

/** A bar to the left for the rear, to the right for the front. */
export function ShiftBar({ shift }: { readonly shift: number }) {
  const length = Math.min(1, Math.abs(shift) / FULL) * 48;
  const x = shift < 0 ? 50 - length : 50;
  return (
    <svg viewBox="0 0 100 10" aria-hidden="true" class="shift-bar">
      <rect x={x} y={2} width={length} height={6} class={shift < 0 ? "rear" : "front"} />
      <line x1={50} x2={50} y1={0} y2={10} />
    </svg>
  );
}

/** A shift with no more digits than its band has, once that is known. */
export const shiftWithin = (shift: number, sure: Banded | undefined): string =>
  sure === undefined
    ? shiftText(shift)
    : shiftText(shift, digitsFor(sure.band, "acceleration", 2, reader.units));

/** How sure each part of a corner is, once that is known. */
export type SureShifts = Readonly<Record<PhaseName, BandedPhase>>;

function sureCells(shift: number, sure: Banded | undefined): [number: string, verdict: string] {
  if (sure === undefined) return [shiftText(shift), words.waiting];
  const text = shiftWithin(shift, sure);
  return [text, /[1-9]/.test(text) ? words[sure.sign.verdict] : ""];
}

/** How far balance moves in each part of a corner: a table with bars, and a column for how sure where that is asked for. */
export function ShiftBars({
  phases,
  caption,
  sure,
}: {
  readonly phases: PhaseShifts;
  readonly caption: string;
  /** "waiting" until it is known. */
  readonly sure?: SureShifts | "waiting";
}) {
  return (
    <table class="shifts">
      <caption>{caption}</caption>
      <thead>
        <tr>
          <th scope="col">{words.phase}</th>
          <th scope="col">{words.shift}</th>
          <th scope="col" class="ends">
            {words.rearOrFront}
          </th>
          {sure !== undefined && <th scope="col">{words.way}</th>}
        </tr>
      </thead>
      <tbody>
        {phaseNames.map((phase) => (
          <PhaseLine key={phase} phase={phase} shift={phases[phase]} sure={sure} />
        ))}
      </tbody>
    </table>
  );
}

interface Shifted {
  readonly phase: PhaseName;
  readonly shift: number;
  readonly sure: SureShifts | "waiting" | undefined;
}

function PhaseLine({ phase, shift, sure }: Shifted) {
  const known = sure === "waiting" ? undefined : sure?.[phase].understeerMargin;
  const [number, verdict] = sureCells(shift, known);
  return (
    <tr>
      <th scope="row">{phase}</th>
      <td class="number">{number}</td>
      <td>
        <ShiftBar shift={shift} />
      </td>
      {sure !== undefined && <td class="verdict">{verdict}</td>}
    </tr>
  );
}
