import {
  axleDistances,
  axleMasses,
  carMass,
  type HandlingAxle,
  type HandlingCar,
} from "../balance/handling-car.js";
import { requireInRange } from "../check.js";
import { corneringStiffness61 } from "../tyre/magic-formula-61-side.js";
import { clampTo } from "../tyre/valid-range.js";
import { GRAVITY } from "../units.js";
import type { LinearCar } from "./linear-car.js";

/**
 * A car as its yaw motion sees it near straight ahead, at a speed in m/s.
 *
 * Both tyres of an axle upright, at half its load and at its mean pressure. The body does not roll,
 * and tyres make their force at once: `drive` knows both.
 *
 * @throws RangeError for a speed out of range
 */
export function linearCarOf(car: HandlingCar, speed: number): LinearCar {
  requireInRange("speed", speed, 0.1, 200, "m/s");
  const masses = axleMasses(car);
  return {
    mass: carMass(car),
    yawInertia: car.yawInertia,
    distance: axleDistances(car),
    corneringStiffness: {
      front: axleStiffness(car.front, masses.front, speed),
      rear: axleStiffness(car.rear, masses.rear, speed),
    },
    speed,
  };
}

function axleStiffness(axle: HandlingAxle, mass: number, speed: number): number {
  const { tyre, pressure, downforceFactor } = axle;
  const load = Math.max(0, mass * GRAVITY + downforceFactor * speed ** 2) / 2;
  const mean = (pressure.left + pressure.right) / 2;
  const { load: loads, pressure: pressures } = tyre.valid;
  return 2 * corneringStiffness61(tyre, clampTo(loads, load), clampTo(pressures, mean), 0);
}
