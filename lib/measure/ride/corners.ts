import {
  meanOver,
  type Row,
  STEP,
  type Stretch,
  smooth,
  stepsIn,
  stretchesWhere,
} from "./evenly.js";
import type { InCar } from "./in-car.js";

/** A corner of a ride, as steps. */
export interface CornerSteps extends Stretch {
  /** 1 to the left, −1 to the right */
  readonly way: 1 | -1;
  /** Where the car turned steadily for a second at least. */
  readonly steady?: Stretch;
}

const BEGINS = 1.2; // m/s² across, felt: less is a bend or the road's slope
const COUNTS = 2.5; // m/s² that a corner reaches
const SHORTEST = 1; // s
const TURNS = 0.05; // rad/s: a slope pushes across without a turn
const STEADY = { band: 0.08, least: 1, settles: 0.4 }; // share of the middle value; s; s

/** Corners to both sides: where the car is pushed across and turns that way, for a second at least. */
export function cornersIn(car: InCar): CornerSteps[] {
  const across = smooth(car.across, 0.4);
  const yaw = smooth(car.yawRate, 0.4);
  const ways = [1, -1] as const;
  return ways
    .flatMap((way) => {
      const turns = (i: number) =>
        car.gap[i] !== 2 && way * (across[i] ?? 0) > BEGINS && way * (yaw[i] ?? 0) > TURNS;
      return stretchesWhere(car.count, turns, stepsIn(SHORTEST)).map((stretch) => ({
        ...stretch,
        way,
      }));
    })
    .filter(({ from, to, way }) => peakOf(across, from, to, way) > COUNTS)
    .map((corner) => ({ ...corner, ...steadyIn(car, { across, yaw }, corner) }))
    .sort((a, b) => a.from - b.from);
}

export function peakOf(row: Row, from: number, to: number, way: number): number {
  let most = 0;
  for (let i = from; i < to; i++) most = Math.max(most, way * (row[i] ?? 0));
  return most;
}

/** The longest stretch in which force and yaw rate stay about their middle, once the body has settled. */
function steadyIn(
  { gap }: InCar,
  { across, yaw }: { readonly across: Row; readonly yaw: Row },
  { from, to, way }: Stretch & { readonly way: number },
) {
  const peak = peakOf(across, from, to, way);
  const high = stretchesWhere(to, (i) => i >= from && way * (across[i] ?? 0) > 0.75 * peak, 1);
  const longest = longestOf(high);
  if (longest === undefined) return {};
  const [force, turn] = [across, yaw].map((row) => meanOver(row, longest.from, longest.to));
  const near = (row: Row, middle: number, i: number) =>
    Math.abs((row[i] ?? 0) / middle - 1) < STEADY.band;
  const even = stretchesWhere(
    longest.to,
    (i) =>
      i >= longest.from && gap[i] === 0 && near(across, force ?? 0, i) && near(yaw, turn ?? 0, i),
    stepsIn(STEADY.least + STEADY.settles),
  );
  const best = longestOf(even);
  if (best === undefined) return {};
  return { steady: { from: best.from + stepsIn(STEADY.settles), to: best.to } };
}

const longestOf = (all: readonly Stretch[]): Stretch | undefined =>
  all.reduce<Stretch | undefined>(
    (most, one) => (most && most.to - most.from >= one.to - one.from ? most : one),
    undefined,
  );

export const secondsOf = ({ from, to }: Stretch): number => (to - from) * STEP;
