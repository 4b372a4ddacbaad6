import { type PhaseName, phaseNames } from "../balance/phases.js";
import type { Behaviour } from "./behaviour.js";

/** A part of a corner in which a change makes balance better and the car slower. */
export interface Trade {
  readonly phase: PhaseName;
  /** m/s² by which the margin comes nearer to neutral, above 0 */
  readonly better: number;
  /** m/s² that the car turns less hard, above 0 */
  readonly slower: number;
}

/** m/s² of the margin from which balance counts as better. */
const LEAST_BETTER = 0.05;

/** m/s² of the hardest turn from which a car counts as slower. */
const LEAST_SLOWER = 0.02;

/** Whether a change that brings balance nearer to where it should be costs grip, m/s² both. */
export const isTrade = (better: number, slower: number): boolean =>
  better >= LEAST_BETTER && slower >= LEAST_SLOWER;

/**
 * Where a change makes balance better and the car slower.
 *
 * @param tips - parts in which the car tips over before or after: no balance to speak of
 */
export function tradesOf(before: Behaviour, after: Behaviour, tips: readonly PhaseName[]): Trade[] {
  return phaseNames.flatMap((phase) => {
    const [was, is] = [before.phases[phase], after.phases[phase]];
    const better = Math.abs(was.understeerMargin) - Math.abs(is.understeerMargin);
    const slower = was.lateralAcceleration - is.lateralAcceleration;
    return isTrade(better, slower) && !tips.includes(phase) ? [{ phase, better, slower }] : [];
  });
}
