import type { HandlingAxle } from "../balance/handling-car.js";
import type { Sides } from "../load/wheels.js";
import { leanInRoll, turnInRoll } from "../load/wheels-in-roll.js";
import { slipAngleRange } from "../tyre/magic-formula-61.js";
import { momentWith, newWheel, prepareWheel, sideOf } from "../tyre/prepared-wheel.js";
import { clampTo } from "../tyre/valid-range.js";

/** What both tyres of an axle do to it. */
export interface SettledForces {
  /** N to the left */
  readonly sideForce: number;
  /** N·m about their verticals, above 0 turning the nose to the left */
  readonly aligningMoment: number;
}

/**
 * Side force and aligning moment that both tyres of an axle would settle to.
 *
 * @param load - N under each tyre
 * @param slipAngle - rad of the axle without toe, above 0 for a force to the left
 * @param rollAngle - rad of the body, above 0 right side down
 * @param tyreAngle - rad of it that the tyres give
 */
export function settledForces(
  axle: HandlingAxle,
  load: Sides<number>,
  slipAngle: number,
  rollAngle: number,
  tyreAngle: number,
): SettledForces {
  const suspension = rollAngle - tyreAngle;
  const lean = leanInRoll(axle, rollAngle, suspension);
  const angle = slipAngle + turnInRoll(axle, suspension);
  const { camber, toe, pressure } = axle;
  const left = tyreForces(axle, load.left, angle - toe.left, camber.left + lean, pressure.left);
  const right = tyreForces(
    axle,
    load.right,
    angle + toe.right,
    lean - camber.right,
    pressure.right,
  );
  return {
    sideForce: left.sideForce + right.sideForce,
    aligningMoment: left.aligningMoment + right.aligningMoment,
  };
}

const wheel = newWheel(); // filled anew for each tyre

function tyreForces(
  { tyre }: HandlingAxle,
  load: number,
  slipAngle: number,
  inclination: number,
  pressure: number,
): SettledForces {
  prepareWheel(wheel, tyre, load, pressure, inclination);
  const tan = Math.tan(clampTo(slipAngleRange, slipAngle));
  const sideForce = sideOf(wheel, 0, tan);
  return { sideForce, aligningMoment: momentWith(wheel, 0, tan, 0, sideForce) };
}
