import { Refusal } from "../../refusal.js";
import { DEGREE, GRAVITY } from "../../units.js";
import type { AtRest } from "./at-rest.js";
import { atTime, type Evenly, integral, type Row, STEP, smooth, stepsIn } from "./evenly.js";
import { latenessOf } from "./lateness.js";
import type { Fix, Three } from "./ride.js";
import { cross, dot, lengthOf, plus, times, unit } from "./vectors.js";

/** How a phone lies in a car, and how its browser writes down what it feels. */
export interface Mounting {
  /** The car's axes (x forward, y left, z up) in the device's. */
  readonly axes: readonly [Three, Three, Three];
  /** −1 where the browser gives all forces with the opposite sign. */
  readonly forceSign: 1 | -1;
  /** Whether that sign was found; without it left and right may be exchanged, and nothing else. */
  readonly sidesKnown: boolean;
  /** Which of the three turn rates goes about the device's x, y and z. */
  readonly turnOrder: Three;
  /** −1 where turn rates go by the left hand. */
  readonly turnSign: 1 | -1;
  /** What a force of the device is to be taken times, for gravity to be gravity. */
  readonly forceScale: number;
  /** rad/s that the turn rates show at rest, in the device's order. */
  readonly bias: Three;
}

/** Orders that browsers have had: about x, y, z as the standard has it, and about z, x, y as drafts had it. */
const ORDERS: readonly Three[] = [
  [0, 1, 2],
  [1, 2, 0],
  [2, 0, 1],
];

const STRAIGHT = 3 * DEGREE; // rad/s: less is no turn
const PUSHED = 1; // m/s²: less says little of where forward is

/**
 * How the phone lies: up from what holds it up at rest, forward from straight braking and
 * accelerating, the order and sign of the turn rates from turns, where they must be about up and go
 * with the force across.
 *
 * All forces with the opposite sign look like a drive in a mirror: only the course that satellites
 * tell says which it was. Speeds that go with nothing that was felt are not of this drive, and their
 * courses neither.
 *
 * @throws Refusal where the car neither braked nor accelerated straight on, or never turned
 * @see Gustafsson, Statistical Sensor Fusion, ch. 13 (sensors and their mounting), from memory
 */
export function mountingOf(ride: Evenly, rest: AtRest, fixes: readonly Fix[]): Mounting {
  const up = unit(rest.gravity);
  const calm = {
    force: ride.force.map((row) => smooth(row, 0.4)),
    turn: ride.turn.map((row, axis) =>
      smooth(row, 0.4).map((value) => value - at(rest.bias, axis)),
    ),
  };
  const scale = GRAVITY / lengthOf(rest.gravity);
  const { forward, lag } = forwardOf(ride, calm, rest, fixes);
  const left = cross(up, forward);
  const across = alongAxis(calm.force, left);
  const { order, sign } = turnsOf(calm.turn, { up, forward, across });
  const yaw = alongAxis(
    order.map((axis) => calm.turn[axis] as Row),
    times(up, sign),
  );
  const mirrored = lag === undefined ? 0 : mirrorOf(ride, yaw, fixes, lag);
  const forceSign = mirrored < 0 ? -1 : 1;
  return {
    axes: [times(forward, forceSign), left, times(up, forceSign)],
    ...{ forceSign, sidesKnown: mirrored !== 0, turnOrder: order, turnSign: sign },
    ...{ forceScale: Math.abs(scale - 1) < 0.05 ? scale : 1, bias: rest.bias },
  };
}

const at = (three: Three, axis: number): number => three[axis] ?? 0;

const alongAxis = (rows: readonly Row[], axis: Three): Row => {
  const [x, y, z] = rows;
  return Float64Array.from(
    x ?? [],
    (value, i) => axis[0] * value + axis[1] * (y?.[i] ?? 0) + axis[2] * (z?.[i] ?? 0),
  );
};

interface Calm {
  readonly force: readonly Row[];
  readonly turn: readonly Row[];
}

/** Forward on the level, by how the force moves while the car goes straight on. */
function forwardOf(ride: Evenly, calm: Calm, rest: AtRest, fixes: readonly Fix[]) {
  const up = unit(rest.gravity);
  const flat = ride.force.map((_, axis) => {
    const lift = alongAxis(calm.force, up);
    return (calm.force[axis] as Row).map((value, i) => value - (lift[i] ?? 0) * at(up, axis));
  });
  const straight = (i: number) =>
    ride.gap[i] === 0 && calm.turn.every((row) => Math.abs(row[i] ?? 0) < STRAIGHT);
  const axis = mainAxis(flat, straight);
  if (axis === undefined)
    throw new Refusal(
      "no-straight-braking",
      "The ride has no straight braking or accelerating from which forward could be found.",
    );
  const along = alongAxis(calm.force, axis);
  const { lag, sign } = latenessOf(integral(along), ride.start, fixes) ?? {};
  return { forward: times(axis, sign ?? signAtStart(along, rest)), lag };
}

/** The direction in which pushes are strongest, where there are enough and they have one. */
function mainAxis(flat: readonly Row[], counts: (step: number) => boolean): Three | undefined {
  const pushed: Three[] = [];
  for (let i = 0; i < (flat[0]?.length ?? 0); i += 2) {
    const force: Three = [flat[0]?.[i] ?? 0, flat[1]?.[i] ?? 0, flat[2]?.[i] ?? 0];
    if (counts(i) && lengthOf(force) > PUSHED) pushed.push(force);
  }
  if (pushed.length * 2 * STEP < 1) return undefined;
  const mean = middleOf(pushed);
  let axis = unit(pushed.reduce((most, one) => (lengthOf(one) > lengthOf(most) ? one : most)));
  for (let round = 0; round < 30; round++) {
    // power iteration on the second moment
    const next = pushed.reduce<Three>(
      (sum, one) => {
        const off = plus(one, times(mean, -1));
        return plus(sum, times(off, dot(off, axis)));
      },
      [0, 0, 0],
    );
    axis = unit(next);
  }
  return axis;
}

/** The middle between pushes one way and the other: what a slope under the car adds to both. */
function middleOf(pushed: readonly Three[]): Three {
  const [first] = pushed;
  if (!first) return [0, 0, 0];
  const ways = [1, -1].map((way) => pushed.filter((one) => way * dot(one, first) > 0));
  if (ways.some((way) => way.length < 10)) return [0, 0, 0];
  const means = ways.map((way) =>
    times(
      way.reduce<Three>((sum, one) => plus(sum, one), [0, 0, 0]),
      1 / way.length,
    ),
  );
  const [a = [0, 0, 0], b = [0, 0, 0]] = means as Three[];
  const apart = plus(a, times(b, -1));
  return plus(a, times(apart, -dot(a, apart) / dot(apart, apart))); // off the line through both
}

/** 1 where an axis points the way in which the car first moves. */
function signAtStart(along: Row, rest: AtRest): 1 | -1 {
  const gained = integral(along);
  const left = rest.stretches[0]?.to ?? 0;
  const moving = along.findIndex((value, i) => i >= left && Math.abs(value) > PUSHED);
  const until = Math.min(along.length - 1, Math.max(moving, left) + stepsIn(1.5));
  return (gained[until] ?? 0) - (gained[left] ?? 0) >= 0 ? 1 : -1;
}

interface Directions {
  readonly up: Three;
  readonly forward: Three;
  readonly across: Row;
}

/** Order and sign of turn rates: yaw goes with the force across, roll with how that changes. */
function turnsOf(turn: readonly Row[], { up, forward, across }: Directions) {
  const change = across.map((value, i) => value - (across[i - 10] ?? value));
  const tried = ORDERS.map((order) => {
    const ordered = order.map((axis) => turn[axis] as Row);
    const yaw = alike(alongAxis(ordered, up), across);
    const roll = alike(alongAxis(ordered, forward), change);
    return { order, yaw, score: Math.abs(yaw) + Math.abs(roll) };
  });
  const best = tried.reduce((most, one) => (one.score > most.score ? one : most));
  const turning = alongAxis(
    best.order.map((axis) => turn[axis] as Row),
    up,
  );
  const steps = turning.filter((value) => Math.abs(value) > STRAIGHT).length;
  if (Math.abs(best.yaw) < 0.5 || steps < stepsIn(1))
    throw new Refusal("no-turns", "The ride has no turns, or its turn rates do not go with them.");
  return { order: best.order, sign: (best.yaw > 0 ? 1 : -1) as 1 | -1 };
}

/** How far two quantities go together, −1 to 1. */
function alike(a: Row, b: Row): number {
  let [ab, aa, bb] = [0, 0, 0];
  for (let i = 0; i < a.length; i++) {
    ab += (a[i] ?? 0) * (b[i] ?? 0);
    aa += (a[i] ?? 0) ** 2;
    bb += (b[i] ?? 0) ** 2;
  }
  return aa > 0 && bb > 0 ? ab / Math.sqrt(aa * bb) : 0;
}

const FAST_ENOUGH = 4; // m/s for a course to be one

/** 1 where courses turn as the yaw rate has it, −1 where the other way, 0 where none is told. */
function mirrorOf(ride: Evenly, yaw: Row, fixes: readonly Fix[], lag: number): 1 | 0 | -1 {
  const turned = integral(yaw);
  let [together, count] = [0, 0];
  for (let k = 0; k + 1 < fixes.length; k++) {
    const [a, b] = [fixes[k] as Fix, fixes[k + 1] as Fix];
    if (a.course === undefined || b.course === undefined || b.time - a.time > 3) continue;
    if (Math.min(a.speed, b.speed) < FAST_ENOUGH) continue;
    const toLeft = Math.sin(a.course - b.course); // a course goes clockwise
    const by = atTime(turned, ride.start, b.time - lag) - atTime(turned, ride.start, a.time - lag);
    together += toLeft * Math.sin(by);
    count += Math.abs(by) > 5 * DEGREE ? 1 : 0;
  }
  if (count < 3) return 0;
  return together >= 0 ? 1 : -1;
}
