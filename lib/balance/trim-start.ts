import type { AxleInTurn, AxlesInTurn } from "./axle-in-turn.js";
import { axleSideForce } from "./axle-side-force.js";
import type { Driving } from "./driving.js";
import { axleDistances, type HandlingCar } from "./handling-car.js";

/**
 * A first idea of side-slip and steer angle in a turn, rad: each axle by itself, small angles.
 */
export function trimStart(
  car: HandlingCar,
  axles: AxlesInTurn,
  driving: Driving,
  ay: number,
): number[] {
  const yawRate = ay / driving.speed;
  const at = axleDistances(car);
  const front = slipAngleFor(axles.front, ay);
  const rear = slipAngleFor(axles.rear, ay);
  const sideSlip = (at.rear * yawRate) / driving.speed - rear; // α_r = b·r/v − β
  const steer = front + sideSlip + (at.front * yawRate) / driving.speed; // α_f = δ − β − a·r/v
  return [sideSlip, steer];
}

/** Slip angle at which an axle holds its mass, or the best it has, rad. */
function slipAngleFor(axle: AxleInTurn, ay: number): number {
  let slipAngle = 0;
  for (let i = 0; i < 12; i++) {
    const { force, slope } = axleSideForce(axle, slipAngle, ay);
    if (!(slope > 0)) break;
    slipAngle += Math.min(0.03, (axle.mass * ay - force) / slope);
  }
  return slipAngle;
}
