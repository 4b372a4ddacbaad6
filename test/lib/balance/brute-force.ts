import type { Driving } from "../../../lib/balance/driving.js";
import type { HandlingCar } from "../../../lib/balance/handling-car.js";
import { type Held, type WholeCar, wholeCar } from "../../../lib/balance/whole-car.js";

// Margin and hardest turn once more, by methods that share nothing with the library's but the held
// car itself: a grid, a search by steps to all sides, and a walk by circles.

/** One place where nothing is left over along and across the path. */
export interface Spot extends Held {
  readonly outward: number;
}

const WIDEST = (20 * Math.PI) / 180;
const MOST_PUSH = 20;
type Unknown = keyof Held;

/** Two numbers of a held car that leave nothing over along and across the path: Newton, with care. */
function spotAt(whole: WholeCar, near: Held, [x, y]: readonly [Unknown, Unknown]) {
  let at: Held = { ...near };
  let { along, across, outward } = whole.hold(at);
  for (let i = 0; i < 40; i++) {
    if (Math.abs(along) + Math.abs(across) < 1e-10) return { ...at, outward };
    const beside = (name: Unknown) => {
      const left = whole.hold({ ...at, [name]: at[name] + 1e-6 });
      return [(left.along - along) / 1e-6, (left.across - across) / 1e-6] as const;
    };
    const [[a, c], [b, d]] = [beside(x), beside(y)];
    const determinant = a * d - b * c;
    const [dx, dy] = [
      (b * across - d * along) / determinant,
      (c * along - a * across) / determinant,
    ];
    const size = Math.abs(along) + Math.abs(across);
    let share = Math.min(1, 3 / Math.max(Math.abs(dx), Math.abs(dy)));
    for (; share > 1e-3; share /= 2) {
      const next: Held = { ...at, [x]: at[x] + share * dx, [y]: at[y] + share * dy };
      ({ along, across, outward } = whole.hold(next));
      if (Math.abs(along) + Math.abs(across) < size) {
        at = next;
        break;
      }
    }
    if (!(share > 1e-3) || Math.abs(at.push) > MOST_PUSH + 1e-9) return undefined;
  }
  return undefined;
}

const bySlip = (whole: WholeCar, front: number, rear: number, near: Held) =>
  spotAt(whole, { ...near, front, rear }, ["push", "lateralAcceleration"]);

const gentle: Held = { front: 0, rear: 0, push: 0, lateralAcceleration: 4 };
const isNarrow = ({ front, rear }: Held) => Math.max(Math.abs(front), Math.abs(rear)) <= WIDEST;

/** The spot of most lateral acceleration: inside, where nothing is pushed, and where all there is is asked for. */
export function mostByGrid(car: HandlingCar, driving: Driving): Spot | undefined {
  const whole = wholeCar(car, driving);
  const { longitudinalAcceleration = 0 } = driving;
  const all = longitudinalAcceleration < 0 ? -MOST_PUSH : MOST_PUSH;
  const found = [mostInside(whole), mostAtPush(whole, 0), mostAtPush(whole, all)];
  return found
    .filter((spot) => spot !== undefined)
    .sort((a, b) => b.lateralAcceleration - a.lateralAcceleration)[0];
}

/** The best of a grid of slip angles, then of steps to all sides, ever smaller. */
function mostInside(whole: WholeCar): Spot | undefined {
  let best: Spot | undefined;
  const better = (spot: Spot | undefined): boolean => {
    if (spot === undefined || !isNarrow(spot)) return false;
    if (spot.lateralAcceleration <= (best?.lateralAcceleration ?? 0)) return false;
    best = spot;
    return true;
  };
  for (let front = 0.06; front < 0.3; front += 0.04)
    for (let rear = 0.06; rear < 0.3; rear += 0.04) better(bySlip(whole, front, rear, gentle));
  for (let step = 0.02; step > 2e-5; ) {
    const from = best;
    if (from === undefined) return undefined;
    const found = directions.some(([x, y]) =>
      better(bySlip(whole, from.front + x * step, from.rear + y * step, from)),
    );
    if (!found) step /= 2;
  }
  return best;
}

const directions = [
  [1, 0],
  [0, 1],
  [-1, 0],
  [0, -1],
  [1, 1],
  [-1, -1],
  [1, -1],
  [-1, 1],
] as const;

/** The same at one push: only the front slip angle is free. */
function mostAtPush(whole: WholeCar, push: number) {
  let best: Spot | undefined;
  const better = (front: number, near: Held): boolean => {
    const spot = spotAt(whole, { ...near, front, push }, ["rear", "lateralAcceleration"]);
    if (spot === undefined || !isNarrow(spot)) return false;
    if (spot.lateralAcceleration <= (best?.lateralAcceleration ?? 0)) return false;
    best = spot;
    return true;
  };
  for (let front = 0.03; front < WIDEST; front += 0.03)
    for (const rear of [0.04, 0.1, 0.2]) better(front, { ...gentle, rear, lateralAcceleration: 7 });
  for (let step = 0.02; step > 2e-5; ) {
    const from = best;
    if (from === undefined) return undefined;
    if (!better(from.front + step, from) && !better(from.front - step, from)) step /= 2;
  }
  return best;
}

/**
 * The greatest lateral acceleration on the line without yaw moment that begins at straight running:
 * from each spot, the next one is where a circle round it crosses the line ahead.
 */
export function hardestByWalk(car: HandlingCar, driving: Driving): number | undefined {
  const whole = wholeCar(car, driving);
  let at = firstSpot(whole);
  if (at === undefined) return undefined;
  let heading = Math.PI / 4;
  let heights = [at.lateralAcceleration];
  let most = at.lateralAcceleration;
  for (let step = 0.006; step > 2e-5; ) {
    const next = acrossCircle(whole, at, heading, step);
    if (next === undefined) {
      step /= 2;
      continue;
    }
    heading = Math.atan2(next.rear - at.rear, next.front - at.front);
    at = next;
    heights = [...heights.slice(-2), at.lateralAcceleration];
    most = Math.max(most, topOf(heights));
    if (!isNarrow(at) || at.lateralAcceleration < 0.8 * most) break;
  }
  return most;
}

/** A gentle spot without yaw moment: where it changes its sign with the rear slip angle. */
function firstSpot(whole: WholeCar): Spot | undefined {
  const at = (rear: number) => bySlip(whole, 0.02, rear, gentle);
  let low = -0.06;
  while (low < 0.1 && !((at(low)?.outward ?? 1) < 0 && (at(low + 0.005)?.outward ?? -1) > 0))
    low += 0.005;
  let high = low + 0.005;
  for (let i = 0; i < 25; i++) {
    if ((at((low + high) / 2)?.outward ?? 0) > 0) high = (low + high) / 2;
    else low = (low + high) / 2;
  }
  return at(low);
}

const SPREAD = [0, 0.15, -0.15, 0.35, -0.35, 0.6, -0.6, 0.9, -0.9, 1.2, -1.2].sort((a, b) => a - b);

/** Where the line crosses a circle round a spot, nearest to where it was heading. */
function acrossCircle(whole: WholeCar, from: Spot, heading: number, radius: number) {
  const on = (angle: number) =>
    bySlip(
      whole,
      from.front + radius * Math.cos(angle),
      from.rear + radius * Math.sin(angle),
      from,
    );
  const round = SPREAD.map((away) => ({ angle: heading + away, spot: on(heading + away) }));
  const pairs = round.slice(1).map((next, i) => [round[i] as typeof next, next] as const);
  const crossings = pairs.filter(
    ([{ spot: a }, { spot: b }]) => a && b && a.outward > 0 !== b.outward > 0,
  );
  const awayOf = ([a, b]: (typeof pairs)[number]) => Math.abs((a.angle + b.angle) / 2 - heading);
  const [nearest] = crossings.sort((a, b) => awayOf(a) - awayOf(b));
  if (nearest === undefined) return undefined;
  let [low, high] = nearest.map(({ angle }) => angle) as [number, number];
  let spot = nearest[0].spot;
  const lowSide = (spot?.outward ?? 0) > 0;
  for (let i = 0; i < 18; i++) {
    const middle = on((low + high) / 2);
    if (middle === undefined) return undefined;
    spot = middle;
    if (middle.outward > 0 === lowSide) low = (low + high) / 2;
    else high = (low + high) / 2;
  }
  return spot;
}

/** The top of the parabola through three heights, where the middle one is highest; else the last. */
function topOf(heights: readonly number[]): number {
  const [a = 0, b = 0, c = 0] = heights;
  if (heights.length < 3 || !(b > a && b > c)) return heights.at(-1) ?? 0;
  return b + (a - c) ** 2 / (8 * (2 * b - a - c));
}
