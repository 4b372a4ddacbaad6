import { type BodyEnd, bodyRoll } from "../load/body-roll.js";
import type { AxleInRoll, CarInRoll } from "../load/car-in-roll.js";
import type { Axles } from "../load/wheels.js";

/** A quantity that grows in a straight line with lateral acceleration: offset + slope·ay. */
export interface Line {
  readonly offset: number;
  /** per m/s² */
  readonly slope: number;
}

/** Load moved from left to right tyre (N) and roll angle (rad), as lines in lateral acceleration. */
export interface TransferLines {
  readonly transfer: Axles<Line>;
  readonly rollAngle: Axles<Line>;
}

/**
 * Load transfer of both axles as straight lines, while the same wheels stay on the ground.
 *
 * The same balance as `distributeLoadTransfer`, solved once for all lateral accelerations.
 *
 * @param given - N that the inner tyre of each axle has to give before it leaves the ground
 * @param lifted - axles whose inner tyre is off the ground: they have moved all they have
 * @returns nothing when the springs cannot hold the body
 * @see Milliken 1995, ch. 18
 */
export function transferLines(
  car: CarInRoll,
  given: Axles<number>,
  lifted: Axles<boolean>,
): TransferLines | undefined {
  const atZero = transferAt(car, given, lifted, 0);
  const atOne = transferAt(car, given, lifted, 1);
  if (atZero === undefined || atOne === undefined) return undefined;
  return {
    transfer: {
      front: line(atZero.transfer.front, atOne.transfer.front),
      rear: line(atZero.transfer.rear, atOne.transfer.rear),
    },
    rollAngle: {
      front: line(atZero.rollAngle.front, atOne.rollAngle.front),
      rear: line(atZero.rollAngle.rear, atOne.rollAngle.rear),
    },
  };
}

interface InTurn {
  readonly transfer: Axles<number>;
  readonly rollAngle: Axles<number>;
}

const line = (atZero: number, atOne: number): Line => ({ offset: atZero, slope: atOne - atZero });

/** One lateral acceleration, with the roll angle from `bodyRoll`. */
function transferAt(
  car: CarInRoll,
  given: Axles<number>,
  lifted: Axles<boolean>,
  ay: number,
): InTurn | undefined {
  const sprungFront = car.sprungMass * car.sprungFrontShare;
  const sprungRear = car.sprungMass - sprungFront;
  const linksFront = linkMoment(car.front, sprungFront, ay);
  const linksRear = linkMoment(car.rear, sprungRear, ay);
  const front = bodyEnd(car, car.front, sprungFront, linksFront, given.front, lifted.front);
  const rear = bodyEnd(car, car.rear, sprungRear, linksRear, given.rear, lifted.rear);
  const rollAngle = bodyRoll({ front, rear }, ay, car.torsionStiffness);
  if (rollAngle === undefined) return undefined;
  const transfer = {
    front: (linksFront + springMoment(front, rollAngle.front)) / car.front.track,
    rear: (linksRear + springMoment(rear, rollAngle.rear)) / car.rear.track,
  };
  return { transfer, rollAngle };
}

/** Moment about the ground that reaches the tyres without the springs, N·m. */
function linkMoment(axle: AxleInRoll, sprungMass: number, ay: number): number {
  return ay * (sprungMass * axle.rollCentreHeight + axle.unsprungMass * axle.unsprungHeight);
}

function bodyEnd(
  car: CarInRoll,
  axle: AxleInRoll,
  sprungMass: number,
  links: number,
  given: number,
  lifted: boolean,
): BodyEnd {
  return {
    sprungMass,
    arm: car.sprungHeight - axle.rollCentreHeight,
    rollStiffness: lifted ? 0 : axle.rollStiffness,
    heldMoment: lifted ? given * axle.track - links : 0,
  };
}

function springMoment({ rollStiffness, heldMoment }: BodyEnd, angle: number): number {
  return rollStiffness * angle + heldMoment;
}
