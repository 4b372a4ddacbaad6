import type { HandlingCar } from "../balance/handling-car.js";
import type { StandingCar } from "../balance/standing-car.js";
import { barRollStiffnessOf, meanOf, rideRateOf, wheelRateOf } from "../car/axle.js";
import type { Car } from "../car/car.js";
import { tyreOf } from "../car/tyres.js";
import { distributeLoadTransfer } from "../load/distribution.js";
import { type Axles, eachAxle } from "../load/wheels.js";
import { oneWheelRate } from "../spring/one-wheel.js";
import { rideFrequency } from "../spring/ride.js";
import type { Rest } from "../statics/rest.js";
import { rollingBody } from "../transient/rolling-body.js";
import { smallStep } from "../transient/small-step.js";
import { GRAVITY } from "../units.js";

/** What a set-up change may move besides balance at the limit: at rest, and far below the limit. */
export interface CarFigures {
  /** m, mean of both sides */
  readonly rideHeight: Axles<number>;
  /** rad at rest, mean of both sides */
  readonly camber: Axles<number>;
  /** rad at rest, mean of both sides */
  readonly toe: Axles<number>;
  /** Hz of the body on springs and tyres */
  readonly rideFrequency: Axles<number>;
  /** N/m that one wheel meets when it alone rises */
  readonly oneWheelRate: Axles<number>;
  /** m of travel left before the bump stop; Infinity when the file gives no travel */
  readonly bumpTravel: Axles<number>;
  /** m² of one tyre at its load at rest, gross */
  readonly patchArea: Axles<number>;
  /** rad/(m/s²) */
  readonly rollGradient: number;
  /** share of the load transfer that the front axle makes while all wheels are down, 0–1 */
  readonly frontTransferShare: number;
  /** share of the weight on the front wheels, 0–1 */
  readonly frontWeightShare: number;
  /** share of the weight on right front and left rear, 0–1 */
  readonly crossWeightShare: number;
  /** Hz of the body in roll */
  readonly rollFrequency: number;
  /** damping of that motion, 1 is just no overshoot */
  readonly rollDampingRatio: number;
  /**
   * rad/(m/s²) of steering beyond that of the corner itself, in a gentle turn at the speed, as
   * `smallStep` gives it: above 0 understeer, below 0 oversteer; Infinity where there is no turn
   */
  readonly understeerGradient: number;
  /** s of a small step of steering at the speed, as `smallStep` gives it; Infinity for no answer */
  readonly yawResponseTime: number;
}

/** Speed at which cars are compared when none is given: 90 km/h. */
export const USUAL_SPEED = 25; // m/s

/**
 * What a set-up change may move besides balance.
 *
 * @param speed - m/s, 0.5 to 200
 * @throws Refusal when the car cannot stand on its springs, or for a speed out of range
 * @example
 * figuresOf(standingCar(demoCar)).oneWheelRate.front // → 33270, by hand: 25 350 + 16 422.9/1.44²
 */
export function figuresOf({ car, rest, handling }: StandingCar, speed = USUAL_SPEED): CarFigures {
  return {
    rideHeight: eachAxle(rest.rideHeight, meanOf),
    camber: eachAxle(rest.camber, meanOf),
    toe: eachAxle(rest.toe, meanOf),
    rideFrequency: eachAxle(car, (axle, end) => {
      const load = rest.load[end].left + rest.load[end].right;
      return rideFrequency(rideRateOf(axle), (load / GRAVITY - axle.unsprungMass) / 2);
    }),
    oneWheelRate: eachAxle(car, (axle) =>
      oneWheelRate({
        wheelRate: wheelRateOf(axle),
        barRollStiffness: barRollStiffnessOf(axle),
        track: axle.track,
      }),
    ),
    bumpTravel: eachAxle(
      car,
      ({ geometry }, end) => (geometry.bumpTravel ?? Infinity) - meanOf(rest.travel[end]),
    ),
    patchArea: eachAxle(car, (_, end) => patchAreaAtRest(car, rest, end)),
    ...gentleTurn(handling),
    frontWeightShare: rest.frontShare,
    crossWeightShare: rest.crossShare,
    ...rollMotion(handling),
    ...steering(handling, speed),
  };
}

function patchAreaAtRest(car: Car, rest: Rest, end: "front" | "rear"): number {
  const state = { load: meanOf(rest.load[end]), pressure: meanOf(car[end].tyre.pressure) };
  return tyreOf(car[end]).contactPatch(state).area;
}

const GENTLE = 1; // m/s², all wheels down on any car

function gentleTurn(car: HandlingCar) {
  const { rollAngle, frontShare } = distributeLoadTransfer(car, GENTLE);
  const angle = (rollAngle.front + rollAngle.rear) / 2;
  return { rollGradient: angle / GENTLE, frontTransferShare: frontShare };
}

function steering(car: HandlingCar, speed: number) {
  const { understeerGradient, yawResponseTime } = smallStep(car, speed);
  return { understeerGradient, yawResponseTime };
}

/** The body in roll as one mass on one spring and damper, its tyres giving way – Gillespie 1992, ch. 5. */
function rollMotion(car: HandlingCar) {
  const { stiffness, inertia, damping } = rollingBody(car);
  return {
    rollFrequency: Math.sqrt(stiffness / inertia) / (2 * Math.PI),
    rollDampingRatio: damping / (2 * Math.sqrt(stiffness * inertia)),
  };
}
