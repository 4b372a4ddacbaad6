import type { HandlingCar } from "../../lib/balance/handling-car.js";
import { mirrorCar } from "../../lib/balance/mirror-car.js";
import type { PhaseBalances } from "../../lib/balance/phases.js";
import { tipsOverAt } from "../../lib/balance/stance-in-turn.js";
import { turnLoads } from "../../lib/balance/turn-loads.js";
import type { BothCorners } from "../../lib/change/behaviour.js";
import { eachAxle } from "../../lib/load/wheels.js";
import type { ReportQuestion } from "./set-up-report.js";

/** The corner asked for, to one side: how hard the car can turn there, and what the turn does. */
export type SideInTurn = ReturnType<typeof inTurn>["leftTurn"];

/** The corner asked for, to the left and to the right: uneven cars do not do the same in both. */
export function inTurn(
  car: HandlingCar,
  { lateralAcceleration, speed }: ReportQuestion,
  corners: BothCorners,
) {
  const side = (facing: HandlingCar, { middle }: PhaseBalances, ay: number) => {
    const limit = middle.lateralAcceleration;
    const loads = turnLoads(car, { speed }, ay);
    return {
      limit,
      harderThanLimit: lateralAcceleration > limit,
      tipsOverAt: tipsOverAt(facing, { speed }),
      tipped: loads === undefined,
      ...(loads && told(loads)),
    };
  };
  return {
    leftTurn: side(car, corners.left, lateralAcceleration),
    rightTurn: side(mirrorCar(car), corners.right, 0 - lateralAcceleration),
  };
}

/** The loads of all wheels by themselves, and each axle's transfer without them. */
function told({ front, rear, ...whole }: NonNullable<ReturnType<typeof turnLoads>>) {
  const axles = { front, rear };
  return {
    load: eachAxle(axles, ({ load }) => load),
    ...eachAxle(axles, ({ load: _, ...transfer }) => transfer),
    ...whole,
  };
}
