import { type PreparedWheel, pushOf } from "../tyre/prepared-wheel.js";

/** A wheel whose slip is sought: what is known of it, and what was found before. */
export interface SlippingWheel {
  readonly wheel: PreparedWheel;
  /** tangent of its slip angle */
  tanAlpha: number;
  /** slip at which it pushes most straight ahead, above 0 */
  mostSlip: number;
  /** the slip found: where the next search begins */
  slip: number;
  /** N that it pushes with that slip */
  push: number;
  /** N per slip that the last search ended with; 0 before the first */
  stiffness: number;
}

const TOLERANCE = 1e-7; // N
const MOST_STEPS = 60;
const SECANT_STEPS = 40;
const SMALL_SLIP = 1e-5;

/**
 * Finds the slip at which a wheel pushes with a force: between those at which it pushes most and
 * brakes most when rolling straight. No wheel is spun or locked.
 *
 * @param wanted - N, above 0 driving; more than the wheel has ends at the most slip
 */
export function slipForPush(of: SlippingWheel, wanted: number): void {
  const { wheel, tanAlpha, mostSlip } = of;
  let low = -mostSlip;
  let high = mostSlip;
  let slip = Math.min(high, Math.max(low, of.slip));
  let push = pushOf(wheel, slip, tanAlpha);
  let short = push - wanted;
  let { stiffness } = of;
  for (let i = 0; i < MOST_STEPS && Math.abs(short) >= TOLERANCE; i++) {
    if (short > 0) high = slip;
    else low = slip;
    if (high - low < 1e-13) break;
    let next = stiffness > 0 ? slip - short / stiffness : slip - Math.sign(short) * SMALL_SLIP;
    if (!(next > low && next < high) || i > SECANT_STEPS) next = (low + high) / 2;
    push = pushOf(wheel, next, tanAlpha);
    const after = push - wanted;
    stiffness = (after - short) / (next - slip); // secant
    slip = next;
    short = after;
  }
  of.slip = slip;
  of.push = push;
  of.stiffness = stiffness;
}
