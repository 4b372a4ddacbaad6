import type { CarBalance } from "./car-balance.js";
import type { Driving } from "./driving.js";
import type { HandlingCar } from "./handling-car.js";
import { isFarFromTippingAt, tipsOverAt } from "./stance-in-turn.js";

/** Share of the turn that tips a car over from which a hardest turn is too near to it. */
const NEAR_TIPPING = 0.9;

/**
 * Lateral acceleration at which a car tips over, m/s² to the left, where its hardest turn comes
 * within a tenth of that or reaches it; nothing where its tyres let go well before.
 *
 * @param driving - what the balance was found for
 * @throws Refusal as `tipsOverAt`
 */
export function tipsNear(
  car: HandlingCar,
  driving: Driving,
  balance: CarBalance,
): number | undefined {
  const { longitudinalAcceleration, lateralAcceleration } = balance;
  const driven = { ...driving, longitudinalAcceleration };
  if (isFarFromTippingAt(car, driven, lateralAcceleration)) return undefined;
  const at = tipsOverAt(car, driven);
  return lateralAcceleration >= NEAR_TIPPING * at ? at : undefined;
}
