import type { HandlingAxle } from "../balance/handling-car.js";
import type { Sides } from "../load/wheels.js";
import { leanInRoll, turnInRoll } from "../load/wheels-in-roll.js";
import { slipAngleRange } from "../tyre/magic-formula-61.js";
import { sideForce61 } from "../tyre/magic-formula-61-side.js";
import { clampTo, isLoaded } from "../tyre/valid-range.js";

/**
 * Side force that both tyres of an axle would settle to, N.
 *
 * @param load - N under each tyre
 * @param slipAngle - rad of the axle without toe, above 0 for a force to the left
 * @param rollAngle - rad of the body, above 0 right side down
 * @param tyreAngle - rad of it that the tyres give
 */
export function settledSideForce(
  axle: HandlingAxle,
  load: Sides<number>,
  slipAngle: number,
  rollAngle: number,
  tyreAngle: number,
): number {
  const suspension = rollAngle - tyreAngle;
  const lean = leanInRoll(axle, rollAngle, suspension);
  const angle = slipAngle + turnInRoll(axle, suspension);
  const { camber, toe, pressure } = axle;
  return (
    tyreForce(axle, load.left, angle - toe.left, camber.left + lean, pressure.left) +
    tyreForce(axle, load.right, angle + toe.right, lean - camber.right, pressure.right)
  );
}

function tyreForce(
  { tyre }: HandlingAxle,
  load: number,
  slipAngle: number,
  inclination: number,
  pressure: number,
): number {
  if (!isLoaded(load)) return 0;
  return sideForce61(
    tyre,
    clampTo(slipAngleRange, slipAngle),
    clampTo(tyre.valid.load, load),
    clampTo(tyre.valid.pressure, pressure),
    clampTo(tyre.valid.inclination, inclination),
  );
}
