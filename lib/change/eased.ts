import { type PhaseName, phaseNames, phases } from "../balance/phases.js";
import type { BothCorners } from "./behaviour.js";

/** A part of a corner in which a car cannot brake or drive as hard as is usual there. */
export interface Eased {
  readonly phase: PhaseName;
  /** m/s² along the path that is usual, below 0 braking */
  readonly asked: number;
  /** m/s² that its figures are for instead: nearly the most that it can, in the worse corner */
  readonly given: number;
}

/** The parts of a left or right corner whose figures are for less braking or power than is usual. */
export function easedIn({ left, right }: BothCorners): Eased[] {
  return phaseNames.flatMap((phase) => {
    const found = [left[phase], right[phase]].filter(({ given }) => !given);
    if (found.length === 0) return [];
    const can = found.map(({ longitudinalAcceleration }) => longitudinalAcceleration);
    const given = can.reduce((a, b) => (Math.abs(b) < Math.abs(a) ? b : a));
    return [{ phase, asked: phases[phase].longitudinalAcceleration ?? 0, given }];
  });
}
