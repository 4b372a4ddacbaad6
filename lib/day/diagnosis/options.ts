import { phaseNames } from "../../balance/phases.js";
import type { Change } from "../../change/change.js";
import {
  type Baseline,
  type Effect,
  type SeatRule,
  standingEffectOf,
} from "../../change/effect.js";
import type { Wheels } from "../../load/wheels.js";
import { type Cell, cellIn } from "../debrief/cells.js";
import type { Venue } from "../plan/venue.js";
import type { NamedPlace } from "./named-places.js";
import type { Target } from "./target.js";

/** What one change does in the places that the reports speak of. */
export interface Option {
  readonly change: Change;
  /** Steps of the adjuster. */
  readonly steps: number;
  /** The change with the car put back where the seats can do it. */
  readonly effect: Effect;
  readonly putBackTurns?: Wheels<number>;
  /** What the class says against turning the seats. */
  readonly keptFromPutBack?: SeatRule;
  /** The changed car in each part of the corners asked about. */
  readonly after: readonly Cell[];
  /** m/s² in the places reported, weighted, above 0 towards the front */
  readonly shift: number;
  /** m/s² by which those places come nearer to what was asked, weighted; below 0: further away */
  readonly gain: number;
  /** m/s² by which each target comes nearer to what was asked */
  readonly gains: readonly number[];
  /** m/s² by which the place that gains most comes nearer to what was asked */
  readonly most: number;
  /** m/s² of the greatest shift the way that was asked, wanted or too much */
  readonly reach: number;
  /** m/s² that the car can do more there, weighted */
  readonly grip: number;
  /** m/s², the mean shift elsewhere in those corners, without sign */
  readonly elsewhere: number;
}

/** The places that are reported, and the car as it is there. */
export interface Places {
  readonly before: Baseline;
  readonly targets: readonly Target[];
  readonly places: Venue;
  readonly cells: readonly Cell[];
  /** What else was named in the run. */
  readonly named: readonly NamedPlace[];
}

/** The corners of all targets as one venue. */
export function placesOf(targets: readonly Target[]): Venue {
  const corners = targets.flatMap(({ corners }) => corners);
  const first = corners.filter(({ name }, i) => corners.findIndex((c) => c.name === name) === i);
  return { name: "reported places", corners: first };
}

/**
 * What a change of so many steps does there. Elsewhere its effect is driven once that is asked for.
 *
 * @throws Refusal when it cannot be made, or the car cannot stand
 */
export function optionOf(change: Change, steps: number, question: Places): Option {
  const { before, targets, cells } = question;
  const whole = standingEffectOf(change, before);
  const { putBack, keptFromPutBack } = whole;
  const effect = putBack ?? whole;
  const after = cellsOnceAsked(effect, question);
  const movedIn = (cell: Cell, i: number) => cellMoved(cell, after(i));
  const at = targets.map((target) => {
    const here = cells.flatMap((cell, i) => (isAt(cell, target) ? [movedIn(cell, i)] : []));
    const shift = mean(here.map((cell) => cell.shift));
    const grip = mean(here.map((cell) => cell.grip));
    return { ...target, shift, grip, gain: nearer(target, shift) };
  });
  return {
    change,
    steps,
    effect,
    get after() {
      return cells.map((_, i) => after(i));
    },
    ...(putBack && { putBackTurns: putBack.turns }),
    ...(keptFromPutBack && { keptFromPutBack }),
    shift: weighted(at.map(({ weight, shift }) => [weight, shift])),
    gain: weighted(at.map(({ weight, gain }) => [weight, gain])),
    gains: at.map(({ gain }) => gain),
    most: Math.max(...at.map(({ gain }) => gain)),
    reach: Math.max(...at.map(({ want, shift }) => (want === 0 ? 0 : Math.sign(want) * shift))),
    grip: weighted(at.map(({ weight, grip }) => [weight, grip])),
    get elsewhere() {
      return meanElsewhere(cells.map(movedIn), targets);
    },
  };
}

/** The changed car in each cell of the question, driven there once it is first asked for. */
function cellsOnceAsked(effect: Effect, { places, cells }: Places): (i: number) => Cell {
  const known: Cell[] = [];
  const corners = places.corners.flatMap((corner) => phaseNames.map(() => corner));
  return (i) => {
    const [before, corner] = [cells[i], corners[i]];
    if (before === undefined || corner === undefined) throw new Error(`no cell ${i}`);
    known[i] ??= cellIn(effect, corner, before.phase, before);
    return known[i];
  };
}

interface Moved {
  readonly corner: string;
  readonly phase: string;
  readonly shift: number;
  readonly grip: number;
}

function cellMoved(before: Cell, after: Cell): Moved {
  return {
    corner: after.corner,
    phase: after.phase,
    shift: after.balance - before.balance,
    grip: after.lateralAcceleration - before.lateralAcceleration,
  };
}

function isAt({ corner, phase }: Pick<Moved, "corner" | "phase">, target: Target): boolean {
  return phase === target.phase && target.corners.some(({ name }) => name === corner);
}

/** How much nearer a shift brings a place to what was asked: |want| − |want − shift|. */
function nearer({ want }: Target, shift: number): number {
  return Math.abs(want) - Math.abs(want - shift);
}

function meanElsewhere(moved: readonly Moved[], targets: readonly Target[]): number {
  const others = moved.filter((cell) => !targets.some((target) => isAt(cell, target)));
  return mean(others.map(({ shift }) => Math.abs(shift)));
}

function mean(values: readonly number[]): number {
  return values.length === 0 ? 0 : values.reduce((sum, value) => sum + value, 0) / values.length;
}

function weighted(values: readonly (readonly [number, number])[]): number {
  const total = values.reduce((sum, [weight]) => sum + weight, 0);
  return total === 0 ? 0 : values.reduce((sum, [w, value]) => sum + w * value, 0) / total;
}
