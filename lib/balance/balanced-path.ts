import { type HeldNumbers, type LeftNumbers, type NumberedCar, SCALES } from "./held-numbers.js";
import { copied, HELPFUL, learn, type Slopes, slopesAt } from "./slopes.js";

type Passed = Pick<PathPoint, "at" | "tangent">;

/** A place on the balanced path of a car, and which way the path goes on. */
export interface PathPoint {
  readonly at: HeldNumbers;
  /** of length one; its last number is how lateral acceleration grows along the path */
  readonly tangent: HeldNumbers;
  /** where the way there came from, in the direction of the path; nothing where nobody came along */
  readonly before?: Passed;
  /** how what is left over goes with each of the four numbers */
  readonly slopes: Slopes;
  /** which side of the equations the path goes on: another one is another path that comes near */
  readonly sense: 1 | -1;
  /** both inner tyres are off the ground */
  readonly tips: boolean;
}

/** Lateral acceleration of a place, m/s². */
export const turnOf = ({ at }: PathPoint): number => at[3] * SCALES[3];

const SOLVED = 1e-9; // m/s² left over
const ACCEPTED = 1e-6; // m/s², where no step leaves less
const NEARLY = 1e-3; // m/s², enough to follow the path
const MOST_CORRECTIONS = 12;
const LONGEST_CORRECTION = 1;
const MOST_FROM_FAR = 40;
const FAR_STEP = 0.3;

/** How well a place is to be found, and slopes from nearby where they are at hand. */
interface Finding {
  readonly nearly?: boolean;
  /** the guess may be far off: long steps are cut short, and there may be more of them */
  readonly far?: boolean;
  readonly slopes?: Slopes | undefined;
}

/**
 * A place on the balanced path near a guess.
 *
 * Newton steps on along = across = outward = 0 that keep the number in which a direction goes most
 * – Rheinboldt 1986, Numerical Analysis of Parametrized Nonlinear Equations, ch. 3.
 *
 * @returns nothing where the steps do not settle
 */
export function ontoPath(
  car: NumberedCar,
  guess: HeldNumbers,
  direction: HeldNumbers,
  { nearly = false, far = false, slopes: old }: Finding = {},
): PathPoint | undefined {
  const solved = nearly ? NEARLY : SOLVED;
  const at: HeldNumbers = [...guess];
  const left: LeftNumbers = [0, 0, 0];
  car.at(at, left);
  let size = sizeOf(left);
  let slopes = old === undefined ? slopesAt(car, at, left) : copied(old);
  let own = old === undefined; // the slopes are of near this guess
  for (let i = 0; i < (far ? MOST_FROM_FAR : MOST_CORRECTIONS) && size > solved; i++) {
    const step = keepingStep(slopes, left, direction);
    const length = step === undefined ? Infinity : lengthOf(step);
    const cut = far ? Math.min(1, FAR_STEP / length) : 1;
    if (step === undefined || !(cut * length < LONGEST_CORRECTION)) {
      if (own) return undefined;
      [slopes, own] = [slopesAt(car, at, left), true];
      continue;
    }
    for (let k = 0; k < 4; k++) at[k] = (at[k] as number) + cut * (step[k] as number);
    car.at(at, left);
    const after = sizeOf(left);
    if (after > HELPFUL * size && after > solved) [slopes, own] = [slopesAt(car, at, left), true];
    else if (cut === 1) learn(slopes, step, left);
    size = after;
  }
  if (!(size <= Math.max(solved, ACCEPTED))) return undefined;
  const { tips } = car.whole.stance;
  slopes = slopesAt(car, at, left);
  const way = tangentOf(slopes, direction);
  return way && { at, tangent: way.tangent, sense: way.sense, slopes, tips };
}

/** The step to where nothing is left over that keeps the number in which a direction goes most. */
function keepingStep(slopes: Slopes, left: LeftNumbers, direction: HeldNumbers) {
  const kept = greatest(direction);
  const [i, j, k] = OTHERS[kept] ?? OTHERS[3];
  const [a, b, c] = [slopes[i], slopes[j], slopes[k]];
  const whole = determinant(a, b, c);
  if (!(Math.abs(whole) > SINGULAR)) return undefined;
  const step: HeldNumbers = [0, 0, 0, 0];
  step[i] = -determinant(left, b, c) / whole; // – Cramer's rule
  step[j] = -determinant(a, left, c) / whole;
  step[k] = -determinant(a, b, left) / whole;
  return step;
}

const SINGULAR = 1e-9;
/** The three numbers beside each of the four. */
const OTHERS = [
  [1, 2, 3],
  [0, 2, 3],
  [0, 1, 3],
  [0, 1, 2],
] as const;

function greatest(numbers: HeldNumbers): 0 | 1 | 2 | 3 {
  let best: 0 | 1 | 2 | 3 = 3;
  for (const k of [2, 1, 0] as const) if (Math.abs(numbers[k]) > Math.abs(numbers[best])) best = k;
  return best;
}

/** The direction in which nothing is left over, of length one, going on as before. */
function tangentOf([a, b, c, d]: Slopes, before: HeldNumbers) {
  const t: HeldNumbers = [
    determinant(b, c, d),
    -determinant(a, c, d),
    determinant(a, b, d),
    -determinant(a, b, c),
  ];
  const length = lengthOf(t);
  if (!(length > 0)) return undefined;
  const along = t[0] * before[0] + t[1] * before[1] + t[2] * before[2] + t[3] * before[3];
  const sense = along < 0 ? -1 : 1;
  const tangent = t.map((value) => (sense * value) / length) as HeldNumbers;
  return { tangent, sense } as const;
}

function determinant(a: LeftNumbers, b: LeftNumbers, c: LeftNumbers): number {
  return (
    a[0] * (b[1] * c[2] - b[2] * c[1]) -
    a[1] * (b[0] * c[2] - b[2] * c[0]) +
    a[2] * (b[0] * c[1] - b[1] * c[0])
  );
}

const sizeOf = (left: LeftNumbers): number =>
  Math.max(Math.abs(left[0]), Math.abs(left[1]), Math.abs(left[2]));

function lengthOf([a, b, c, d]: HeldNumbers): number {
  return Math.sqrt(a * a + b * b + c * c + d * d);
}

/**
 * The path a step further on.
 *
 * Where two paths come near each other, as on a car that is all but neutral, a step across would go
 * on as if nothing were: only the sense of the equations tells – Keller 1977, in Applications
 * of Bifurcation Theory, 359–384.
 *
 * @returns nothing where the step does not settle, or crosses over to another path
 */
export function further(
  car: NumberedCar,
  from: PathPoint,
  step: number,
  nearly = false,
): PathPoint | undefined {
  const { at, tangent, slopes } = from;
  const next = ontoPath(car, ahead(from, step), tangent, { nearly, slopes });
  if (next?.sense !== from.sense) return undefined;
  return step > 0 ? { ...next, before: { at, tangent } } : next;
}

/** A guess at a path a step further on: along the cubic of the last step where there is one. */
function ahead({ at, tangent, before }: PathPoint, step: number): HeldNumbers {
  if (before === undefined)
    return at.map((value, k) => value + step * (tangent[k] as number)) as HeldNumbers;
  const length = lengthBetween(before.at, at);
  return along(before, { at, tangent }, 1 + step / length);
}

/** The cubic through two places of a path and along their tangents, at a share of the way between them. */
export function along(from: Passed, to: Passed, share: number): HeldNumbers {
  const length = lengthBetween(from.at, to.at);
  const [u, v] = [1 - share, share];
  return from.at.map((a, k) => {
    const turns = u * (from.tangent[k] as number) - v * (to.tangent[k] as number);
    return (
      u * u * (3 - 2 * u) * a + v * v * (3 - 2 * v) * (to.at[k] as number) + u * v * length * turns
    );
  }) as HeldNumbers;
}

/** Counted length of the straight way between two places. */
export const lengthBetween = (a: HeldNumbers, b: HeldNumbers): number =>
  Math.hypot(b[0] - a[0], b[1] - a[1], b[2] - a[2], b[3] - a[3]);
