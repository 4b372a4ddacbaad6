import type { Axles } from "../load/wheels.js";
import type { HandlingCar } from "./handling-car.js";
import type { TransferLines } from "./transfer-line.js";

const noTransfer = { front: 0, rear: 0 };

/**
 * Load that dampers move while the body rolls, N, on top of the steady transfer.
 *
 * Dampers hold the body back, so what a stiff one takes on early at one end is missing from the
 * springs of both: ΔF = φ̇·(C − ΣC·K/ΣK)/t, with φ̇ = roll gain × lateral jerk – balance of moments
 * about the roll axis. That a later lean also weighs less, ms·g·d times what is missing of it, is
 * left out: see docs/model.md.
 *
 * @param jerk - m/s³ of lateral acceleration to the left
 * @returns N from the left tyre to the right one of each axle
 */
export function damperTransfer(
  { front, rear }: HandlingCar,
  { rollAngle }: TransferLines,
  jerk: number,
): Axles<number> {
  if (jerk === 0) return noTransfer;
  const rollRate = (rollAngle.front.slope + rollAngle.rear.slope) * 0.5 * jerk;
  const stiffness = front.rollStiffness + rear.rollStiffness;
  const damping = front.rollDamping + rear.rollDamping;
  const moment = rollRate * (front.rollDamping - (damping * front.rollStiffness) / stiffness);
  return { front: moment / front.track, rear: -moment / rear.track };
}
