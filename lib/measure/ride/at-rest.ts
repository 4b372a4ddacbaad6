import { Refusal } from "../../refusal.js";
import { DEGREE } from "../../units.js";
import {
  type Evenly,
  meanOver,
  type Row,
  STEP,
  type Stretch,
  smooth,
  stretchesWhere,
} from "./evenly.js";
import type { Three } from "./ride.js";
import { lengthOf, plus, times } from "./vectors.js";

/** What the sensors tell while the car stands. */
export interface AtRest {
  /** m/s² in the device's axes: what holds the phone up, or the opposite where its signs are turned round */
  readonly gravity: Three;
  /** rad/s that the turn rates show with no turn */
  readonly bias: Three;
  /** s of rest in all */
  readonly duration: number;
  readonly stretches: readonly Stretch[];
}

const WINDOW = 1.5; // s over which all must stay the same
const LEAST = 2; // s
const STILL = { force: 0.25, turn: 0.5 * DEGREE }; // standard deviations of half-second means
const ALIKE = { force: 0.4, turn: 0.6 * DEGREE }; // from the first rest: a steady turn is none

/**
 * Where the car stood, from nothing changing: the first such time of two seconds, and all that are
 * like it.
 *
 * @throws Refusal where it never stood still for two seconds
 */
export function atRest(ride: Evenly): AtRest {
  const still = [
    ...ride.force.map((row) => isStill(row, STILL.force)),
    ...ride.turn.map((row) => isStill(row, STILL.turn)),
  ];
  const quiet = stretchesWhere(
    ride.count,
    (i) => ride.gap[i] === 0 && still.every((row) => row[i] === 1),
    Math.round(LEAST / STEP),
  );
  const means = quiet.map((stretch) => ({ stretch, ...meansOf(ride, stretch) }));
  const [first] = means;
  if (first === undefined)
    throw new Refusal("no-rest", "The ride has no two seconds in which the car stood still.");
  const rests = means.filter(
    ({ force, turn }) =>
      lengthOf(plus(force, times(first.force, -1))) < ALIKE.force &&
      lengthOf(plus(turn, times(first.turn, -1))) < ALIKE.turn,
  );
  const steps = rests.map(({ stretch }) => stretch.to - stretch.from);
  const all = steps.reduce((sum, one) => sum + one, 0);
  const mean = (of: "force" | "turn") =>
    rests.reduce<Three>(
      (sum, rest, i) => plus(sum, times(rest[of], (steps[i] ?? 0) / all)),
      [0, 0, 0],
    );
  return {
    gravity: mean("force"),
    bias: mean("turn"),
    duration: all * STEP,
    stretches: rests.map(({ stretch }) => stretch),
  };
}

/** Whether half-second means stay the same about each step. */
function isStill(row: Row, most: number): Uint8Array {
  const means = smooth(row, 0.5);
  const mean = smooth(means, WINDOW);
  const square = smooth(
    means.map((value) => value ** 2),
    WINDOW,
  );
  return Uint8Array.from(square, (value, i) => (value - (mean[i] ?? 0) ** 2 < most ** 2 ? 1 : 0));
}

function meansOf(ride: Evenly, { from, to }: Stretch): { force: Three; turn: Three } {
  const [fx, fy, fz] = ride.force;
  const [tx, ty, tz] = ride.turn;
  const mean = (row: Row) => meanOver(row, from, to);
  return { force: [mean(fx), mean(fy), mean(fz)], turn: [mean(tx), mean(ty), mean(tz)] };
}
