import { carBalance } from "./car-balance.js";
import { type Driving, requireDriving } from "./driving.js";
import type { HandlingCar } from "./handling-car.js";
import { mirrorCar } from "./mirror-car.js";
import { mirrorDriving } from "./mirror-driving.js";
import { tipsOverAt } from "./stance-in-turn.js";
import { trim } from "./trim.js";
import type { Trim } from "./trimmed-car.js";

/** One point of a handling curve. */
export interface HandlingPoint {
  /** m/s² */
  readonly lateralAcceleration: number;
  /** rad that the driver must steer more than the corner alone asks: above 0 understeer */
  readonly understeerAngle: number;
  /** rad, both front wheels */
  readonly steer: number;
  /** rad, ISO 8855 */
  readonly sideSlip: number;
}

/**
 * Steering against lateral acceleration at one speed, from straight ahead to the last turn the
 * tyres can hold.
 *
 * @param points - how many points to try, evenly spread up to the hardest turn
 * @returns fewer points when steady balance ends sooner
 */
export function handlingCurve(car: HandlingCar, driving: Driving, points = 41): HandlingPoint[] {
  requireDriving(driving);
  const limit = carBalance(car, driving).lateralAcceleration;
  const curve: HandlingPoint[] = [];
  let last: Trim | undefined;
  for (let i = 0; i < points; i++) {
    last = trim(car, driving, (limit * i) / (points - 1), last);
    if (last === undefined) break;
    curve.push(pointOf(last, car));
  }
  return curve;
}

function pointOf(state: Trim, car: HandlingCar): HandlingPoint {
  const { lateralAcceleration, steer, sideSlip } = state;
  const geometric = Math.atan((car.wheelbase * state.yawRate) / state.speed); // L/R – SAE J670
  return { lateralAcceleration, understeerAngle: steer - geometric, steer, sideSlip };
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
  const [a, b] = [pointOf(less, car), pointOf(more, car)];
  return (b.understeerAngle - a.understeerAngle) / (2 * SMALL_TURN);
}

function tipsNear(car: HandlingCar, driving: Driving, lateralAcceleration: number): boolean {
  const toLeft = lateralAcceleration + SMALL_TURN;
  const toRight = SMALL_TURN - lateralAcceleration;
  return (
    toLeft > tipsOverAt(car, driving) ||
    toRight > tipsOverAt(mirrorCar(car), mirrorDriving(driving))
  );
}
