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
const HALF = 0.5; // s
/**
 * Standard deviations of half-second means: the sensors of a real car that stands with its engine
 * running show up to 0.2 m/s² and 0.55 °/s (test/outside/recorded-drive), and on the move 0.8 m/s² or
 * 1 °/s about one axis at least.
 */
const STILL = { force: 0.25, turn: 0.8 * DEGREE };
const ALIKE = { force: 0.4, turn: 1 * DEGREE }; // of two rests
const NO_BIAS = 8 * DEGREE; // rad/s: an even turn on a circle, not a sensor's fault
/** Independent samples in half a second at 25 Hz, over what a variance of three means may come to by chance. */
const BY_NOISE = 12 / 3;
const PUSHED = 0.2; // m/s² more than where least is felt: an even push of 2 m/s² adds as much to gravity
const SHORT = 0.5; // of the longest rest: a body that comes out of a turn may still roll back

/**
 * Where the car stood, from nothing changing for two seconds but what the sensors' own noise makes of
 * it: of all such times those alike that last longest together. Full braking is even too, and so is a
 * circle; but there more is felt than gravity.
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
  const rests = longestAlike(unpushed(means));
  if (rests.length === 0)
    throw new Refusal("no-rest", "The ride has no two seconds in which the car stood still.");
  const steps = rests.map(stepsOf);
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

interface Even {
  readonly stretch: Stretch;
  readonly force: Three;
  readonly turn: Three;
}

const apart = (a: Three, b: Three): number => lengthOf(plus(a, times(b, -1)));

/** Those in which nothing pushes and nothing turns. */
function unpushed(all: readonly Even[]): readonly Even[] {
  const least = Math.min(...all.map(({ force }) => lengthOf(force)));
  return all.filter(
    ({ force, turn }) => lengthOf(force) < least + PUSHED && lengthOf(turn) < NO_BIAS,
  );
}

const stepsOf = ({ stretch }: Even): number => stretch.to - stretch.from;

/** Those that one of them is like, the most steps together, without the short ones. */
function longestAlike(all: readonly Even[]): readonly Even[] {
  const groups = all.map((one) =>
    all.filter(
      ({ force, turn }) =>
        apart(force, one.force) < ALIKE.force && apart(turn, one.turn) < ALIKE.turn,
    ),
  );
  const steps = (group: readonly Even[]) => group.reduce((sum, one) => sum + stepsOf(one), 0);
  const most = groups.reduce((most, one) => (steps(one) > steps(most) ? one : most), []);
  const longest = Math.max(...most.map(stepsOf));
  return most.filter((one) => stepsOf(one) >= SHORT * longest);
}

/** Whether half-second means stay the same about each step, but for what is left of the noise in them. */
function isStill(row: Row, most: number): Uint8Array {
  const means = smooth(row, HALF);
  const mean = smooth(means, WINDOW);
  const square = smooth(
    means.map((value) => value ** 2),
    WINDOW,
  );
  const noise = smooth(
    row.map((value, i) => (value - (means[i] ?? 0)) ** 2),
    WINDOW,
  );
  return Uint8Array.from(square, (value, i) =>
    value - (mean[i] ?? 0) ** 2 < most ** 2 + (noise[i] ?? 0) / BY_NOISE ? 1 : 0,
  );
}

function meansOf(ride: Evenly, { from, to }: Stretch): { force: Three; turn: Three } {
  const [fx, fy, fz] = ride.force;
  const [tx, ty, tz] = ride.turn;
  const mean = (row: Row) => meanOver(row, from, to);
  return { force: [mean(fx), mean(fy), mean(fz)], turn: [mean(tx), mean(ty), mean(tz)] };
}
