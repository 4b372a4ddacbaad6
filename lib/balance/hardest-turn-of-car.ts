import {
  along,
  further,
  lengthBetween,
  ontoPath,
  type PathPoint,
  turnOf,
} from "./balanced-path.js";
import {
  countOfPush,
  type HeldNumbers,
  MOST_PUSH,
  type NumberedCar,
  SCALES,
  SLOPE_NOISE,
  TELLING_PUSHES,
} from "./held-numbers.js";

/** The hardest turn of a car. */
export interface HardestTurn {
  readonly point: PathPoint;
  /** m/s² */
  readonly lateralAcceleration: number;
  /** how the tangent's growth changes along the path there: for a quick start next time */
  readonly bend: number;
  /**
   * what ends it: the only top of a path that is nowhere near a fork, all the push that there is, or
   * another thing – from the first two a similar car's hardest turn is found quickly
   */
  readonly ends: "at a top" | "all pushed" | "else";
}

const WIDEST = (20 * Math.PI) / 180; // rad of slip angle of an axle
const GENTLE = 0.5; // m/s²
const FIRST_STEP = 0.3;
const LONGEST_STEP = 0.6;
const SHORTEST_STEP = 1e-4;
const MOST_STEPS = 200;
const PAST = 0.75; // of the hardest turn so far: the path does not come back up from there
const SHARP = 0.85; // cosine of the most that the path may bend in a step

/**
 * The greatest lateral acceleration on the balanced path that is connected with straight running,
 * slip angles of the axles up to 20°: the path is followed from a gentle turn over its tops.
 *
 * @returns nothing when not even a gentle turn can be balanced
 */
export function hardestTurnOfCar(car: NumberedCar, push: number): HardestTurn | undefined {
  let point = gentleTurn(car, push);
  if (point === undefined) return undefined;
  let best: PathPoint = point;
  let bend = 0;
  let exact = false; // the best place so far is not only nearly on the path
  let tops = 0;
  let sharpest = 0;
  let step = FIRST_STEP;
  for (let i = 0; i < MOST_STEPS; i++) {
    const next = further(car, point, step, true);
    if (next === undefined || (step > 0.02 && isTooFar(point, next))) {
      step /= 2;
      if (step < SHORTEST_STEP) break;
      continue;
    }
    if (next.tips) return whereItTips(car, point, step);
    if (Math.abs(next.at[2]) > MOST_PUSH) {
      const last = allPushed(car, next);
      if (last === undefined || turnOf(last) < turnOf(best)) break;
      const ends = tops === 0 ? "all pushed" : "else";
      return { point: last, lateralAcceleration: turnOf(last), bend, ends };
    }
    sharpest = Math.max(sharpest, sharpness(point, next));
    if (point.tangent[3] > 0 && next.tangent[3] <= 0) {
      tops++;
      const top = topBetween(car, point, next);
      if (turnOf(top.point) > turnOf(best)) [best, bend, exact] = [top.point, top.bend, true];
    } else if (turnOf(next) > turnOf(best)) [best, exact] = [next, false];
    if (isWide(next) || turnOf(next) < PAST * turnOf(best)) break;
    point = next;
    step = Math.min(LONGEST_STEP, step * 1.5);
  }
  if (!exact) best = onto(car, best);
  const ends = tops === 1 && bend < 0 && sharpest < FORK ? "at a top" : "else";
  return { point: best, lateralAcceleration: turnOf(best), bend, ends };
}

/** The same from the hardest turn of a similar car; nothing where that leads nowhere. */
export function hardestTurnNear(car: NumberedCar, start: HardestTurn): HardestTurn | undefined {
  if (start.ends === "all pushed") return allPushedNear(car, start);
  if (start.ends === "else") return undefined;
  const { at, tangent, slopes } = start.point;
  let point = ontoPath(car, at, tangent, { slopes });
  let { bend } = start;
  for (let i = 0; i < 8 && point !== undefined && !point.tips && !isWide(point); i++) {
    const step = -point.tangent[3] / bend;
    if (Math.abs(point.tangent[3] * step) * SCALES[3] < 1e-6)
      return { point, lateralAcceleration: turnOf(point), bend, ends: "at a top" };
    if (!(Math.abs(step) < LONGEST_STEP)) return undefined;
    const next = further(car, point, step);
    if (next === undefined) return undefined;
    bend = (next.tangent[3] - point.tangent[3]) / step;
    if (!(bend < 0)) return undefined;
    point = next;
  }
  return undefined;
}

/** A place that is nearly on the path, brought onto it. */
const onto = (car: NumberedCar, near: PathPoint): PathPoint =>
  ontoPath(car, near.at, near.tangent) ?? near;

const BY_PUSH: HeldNumbers = [0, 0, 1, 0];

/** The balanced path where all the push there is is asked for. */
function allPushed(car: NumberedCar, { at, tangent }: PathPoint): PathPoint | undefined {
  const most = Math.sign(at[2]) * MOST_PUSH;
  const back = (most - at[2]) / tangent[2];
  const guess = at.map((value, k) => value + back * (tangent[k] as number)) as HeldNumbers;
  return ontoPath(car, guess, BY_PUSH);
}

/** The same of a similar car, where its path still rises up to there. */
function allPushedNear(car: NumberedCar, start: HardestTurn): HardestTurn | undefined {
  const [front, rear, push, turn] = start.point.at;
  const less = [front, rear, Math.sign(push) * TELLING_PUSHES[0], turn] as HeldNumbers;
  const { slopes } = start.point;
  const before = ontoPath(car, less, BY_PUSH, { nearly: true, slopes });
  if (before === undefined || before.tips || isWide(before)) return undefined;
  if (before.tangent[3] * Math.sign(before.tangent[2] * push) < -SLOPE_NOISE) return undefined;
  const point = ontoPath(car, start.point.at, BY_PUSH, { slopes });
  if (point === undefined || point.tips || isWide(point)) return undefined;
  return { ...start, point, lateralAcceleration: turnOf(point) };
}

/** The balanced path where the car turns gently, m/s² along it as asked; nothing where it cannot. */
export function gentleTurn(
  car: NumberedCar,
  longitudinalAcceleration: number,
): PathPoint | undefined {
  const push = longitudinalAcceleration;
  for (const more of push === 0 ? NO_MORE : NEARLY_ALL) {
    const found = gentleFrom(car, [0.1, 0.1, countOfPush(push + more * Math.sign(push))]);
    if (found !== undefined) return found;
  }
  if (push !== 0) return undefined;
  for (const guess of askew) {
    const found = gentleFrom(car, guess, true);
    if (found !== undefined) return found;
  }
  return undefined;
}

/** The same from counted slip angles and push. */
function gentleFrom(car: NumberedCar, [front, rear, push]: Guess, far = false) {
  const found = ontoPath(car, [front, rear, push, GENTLE / SCALES[3]], [0, 0, 0, 1], {
    far,
    nearly: true,
  });
  return found === undefined || found.tips || isWide(found) ? undefined : found;
}

type Guess = readonly [front: number, rear: number, push: number];

/** N/kg of push to ask for beyond the acceleration: much of it is eased off where tyres give nearly all. */
const NEARLY_ALL = [0, 1.5, 5] as const;
const NO_MORE = [0] as const;

/** Where wheels that stand askew, uneven loads or drag put the gentle turn far from where an even car has it. */
const ASKEW = [0.1, -0.7, 0.9] as const;
const askew: readonly Guess[] = [0, 0.5].flatMap((push) =>
  ASKEW.flatMap((front) => ASKEW.map((rear): Guess => [front, rear, push])),
);

const isTooFar = (from: PathPoint, to: PathPoint): boolean =>
  bendsSharply(from, to) || hidesATop(from, to);

const bendsSharply = ({ tangent: a }: PathPoint, { tangent: b }: PathPoint): boolean =>
  a[0] * b[0] + a[1] * b[1] + a[2] * b[2] + a[3] * b[3] < SHARP;

/** How fast a path turns over a step, per counted length. */
function sharpness({ at: a, tangent: t }: PathPoint, { at: b, tangent: u }: PathPoint): number {
  return lengthBetween(t, u) / lengthBetween(a, b);
}

const FORK = 5; // sharpness: a similar car's path may go on along another branch

const UNEVEN = 0.2; // of the change of slope over a step

/**
 * Whether the path rises over a step by much more or less than the mean of its slopes at both ends
 * says: it has turned in between, and may have a top there.
 */
function hidesATop(
  { at: a, tangent: from }: PathPoint,
  { at: b, tangent: to }: PathPoint,
): boolean {
  const chord = lengthBetween(a, b);
  const off = (b[3] - a[3]) / chord - (from[3] + to[3]) / 2;
  return Math.abs(off) > UNEVEN * Math.max(EVEN, Math.abs(to[3] - from[3]));
}

const EVEN = 0.05;

/** Whether an axle has a slip angle beyond those that are sought. */
export const isWide = ({ at: [front, rear] }: PathPoint): boolean =>
  Math.max(Math.abs(front), Math.abs(rear)) * SCALES[0] > WIDEST;

/** The top between a place where the path rises and the next one, where it falls. */
function topBetween(car: NumberedCar, from: PathPoint, to: PathPoint) {
  let [low, high] = [from, to];
  let best: PathPoint | undefined; // of those that are exactly on the path
  let bend = -1;
  for (let i = 0; i < MOST_NARROWINGS; i++) {
    const whole = lengthBetween(low.at, high.at);
    const next = between(car, low, high, i > 3 && i % 2 === 0 ? 0.5 : topShare(low, high));
    if (next === undefined) break;
    const gain = best === undefined ? Infinity : Math.abs(turnOf(next) - turnOf(best));
    if (best === undefined || turnOf(next) > turnOf(best)) best = next;
    const rises = next.tangent[3];
    const other = rises > 0 ? high : low;
    if (rises > 0) low = next;
    else high = next;
    const gap = lengthBetween(low.at, high.at);
    bend = -Math.abs(rises - other.tangent[3]) / gap;
    if (whole < SHORTEST_STEP / 100 || rises * rises * SCALES[3] < 2 * CLOSE * -bend) break;
    if (gain < 1e-6 && Math.abs(rises) * gap * SCALES[3] < 1e-5) break;
  }
  const point = best ?? onto(car, turnOf(from) > turnOf(to) ? from : to);
  return { point, bend: Math.min(-1e-3, bend) };
}

const MOST_NARROWINGS = 40;
const CLOSE = 1e-8; // m/s² that the top is above a place

/** Where between a rising and a falling place the cubic through both has its top, as a share. */
function topShare(from: PathPoint, to: PathPoint): number {
  const length = lengthBetween(from.at, to.at);
  const [rises, falls] = [length * from.tangent[3], length * to.tangent[3]];
  const rise = to.at[3] - from.at[3];
  const [a, b] = [3 * (rises + falls - 2 * rise), 6 * rise - 4 * rises - 2 * falls];
  const root = Math.sqrt(Math.max(0, b * b - 4 * a * rises));
  const share = b < 0 ? (2 * rises) / (root - b) : (-b - root) / (2 * a);
  return share >= 0 && share <= 1 ? Math.min(0.999, Math.max(0.001, share)) : 0.5;
}

/** The path at a share of the way from one place to another, guessed along the cubic through both. */
function between(car: NumberedCar, from: PathPoint, to: PathPoint, share: number) {
  const chord = to.at.map((value, k) => value - (from.at[k] as number)) as HeldNumbers;
  const { slopes } = share < 0.5 ? from : to;
  const next = ontoPath(car, along(from, to, share), chord, { slopes });
  return next?.sense === from.sense ? next : undefined;
}

/** The last place on the path before the second inner tyre leaves the ground. */
function whereItTips(car: NumberedCar, from: PathPoint, length: number): HardestTurn {
  let [low, high] = [0, length];
  let last = onto(car, from);
  while (high - low > 1e-6) {
    const next = further(car, from, (low + high) / 2);
    if (next === undefined || next.tips) high = (low + high) / 2;
    else [low, last] = [(low + high) / 2, next];
  }
  const point = { ...last, tips: true };
  return { point, lateralAcceleration: turnOf(point), bend: 0, ends: "else" };
}
