import {
  axleDistances,
  axleMasses,
  carMass,
  type HandlingAxle,
  type HandlingCar,
} from "../balance/handling-car.js";
import { requireInRange } from "../check.js";
import { aligningMoment61 } from "../tyre/magic-formula-61-moment.js";
import { corneringStiffness61 } from "../tyre/magic-formula-61-side.js";
import { clampTo } from "../tyre/valid-range.js";
import { GRAVITY } from "../units.js";
import type { LinearCar } from "./linear-car.js";

/**
 * A car as its yaw motion sees it near straight ahead, at a speed in m/s.
 *
 * Both tyres of an axle upright, at half its load and at its mean pressure, on wheels that give way
 * to their side force. The body does not roll, and tyres make their force at once: `drive` knows both.
 *
 * @throws Refusal for a speed out of range
 * @example
 * linearCarOf(handlingCarOf(demoCar), 20).distance.front // → 1.1525, by hand: 2.4·518.625/1080
 */
export function linearCarOf(car: HandlingCar, speed: number): LinearCar {
  requireInRange("speed", speed, 0.1, 200, "m/s");
  const masses = axleMasses(car);
  const front = linearAxle(car.front, masses.front, speed);
  const rear = linearAxle(car.rear, masses.rear, speed);
  return {
    mass: carMass(car),
    yawInertia: car.yawInertia,
    distance: axleDistances(car),
    corneringStiffness: { front: front.stiffness, rear: rear.stiffness },
    trail: { front: front.trail, rear: rear.trail },
    speed,
  };
}

const SMALL_ANGLE = 1e-5; // rad

/** Cornering stiffness, N/rad, and trail, m, of both tyres of an axle. */
function linearAxle(axle: HandlingAxle, mass: number, speed: number) {
  const { tyre, pressure, downforceFactor, complianceSteer } = axle;
  const carried = Math.max(0, mass * GRAVITY + downforceFactor * speed ** 2) / 2;
  const { load: loads, pressure: pressures } = tyre.valid;
  const load = clampTo(loads, carried);
  const mean = clampTo(pressures, (pressure.left + pressure.right) / 2);
  const own = 2 * corneringStiffness61(tyre, load, mean, 0);
  const moment = (angle: number) => aligningMoment61(tyre, 0, angle, load, mean, 0);
  const slope = (moment(SMALL_ANGLE) - moment(-SMALL_ANGLE)) / SMALL_ANGLE; // of two tyres
  return {
    stiffness: own / (1 + own * complianceSteer), // F = C·(α − c·F)
    trail: own > 0 ? -slope / own : 0,
  };
}
