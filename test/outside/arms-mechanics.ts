import type { Axles } from "../../lib/load/wheels.js";
import type { ArmedAxle, ArmedCar } from "./free-arms-car.js";

const g = 9.80665;

/** One end of a car on arms, as its linear mechanics needs it. */
interface ArmedEnd {
  readonly track: number;
  readonly rollStiffness: number;
  readonly rollCentreHeight: number;
  readonly sprungMass: number;
  readonly unsprungMass: number;
  readonly unsprungHeight: number;
  /** Lean of a wheel to the road for each radian of body roll: 1 − (t/2)/swing arm. */
  readonly lean: number;
}

/**
 * Load transfer of each axle on independent arms, N, from virtual work, for small angles.
 *
 * It says two things that pinned axles cannot. Springs at the wheels press along the leaning body,
 * so weight leans on the links too: each axle passes on (side force + weight × roll)·h/t, and the
 * body rises a little, which takes the lever of its weight from h − h_axis to h − 2·h_axis. And a
 * wheel that leans with the body hands its own side force to the springs in that proportion;
 * only the rest stays at its axle.
 */
export function transfersOnArms(
  car: ArmedCar,
  rollCentreHeight: Axles<number>,
  swingArm: Axles<number>,
  lateralAcceleration: number,
): Axles<number> {
  const front = armedEnd(
    car.front,
    car.sprungMass * car.sprungFrontShare,
    rollCentreHeight.front,
    swingArm.front,
  );
  const rear = armedEnd(
    car.rear,
    car.sprungMass * (1 - car.sprungFrontShare),
    rollCentreHeight.rear,
    swingArm.rear,
  );
  const sum = (of: (end: ArmedEnd) => number) => of(front) + of(rear);
  const moment = sum(
    (end) =>
      end.sprungMass * (car.sprungHeight - end.rollCentreHeight) +
      end.unsprungMass * end.unsprungHeight * end.lean,
  );
  const lever = sum(
    (end) =>
      end.sprungMass * (car.sprungHeight - 2 * end.rollCentreHeight) +
      end.unsprungMass * end.unsprungHeight * end.lean ** 2,
  );
  const roll = (lateralAcceleration * moment) / (sum((end) => end.rollStiffness) - g * lever);
  const transfer = (end: ArmedEnd) => {
    const links = end.sprungMass * (lateralAcceleration + g * roll) * end.rollCentreHeight;
    const wheels = end.unsprungMass * lateralAcceleration * end.unsprungHeight * (1 - end.lean);
    return (end.rollStiffness * roll + links + wheels) / end.track;
  };
  return { front: transfer(front), rear: transfer(rear) };
}

function armedEnd(
  axle: ArmedAxle,
  sprungMass: number,
  rollCentreHeight: number,
  swingArm: number,
): ArmedEnd {
  const track = 2 * axle.linkage.contactPatch.y;
  return {
    track,
    rollStiffness: 0.5 * axle.wheelRate * track ** 2 + axle.barRollStiffness,
    rollCentreHeight,
    sprungMass,
    unsprungMass: axle.unsprungMass,
    unsprungHeight: axle.linkage.wheelCentre.z,
    lean: 1 - track / 2 / swingArm,
  };
}
