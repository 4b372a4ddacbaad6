import type { Car } from "../car/car.js";
import { eachAxle, sumOfWheels, type Wheels } from "../load/wheels.js";
import { camberOf, leanOf, toeOf } from "./alignment-at-rest.js";
import { deflection, restingPosition, weightsOf } from "./balance-of-forces.js";
import { endsOf } from "./position.js";
import { eachSide } from "./sides.js";
import { type Elastic, elasticsOf } from "./springs-of-car.js";

/** A car at rest on level ground. */
export interface Rest {
  /** Rise of the body at half the wheelbase against the measured state, m. */
  readonly heave: number;
  /** Against the measured state, rad, > 0 nose down. */
  readonly pitch: number;
  /** Against the measured state, rad, > 0 right side down. */
  readonly roll: number;
  /** Ride height of the body beside each wheel, m. */
  readonly rideHeight: Wheels<number>;
  /** Load under each wheel, N; 0 for a wheel in the air. */
  readonly load: Wheels<number>;
  /** Rise of each wheel against the body since the measured state, m, > 0 in bump. */
  readonly travel: Wheels<number>;
  /** Camber of each wheel against the ground, rad, > 0 top out. */
  readonly camber: Wheels<number>;
  /** Toe of each wheel, rad, > 0 front in. */
  readonly toe: Wheels<number>;
  /** Share of the weight on the front wheels, 0–1. */
  readonly frontShare: number;
  /** Share of the weight on the left wheels, 0–1. */
  readonly leftShare: number;
  /** Cross weight: share of the weight on the right front and left rear wheels, 0–1. */
  readonly crossShare: number;
}

/** A car set so, measured so, and how it stands. */
export interface CarAtRest {
  readonly car: Car;
  /** The car whose file gave the heights. */
  readonly measured: Car;
  readonly rest: Rest;
}

/**
 * How a car stands at rest: heights, corner weights, cross weight, alignment.
 *
 * Body stiff (no twist of the chassis), free to heave, pitch and roll on its springs, bars and tyres; small angles, constant
 * rates and motion ratios, no stops, no friction. A change of spring keeps the free length, a
 * change of tyre pressure the size.
 *
 * @param car - the car as it is set now
 * @param measured - the car whose file gave the ride heights: level, all seat turns at zero.
 * Left out: the car itself, with its seats turned back to zero
 * @throws Refusal when the car cannot stand on its springs
 * @example
 * restOf(demoCar).rideHeight.front.left // → 0.130, as it was measured
 */
export function restOf(car: Car, measured: Car = car): Rest {
  const elastics = elasticsOf(car, measured);
  const position = restingPosition(elastics, weightsOf(car));
  const [heave = 0, pitch = 0, roll = 0] = position;
  const load = loadsOf(elastics, position);
  const rise = bodyRise(car, position);
  const travel = wheelTravel(rise, position);
  return {
    heave,
    pitch,
    roll,
    rideHeight: eachAxle(rise, (sides, end) =>
      eachSide(sides, (up) => measured[end].rideHeight + up),
    ),
    load,
    travel,
    camber: eachAxle(travel, (sides, end) => camberOf(car[end], sides, leanOf(car, end, position))),
    toe: eachAxle(travel, (sides, end) => toeOf(car[end], sides)),
    ...sharesOf(load),
  };
}

function loadsOf(elastics: readonly Elastic[], position: readonly number[]): Wheels<number> {
  const [fl = 0, fr = 0, rl = 0, rr = 0] = elastics
    .filter(({ pushesOnly }) => pushesOnly)
    .map((tyre) => tyre.stiffness * deflection(tyre, position));
  return { front: { left: fl, right: fr }, rear: { left: rl, right: rr } };
}

function bodyRise(car: Car, [heave = 0, pitch = 0, roll = 0]: readonly number[]): Wheels<number> {
  const [front, rear] = endsOf(car).map(({ name, behindFrontAxle }) => {
    const middle = heave + pitch * (behindFrontAxle - car.wheelbase / 2);
    const side = (roll * car[name].track) / 2;
    return { left: middle + side, right: middle - side };
  });
  const level = { left: 0, right: 0 };
  return { front: front ?? level, rear: rear ?? level };
}

function wheelTravel(rise: Wheels<number>, position: readonly number[]): Wheels<number> {
  const [, , , fl = 0, fr = 0, rl = 0, rr = 0] = position;
  return {
    front: { left: fl - rise.front.left, right: fr - rise.front.right },
    rear: { left: rl - rise.rear.left, right: rr - rise.rear.right },
  };
}

function sharesOf(load: Wheels<number>) {
  const total = sumOfWheels(load);
  const { front, rear } = load;
  return {
    frontShare: (front.left + front.right) / total,
    leftShare: (front.left + rear.left) / total,
    crossShare: (front.right + rear.left) / total,
  };
}
