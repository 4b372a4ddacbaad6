import { mostSlip, type PreparedWheel, pushOf } from "../tyre/prepared-wheel.js";
import { type SlippingWheel, slipForPush } from "./slip-for-push.js";

/** One wheel of an axle that pushes or brakes. */
export interface PushingWheel extends SlippingWheel {
  /** speed of its centre along the wheel, as a share of the car's */
  rolling: number;
}

/** How far the two wheels of an axle are tied to each other. */
export interface Tie {
  /** share of a driving push by which they may differ: 0 open, 1 locked */
  readonly underPower: number;
  /** the same of the engine's part of a braking push */
  readonly onOverrun: number;
  /** N of braking that the engine does at most at this axle */
  readonly engine: number;
}

/** A wheel of an axle, in the air until it is prepared. */
export function pushingWheel(wheel: PreparedWheel): PushingWheel {
  return { wheel, tanAlpha: 0, rolling: 1, mostSlip: 0, slip: 0, push: 0, stiffness: 0 };
}

/**
 * Finds the slips with which two wheels share the push of their axle.
 *
 * Brakes ask half of each, and each gives what it has at its own slip angle, eased off near that:
 * a driver or an anti-lock system keeps it from locking. A differential gives each half, and as
 * much more to the slower one as its lock holds, at most until both turn equally fast; a wheel that
 * has no more holds back the other one as far as they are not tied.
 *
 * @param push - N that is asked of the axle, above 0 driving
 */
export function shareOverAxle(
  left: PushingWheel,
  right: PushingWheel,
  push: number,
  tie: Tie,
): void {
  if (push === 0 && tie.underPower === 0 && rollsFreely(left) && rollsFreely(right)) return;
  left.mostSlip = mostSlip(left.wheel);
  right.mostSlip = mostSlip(right.wheel);
  if (push < 0) brake(left, right, -push, tie);
  else drive(left, right, push, tie);
}

/** Lets a wheel roll without slip, where that is how it rolls freely. */
function rollsFreely(wheel: PushingWheel): boolean {
  wheel.slip = 0;
  wheel.push = pushOf(wheel.wheel, 0, wheel.tanAlpha);
  return Math.abs(wheel.push) < NO_PUSH;
}

const NO_PUSH = 1e-7; // N

function brake(left: PushingWheel, right: PushingWheel, asked: number, tie: Tie): void {
  const onLeft = -eased(asked / 2, capacity(left, -1));
  const onRight = -eased(asked / 2, capacity(right, -1));
  const engine = tie.onOverrun === 1 ? Infinity : 0.5 * tie.onOverrun * Math.min(asked, tie.engine);
  couple(left, right, onLeft, onRight, engine);
}

function drive(left: PushingWheel, right: PushingWheel, asked: number, tie: Tie): void {
  const lock = tie.underPower;
  const ofLeft = capacity(left, 1);
  const ofRight = capacity(right, 1);
  const weaker = lock === 1 ? Infinity : (2 / (1 - lock)) * Math.min(ofLeft, ofRight);
  const push = eased(asked, Math.min(ofLeft + ofRight, weaker));
  couple(left, right, push / 2, push / 2, lock === 1 ? Infinity : (lock * push) / 2);
}

/** What a wheel can push (side 1) or brake (side −1) at its slip angle, N. */
function capacity({ wheel, mostSlip, tanAlpha }: PushingWheel, side: 1 | -1): number {
  return Math.max(0, side * pushOf(wheel, side * mostSlip, tanAlpha));
}

/** Nearly the push while it is small, and never more than there is: x / (1 + (x/m)⁶)^⅙. */
function eased(push: number, most: number): number {
  if (most <= 0) return 0;
  if (most === Infinity) return push;
  const square = (push / most) * (push / most);
  return push / Math.cbrt(Math.sqrt(1 + square * square * square));
}

/** Gives each wheel its push, and moves up to `most` N from the faster to the slower one. */
function couple(
  left: PushingWheel,
  right: PushingWheel,
  onLeft: number,
  onRight: number,
  most: number,
): void {
  let moved = 0;
  if (most > 0) {
    const wanted = turningAlike(left, right, onLeft + onRight) - onLeft;
    moved = Math.min(most, Math.max(-most, wanted));
    if (moved === wanted) return; // both turn equally fast already
  }
  slipForPush(left, onLeft + moved);
  slipForPush(right, onRight - moved);
}

const MOST_STEPS = 60;

/**
 * Push of the left wheel when both turn equally fast and push with a sum; sets their slips.
 *
 * The turning speed ω, in the car's own, lies between where both brake most and both push most.
 */
function turningAlike(left: PushingWheel, right: PushingWheel, sum: number): number {
  let low = Math.min(turning(left, -left.mostSlip), turning(right, -right.mostSlip));
  let high = Math.max(turning(left, left.mostSlip), turning(right, right.mostSlip));
  let speed = 0.5 * (turning(left, left.slip) + turning(right, right.slip));
  let before = Number.NaN;
  let missBefore = 0;
  for (let i = 0; i < MOST_STEPS; i++) {
    turn(left, speed);
    turn(right, speed);
    const miss = left.push + right.push - sum;
    if (Math.abs(miss) < 1e-7 || high - low < 1e-14) return left.push;
    if (miss > 0) high = Math.min(high, speed);
    else low = Math.max(low, speed);
    const next = speed - (miss * (speed - before)) / (miss - missBefore); // secant
    before = speed;
    missBefore = miss;
    if (i === 0) speed += miss > 0 ? -1e-5 : 1e-5;
    else speed = next > low && next < high && i < 40 ? next : (low + high) / 2;
  }
  return left.push;
}

const turning = ({ rolling }: PushingWheel, slip: number): number => rolling * (1 + slip);

function turn(wheel: PushingWheel, speed: number): void {
  const { mostSlip } = wheel;
  wheel.slip = Math.min(mostSlip, Math.max(-mostSlip, speed / wheel.rolling - 1));
  wheel.push = pushOf(wheel.wheel, wheel.slip, wheel.tanAlpha);
}
