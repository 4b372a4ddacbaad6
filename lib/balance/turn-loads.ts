import { type AxleTransfer, type Distribution, momentFromRoll } from "../load/distribution.js";
import { transferAtOnce } from "../load/links.js";
import { type Axles, eachAxle, type Wheels } from "../load/wheels.js";
import type { AxlesInTurn } from "./axle-in-turn.js";
import type { Driving } from "./driving.js";
import type { HandlingCar } from "./handling-car.js";
import { axlesAt, onFourWheels, tipsOverAt } from "./loads-in-turn.js";
import { mirrorCar, swapped } from "./mirror-car.js";
import type { Line } from "./transfer-line.js";

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
 * @throws RangeError when the springs cannot hold the body
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
  if (ay > tipsOverAt(car, driving)) return undefined;
  const [straight, axles] = [onFourWheels(car, driving), axlesAt(car, driving, ay)];
  const load = loadsIn(axles, ay);
  const { front, rear } = eachAxle(
    transferAtOnce(car, ay),
    ({ geometric, unsprung }, end): AxleTransfer => {
      const total = load[end].right - straight[end].outer.load.offset;
      const lifted = axles.lifted[end];
      return {
        elastic: total - geometric - unsprung,
        geometric,
        unsprung,
        total,
        load: load[end],
        lifted,
      };
    },
  );
  const angles = (lines: Axles<Line>) =>
    eachAxle(lines, ({ offset, slope }) => offset + slope * ay);
  const [rollAngle, tyreAngle] = [angles(axles.rollAngle), angles(axles.tyreAngle)];
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

function loadsIn(axles: AxlesInTurn, ay: number): Wheels<number> {
  return eachAxle(axles, ({ inner, outer }, end) => ({
    left: axles.lifted[end] ? 0 : Math.max(0, inner.load.offset + inner.load.slope * ay),
    right: outer.load.offset + outer.load.slope * ay,
  }));
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
