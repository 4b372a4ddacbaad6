import type { Sides } from "../load/wheels.js";
import type { Trim, WheelAtWork } from "./trimmed-car.js";

/** The trim of the car seen in a mirror. */
export function mirrorTrim(trim: Trim): Trim {
  return {
    ...trim,
    lateralAcceleration: -trim.lateralAcceleration,
    steer: -trim.steer,
    sideSlip: -trim.sideSlip,
    yawRate: -trim.yawRate,
    rollAngle: { front: -trim.rollAngle.front, rear: -trim.rollAngle.rear },
    wheels: { front: mirrorWheels(trim.wheels.front), rear: mirrorWheels(trim.wheels.rear) },
  };
}

function mirrorWheels({ left, right }: Sides<WheelAtWork>): Sides<WheelAtWork> {
  return { left: mirrorWheel(right), right: mirrorWheel(left) };
}

function mirrorWheel(wheel: WheelAtWork): WheelAtWork {
  return {
    ...wheel,
    inclination: -wheel.inclination,
    slipAngle: -wheel.slipAngle,
    sideForce: -wheel.sideForce,
    aligningMoment: -wheel.aligningMoment,
  };
}
