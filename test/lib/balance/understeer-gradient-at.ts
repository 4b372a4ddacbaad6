import type { Driving } from "../../../lib/balance/driving.js";
import type { HandlingCar } from "../../../lib/balance/handling-car.js";
import { mirrorCar } from "../../../lib/balance/mirror-car.js";
import { mirrorDriving } from "../../../lib/balance/mirror-driving.js";
import { tipsOverAt } from "../../../lib/balance/stance-in-turn.js";
import { trim } from "../../../lib/balance/trim.js";
import type { Trim } from "../../../lib/balance/trimmed-car.js";

/** rad that the driver must steer more than the corner alone asks, L/R: above 0 understeer – SAE J670 */
export function understeerAngle({ steer, speed, yawRate }: Trim, { wheelbase }: HandlingCar) {
  return steer - Math.atan((wheelbase * yawRate) / speed);
}

const SMALL_TURN = 0.1; // m/s², small for tyres, large beside what `trim` leaves over

/**
 * How much more steering each m/s² needs at one lateral acceleration, rad/(m/s²), at a constant
 * speed: above 0 understeer, below 0 oversteer.
 *
 * @returns nothing when the tyres cannot hold that turn, or the car tips over in it
 */
export function understeerGradientAt(
  car: HandlingCar,
  driving: Driving,
  lateralAcceleration = 0,
): number | undefined {
  if (tipsNear(car, driving, lateralAcceleration)) return undefined;
  const less = trim(car, driving, lateralAcceleration - SMALL_TURN);
  const more = trim(car, driving, lateralAcceleration + SMALL_TURN);
  if (less === undefined || more === undefined) return undefined;
  return (understeerAngle(more, car) - understeerAngle(less, car)) / (2 * SMALL_TURN);
}

function tipsNear(car: HandlingCar, driving: Driving, lateralAcceleration: number): boolean {
  const toLeft = lateralAcceleration + SMALL_TURN;
  const toRight = SMALL_TURN - lateralAcceleration;
  return (
    toLeft > tipsOverAt(car, driving) ||
    toRight > tipsOverAt(mirrorCar(car), mirrorDriving(driving))
  );
}
