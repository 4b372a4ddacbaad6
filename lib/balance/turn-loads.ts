import { type AxleTransfer, type Distribution, momentFromRoll } from "../load/distribution.js";
import { transferAtOnce } from "../load/links.js";
import { eachAxle, type Wheels } from "../load/wheels.js";
import type { Driving } from "./driving.js";
import type { HandlingCar } from "./handling-car.js";
import { mirrorCar, swapped } from "./mirror-car.js";
import type { Stance } from "./stance.js";
import { stanceInTurn } from "./stance-in-turn.js";

/** Wheel loads of a car in a turn, and how they came about. */
export type TurnLoads = Omit<Distribution, "tipped">;

/**
 * Loads, load transfer by cause and roll of a car in a steady turn at a speed: downforce, drag and
 * uneven sides included, where `distributeLoadTransfer` takes both sides alike and knows no speed.
 *
 * Transfer is what the turn adds to the loads of that speed straight ahead.
 *
 * @param lateralAcceleration - m/s², above 0 in a left turn
 * @returns nothing when the car tips over before it turns so hard
 * @throws Refusal when the springs cannot hold the body
 * @see Milliken 1995, ch. 18
 */
export function turnLoads(
  car: HandlingCar,
  driving: Driving,
  lateralAcceleration: number,
): TurnLoads | undefined {
  if (lateralAcceleration >= 0) return inLeftTurn(car, driving, lateralAcceleration);
  const mirrored = inLeftTurn(mirrorCar(car), driving, -lateralAcceleration);
  return mirrored && mirrorLoads(mirrored);
}

function inLeftTurn(car: HandlingCar, driving: Driving, ay: number): TurnLoads | undefined {
  const straight = loadsIn(stanceInTurn(car, driving, 0));
  const stance = stanceInTurn(car, driving, ay);
  if (stance.tips) return undefined;
  const load = loadsIn(stance);
  const { front, rear } = eachAxle(
    transferAtOnce(car, ay),
    ({ geometric, unsprung }, end): AxleTransfer => {
      const total = load[end].right - straight[end].right;
      const elastic = total - geometric - unsprung;
      const { lifted } = stance[end];
      return { elastic, geometric, unsprung, total, load: load[end], lifted };
    },
  );
  const rollAngle = { front: stance.front.roll, rear: stance.rear.roll };
  const tyreAngle = {
    front: stance.front.roll - stance.front.suspensionRoll,
    rear: stance.rear.roll - stance.rear.suspensionRoll,
  };
  const total = front.total + rear.total;
  return {
    front,
    rear,
    rollAngle,
    tyreAngle,
    total,
    frontShare: total === 0 ? 0.5 : front.total / total,
    momentFromRoll: momentFromRoll(car, rollAngle, tyreAngle),
  };
}

function loadsIn({ front, rear }: Stance): Wheels<number> {
  return {
    front: { left: front.left.load, right: front.right.load },
    rear: { left: rear.left.load, right: rear.right.load },
  };
}

function mirrorLoads({ front, rear, ...whole }: TurnLoads): TurnLoads {
  const axles = eachAxle({ front, rear }, mirrorTransfer);
  return {
    ...axles,
    rollAngle: eachAxle(whole.rollAngle, (angle) => 0 - angle),
    tyreAngle: eachAxle(whole.tyreAngle, (angle) => 0 - angle),
    total: 0 - whole.total,
    frontShare: whole.frontShare,
    momentFromRoll: 0 - whole.momentFromRoll,
  };
}

const mirrorTransfer = (axle: AxleTransfer): AxleTransfer => ({
  elastic: 0 - axle.elastic,
  geometric: 0 - axle.geometric,
  unsprung: 0 - axle.unsprung,
  total: 0 - axle.total,
  load: swapped(axle.load),
  lifted: axle.lifted,
});
