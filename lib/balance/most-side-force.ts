import {
  type HeldNumbers,
  type LeftNumbers,
  MOST_PUSH,
  type NumberedCar,
  SCALES,
  SLOPE_NOISE,
  TELLING_PUSHES,
} from "./held-numbers.js";
import { copied, HELPFUL, learn, noSlopes, type Slopes, slopesAt } from "./slopes.js";
import type { AxleStance } from "./stance.js";

/** The state of most side force of a car. */
export interface MostSideForce {
  readonly at: HeldNumbers;
  /** m/s² */
  readonly lateralAcceleration: number;
  /** m/s² that the end with more to give has left: above 0 the front gives up first */
  readonly margin: number;
  /** how the gain bends with the two free numbers: for a quick start */
  readonly bend: Bend;
  readonly chart: Chart;
  /** it is where the car is neither driven nor braked, see `coastingTop` */
  readonly coasts: boolean;
  readonly slopes: Slopes;
}

/** What a similar car's search begins with. */
type Known = Pick<MostSideForce, "bend" | "chart" | "coasts" | "slopes">;

/** A symmetric matrix of two rows: first, beside, last. */
type Bend = readonly [number, number, number];

/**
 * Which two of the four numbers are free, and which one follows beside lateral acceleration. The push
 * follows from both slip angles while the tyres have more; where they have not, a slip angle does.
 */
type Chart = readonly [free: 0 | 1, free: 1 | 2, follows: 0 | 1 | 2];
const charts: readonly [Chart, Chart, Chart] = [
  [0, 1, 2],
  [0, 2, 1],
  [1, 2, 0],
];

const WIDEST = (20 * Math.PI) / 180 / SCALES[0];
const LONGEST_STEP = 0.5; // of the counted slip angles: 0.05 rad
const MOST_STEPS = 60;
const ENOUGH = 1e-9; // counted lateral acceleration that another step would still gain
const SOLVED = 1e-8; // m/s²
const BESIDE = 0.02; // counted slip angle, to measure a bend
const OTHER_CHARTS = charts.length - 1;
const WORSE = 0.15; // of the best chart: another one is taken

/** Counted slip angles from one top where another one is sought, front and rear. */
const beside = [
  [-0.6, -0.6],
  [0.6, 0.6],
  [0, -0.6],
  [0, 0.6],
  [-0.6, 0],
  [0.6, 0],
] as const;
const LIGHT = 0.06; // share of its axle's load that an inner tyre carries as it is about to lift

/**
 * The state of most side force: both slip angles free, push and lateral acceleration such that
 * nothing is left over along and across the path. The yaw moment left there is the margin, by the
 * yaw-moment method – Milliken 1995, ch. 8.
 *
 * Where an inner tyre is about to lift, or a differential about to let go, there can be a top on both
 * sides of that: the higher one counts.
 *
 * @param start - a place where nothing is left over, or near it
 * @param known - how the gain bends at the state of a similar car, whose place is then the start
 * @returns nothing where the push that is asked for can nowhere be given
 */
export function mostSideForce(
  car: NumberedCar,
  start: HeldNumbers,
  known?: Known,
): MostSideForce | undefined {
  const found = topFrom(car, start, known);
  if (found === undefined || !(car.whole.tied || isLight(car))) return found;
  const [front, rear, push, turn] = found.at;
  const lifted = liftedOf(car);
  return beside.reduce((best, [byFront, byRear]) => {
    const from = placeAt(car, [front + byFront, rear + byRear, push, turn], found.chart);
    if (from === undefined || !(car.whole.tied || liftedOf(car) !== lifted)) return best;
    const other = topFrom(car, from.at, found.coasts ? undefined : found, best.at);
    return other !== undefined && other.at[3] > best.at[3] ? other : best;
  }, found);
}

/**
 * A top at less push than one at which nearly all the push there is is asked for; nothing where side
 * force rises up to that one.
 */
export function topAtLessPush(car: NumberedCar, found: MostSideForce): MostSideForce | undefined {
  const [front, rear, push, turn] = found.at;
  if (Math.abs(push) < NEARLY_ALL || found.chart[1] !== 2) return undefined;
  for (const less of TELLING_PUSHES) {
    const place = placeAt(
      car,
      [front, rear, Math.sign(push) * less, turn],
      found.chart,
      found.slopes,
    );
    if (place !== undefined && place.gain[1] * Math.sign(push) < -SLOPE_NOISE)
      return uphillFrom(car, place.at, undefined, found.at);
  }
  return undefined;
}

const NEARLY_ALL = 0.8; // counted push

/** Which inner tyres are off the ground, counted. */
const liftedOf = ({ whole: { stance } }: NumberedCar): number =>
  Number(stance.front.lifted) + 2 * Number(stance.rear.lifted);

/** Whether an inner tyre has left the ground or is about to. */
function isLight({ whole: { stance } }: NumberedCar): boolean {
  const light = ({ left, right, lifted }: AxleStance) =>
    lifted || left.load < LIGHT * (left.load + right.load);
  return light(stance.front) || light(stance.rear);
}

/**
 * The top that is reached from a place: on the ridge where a similar car has it there, else uphill.
 *
 * @param old - a top that is of no interest: nothing is returned once the way leads to it
 */
function topFrom(car: NumberedCar, start: HeldNumbers, known?: Known, old?: HeldNumbers) {
  const near = known?.coasts ? coastingTop(car, start) : undefined;
  return near === undefined ? uphillFrom(car, start, known, old) : stateAt(car, near, near.chart);
}

function uphillFrom(
  car: NumberedCar,
  start: HeldNumbers,
  known: Known | undefined,
  old: HeldNumbers | undefined,
): MostSideForce | undefined {
  const first = firstPlace(car, start, known?.chart ?? charts[0], known?.slopes);
  if (first === undefined) return undefined;
  let place = first;
  let { chart } = place;
  let bend: Bend | undefined = known?.bend;
  let fresh = false; // the bend was measured here
  let untried = OTHER_CHARTS; // other charts, once this one leads no further
  let stuck = true; // more could be gained, but no step does
  for (let i = 0; i < MOST_STEPS; i++) {
    if (!isFirm(place, chart)) {
      chart = bestChart(place);
      place = placeAt(car, place.at, chart) ?? place;
      bend = undefined;
    }
    if (bend === undefined) [bend, fresh] = [bendAt(car, place), true];
    const step = ontoAllPush(place, uphill(place, bend));
    if (old !== undefined && endsAt(place, step, old)) return undefined;
    const gains = Math.abs(step[0] * place.gain[0]) + Math.abs(step[1] * place.gain[1]) > ENOUGH;
    const next = gains ? walk(car, place, step) : undefined;
    const ridge = next && crosses(place, next) ? coastingTop(car, next.at) : undefined;
    if (ridge !== undefined) return stateAt(car, ridge, ridge.chart);
    if (next !== undefined) {
      const known = learned(bend, place, next);
      [bend, fresh, untried] = [isHill(known) ? known : undefined, false, OTHER_CHARTS];
      place = next;
    } else if (gains && !fresh) bend = undefined;
    else {
      const other = gains && untried > 0 ? placeAt(car, place.at, nextChart(chart)) : undefined;
      if (other === undefined) {
        stuck = gains;
        break;
      }
      [chart, place, bend] = [nextChart(chart), other, undefined];
      untried--;
    }
  }
  const ridge = stuck || Math.abs(place.at[2]) < NO_PUSH ? ridgeAbove(car, place) : undefined;
  if (ridge !== undefined) return stateAt(car, ridge, ridge.chart);
  return stateAt(car, bend === undefined ? place : polished(car, place, bend), chart, bend);
}

/** The top of a ridge that a climb got stuck on or ended at, where it is no lower than the place reached. */
function ridgeAbove(car: NumberedCar, place: Place): Place | undefined {
  const ridge = Math.abs(place.at[2]) < COASTS ? coastingTop(car, place.at) : undefined;
  return ridge !== undefined && ridge.at[3] > place.at[3] - NO_LOSS ? ridge : undefined;
}

/** The state of a place, with what a similar car's search begins with. */
function stateAt(car: NumberedCar, place: Place, chart: Chart, bend: Bend = [-1, 0, -1]) {
  const { at } = place;
  const left: LeftNumbers = [0, 0, 0];
  car.at(at, left);
  const coasts = at[2] === 0 && chart[1] === 2;
  return {
    at,
    lateralAcceleration: at[3] * SCALES[3],
    margin: left[2],
    bend,
    chart,
    coasts,
    slopes: place.slopes,
  };
}

const COASTS = 0.1; // counted push
const NO_PUSH = 1e-3;

/** Whether a step that goes from brakes to drive, or back, is a short one: about a ridge they alternate. */
const crosses = ({ at: a }: Place, { at: b }: Place): boolean =>
  a[2] * b[2] < 0 && Math.max(Math.abs(a[2]), Math.abs(b[2])) < COASTS;

/**
 * The top of the ridge on which a car is neither driven nor braked.
 *
 * Brakes and drive push at different axles, so that side force has an edge where the push changes its
 * sign, and no step uphill follows an edge: along it one slip angle is free.
 *
 * @returns nothing where a little push makes more side force: the top is then not on the ridge
 */
function coastingTop(car: NumberedCar, [front, rear, , turn]: HeldNumbers): Place | undefined {
  const onRidge = (chart: Chart) => placeAt(car, [front, rear, 0, turn], chart);
  let place = onRidge(charts[1]);
  if (place !== undefined && fixed(place, charts[1]) < fixed(place, charts[2]))
    place = onRidge(charts[2]);
  let bend = -1;
  for (let i = 0; i < MOST_STEPS && place !== undefined; i++) {
    const free: 0 | 1 | 2 = place.chart[0];
    const step = within(place.at, free, -place.gain[0] / bend);
    if (Math.abs(step * place.gain[0]) < ENOUGH) return isAbove(car, place) ? place : undefined;
    const next: Place | undefined = walk(car, place, [step, 0]);
    if (next === undefined) return isAbove(car, place) ? place : undefined;
    const learnt: number = (next.gain[0] - place.gain[0]) / (next.at[free] - place.at[free]);
    bend = learnt < 0 ? learnt : bend / 2;
    place = next;
  }
  return undefined;
}

const LITTLE_PUSH = 0.01;

/** Whether neither a little drive nor a little brake makes more side force than a place without. */
function isAbove(car: NumberedCar, place: Place): boolean {
  return [-LITTLE_PUSH, LITTLE_PUSH].every((push) => {
    const beside = placeBeside(car, place, 0, push);
    return beside === undefined || beside.at[3] <= place.at[3];
  });
}

/** The top itself, by a last step that gains next to nothing: the margin goes with the place, not with the gain. */
function polished(car: NumberedCar, place: Place, bend: Bend): Place {
  if (!isHill(bend)) return place;
  const step = uphill(place, bend);
  if (Math.max(Math.abs(step[0]), Math.abs(step[1])) < STRAIGHT)
    return { ...place, at: guessBeside(place, ...step) };
  const next = placeBeside(car, place, ...step);
  return next !== undefined && next.at[3] > place.at[3] - NO_LOSS ? next : place;
}

const NO_LOSS = 1e-9; // counted lateral acceleration
const STRAIGHT = 1e-4; // counted step over which nothing bends

interface Place {
  readonly at: HeldNumbers;
  readonly chart: Chart;
  /** counted lateral acceleration gained per counted step of each free number */
  readonly gain: readonly [number, number];
  /** how the number that follows goes with each */
  readonly more: readonly [number, number];
  readonly slopes: Slopes;
}

/**
 * Solves what follows at two free numbers, and how it goes on from there.
 *
 * @param near - slopes of a place nearby, for the first steps
 */
function placeAt(
  car: NumberedCar,
  start: HeldNumbers,
  chart: Chart,
  near?: Slopes,
): Place | undefined {
  const solved = solvedAt(car, start, chart, near);
  if (solved === undefined || Math.abs(solved.at[2]) > MOST_PUSH + 1e-9) return undefined;
  const { at, left, slopes } = solved;
  const [first, second, follows] = chart;
  car.slope(at, left, first, slopes[first]);
  car.slope(at, left, second, slopes[second]);
  const byFirst = solve(slopes[follows], slopes[3], -slopes[first][0], -slopes[first][1]);
  const bySecond = solve(slopes[follows], slopes[3], -slopes[second][0], -slopes[second][1]);
  if (byFirst === undefined || bySecond === undefined) return undefined;
  return { at, chart, slopes, gain: [byFirst[1], bySecond[1]], more: [byFirst[0], bySecond[0]] };
}

/** Where nothing is left over along and across, with the slopes of what follows there. */
function solvedAt(
  car: NumberedCar,
  start: HeldNumbers,
  [, , follows]: Chart,
  near: Slopes | undefined,
) {
  const at: HeldNumbers = [...start];
  const left: LeftNumbers = [0, 0, 0];
  const slopes = near === undefined ? noSlopes() : copied(near);
  const columns = [slopes[follows], slopes[3]] as const;
  car.at(at, left);
  let own = false; // slopes are of here
  const measure = () => {
    car.slope(at, left, follows, columns[0]);
    car.slope(at, left, 3, columns[1]);
    own = true;
  };
  if (near === undefined) measure();
  for (let i = 0; i < MOST_CORRECTIONS && missOf(left) >= SOLVED; i++) {
    const step = solve(...columns, -left[0], -left[1]);
    if (step === undefined) return undefined;
    const share = Math.min(1, 0.5 / Math.max(Math.abs(step[0]), Math.abs(step[1])));
    const before = missOf(left);
    at[follows] += share * step[0];
    at[3] += share * step[1];
    car.at(at, left);
    own = false;
    if (missOf(left) > HELPFUL * before) measure();
    else if (share === 1) learn(columns, step, left);
  }
  if (!own) measure();
  return missOf(left) < 1e-6 ? { at, left, slopes } : undefined;
}

const MOST_CORRECTIONS = 24;

const missOf = (left: LeftNumbers): number => Math.max(Math.abs(left[0]), Math.abs(left[1]));

/** How firmly a chart fixes what follows, by the slopes of a place: with the push itself, not its count. */
function fixed({ at, slopes }: Pick<Place, "at" | "slopes">, [, , follows]: Chart): number {
  const area = Math.abs(slopes[follows][0] * slopes[3][1] - slopes[follows][1] * slopes[3][0]);
  return follows === 2 ? area * Math.max(0, 1 - at[2] * at[2]) ** 1.5 : area;
}

function bestChart(place: Pick<Place, "at" | "slopes">): Chart {
  return charts.reduce((a, b) => (fixed(place, b) > fixed(place, a) ? b : a));
}

/** Whether no other chart fixes what follows much more firmly. */
const isFirm = (place: Pick<Place, "at" | "slopes">, chart: Chart): boolean =>
  fixed(place, chart) >= WORSE * fixed(place, bestChart(place));

function nextChart(chart: Chart): Chart {
  return charts[(charts.indexOf(chart) + 1) % charts.length] ?? charts[0];
}

/** A place by the chart that is asked for, or else by the firmest one at the start. */
function firstPlace(
  car: NumberedCar,
  start: HeldNumbers,
  asked: Chart,
  near: Slopes | undefined,
): Place | undefined {
  const place = placeAt(car, start, asked, near);
  if (place !== undefined) return place;
  const left: LeftNumbers = [0, 0, 0];
  car.at(start, left);
  const best = bestChart({ at: start, slopes: slopesAt(car, start, left) });
  return best === asked ? undefined : placeAt(car, start, best);
}

/** x and y with which two columns make a right side, along and across. */
function solve(x: LeftNumbers, y: LeftNumbers, along: number, across: number) {
  const determinant = x[0] * y[1] - x[1] * y[0];
  if (!(Math.abs(determinant) > 1e-9)) return undefined;
  return [
    (along * y[1] - across * y[0]) / determinant,
    (x[0] * across - x[1] * along) / determinant,
  ] as const;
}

/** Whether a bend is that of the top of a hill. */
const isHill = ([a, b, c]: Bend): boolean => a < 0 && a * c > b * b;

/** The step that goes uphill to where the gain should end, no longer than is safe. */
function uphill({ at, gain, chart }: Place, [a, b, c]: Bend): [number, number] {
  const alone = (slope: number, curve: number) => {
    if (Math.abs(slope) * LONGEST_STEP < ENOUGH) return 0;
    return curve < 0 ? -slope / curve : Math.sign(slope) * LONGEST_STEP;
  };
  let [first, second] = [alone(gain[0], a), alone(gain[1], c)];
  const determinant = a * c - b * b;
  if (isHill([a, b, c])) {
    first = (b * gain[1] - c * gain[0]) / determinant;
    second = (b * gain[0] - a * gain[1]) / determinant;
  }
  const [heldFirst, heldSecond] = [within(at, chart[0], first), within(at, chart[1], second)];
  if (heldSecond !== second && a < 0) first = -(gain[0] + b * heldSecond) / a;
  if (heldFirst !== first && c < 0) second = -(gain[1] + b * heldFirst) / c;
  return [within(at, chart[0], first), within(at, chart[1], second)];
}

/** A step by which more push is asked, where no more is given for it, goes on to all there is. */
function ontoAllPush({ at, chart, gain }: Place, step: [number, number]): [number, number] {
  const push = at[2];
  if (chart[1] !== 2 || Math.abs(push) < MUCH || gain[1] * push <= 0) return step;
  return [step[0], Math.sign(push) * MOST_PUSH - push];
}

const MUCH = 0.6; // counted push

/** A step no longer than is safe, inside the widest slip angle and the most that is asked of a push. */
function within(at: HeldNumbers, column: 0 | 1 | 2, step: number): number {
  const most = column === 2 ? MOST_PUSH : WIDEST;
  const safe = Math.min(LONGEST_STEP, Math.max(-LONGEST_STEP, step));
  return Math.min(most, Math.max(-most, at[column] + safe)) - at[column];
}

/** The place a step away, or a third of the step and so on, where more is gained. */
function walk(car: NumberedCar, from: Place, step: [number, number]): Place | undefined {
  for (let share = 1; share > 0.05; share /= 3) {
    const next = placeBeside(car, from, share * step[0], share * step[1]);
    if (next !== undefined && next.at[3] > from.at[3]) return next;
  }
  return undefined;
}

/** The place with both free numbers moved, guessed along the slopes. */
const placeBeside = (car: NumberedCar, from: Place, first: number, second: number) =>
  placeAt(car, guessBeside(from, first, second), from.chart, from.slopes);

function guessBeside({ at, chart, more, gain }: Place, first: number, second: number) {
  const guess: HeldNumbers = [...at];
  guess[chart[0]] += first;
  guess[chart[1]] += second;
  guess[chart[2]] += first * more[0] + second * more[1];
  guess[3] += first * gain[0] + second * gain[1];
  return guess;
}

const SAME_TOP = 0.01; // counted slip angle

/** Whether a step leads to a place, lateral acceleration apart. */
function endsAt({ at, chart, more }: Place, step: readonly [number, number], to: HeldNumbers) {
  const [first, second, follows] = chart;
  const left = (k: 0 | 1 | 2, by: number) => Math.abs(at[k] + by - to[k]);
  const followed = left(follows, step[0] * more[0] + step[1] * more[1]);
  return Math.max(left(first, step[0]), left(second, step[1]), followed) < SAME_TOP;
}

/** How the gain bends with each free number, from places beside. */
function bendAt(car: NumberedCar, place: Place): Bend {
  const first = placeBeside(car, place, BESIDE, 0) ?? placeBeside(car, place, -BESIDE, 0);
  const second = placeBeside(car, place, 0, BESIDE) ?? placeBeside(car, place, 0, -BESIDE);
  if (first === undefined || second === undefined) return [-1, 0, -1];
  const change = (next: Place, k: 0 | 1, by: number) => (next.gain[k] - place.gain[k]) / by;
  const [a, b] = [
    first.at[place.chart[0]] - place.at[place.chart[0]],
    second.at[place.chart[1]] - place.at[place.chart[1]],
  ];
  return [
    change(first, 0, a),
    (change(first, 1, a) + change(second, 0, b)) / 2,
    change(second, 1, b),
  ];
}

/** The bend with what a step has shown (symmetric rank one – Nocedal & Wright 2006, eq. 6.24). */
function learned([a, b, c]: Bend, before: Place, after: Place): Bend {
  const [first, second] = before.chart;
  const [x, y] = [after.at[first] - before.at[first], after.at[second] - before.at[second]];
  const missFront = after.gain[0] - before.gain[0] - (a * x + b * y);
  const missRear = after.gain[1] - before.gain[1] - (b * x + c * y);
  const size = missFront * x + missRear * y;
  if (Math.abs(size) < 1e-8 * Math.hypot(missFront, missRear) * Math.hypot(x, y)) return [a, b, c];
  return [
    a + (missFront * missFront) / size,
    b + (missFront * missRear) / size,
    c + (missRear * missRear) / size,
  ];
}
