import { carBalance } from "../balance/car-balance.js";
import type { HandlingCar } from "../balance/handling-car.js";
import { smallStep } from "../transient/small-step.js";

/** What the model says of a car on a circle. */
export interface PredictedCircle {
  /** m/s² */
  readonly limit: number;
  /** s of a lap at that */
  readonly lapTime: number;
  /** rad of the road wheels for each m/s² in a gentle turn: above 0 understeer */
  readonly gradient: number;
}

const GENTLE = 2; // m/s², for the gradient

/**
 * Limit, lap time and understeer gradient of a car on a circle, as the model has it.
 *
 * @param radius - m, 3–200
 * @throws Refusal when the car cannot hold its speed, or tips
 */
export function predictedCircle(car: HandlingCar, radius: number): PredictedCircle {
  const limit = carBalance(car, { cornerRadius: radius }).lateralAcceleration;
  const { understeerGradient } = smallStep(car, Math.sqrt(GENTLE * radius));
  return {
    limit,
    lapTime: 2 * Math.PI * Math.sqrt(radius / limit), // a = 4π²R/T²
    gradient: understeerGradient,
  };
}
