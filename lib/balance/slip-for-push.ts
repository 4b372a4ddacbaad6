import { type PreparedWheel, pushOf } from "../tyre/prepared-wheel.js";

const TOLERANCE = 1e-7; // N
const MOST_STEPS = 60;
const SMALL_SLIP = 1e-5;

/**
 * Slip at which a wheel pushes with a force, N: between the slips at which it pushes most and brakes
 * most when rolling straight. No wheel is spun or locked.
 *
 * @param wanted - N, above 0 driving; held inside what the wheel has
 * @param tanAlpha - tangent of the slip angle
 * @param most - slip of the most push, above 0
 * @param start - slip to begin with
 */
export function slipForPush(
  wheel: PreparedWheel,
  wanted: number,
  tanAlpha: number,
  most: number,
  start = 0,
): number {
  let [low, high] = [-most, most];
  let slip = Math.min(high, Math.max(low, start));
  let short = pushOf(wheel, slip, tanAlpha) - wanted;
  if (Math.abs(short) < TOLERANCE) return slip;
  let [before, shortBefore] = [slip, short];
  slip = short > 0 ? slip - SMALL_SLIP : slip + SMALL_SLIP;
  for (let i = 0; i < MOST_STEPS; i++) {
    short = pushOf(wheel, slip, tanAlpha) - wanted;
    if (Math.abs(short) < TOLERANCE) return slip;
    if (short > 0) high = Math.min(high, slip);
    else low = Math.max(low, slip);
    const stiffness = (short - shortBefore) / (slip - before);
    [before, shortBefore] = [slip, short];
    const next = slip - short / stiffness; // secant
    slip = next > low && next < high && i < 40 ? next : (low + high) / 2;
    if (high - low < 1e-13) return slip;
  }
  return slip;
}
