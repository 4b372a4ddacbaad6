import { type PhaseName, phaseNames } from "../../balance/phases.js";
import { pick, randomFrom, seedFrom } from "../../random.js";
import { MARGIN_PER_POINT, pointsFelt } from "../debrief/feel.js";
import type { PhaseShifts } from "../plan/sheet-row.js";
import type { HelpLevel } from "./puzzle.js";

/** How a driver's notes differ from what was there. */
interface Habit {
  /** What is written for each m/s² that was there. */
  readonly gain: number;
  /** A part of the corner in which this driver notices nothing. */
  readonly deaf?: PhaseName;
}

/** Drivers with habits, as a coach meets them – common practice, no source. */
const habits = {
  plain: { gain: 1 },
  strong: { gain: 1.5 },
  sparing: { gain: 0.7 },
  "busy braking": { gain: 1, deaf: "braking in" },
  "busy leaving": { gain: 1, deaf: "power on" },
} as const satisfies Record<string, Habit>;

export type DriverName = keyof typeof habits;

const names = Object.keys(habits) as DriverName[];

/** Who drives a puzzle: somebody who leaves nothing out while there is most help. */
export function driverFor(seed: number, level: HelpLevel): DriverName {
  const chosen = level === 1 ? names.slice(0, 2) : names;
  return pick(chosen, randomFrom(seedFrom(`driver ${seed}`))) ?? "plain";
}

/** Points by which a driver may be off, either way – common practice, no source. */
const DOUBT = 0.4;

/** What a driver writes of each part of a corner, −3 to +3 against the known car, 0 for nothing noticed. */
export type Notes = Readonly<Record<PhaseName, number>>;

/**
 * What a driver writes of the changed car: felt with this habit, rounded, not without doubt. The
 * doubt alone is less than half a point, so whatever is not 0 has the sign of what was there.
 */
export function notesOf(name: DriverName, shifts: PhaseShifts, seed: number): Notes {
  const { gain, deaf }: Habit = habits[name];
  const random = randomFrom(seedFrom(`notes ${seed}`));
  const notes = phaseNames.map((phase) => {
    const doubt = (2 * random() - 1) * DOUBT * MARGIN_PER_POINT;
    return [phase, phase === deaf ? 0 : pointsFelt(gain * shifts[phase] + doubt)] as const;
  });
  return Object.fromEntries(notes) as Record<PhaseName, number>;
}
