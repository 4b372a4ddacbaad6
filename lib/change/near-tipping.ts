import type { HandlingCar } from "../balance/handling-car.js";
import { mirrorCar } from "../balance/mirror-car.js";
import { type PhaseName, phaseNames, phases } from "../balance/phases.js";
import { tipsNear } from "../balance/tips-near.js";
import type { BothCorners } from "./behaviour.js";

/** A part of a corner whose hardest turn comes near to tipping the car over, or tips it. */
export interface NearTipping {
  readonly phase: PhaseName;
  /** m/s² at which it tips over, in the worse corner */
  readonly tipsOverAt: number;
}

/**
 * The parts of a left or right corner in which a car's hardest turn is within a tenth of what tips
 * it over; those in which it tips are among them.
 *
 * @param corners - balances of that car at that speed, m/s
 */
export function nearTippingIn(
  handling: HandlingCar,
  speed: number,
  { left, right }: BothCorners,
): NearTipping[] {
  const mirrored = mirrorCar(handling);
  return phaseNames.flatMap((phase) => {
    const driving = { speed, ...phases[phase] };
    const toLeft = tipsNear(handling, driving, left[phase]) ?? Infinity;
    const toRight = tipsNear(mirrored, driving, right[phase]) ?? Infinity;
    const tipsOverAt = Math.min(toLeft, toRight);
    return tipsOverAt === Infinity ? [] : [{ phase, tipsOverAt }];
  });
}
