import type { Axles } from "../load/wheels.js";
import { type AxlesInTurn, axlesInTurn } from "./axle-in-turn.js";
import { sideForceUnder } from "./axle-slip.js";
import { axleCapacity, type Capacity, coldStart, type SideForceOf } from "./capacity.js";
import { type Driving, longitudinalForces } from "./driving.js";
import type { HandlingCar } from "./handling-car.js";

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
 *
 * @param start - the balance of a similar car makes it several times faster
 * @throws RangeError when the springs cannot hold the body up
 */
export function carBalance(
  car: HandlingCar,
  driving: Driving,
  start: BalanceStart = unknown,
): CarBalance {
  const onFour = axlesInTurn(car, driving);
  if (onFour === undefined) throw new RangeError(CANNOT_STAND);
  const forces = longitudinalForces(car, driving);
  const answers = { front: answerTo(forces.front), rear: answerTo(forces.rear) };
  const first = capacities(onFour, start, answers);
  if (Math.max(first.front.lateralAcceleration, first.rear.lateralAcceleration) <= onFour.holdsUpTo)
    return summary(first, onFour, false);
  return pastLift(car, driving, onFour, first, answers);
}

const CANNOT_STAND =
  "roll stiffness of the two axles together must be greater than sprung mass × gravity × " +
  "height above the roll axis, or the body falls over at rest.";

/** Side force when the tyres also have to push or brake; a small push changes nothing. */
function answerTo(demand: number): SideForceOf | undefined {
  return demand === 0 ? undefined : sideForceUnder(demand);
}

function capacities(
  axles: AxlesInTurn,
  start: BalanceStart,
  answers: Axles<SideForceOf | undefined>,
): Axles<Capacity> {
  return {
    front: axleCapacity(axles.front, start.front, answers.front),
    rear: axleCapacity(axles.rear, start.rear, answers.rear),
  };
}

/** The same once an inner tyre has left the ground: its axle has no more to move. */
function pastLift(
  car: HandlingCar,
  driving: Driving,
  onFour: AxlesInTurn,
  before: Axles<Capacity>,
  answers: Axles<SideForceOf | undefined>,
): CarBalance {
  const lifted = { front: onFour.liftsNext === "front", rear: onFour.liftsNext === "rear" };
  const onThree = axlesInTurn(car, driving, lifted);
  const after = onThree && capacities(onThree, before, answers);
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
