import {
  type Banded,
  type BandedPhase,
  decimalsIn,
  type PhaseName,
  type PhaseShifts,
  phaseNames,
  toShown,
  unitOf,
} from "@rollbook/lib";
import { element, reader } from "@rollbook/page";
import { digitsFor } from "../../../say/digits.js";
import { signed } from "../../../say/figures.js";
import { words } from "../words.js";

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

const namespace = "http://www.w3.org/2000/svg";

/** A bar to the left for the rear, to the right for the front. */
export function shiftBar(shift: number): SVGElement {
  const picture = document.createElementNS(namespace, "svg");
  const length = Math.min(1, Math.abs(shift) / FULL) * 48;
  const set = (shape: Element, values: Record<string, string | number>) => {
    for (const [name, value] of Object.entries(values)) shape.setAttribute(name, String(value));
  };
  set(picture, { viewBox: "0 0 100 10", "aria-hidden": "true", class: "shift-bar" });
  const middle = document.createElementNS(namespace, "line");
  set(middle, { x1: 50, x2: 50, y1: 0, y2: 10 });
  const side = document.createElementNS(namespace, "rect");
  const x = shift < 0 ? 50 - length : 50;
  set(side, { x, y: 2, width: length, height: 6, class: shift < 0 ? "rear" : "front" });
  picture.append(side, middle);
  return picture;
}

/** A row of the table: it takes in how sure its shift is, once that is known. */
interface ShiftRow {
  readonly whole: HTMLElement;
  tell(banded: Banded): void;
}

function shiftRow(phase: PhaseName, shift: number, withVerdict: boolean): ShiftRow {
  const picture = element("td", {});
  picture.append(shiftBar(shift));
  const number = element("td", { class: "number" }, shiftText(shift));
  const verdict = element("td", { class: "verdict" }, words.sure.waiting);
  return {
    whole: element(
      "tr",
      {},
      element("th", { scope: "row" }, phase),
      number,
      picture,
      ...(withVerdict ? [verdict] : []),
    ),
    tell({ band, sign }) {
      const decimals = digitsFor(band, "acceleration", 2, reader.units);
      number.textContent = shiftText(shift, decimals);
      verdict.textContent = /[1-9]/.test(number.textContent) ? words.sure[sign.verdict] : "";
    },
  };
}

/** How far balance moves in each part of a corner: a table with bars. */
export function shiftBars(phases: PhaseShifts, caption: string): HTMLElement {
  return shiftTable(phases, caption, false).whole;
}

/** The same, with a column for how sure each shift is. */
export function sureShiftBars(phases: PhaseShifts, caption: string) {
  return shiftTable(phases, caption, true);
}

function shiftTable(phases: PhaseShifts, caption: string, withVerdict: boolean) {
  const heading = element(
    "tr",
    {},
    element("th", { scope: "col" }, words.phase),
    element("th", { scope: "col" }, words.shift),
    element("th", { scope: "col", class: "ends" }, words.rearOrFront),
    ...(withVerdict ? [element("th", { scope: "col" }, words.sure.way)] : []),
  );
  const rows = phaseNames.map((phase) => shiftRow(phase, phases[phase], withVerdict));
  const whole = element(
    "table",
    { class: "shifts" },
    element("caption", {}, caption),
    element("thead", {}, heading),
    element("tbody", {}, ...rows.map((row) => row.whole)),
  );
  const tell = (banded: Readonly<Record<PhaseName, BandedPhase>>) =>
    phaseNames.forEach((phase, i) => {
      rows[i]?.tell(banded[phase].understeerMargin);
    });
  return { whole, tell };
}
