import { GRAVITY } from "../../units.js";
import type { CornerSteps } from "./corners.js";
import { integral, meanOver, type Row, STEP, type Stretch, smooth, stepsIn } from "./evenly.js";
import type { InCar } from "./in-car.js";
import type { Speed } from "./speed.js";

/** Roll of the body in the steady part of a corner, rad, by two ways; above 0 right side down. */
export interface SteadyRoll {
  readonly roll: number;
  /** m/s² felt across that belong to it */
  readonly felt: number;
}

const BEFORE = 0.5; // s of straight that a level needs on both sides
const LEVEL = 0.6; // m/s² across, felt, that count as straight
const SETTLES = 0.3; // s from the corner's edge on: the body is still on its way
const FARTHEST = 2.5; // s from the corner's end to that level

/** Pitch, rad, nose down above 0, for each m/s² felt along: from pitch rates on straights. */
export function pitchGradientOf(car: InCar): number {
  const along = smooth(car.along, 0.3);
  const pitch = smooth(integral(car.pitchRate), 0.3);
  const yaw = smooth(car.yawRate, 0.3);
  const apart = stepsIn(0.6);
  let [together, all] = [0, 0];
  for (let i = apart; i < car.count; i++) {
    const straight = Math.max(Math.abs(yaw[i] ?? 0), Math.abs(yaw[i - apart] ?? 0)) < 0.05;
    if (!straight || car.gap[i] !== 0) continue;
    const change = (along[i] ?? 0) - (along[i - apart] ?? 0);
    together += change * ((pitch[i] ?? 0) - (pitch[i - apart] ?? 0));
    all += change ** 2;
  }
  return all > 0 ? together / all : 0;
}

/**
 * Roll by balance: what holds the phone across, less what turns the car (in a steady turn a = v·r),
 * over g. How the road and the phone lean is in it, alike to both sides.
 */
export function balanceRoll(car: InCar, speed: Speed, { from, to }: Stretch): SteadyRoll {
  const felt = meanOver(car.across, from, to);
  return { roll: (felt - turningIn(car, speed, { from, to })) / GRAVITY, felt };
}

/** m/s² to the left that turn the car in a steady turn: speed times yaw rate. */
export function turningIn(car: InCar, speed: Speed, { from, to }: Stretch): number {
  let sum = 0;
  for (let i = from; i < to; i++) sum += (speed.at[i] ?? 0) * (car.yawRate[i] ?? 0);
  return sum / (to - from);
}

/**
 * Roll by the roll rate, p = φ̇ − ψ̇·θ: pitch that goes with the force along is taken off, and what is
 * left between the straights before and after in proportion with the angle turned, which is a phone
 * or a body that points up or down. How road and phone lean is not in it.
 *
 * @returns nothing without a straight on both sides
 */
export function integratedRoll(
  car: InCar,
  { from, to, steady }: CornerSteps,
  pitchGradient: number,
): SteadyRoll | undefined {
  if (steady === undefined) return undefined;
  const before = straightNear(car, from, -1);
  const after = straightNear(car, to, 1);
  if (before === undefined || after === undefined) return undefined;
  const first = before.from;
  if (car.gap.subarray(first, after.to).some((gap) => gap !== 0)) return undefined; // what turned then is lost
  const part = (row: Row) => row.subarray(first, after.to);
  const along = smooth(part(car.along), 0.3);
  const rate = part(car.rollRate).map(
    (value, i) => value + (car.yawRate[first + i] ?? 0) * pitchGradient * (along[i] ?? 0),
  );
  const roll = integral(rate);
  const turned = integral(part(car.yawRate));
  const mean = (row: Row, { from: a, to: b }: Stretch) => meanOver(row, a - first, b - first);
  const gain = (row: Row, stretch: Stretch) => mean(row, stretch) - mean(row, before);
  const whole = gain(turned, after);
  if (Math.abs(whole) < 0.2) return undefined;
  const share = gain(turned, steady) / whole;
  const between = (row: Row) => gain(row, steady) - share * gain(row, after);
  return { roll: between(roll), felt: between(part(car.across)) };
}

/** Half a second of straight before or after a corner, the nearest one. */
function straightNear(car: InCar, edge: number, way: 1 | -1): Stretch | undefined {
  const size = stepsIn(BEFORE);
  for (let away = stepsIn(SETTLES); away < FARTHEST / STEP; away += 5) {
    const from = way > 0 ? edge + away : edge - away - size;
    if (from < 0 || from + size > car.count) return undefined;
    const stretch = { from, to: from + size };
    if (isLevel(car, stretch)) return stretch;
  }
  return undefined;
}

function isLevel(car: InCar, { from, to }: Stretch): boolean {
  return (
    Math.abs(meanOver(car.across, from, to)) < LEVEL &&
    Math.abs(meanOver(car.yawRate, from, to)) < 0.06
  );
}
