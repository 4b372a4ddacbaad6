import { type PhaseName, phaseNames } from "../../balance/phases.js";
import type { PhaseShifts } from "../plan/sheet-row.js";

/** The part of a corner in which balance moved most. */
export function strongest(shifts: PhaseShifts): PhaseName {
  return phaseNames.reduce((a, b) => (Math.abs(shifts[b]) > Math.abs(shifts[a]) ? b : a));
}

/** How far it moved there, without sign, m/s². */
export const sizeOfMost = (shifts: PhaseShifts): number => Math.abs(shifts[strongest(shifts)]);

/** How much balance moved over all parts of a corner together, m/s². */
export function size(shifts: PhaseShifts): number {
  return Math.hypot(...phaseNames.map((name) => shifts[name]));
}

/** What is left of one movement of balance when another is taken off, m/s². */
export function less(a: PhaseShifts, b: PhaseShifts): PhaseShifts {
  return Object.fromEntries(phaseNames.map((name) => [name, a[name] - b[name]])) as PhaseShifts;
}

/** The part of one movement of balance that goes along another, as a share of that other. */
export function shareAlong(moved: PhaseShifts, way: PhaseShifts): number {
  const product = phaseNames.reduce((sum, name) => sum + moved[name] * way[name], 0);
  return product / size(way) ** 2;
}

/**
 * One movement of balance made as large as another, the same way round: so that which lever it was
 * counts, and not how far it was turned.
 */
export function atSizeOf(wanted: PhaseShifts, moved: PhaseShifts): PhaseShifts {
  const factor = size(moved) > 0 ? size(wanted) / size(moved) : 0;
  return Object.fromEntries(phaseNames.map((name) => [name, factor * moved[name]])) as PhaseShifts;
}
