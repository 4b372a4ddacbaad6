import type { Axles } from "../load/wheels.js";
import type { AxlesInTurn } from "./axle-in-turn.js";
import { axleCapacity, CAPACITY_TOLERANCE, type Capacity, coldStart } from "./capacity.js";
import type { Driving } from "./driving.js";
import type { HandlingCar } from "./handling-car.js";
import { onFourWheels, onThreeWheels } from "./loads-in-turn.js";

/** The hardest left turn of each axle of a car, and of the car. */
export interface CarBalance extends Axles<Capacity> {
  /** m/s² of the car: what the weaker axle can do, or where it tips over */
  readonly lateralAcceleration: number;
  /** the axle that gives up first; "both" when neither is ahead */
  readonly first: "front" | "rear" | "both";
  /** m/s² that the rear can do more than the front: above 0 understeer, below 0 oversteer */
  readonly understeerMargin: number;
  /** axles whose inner tyre is off the ground at the limit of the car */
  readonly lifted: Axles<boolean>;
  /** both inner tyres leave the ground before the tyres let go */
  readonly tips: boolean;
}

/** Where to begin the search: the balance of a similar car, or nothing. */
export type BalanceStart = Axles<Capacity>;

const unknown: BalanceStart = { front: coldStart, rear: coldStart };

/**
 * How hard each axle of a car can turn to the left, and which end says stop.
 *
 * Each tyre with its real load, lean, toe and pressure; braking or driving as the driver does it.
 * Each axle by itself, at small steer angles: `trim` also knows that a steered tyre pulls back, and
 * that tyres of one axle run at slightly different slip angles and may push unevenly.
 *
 * @param start - the balance of a similar car makes it several times faster
 * @param tolerance - m/s², as for `axleCapacity`
 * @throws RangeError when the springs cannot hold the body up
 */
export function carBalance(
  car: HandlingCar,
  driving: Driving,
  start: BalanceStart = unknown,
  tolerance = CAPACITY_TOLERANCE,
): CarBalance {
  const onFour = onFourWheels(car, driving);
  const first = capacities(onFour, start, tolerance);
  if (Math.max(first.front.lateralAcceleration, first.rear.lateralAcceleration) <= onFour.holdsUpTo)
    return summary(first, onFour, false);
  return pastLift(car, driving, onFour, first, tolerance);
}

function capacities(axles: AxlesInTurn, start: BalanceStart, tolerance: number): Axles<Capacity> {
  return {
    front: axleCapacity(axles.front, start.front, tolerance),
    rear: axleCapacity(axles.rear, start.rear, tolerance),
  };
}

/** The same once an inner tyre has left the ground: its axle has no more to move. */
function pastLift(
  car: HandlingCar,
  driving: Driving,
  onFour: AxlesInTurn,
  before: Axles<Capacity>,
  tolerance: number,
): CarBalance {
  const onThree = onThreeWheels(car, driving, onFour, onFour.holdsUpTo);
  const after = onThree && capacities(onThree, before, tolerance);
  const holdsUpTo = onThree?.holdsUpTo ?? onFour.holdsUpTo;
  const axle = (end: "front" | "rear"): Capacity => {
    const early = before[end].lateralAcceleration <= onFour.holdsUpTo;
    const late = early || after === undefined ? before[end] : after[end];
    return { ...late, lateralAcceleration: Math.min(late.lateralAcceleration, holdsUpTo) };
  };
  const both = { front: axle("front"), rear: axle("rear") };
  const limit = Math.min(both.front.lateralAcceleration, both.rear.lateralAcceleration);
  if (limit <= onFour.holdsUpTo) return summary(both, onFour, false);
  return summary(both, onThree ?? onFour, limit >= holdsUpTo);
}

function summary(axles: Axles<Capacity>, state: AxlesInTurn, tips: boolean): CarBalance {
  const { front, rear } = axles;
  const margin = rear.lateralAcceleration - front.lateralAcceleration;
  return {
    front,
    rear,
    lateralAcceleration: Math.min(front.lateralAcceleration, rear.lateralAcceleration),
    first: Math.abs(margin) < 1e-6 ? "both" : margin > 0 ? "front" : "rear",
    understeerMargin: margin,
    lifted: state.lifted,
    tips,
  };
}
