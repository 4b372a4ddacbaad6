import { eachAxle } from "../load/wheels.js";
import type { CarBalance } from "./car-balance.js";
import type { Driving } from "./driving.js";
import type { HandlingCar } from "./handling-car.js";
import { tipsOverAt } from "./stance-in-turn.js";

/** Share of the turn that tips a car over from which a hardest turn is too near to it. */
export const NEAR_TIPPING = 0.9;

/** Share of the weight that the inner wheels of a car far from tipping still carry. */
const FAR_FROM_TIPPING = 0.2;

/**
 * Lateral acceleration at which a car tips over, m/s² to the left, where its hardest turn comes
 * within a tenth of that or reaches it; nothing where its tyres let go well before.
 *
 * @param driving - what the balance was found for
 * @throws RangeError as `tipsOverAt`
 */
export function tipsNear(
  car: HandlingCar,
  driving: Driving,
  balance: CarBalance,
): number | undefined {
  if (innerShare(balance) > FAR_FROM_TIPPING) return undefined;
  const { longitudinalAcceleration, lateralAcceleration } = balance;
  const at = tipsOverAt(car, { ...driving, longitudinalAcceleration });
  return lateralAcceleration >= NEAR_TIPPING * at ? at : undefined;
}

/** Share of the weight on the wheels inside the hardest turn: it falls to nothing as a car tips. */
function innerShare({ wheels }: CarBalance): number {
  const inner = eachAxle(wheels, ({ left }) => left.load);
  const outer = eachAxle(wheels, ({ right }) => right.load);
  const inside = inner.front + inner.rear;
  return inside / (inside + outer.front + outer.rear);
}
