import type { PhaseName } from "../../balance/phases.js";
import { cellIn } from "../debrief/cells.js";
import { MARGIN_PER_POINT } from "../debrief/feel.js";
import type { NamedReport } from "../debrief/named-report.js";
import { isAskedAbout, type NamedPlace } from "./named-places.js";
import type { Option, Places } from "./options.js";

/** What a change does in a part of a corner that it was not asked for. */
export interface Cost {
  readonly corner: string;
  readonly phase: PhaseName;
  /** m/s², above 0 towards the front sliding first */
  readonly shift: number;
  /** What drivers said of that part in the same run; nobody: empty. */
  readonly named: readonly NamedReport[];
  /** m/s² by which it comes further from what they asked, in the mean; below 0: nearer */
  readonly further: number;
}

/**
 * What a change costs in the other parts: all that is felt in the corners asked about, and all that
 * somebody named in the run. Where it is nearer to what was asked it is no cost, but told too.
 *
 * @param leastFelt - m/s²
 */
export function costsOf(option: Option, places: Places, leastFelt: number): Cost[] {
  const { cells, named, targets } = places;
  const felt = option.after.flatMap((cell, i): Cost[] => {
    const shift = cell.balance - (cells[i] ?? cell).balance;
    const { corner, phase } = cell;
    const told = isAskedAbout(corner, phase, targets) || named.some((one) => isIn(one, cell));
    if (told || Math.abs(shift) < leastFelt) return [];
    return [{ corner, phase, shift, named: [], further: 0 }];
  });
  return [...named.map((one) => costAt(one, option)), ...felt];
}

const isIn = ({ corner, before }: NamedPlace, cell: { corner: string; phase: string }): boolean =>
  corner.name === cell.corner && before.phase === cell.phase;

function costAt({ corner, named, before }: NamedPlace, { effect, after }: Option): Cost {
  const { phase } = before;
  const known = after.find((cell) => cell.corner === corner.name && cell.phase === phase);
  const shift = (known ?? cellIn(effect, corner, phase, before)).balance - before.balance;
  const wants = named.flatMap(({ report: { balance } }) =>
    balance === undefined ? [] : [0 - balance * MARGIN_PER_POINT],
  );
  const further = wants.map((want) => Math.abs(want - shift) - Math.abs(want));
  const mean = further.reduce((sum, one) => sum + one, 0) / Math.max(1, further.length);
  return { corner: corner.name, phase, shift, named, further: mean };
}
